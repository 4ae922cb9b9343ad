// @ts-check
/** What is done to the spots and lines of a plate of lanes, and what keys do there. */

import { decimal, plain } from "../numbers.js";
import { RULER_MM, besideOther, betweenLines, drawnMm, lines, typedMm } from "../sheet/geometry.js";
import { USUAL_SIZE_MM, checksOf, editChecks, findSeen, freeCheckId } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").LanePlate} LanePlate @typedef {import("./sheet.js").Seen} Seen @typedef {import("./sheet.js").Identity} Identity */

/** Steps of keys [mm]. */
const FINE_STEP = 0.1;
const LONG_STEP = 2;
const SIZE_STEP = 0.5;
const SMALLEST_MM = 0.5;
const LARGEST_MM = 30;
/** Between two lanes, and from the front to the upper edge [mm]. */
const LANE_MM = 13;
const ABOVE_MM = 8;

/** A plate of lanes as those of the sheet are measured and drawn. @param {LanePlate} plate @returns {import("../sheet/sheet.js").Plate} */
export function shapeOf(plate) {
  const front = decimal(plate.frontMm) ?? 62;
  const [heightMm, widthMm] = [String(Math.max(20, front + ABOVE_MM)), String(Math.max(3, plate.lanes.length) * LANE_MM)];
  return /** @type {any} */ ({ ...plate, heightMm, widthMm, lanes: plate.lanes });
}

/** A spot as those of the sheet are measured. @param {Seen} seen @returns {import("../sheet/sheet.js").Reading} */
export const readingOf = ({ id, centreMm, rf }) => ({ id, spots: [], by: centreMm === undefined ? "rf" : "mm", typed: centreMm ?? rf ?? "" });

/** How large a spot is drawn and asked about [mm]. @param {Seen} seen */
export const sizeOf = ({ sizeMm }) => Math.min(LARGEST_MM, Math.max(SMALLEST_MM, decimal(sizeMm ?? "") ?? USUAL_SIZE_MM));

/** @param {State} state @param {Act} act @param {(identity: Identity) => void} change @param {string} [together] */
export const editIdentity = (state, act, change, together) => editChecks(state, act, "identity", change, together);

/** @param {State} state @param {Act} act @param {string} id of the spot @param {(seen: Seen, plate: LanePlate) => void} change @param {string} [together] */
export function editSeen(state, act, id, change, together) {
  editIdentity(
    state,
    act,
    (identity) => {
      const found = findSeen(identity, id);
      if (found) change(found.seen, found.plate);
    },
    together,
  );
}

/** Adds a spot to a lane. @param {State} state @param {Act} act @param {string} laneId @param {"centreMm" | "rf"} by @param {string} typed @param {string} [together] @returns {string} its id */
export function addSeen(state, act, laneId, by, typed, together) {
  const id = freeCheckId(checksOf(state).identity, "e");
  editIdentity(
    state,
    act,
    (identity) => {
      const lane = identity.plates.flatMap((plate) => plate.lanes).find((each) => each.id === laneId);
      lane?.readings.push({ id, [by]: typed, sizeMm: String(USUAL_SIZE_MM) });
    },
    together,
  );
  act.look({ mark: id });
  return id;
}

/** Adds a spot by the beginning of its Rf or height, or with none, and goes on in its entry. @param {State} state @param {Act} act @param {string} laneId @param {string} begun */
export function addTyped(state, act, laneId, begun) {
  const by = /^[0.,]/.test(begun) ? "rf" : "centreMm";
  act.rest();
  const id = addSeen(state, act, laneId, by, begun);
  goOn(act, `${by === "rf" ? "rf" : "mm"}-${id}`);
}

/** Begins the Rf or height of a spot anew. @param {State} state @param {Act} act @param {string} id @param {string} begun */
function typeAnew(state, act, id, begun) {
  const by = /^[0.,]/.test(begun) ? "rf" : "mm";
  act.rest();
  editSeen(state, act, id, (seen) => place(seen, by, begun), `${by}-${id}`);
  goOn(act, `${by}-${id}`);
}

/** @param {Act} act @param {string} id of an entry */
function goOn(act, id) {
  act.focus(id);
  const entry = document.getElementById(id);
  if (entry instanceof HTMLInputElement) entry.setSelectionRange(entry.value.length, entry.value.length);
}

/** Gives a spot its place, by one of the two. @param {Seen} seen @param {"mm" | "rf"} by @param {string} typed */
export function place(seen, by, typed) {
  delete seen.rf;
  delete seen.centreMm;
  seen[by === "rf" ? "rf" : "centreMm"] = typed;
}

