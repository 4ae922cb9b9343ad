// @ts-check
/** The profile of a lane, upright beside the plate and at its scale: what darkens it above its baseline, with the spots marked. */

import { draw, make } from "../dom.js";
import { marked, say } from "../texts.js";
import { flatSize } from "./course.js";
import { between, frontAt, numberOf, spotsIn, startAt } from "./marks.js";

/** @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Marks} Marks @typedef {import("./store.js").Profile} Profile @typedef {import("./store.js").Lane} Lane */

/** The scale is never finer than to this darkening, so that grain is not drawn as large as spots. */
const LEAST = 0.05;
const TICK_MM = 10;
/** Fewer marks than this across are too few; steps that people read. */
const STEPS = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2];
const MOST_TICKS = 3;

const percent = (/** @type {number} */ share) => `${(100 * share).toFixed(3)}%`;

/** @param {Photo} photo */
export function profileView(photo) {
  const marks = /** @type {Marks} */ (photo.marks);
  const lane = marks.lanes.find(({ id }) => id === photo.lane);
  const number = lane ? numberOf(marks, lane.id) : 0;
  return make(
    "div",
    { class: "photo-profile", id: "photo-profile" },
    lane?.profile && drawn(photo, marks, lane, lane.profile, number),
  );
}

/** What the profile shows, and its axes. @param {Photo} photo */
export function profileWords({ marks, lane }) {
  const isThere = marks?.lanes.some(({ id }) => id === lane);
  return make("p", { class: "photo-profile-words", id: "photo-profile-words" }, marks && lane && isThere ? say("later.photo-profile", { lane: numberOf(marks, lane) }) : say("later.photo-profile-none"));
}

/** Where values lie across: 0 at the left. @param {Profile} profile */
function scaleOf({ raw, baseline, signal }) {
  const lowest = Math.min(...raw, ...baseline);
  const most = Math.max(LEAST, 1.08 * Math.max(...signal), 1.02 * (Math.max(...raw) - lowest));
  return { lowest, most };
}

/** @param {Photo} photo @param {Marks} marks @param {Lane} lane @param {Profile} profile @param {number} number */
function drawn(photo, marks, lane, profile, number) {
  const size = flatSize(photo);
  const { lowest, most } = scaleOf(profile);
  const upright = (/** @type {number} */ mm) => 1 - mm / size.height;
  const at = (/** @type {number} */ i) => (size.height - (profile.fromMm + i * profile.stepMm)).toFixed(3);
  const line = (/** @type {number[]} */ values, /** @type {number} */ from) => `M${values.map((value, i) => `${((value - from) / most).toFixed(4)} ${at(i)}`).join("L")}`;
  const signal = line(profile.signal.map((value) => Math.max(0, value)), 0);
  const spots = spotsIn(marks, lane.id);
  const tick = STEPS.find((step) => most / step <= MOST_TICKS + 0.9) ?? 5;
  const ticks = Array.from({ length: Math.floor(most / tick) + 1 }, (_, i) => i * tick);
  const heights = Array.from({ length: Math.floor(size.height / TICK_MM) + 1 }, (_, i) => i * TICK_MM);
  const lines = [startAt(marks, size, lane.startXMm), frontAt(marks, size, lane.frontXMm)];
  return draw(
    "svg",
    { id: "photo-profile-drawn", class: "photo-profile-drawn", role: "img", "aria-label": saidOf(photo, marks, lane, number) },
    draw(
      "svg",
      { viewBox: `0 0 1 ${size.height}`, preserveAspectRatio: "none", width: "100%", height: "100%" },
      draw("path", { class: "photo-axis", d: `M0 0V${size.height}H1` }),
      ...lines.map((mm) => draw("path", { class: "photo-level", d: `M0 ${size.height - mm}H1` })),
      draw("path", { class: "photo-raw", d: line(profile.raw, lowest) }),
      draw("path", { class: "photo-baseline", d: line(profile.baseline, lowest) }),
      draw("path", { class: "photo-signal-under", d: `${signal}L0 ${at(profile.signal.length - 1)}L0 ${at(0)}Z` }),
      draw("path", { class: "photo-signal", d: signal }),
    ),
    ...spots.map((spot) => mark(photo, size.height, spot)),
    ...heights.map((mm) => draw("text", { class: "photo-tick", x: -3, y: percent(upright(mm)), dy: 4, "text-anchor": "end" }, mm === 0 ? say("later.photo-mm") : String(mm))),
    ...ticks.map((value) => draw("text", { class: "photo-tick", x: percent(value / most), y: "100%", dy: 14, "text-anchor": value === 0 ? "start" : "middle" }, marked(String(Number(value.toFixed(2)))))),
  );
}

/** A spot as long as it is, with its middle. @param {Photo} photo @param {number} height @param {import("./store.js").Spot} spot */
function mark(photo, height, spot) {
  const [top, middle, low] = [spot.mm + spot.sizeMm / 2, spot.mm, spot.mm - spot.sizeMm / 2].map((mm) => percent(1 - Math.min(height, Math.max(0, mm)) / height));
  return draw(
    "g",
    { id: `${spot.id}-in-profile`, class: spot.id === photo.spot ? "photo-in-profile chosen" : "photo-in-profile" },
    draw("line", { class: "photo-extent", x1: "97%", x2: "97%", y1: top, y2: low }),
    draw("line", { class: "photo-middle", x1: 0, x2: "100%", y1: middle, y2: middle }),
  );
}

/** @param {Photo} photo @param {Marks} marks @param {Lane} lane @param {number} number */
function saidOf(photo, marks, lane, number) {
  const size = flatSize(photo);
  const spots = spotsIn(marks, lane.id).map((spot) => say("later.photo-rf", { rf: between(marks, size, spot).rf }));
  return spots.length > 0 ? say("later.photo-profile-said", { lane: number, spots: spots.join(", ") }) : say("later.photo-profile-bare", { lane: number });
}
