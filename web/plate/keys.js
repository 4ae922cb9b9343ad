// @ts-check
/** What keys do on a spot, on a line, and on the button of a lane. */

import { RULER_MM, drawnMm, lines } from "../sheet/geometry.js";
import { findPlate, findReading } from "../sheet/sheet.js";
import { addBegun, begin, moveTo, openReading, removeSeen } from "./moves.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** Steps in mm. */
const FINE_STEP = 0.1;
const LONG_STEP = 2;

/** How far a key moves what has the focus, in mm; undefined where it is no such key. @param {KeyboardEvent} event */
function stepOf(event) {
  const step = event.shiftKey ? FINE_STEP : RULER_MM;
  /** @type {Record<string, number>} */
  const steps = { ArrowUp: step, ArrowRight: step, ArrowDown: -step, ArrowLeft: -step, PageUp: LONG_STEP, PageDown: -LONG_STEP };
  return steps[event.key];
}

/** A number that begins so is an Rf; any other is a height in mm. */
const BEGINS_RF = /^[0.,]$/;

/** Whether a key begins a number. @param {KeyboardEvent} event */
const beginsNumber = (event) => /^[0-9.,]$/.test(event.key);

/** @param {KeyboardEvent} event */
const withModifier = (event) => event.ctrlKey || event.metaKey || event.altKey;

/** @param {State} state @param {Act} act @param {string} plateId @param {string} id of the reading */
export function spotKeys(state, act, plateId, id) {
  const what = /** @type {const} */ ({ kind: "spot", id });
  return (/** @type {KeyboardEvent} */ event) => {
    const reading = findReading(state.sheet, id)?.reading;
    if (!reading || withModifier(event)) return;
    const plate = findPlate(state.sheet, plateId);
    const { start, front } = lines(plate);
    const step = stepOf(event);
    const to = step === undefined ? { Home: start, End: front }[event.key] : drawnMm(plate, reading) + step;
    if (to !== undefined) act.edit((sheet) => moveTo(sheet, what, to), `nudge-${id}`);
    else if (event.key === "Delete" || event.key === "Backspace") removeSeen(state, act, id);
    else if (beginsNumber(event)) begin(act, id, BEGINS_RF.test(event.key) ? "rf" : "mm", event.key);
    else if (event.key === "Enter" || event.key === " ") correct(act, id);
    else return;
    event.preventDefault();
  };
}

/** @param {Act} act @param {string} id */
function correct(act, id) {
  openReading(act, id);
  act.focus(`rf-${id}`);
  const entry = document.getElementById(`rf-${id}`);
  if (entry instanceof HTMLInputElement) entry.select();
}

/** @param {State} state @param {Act} act @param {string} plateId @param {"start" | "front"} which */
export function lineKeys(state, act, plateId, which) {
  return (/** @type {KeyboardEvent} */ event) => {
    if (withModifier(event)) return;
    const at = lines(findPlate(state.sheet, plateId));
    const step = stepOf(event);
    const to = step === undefined ? { Home: 0, End: at.height }[event.key] : at[which] + step;
    if (to === undefined) return;
    event.preventDefault();
    act.edit((sheet) => moveTo(sheet, { kind: which, id: plateId }, to), `nudge-${which}-${plateId}`);
  };
}

/** @param {State} state @param {Act} act @param {string} plateId @param {string} laneId */
export function laneKeys(state, act, plateId, laneId) {
  return (/** @type {KeyboardEvent} */ event) => {
    if (withModifier(event) || !beginsNumber(event)) return;
    event.preventDefault();
    addBegun(state, act, plateId, laneId, BEGINS_RF.test(event.key) ? "rf" : "mm", event.key);
  };
}