/** @param {State} state @param {Act} act @param {string} id */
export function removeSeen(state, act, id) {
  const lane = findSeen(checksOf(state).identity, id)?.lane;
  editIdentity(state, act, (identity) => {
    const found = findSeen(identity, id);
    if (found) found.lane.readings = found.lane.readings.filter((each) => each.id !== id);
  });
  if (lane) act.focus(`add-check-${lane.id}`);
}

/** As long as a streak is taken to be unless somebody says another length [mm]. */
const USUAL_STREAK_MM = 8;

/** A size that nobody changed follows the shape. @param {Seen} seen */
export function toggleStreak(seen) {
  const [usual, other] = seen.shape === "streak" ? [USUAL_STREAK_MM, USUAL_SIZE_MM] : [USUAL_SIZE_MM, USUAL_STREAK_MM];
  if (decimal(seen.sizeMm ?? "") === usual) seen.sizeMm = String(other);
  if (seen.shape === "streak") delete seen.shape;
  else seen.shape = "streak";
}

/** What keys do on a spot. @param {State} state @param {Act} act @param {string} id @returns {(event: KeyboardEvent) => void} */
export const seenKeys = (state, act, id) => (event) => {
  const found = findSeen(checksOf(state).identity, id);
  if (!found || event.ctrlKey || event.metaKey || event.altKey) return;
  const shape = shapeOf(found.plate);
  const { start, front } = lines(shape);
  const step = event.shiftKey ? FINE_STEP : RULER_MM;
  const by = { ArrowUp: step, ArrowRight: step, ArrowDown: -step, ArrowLeft: -step, PageUp: LONG_STEP, PageDown: -LONG_STEP }[event.key];
  const to = by === undefined ? { Home: start, End: front }[event.key] : drawnMm(shape, readingOf(found.seen)) + by;
  if (to !== undefined) editSeen(state, act, id, (seen) => place(seen, "mm", typedMm(betweenLines(shape, to))), `nudge-${id}`);
  else if (event.key === "+" || event.key === "-") resize(state, act, id, event.key === "+" ? SIZE_STEP : -SIZE_STEP);
  else if (/^s$/i.test(event.key)) editSeen(state, act, id, toggleStreak);
  else if (event.key === "Delete" || event.key === "Backspace") removeSeen(state, act, id);
  else if (/^[0-9.,]$/.test(event.key)) typeAnew(state, act, id, event.key);
  else if (event.key === "Enter" || event.key === " ") goOn(act, `mm-${id}`);
  else return;
  event.preventDefault();
};

/** @param {State} state @param {Act} act @param {string} id @param {number} by [mm] */
export function resize(state, act, id, by) {
  editSeen(state, act, id, (seen) => { seen.sizeMm = plain(Math.min(LARGEST_MM, Math.max(SMALLEST_MM, sizeOf(seen) + by)), 1); }, `size-${id}`);
}

/** What keys do on the button of a lane: a digit begins a number. @param {State} state @param {Act} act @param {string} laneId @returns {(event: KeyboardEvent) => void} */
export const laneKeys = (state, act, laneId) => (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || !/^[0-9.,]$/.test(event.key)) return;
  event.preventDefault();
  addTyped(state, act, laneId, event.key);
};

/** What keys do on a line. @param {State} state @param {Act} act @param {LanePlate} plate @param {"start" | "front"} which @returns {(event: KeyboardEvent) => void} */
export const lineKeys = (state, act, plate, which) => (event) => {
  const step = event.shiftKey ? FINE_STEP : RULER_MM;
  const by = { ArrowUp: step, ArrowRight: step, ArrowDown: -step, ArrowLeft: -step, PageUp: LONG_STEP, PageDown: -LONG_STEP }[event.key];
  if (by === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  moveLine(state, act, plate.id, which, lines(shapeOf(plate))[which] + by, `nudge-${which}-${plate.id}`);
};

/** @param {State} state @param {Act} act @param {string} plateId @param {"start" | "front"} which @param {number} mm @param {string} together */
export function moveLine(state, act, plateId, which, mm, together) {
  editIdentity(
    state,
    act,
    (identity) => {
      const plate = identity.plates.find((each) => each.id === plateId);
      if (!plate) return;
      const to = which === "front" ? Math.max(lines(shapeOf(plate)).start + 1, Math.min(1000 - ABOVE_MM, mm)) : besideOther(shapeOf(plate), which, mm);
      plate[which === "start" ? "startMm" : "frontMm"] = typedMm(to);
    },
    together,
  );
}
