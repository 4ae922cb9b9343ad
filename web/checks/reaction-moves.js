// @ts-check
/** What is done to the plates of a reaction: choosing, grading, taking one, by keys and by drawing a spot to its Rf. */

import { typedRf } from "../sheet/geometry.js";
import { placesOf, rfAt, rfInPixel } from "./reaction-plate.js";
import { STRENGTHS, editReaction, minutesBefore, nextMinutes, reactionOf, rfOf, rowsOf, setRf, setStrength, strengthOf, takePlate, tapped } from "./reaction-sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./reaction-sheet.js").TimePlate} TimePlate @typedef {import("./reaction-sheet.js").ChosenMark} ChosenMark */

/** The cell of a compound on a plate. @param {string} plate @param {string} row */
export const cellOf = (plate, row) => `grade-${plate}-${row}`;

/** What is chosen, as far as it is still there. @param {State} state @returns {ChosenMark | undefined} */
export function chosenMark({ sheet, looking }) {
  const reaction = reactionOf(sheet);
  const { grade } = looking;
  return grade && reaction.plates.some(({ id }) => id === grade.plate) && rowsOf(reaction).includes(grade.row) ? grade : undefined;
}

/** @param {State} state @param {Act} act @param {string} plate @param {string} row */
export function choose(state, act, plate, row) {
  const { grade } = state.looking;
  if (grade?.plate !== plate || grade.row !== row || grade.came) act.look({ grade: { plate, row } });
}

/** @param {State} state @param {Act} act @param {string} plate @param {string} row */
function goTo(state, act, plate, row) {
  choose(state, act, plate, row);
  act.focus(cellOf(plate, row));
}

/** @param {State} state @param {Act} act @param {string} plate @param {string} row @param {number | undefined} strength */
export function grade(state, act, plate, row, strength) {
  choose(state, act, plate, row);
  editReaction(act, (reaction, sheet) => setStrength(reaction, sheet, plate, row, strength));
}

/** What a plate shows as on the plate before, as long as nobody looked. @param {State} state @param {TimePlate} plate @param {string} row @returns {number | undefined} */
export const assumedOf = ({ looking }, plate, row) => (strengthOf(plate, row) === undefined ? looking.assumed?.[plate.id]?.[row] : undefined);

/** All of them. @param {State} state @param {TimePlate} plate @returns {Record<string, number>} by row */
export const allAssumed = (state, plate) => Object.fromEntries(Object.entries(state.looking.assumed?.[plate.id] ?? {}).filter(([row]) => assumedOf(state, plate, row) !== undefined && rowsOf(reactionOf(state.sheet)).includes(row)));

/** Makes what a plate shows as on the plate before what was seen on it. @param {State} state @param {import("./reaction-sheet.js").Reaction} reaction @param {State["sheet"]} sheet @param {string} [id] of the plate */
function settle(state, reaction, sheet, id) {
  const plate = reaction.plates.find((each) => each.id === id);
  for (const [row, strength] of plate ? Object.entries(allAssumed(state, plate)) : []) setStrength(reaction, sheet, plate?.id ?? "", row, strength);
}

/** @param {State} state @param {Act} act @param {TimePlate} plate */
export function confirm(state, act, plate) {
  if (Object.keys(allAssumed(state, plate)).length > 0) editReaction(act, (reaction, sheet) => settle(state, reaction, sheet, plate.id));
}

/** What a plate shows, seen or as on the plate before. @param {State} state @param {import("./reaction-sheet.js").Reaction} reaction @param {TimePlate | undefined} plate @returns {Record<string, number>} by row */
function shownOn(state, reaction, plate) {
  /** @type {Record<string, number>} */
  const shown = {};
  for (const row of plate ? rowsOf(reaction) : []) {
    const strength = plate && (strengthOf(plate, row) ?? assumedOf(state, plate, row));
    if (strength !== undefined) shown[row] = strength;
  }
  return shown;
}

/** A plate begins as the one before it, faintly. @param {State} state @param {Act} act @param {string} id @param {Record<string, number>} shown */
const assume = (state, act, id, shown) => act.look({ assumed: { ...state.looking.assumed, [id]: shown } });

