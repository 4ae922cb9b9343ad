// @ts-check
/** The spots of a photo as a list: where each lies, how surely, what it looks like, and what to do about it. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { say } from "../texts.js";
import { addSpotAt, flatSize, proposeAgain, readLanes } from "./course.js";
import { between, frontAt, inOrder, laneAdded, numberOf, spotsIn, startAt } from "./marks.js";
import { removeLane, removeSpot } from "./plate-keys.js";
import { changeMarks, drawing, freshMark, rest } from "./store.js";

/** @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Marks} Marks @typedef {import("./store.js").Spot} Spot */

/** Nearer to a line than this it is a bound more than a place [Rf]. */
const AT_LINE = 0.03;
/** Where nothing was measured a spot has no contrast. */
const NOTHING = 0;

/** @param {Photo} photo */
export function spotsView(photo) {
  const marks = /** @type {Marks} */ (photo.marks);
  const spots = inOrder(marks).flatMap((lane) => spotsIn(marks, lane.id));
  return make(
    "div",
    { id: "photo-spots", class: "photo-spots" },
    spots.length === 0
      ? make("p", { id: "photo-no-spots", class: "aside" }, photo.waiting === "reading" ? say("later.photo-reading") : say("later.photo-no-spots"))
      : make("ul", { id: "photo-spots-list", "aria-label": say("later.photo-spots") }, ...spots.map((spot) => row(photo, marks, spot))),
  );
}

/** @param {Photo} photo @param {Marks} marks @param {Spot} spot */
function row(photo, marks, spot) {
  const { rf, error } = between(marks, flatSize(photo), spot);
  const lane = numberOf(marks, spot.lane);
  const advice = adviceOf(spot, rf);
  const look = { mm: spot.sizeMm, shape: say(`later.photo-shape-${spot.shape}`), percent: 100 * spot.contrast };
  return make(
    "li",
    { id: `row-${spot.id}`, class: spot.id === photo.spot ? "chosen" : undefined },
    make("span", { class: "photo-of-lane" }, say("page.lane", { lane })),
    button({ id: `find-${spot.id}`, label: say("later.photo-rf-error", { rf, error }), name: say("later.photo-find", { lane, rf, error }), kind: "small photo-find", press: () => show(photo, spot) }),
    make("span", { class: "photo-looks" }, spot.contrast > NOTHING ? say("later.photo-looks", look) : say("later.photo-by-hand")),
    button({ id: `remove-${spot.id}`, label: "\u00d7", name: say("later.photo-remove-spot", { lane, rf }), kind: "small", press: () => removeSpot(photo, spot.id) }),
    advice && make("p", { class: "photo-advice", id: `advice-${spot.id}` }, say(advice)),
  );
}

/** What to do about a spot, if anything. @param {Spot} spot @param {number} rf */
function adviceOf({ shape }, rf) {
  if (shape !== "compact") return `later.photo-do-${shape}`;
  if (rf < AT_LINE) return "later.photo-do-at-start";
  return rf > 1 - AT_LINE ? "later.photo-do-at-front" : undefined;
}

/** @param {Photo} photo @param {Spot} spot */
function show(photo, spot) {
  Object.assign(photo, { lane: spot.lane, spot: spot.id });
  drawing.again();
  document.getElementById(`photo-${spot.id}`)?.focus({ preventScroll: true });
  document.getElementById("photo-flat-box")?.scrollIntoView({ block: "nearest" });
}

/** What is added, taken away and proposed by buttons. @param {Photo} photo */
export function marksButtons(photo) {
  const marks = /** @type {Marks} */ (photo.marks);
  const lane = marks.lanes.find(({ id }) => id === photo.lane);
  const number = lane ? numberOf(marks, lane.id) : 0;
  return make(
    "div",
    { class: "photo-buttons", id: "photo-marks-buttons" },
    lane && button({ id: "photo-add-spot", label: say("later.photo-add-spot", { lane: number }), press: () => addSpot(photo, lane.id) }),
    button({ id: "photo-add-lane", label: say("page.add-lane"), press: () => addLane(photo) }),
    lane && button({ id: "photo-remove-lane", label: say("page.remove-lane", { lane: number }), press: () => removeLane(photo, lane.id) }),
    button({ id: "photo-propose", label: say("later.photo-propose"), press: () => proposeAgain(photo) }),
  );
}

/** A spot in the middle of the run, to be moved from there. @param {Photo} photo @param {string} lane */
function addSpot(photo, lane) {
  const marks = /** @type {Marks} */ (photo.marks);
  const size = flatSize(photo);
  const x = marks.lanes.find(({ id }) => id === lane)?.startXMm ?? 0;
  addSpotAt(photo, lane, (startAt(marks, size, x) + frontAt(marks, size, x)) / 2);
  document.getElementById(`photo-${photo.spot}`)?.focus({ preventScroll: true });
}

/** @param {Photo} photo */
function addLane(photo) {
  const id = freshMark(photo, "lane");
  rest(photo);
  changeMarks(photo, (marks) => laneAdded(marks, flatSize(photo), id));
  rest(photo);
  photo.lane = id;
  readLanes(photo);
  document.getElementById(`photo-${id}`)?.focus({ preventScroll: true });
}
