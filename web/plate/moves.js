// @ts-check
/** Moves spots and lines, and opens what can be corrected about them. */

import { besideOther, betweenLines, typedMm } from "../sheet/geometry.js";
import { addReading, findPlate, findReading, freeId, placeReading, removeReading } from "../sheet/sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Sheet} Sheet */
/** @typedef {{kind: "spot", id: string} | {kind: "start" | "front", id: string}} Movable a reading, or a line of a plate */

/** @param {Sheet} sheet @param {Movable} what @param {number} mm above the lower edge */
export function moveTo(sheet, what, mm) {
  if (what.kind !== "spot") {
    const plate = findPlate(sheet, what.id);
    plate[what.kind === "start" ? "startMm" : "frontMm"] = typedMm(besideOther(plate, what.kind, mm));
    return;
  }
  const found = findReading(sheet, what.id);
  if (!found) return;
  placeReading(found.reading, "mm", typedMm(betweenLines(found.plate, mm)));
}

/** The id of the element that shows a spot or a line. @param {Movable} what */
export const elementOf = (what) => (what.kind === "spot" ? `seen-${what.id}` : `${what.kind}-line-${what.id}`);

/** Adds a spot in a lane and gives it the focus. @param {State} state @param {Act} act @param {string} plateId @param {string} laneId @param {number} mm */
export function addSeen(state, act, plateId, laneId, mm) {
  const id = freeId(state.sheet, "r");
  act.edit((sheet) => {
    const plate = findPlate(sheet, plateId);
    const lane = plate.lanes.find((each) => each.id === laneId);
    if (lane) addReading(sheet, plate, lane, "mm", typedMm(mm));
  });
  act.look({ reading: id });
  focusWithoutScrolling(`seen-${id}`);
}

/** Adds a spot in a lane whose place is still to be given, and goes on in its entry. @param {State} state @param {Act} act @param {string} plateId @param {string} laneId */
export function addUnplaced(state, act, plateId, laneId) {
  const id = freeId(state.sheet, "r");
  act.edit((sheet) => {
    const plate = findPlate(sheet, plateId);
    const lane = plate.lanes.find((each) => each.id === laneId);
    if (lane) addReading(sheet, plate, lane, "mm", "");
  }, `mm-${id}`);
  act.look({ reading: id });
  act.focus(`mm-${id}`);
}

/** Adds a spot in a lane by the beginning of its Rf or height, and goes on in its entry. @param {State} state @param {Act} act @param {string} plateId @param {string} laneId @param {"mm" | "rf"} by @param {string} begun */
export function addBegun(state, act, plateId, laneId, by, begun) {
  const id = freeId(state.sheet, "r");
  act.rest();
  act.edit((sheet) => {
    const plate = findPlate(sheet, plateId);
    const lane = plate.lanes.find((each) => each.id === laneId);
    if (lane) addReading(sheet, plate, lane, by, begun);
  }, `${by}-${id}`);
  act.look({ reading: id });
  atEnd(act, `${by}-${id}`);
}

/** Begins the Rf or height of a reading anew. @param {Act} act @param {string} id @param {"mm" | "rf"} by @param {string} begun */
export function begin(act, id, by, begun) {
  act.rest();
  act.edit((sheet) => {
    const found = findReading(sheet, id);
    if (found) placeReading(found.reading, by, begun);
  }, `${by}-${id}`);
  act.look({ reading: id });
  atEnd(act, `${by}-${id}`);
}

/** Shows the line of the list where a reading is corrected. @param {Act} act @param {string} id */
export function openReading(act, id) {
  act.look({ reading: id });
  document.getElementById(`reading-${id}`)?.scrollIntoView({ block: "nearest", inline: "nearest" });
}

/** Takes a reading away; the focus goes to the button of its lane. @param {State} state @param {Act} act @param {string} id */
export function removeSeen(state, act, id) {
  const lane = findReading(state.sheet, id)?.lane;
  act.edit((sheet) => removeReading(sheet, id));
  if (lane) act.focus(`add-${lane.id}`);
}

/** @param {Act} act @param {string} id of an entry */
function atEnd(act, id) {
  act.focus(id);
  const entry = document.getElementById(id);
  if (entry instanceof HTMLInputElement) entry.setSelectionRange(entry.value.length, entry.value.length);
}

/** A finger is on it, so nothing may slide away. @param {string} id */
export const focusWithoutScrolling = (id) => document.getElementById(id)?.focus({ preventScroll: true });
