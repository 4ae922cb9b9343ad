// @ts-check
/** The course of a photo: opened, straightened, its lanes read; each answer is shown only while it is still waited for. */

import { lines } from "../sheet/geometry.js";
import { findPlate } from "../sheet/sheet.js";
import { joined, scaled, spotAdded } from "./marks.js";
import { Unread, measure, open, read, straighten } from "./reader.js";
import { changeMarks, drawing, freshMark, rest } from "./store.js";
import { isCrossed, middleOutline } from "./turning.js";

/** @typedef {import("../state.js").State} State @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Marks} Marks */

/** The longest side of a picture on the screen [px]. */
const SHOWN_PX = 1800;
/** Below this the corners that were found are to be looked at first. */
const SURE = 0.5;
/** After a key it is read anew so much later [ms]: most people press it more than once. */
const PAUSE = 250;

let timer = 0;

/** Size of the plate, as it stands in its form [mm]. @param {State} state @param {Photo} photo */
export function sizeOf(state, photo) {
  const { width, height } = lines(findPlate(state.sheet, photo.plate));
  return { width, height };
}

/** Size of the plate as it was straightened [mm]. @param {Photo} photo */
export function flatSize({ flat }) {
  const { widthMm, heightMm } = /** @type {import("./store.js").Flat} */ (flat);
  return { width: widthMm, height: heightMm };
}

/**
 * Asks something, says so meanwhile, and tells what went wrong at the entry it is about.
 * @template T
 * @param {Photo} photo @param {Photo["waiting"]} waiting @param {string} entry its id
 * @param {() => Promise<T>} work
 * @param {(answer: T) => void} then what to do with the answer, if it is still waited for
 */
async function wait(photo, waiting, entry, work, then) {
  const mine = ++photo.turn;
  photo.waiting = waiting;
  photo.faults.delete(entry);
  drawing.again();
  try {
    const answer = await work();
    if (mine === photo.turn) then(answer);
  } catch (failure) {
    if (mine !== photo.turn) return;
    const fault = failure instanceof Unread ? failure.fault : { code: "broken" };
    if (fault.code !== "overtaken") photo.faults.set(entry, fault);
    if (!(failure instanceof Unread)) console.warn(failure);
  }
  if (mine !== photo.turn) return;
  photo.waiting = "";
  drawing.again();
}

/** Opens a file; where it cannot be read, the picture before stays. @param {State} state @param {Photo} photo @param {File} file */
export const openFile = (state, photo, file) =>
  wait(
    photo,
    "opening",
    "photo-file",
    async () => {
      try {
        const answer = await open(file);
        return { answer, shown: await shownOf(file, answer) };
      } catch (failure) {
        if (failure instanceof Unread) Object.assign(failure.fault, { name: file.name });
        throw failure;
      }
    },
    ({ answer, shown }) => {
      photo.shown?.close();
      Object.assign(photo, {
        file,
        shown,
        name: file.name,
        stage: "corners",
        turns: 0,
        corners: answer.corners ?? middleOutline(answer, sizeOf(state, photo)),
        found: !answer.corners ? "none" : answer.sure < SURE ? "unsure" : "found",
        light: answer.light,
        lightBy: "photo",
        flat: undefined,
        marks: undefined,
        taken: undefined,
        steps: { corners: [], marks: [] },
        faults: new Map(),
      });
      goOn("photo-straighten");
    },
  );

/** The picture for the screen, upright, no larger than is of use. @param {File} file @param {{width: number, height: number}} size as shown [px] */
const shownOf = (file, { width, height }) =>
  Math.max(width, height) <= SHOWN_PX
    ? createImageBitmap(file)
    : createImageBitmap(file, { resizeQuality: "medium", ...(width > height ? { resizeWidth: SHOWN_PX } : { resizeHeight: SHOWN_PX }) });

/** Puts the focus where one goes on, once that is drawn, unless somebody is elsewhere by then; nothing scrolls away. @param {string} id */
function goOn(id) {
  queueMicrotask(() => {
    const at = document.activeElement;
    if (!at || at === document.body || at.closest("#photo-head, .photo-drop")) document.getElementById(id)?.focus({ preventScroll: true });
  });
}