/** Nobody looked, and it is not shown either. @param {State} state @param {Act} act @param {string} plate @param {string} row */
function forget(state, act, plate, row) {
  const { [row]: gone, ...others } = state.looking.assumed?.[plate] ?? {};
  if (gone !== undefined) act.look({ assumed: { ...state.looking.assumed, [plate]: others } });
  grade(state, act, plate, row, undefined);
}

/** One strength on: the starting material fades, what is made comes up. @param {State} state @param {Act} act @param {TimePlate} plate @param {string} row */
export function step(state, act, plate, row) {
  const part = reactionOf(state.sheet).species.find(({ id }) => id === row)?.part ?? "baseline";
  grade(state, act, plate.id, row, tapped(strengthOf(plate, row) ?? assumedOf(state, plate, row), part));
}

/** Takes the next plate, which confirms what the last one shows, and goes on at it. @param {State} state @param {Act} act @param {string} minutes */
export function takeNext(state, act, minutes) {
  let id = "";
  /** @type {Record<string, number>} */
  let shown = {};
  editReaction(act, (reaction, sheet) => {
    const last = reaction.plates.at(-1);
    settle(state, reaction, sheet, last?.id);
    shown = shownOn(state, reaction, last);
    id = takePlate(reaction, sheet, minutes).id;
  });
  assume(state, act, id, shown);
  goTo(state, act, id, rowsOf(reactionOf(state.sheet))[0]);
  document.getElementById("reaction-next")?.scrollIntoView({ block: "nearest", inline: "nearest" });
}

/** Puts one in before a plate; its time is to be looked over. @param {State} state @param {Act} act @param {string} before id of the plate */
export function insertBefore(state, act, before) {
  let id = "";
  /** @type {Record<string, number>} */
  let shown = {};
  editReaction(act, (reaction, sheet) => {
    const at = reaction.plates.findIndex((plate) => plate.id === before);
    shown = shownOn(state, reaction, reaction.plates[at - 1] ?? reaction.plates[at]);
    id = takePlate(reaction, sheet, minutesBefore(reaction, at), at).id;
  });
  assume(state, act, id, shown);
  act.look({ grade: { plate: id, row: rowsOf(reactionOf(state.sheet))[0] } });
  toTime(act, id);
}

/** @param {State} state @param {Act} act @param {string} id of the plate */
export function removePlate(state, act, id) {
  const { plates } = reactionOf(state.sheet);
  const at = plates.findIndex((plate) => plate.id === id);
  const beside = plates[at - 1] ?? plates[at + 1];
  const { row = "" } = chosenMark(state) ?? {};
  editReaction(act, (reaction) => (reaction.plates = reaction.plates.filter((plate) => plate.id !== id)));
  if (beside) goTo(state, act, beside.id, row || rowsOf(reactionOf(state.sheet))[0]);
  else act.focus("reaction-next");
}

/** Goes to the time of a plate, which the first digit then replaces. @param {Act} act @param {string} plate */
function toTime(act, plate) {
  act.focus(`minutes-${plate}`);
  const entry = document.getElementById(`minutes-${plate}`);
  if (entry instanceof HTMLInputElement) entry.select();
}

/** @param {State} state @param {Act} act @param {KeyboardEvent} event */
export function stripKeys(state, act, event) {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || !(event.target instanceof HTMLElement)) return;
  const { plate, row } = event.target.dataset;
  const isTime = event.target instanceof HTMLInputElement;
  const done = plate !== undefined && row !== undefined ? cellKey(state, act, plate, row, event.key) : isTime && timeKey(state, act, event.target.id.slice("minutes-".length), event.key);
  if (done) event.preventDefault();
}

/** From the time of a plate to its compounds. @param {State} state @param {Act} act @param {string} plate @param {string} key */
function timeKey(state, act, plate, key) {
  if (key !== "Enter" && key !== "ArrowDown") return false;
  goTo(state, act, plate, rowsOf(reactionOf(state.sheet))[0]);
  return true;
}

