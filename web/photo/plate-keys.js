// @ts-check
/** What keys do on the lines, lanes and spots of the straightened plate. */

import { readLanes, readSoon } from "./course.js";
import { laneRemoved, spotRemoved } from "./marks.js";
import { moveTo, placeOf } from "./plate-pointer.js";
import { changeMarks, rest } from "./store.js";

/** @typedef {import("./store.js").Photo} Photo @typedef {import("./plate-pointer.js").What} What */

/** Steps [mm]. */
const STEP = 0.5;
const FINE_STEP = 0.1;
const LONG_STEP = 2;

/** @param {Photo} photo @param {What} what @returns {(event: KeyboardEvent) => void} */
export const keysOn = (photo, what) => (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const step = event.shiftKey ? FINE_STEP : STEP;
  const by = { ArrowUp: step, ArrowRight: step, ArrowDown: -step, ArrowLeft: -step, PageUp: LONG_STEP, PageDown: -LONG_STEP }[event.key];
  if (by !== undefined) {
    const { x, mm } = placeOf(photo, what);
    moveTo(photo, what, { x: x + by, mm: mm + by }, `key-${JSON.stringify(what)}`);
    if (what.kind !== "spot") readSoon(photo);
  } else if (event.key === "Delete" || event.key === "Backspace") {
    if (what.kind === "spot") removeSpot(photo, what.id);
    else if (what.kind === "lane") removeLane(photo, what.id);
    else return;
  } else return;
  event.preventDefault();
};

/** Takes a spot away; the focus goes to its lane. @param {Photo} photo @param {string} id */
export function removeSpot(photo, id) {
  const lane = photo.marks?.spots.find((spot) => spot.id === id)?.lane;
  rest(photo);
  changeMarks(photo, (marks) => spotRemoved(marks, id));
  rest(photo);
  if (lane) document.getElementById(`photo-${lane}`)?.focus({ preventScroll: true });
}

/** Takes a lane away with its spots. @param {Photo} photo @param {string} id */
export function removeLane(photo, id) {
  rest(photo);
  photo.lane = photo.marks?.lanes.find((lane) => lane.id !== id)?.id;
  changeMarks(photo, (marks) => laneRemoved(marks, id));
  rest(photo);
  readLanes(photo);
  document.getElementById(photo.lane ? `photo-${photo.lane}` : "photo-add-lane")?.focus({ preventScroll: true });
}