/** Straightens the plate as it is outlined, and reads it; what a hand marked on it stays. @param {State} state @param {Photo} photo */
export function straightenPlate(state, photo) {
  const { corners } = photo;
  if (isCrossed(corners)) {
    photo.faults.set("photo-corners", { code: "corners-crossed" });
    drawing.again();
    return;
  }
  const { width, height } = sizeOf(state, photo);
  const wish = { corners, widthMm: width, heightMm: height, ...(photo.lightBy === "hand" ? { light: photo.light } : {}) };
  wait(
    photo,
    "straightening",
    "photo-corners",
    () => straighten(photo, wish),
    (answer) => {
      const before = photo.flat;
      const kept = before && photo.marks && isByHand(photo) ? scaled(photo.marks, width / before.widthMm, height / before.heightMm) : undefined;
      before?.image.close();
      Object.assign(photo, { flat: { image: answer.image, widthMm: width, heightMm: height, corners }, light: answer.light, stage: "marks", together: undefined });
      photo.lines = { start: answer.start !== null, front: answer.front !== null };
      if (!kept) photo.steps.marks = [];
      photo.marks = kept ?? begunMarks(state, photo, answer);
      readLanes(photo, photo.marks.lanes.length > 0 ? "these" : "anew", () => goOn("photo-take"));
    },
  );
}

/** Whether somebody marked anything since it was proposed. @param {Photo} photo */
const isByHand = ({ steps }) => steps.marks.length > 0;

/** The marks as proposed; a line that was not found lies where the form of the plate has it. @param {State} state @param {Photo} photo @param {any} answer @returns {Marks} */
function begunMarks(state, photo, answer) {
  const form = lines(findPlate(state.sheet, photo.plate));
  const lanes = answer.lanes.map((/** @type {any} */ lane) => ({ ...lane, id: freshMark(photo, "lane") }));
  photo.lane = lanes[0]?.id;
  photo.spot = undefined;
  return { start: answer.start ?? [form.start, form.start], front: answer.front ?? [form.front, form.front, form.front], lanes, spots: [], gone: [] };
}

/** Reads the lanes as they are marked, or finds them anew. @param {Photo} photo @param {"these" | "anew"} [which] @param {() => void} [then] */
export function readLanes(photo, which = "these", then = () => {}) {
  clearTimeout(timer);
  const { marks } = photo;
  if (!marks) return;
  if (which === "these" && marks.lanes.length === 0) return;
  const asked = which === "these" ? marks.lanes.map(({ id }) => id).join() : "";
  wait(
    photo,
    "reading",
    "photo-lines",
    () => read(photo, marks, which),
    (answer) => {
      const now = /** @type {Marks} */ (photo.marks);
      if (which === "these" && now.lanes.map(({ id }) => id).join() !== asked) return;
      const lanes = which === "these" ? now.lanes : answer.lanes.map(({ startXMm, frontXMm, widthMm }) => ({ startXMm, frontXMm, widthMm, id: freshMark(photo, "lane") }));
      photo.marks = joined({ ...now, lanes }, answer.lanes, () => freshMark(photo, "spot"));
      if (!lanes.some(({ id }) => id === photo.lane)) photo.lane = lanes[0]?.id;
      if (!photo.marks.spots.some(({ id }) => id === photo.spot)) photo.spot = undefined;
      then();
    },
  );
}

/** Reads the lanes a little later, for more may be moved. @param {Photo} photo */
export function readSoon(photo) {
  clearTimeout(timer);
  photo.waiting = "reading";
  drawing.again();
  timer = window.setTimeout(() => readLanes(photo), PAUSE);
}

/** All lanes and spots as proposed for these lines; one step. @param {Photo} photo */
export function proposeAgain(photo) {
  rest(photo);
  changeMarks(photo, (marks) => ({ ...marks, lanes: [], spots: [], gone: [] }));
  readLanes(photo, "anew");
}

/** Adds a spot where a person points; measured there if there is something to see. @param {Photo} photo @param {string} lane @param {number} mm @returns {Promise<string>} its id */
export async function addSpotAt(photo, lane, mm) {
  const id = freshMark(photo, "spot");
  const marks = /** @type {Marks} */ (photo.marks);
  const index = marks.lanes.findIndex((each) => each.id === lane);
  rest(photo);
  changeMarks(photo, (now) => spotAdded(now, id, lane, mm));
  Object.assign(photo, { lane, spot: id });
  drawing.again();
  try {
    const found = await measure(photo, marks, index, mm);
    const { mm: centre, errorMm, sizeMm, widthMm, shape, contrast } = found;
    const still = photo.marks?.spots.find((spot) => spot.id === id);
    if (still?.mm !== mm || photo.marks === undefined) return id; // it was moved or taken away meanwhile
    photo.marks = { ...photo.marks, spots: photo.marks.spots.map((spot) => (spot === still ? { ...spot, mm: centre, errorMm, sizeMm, widthMm, shape, contrast } : spot)) };
  } catch {
    // it stays where the person put it, as surely as by a ruler
  }
  drawing.again();
  return id;
}