/** @param {State} state @param {Act} act @param {string} plate @param {string} row @param {string} key @returns {boolean} whether the key meant something */
function cellKey(state, act, plate, row, key) {
  const reaction = reactionOf(state.sheet);
  const { plates } = reaction;
  const rows = rowsOf(reaction);
  const [at, down] = [plates.findIndex(({ id }) => id === plate), rows.indexOf(row)];
  const last = plates.length - 1;
  const to = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: last }[key];
  if (to !== undefined) goTo(state, act, plates[Math.min(last, Math.max(0, to))].id, row);
  else if (key === "ArrowDown") goTo(state, act, plate, rows[Math.min(rows.length - 1, down + 1)]);
  else if (key === "ArrowUp" && down > 0) goTo(state, act, plate, rows[down - 1]);
  else if (key === "ArrowUp" || key.toLowerCase() === "t") toTime(act, plate);
  else if (key === "Enter" && at < last) {
    confirm(state, act, plates[at]);
    goTo(state, act, plates[at + 1].id, rows[0]);
  } else if (key === "=") confirm(state, act, plates[at]);
  else if (key === "Enter") takeNext(state, act, String(nextMinutes(reaction)));
  else if (key === "Delete" || key === "Backspace") forget(state, act, plate, row);
  else if (STRENGTHS.includes(Number(key)) && /^\d$/.test(key)) grade(state, act, plate, row, Number(key));
  else if (/^\d$/.test(key)) act.look({ grade: { plate, row, came: key } });
  else return false;
  return true;
}

/** How near a press has to come to take a spot [px]; one that moves less than the second is a tap. */
const REACH_PX = 24;
const TAP_PX = 5;

/** The spot that the pointer has taken. @type {{pointer: number, plate: string, row: string, y: number, rf: number, px: number, moved: boolean} | undefined} */
let held;

/** A spot is drawn to its Rf, on every plate where it ran there. @param {State} state @param {Act} act @param {string} id of the plate */
export function dragHandlers(state, act, id) {
  return {
    onmousedown: (/** @type {MouseEvent} */ event) => event.preventDefault(),
    // a finger on a spot moves it; elsewhere the page scrolls
    ontouchstart: (/** @type {TouchEvent} */ event) => {
      if (held && event.touches.length === 1 && event.cancelable) event.preventDefault();
    },
    onpointerdown: (/** @type {PointerEvent} */ event) => press(state, act, id, event),
    onpointermove: (/** @type {PointerEvent} */ event) => move(state, act, event),
    onpointerup: (/** @type {PointerEvent} */ event) => release(act, event),
    onpointercancel: (/** @type {PointerEvent} */ event) => release(act, event),
  };
}

/** @param {State} state @param {Act} act @param {string} id @param {PointerEvent} event */
function press(state, act, id, event) {
  const reaction = reactionOf(state.sheet);
  const plate = reaction.plates.find((each) => each.id === id);
  if (!plate || !event.isPrimary || event.button !== 0) return;
  const svg = /** @type {SVGSVGElement} */ (event.currentTarget);
  const matrix = /** @type {DOMMatrix} */ (svg.getScreenCTM());
  const { y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  const px = matrix.a;
  const [nearest] = placesOf(reaction, state.sheet, plate)
    .filter((place) => reaction.species.some((one) => one.id === place.id) && strengthOf(plate, place.id) !== undefined)
    .sort((one, other) => Math.abs(one.y - y) - Math.abs(other.y - y));
  if (!nearest || Math.abs(nearest.y - y) * px > REACH_PX) return;
  act.rest();
  held = { pointer: event.pointerId, plate: id, row: nearest.id, y: event.clientY, rf: rfAt(nearest.y), px, moved: false };
  svg.setPointerCapture(event.pointerId);
  choose(state, act, id, nearest.id);
  document.getElementById(cellOf(id, nearest.id))?.focus({ preventScroll: true });
}

/** @param {State} state @param {Act} act @param {PointerEvent} event */
function move(state, act, event) {
  if (!held || held.pointer !== event.pointerId) return;
  if (!held.moved && Math.abs(event.clientY - held.y) < TAP_PX) return;
  held.moved = true;
  const { plate: id, row, y, px } = held;
  const rf = Math.min(1, Math.max(0, held.rf + (y - event.clientY) * rfInPixel(px)));
  editReaction(
    act,
    (reaction, sheet) => setRf(reaction, sheet, row, rfOf(reaction, sheet, row, reaction.plates.find((each) => each.id === id)), typedRf(rf)),
    `rf-drag-${row}`,
  );
}

/** @param {Act} act @param {PointerEvent} event */
function release(act, event) {
  if (held?.pointer !== event.pointerId) return;
  if (held.moved) act.rest();
  held = undefined;
}
