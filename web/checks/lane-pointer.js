// @ts-check
/** What a mouse, a pen or a finger does on a plate of lanes: a tap adds a spot, a drag moves a spot or a line. */

import { betweenLines, drawnMm, laneX, lines, nearestLane, onRuler, typedMm } from "../sheet/geometry.js";
import { REACH_PX } from "../plate/pointer.js";
import { addSeen, editSeen, moveLine, place, readingOf, shapeOf } from "./lane-moves.js";
import { checksOf } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").LanePlate} LanePlate */

/** A press that moves less is a tap [px]. */
const TAP_PX = 5;
/** A tap this far outside the lines is no spot [mm]. */
const OUTSIDE_MM = 3;

/** What the pointer that is down has taken. @type {{pointer: number, svg: Element, x: number, y: number, px: number, target: {kind: "spot" | "start" | "front", id: string, mm: number} | undefined, moved: boolean} | undefined} */
let held;

/** What a mouse, a pen or a finger does: a tap in a lane adds a spot, a drag moves a spot or a line. @param {State} state @param {Act} act @param {string} plateId @param {number} grip how far the grips are from the plate's edge [mm] */
export function lanePointer(state, act, plateId, grip) {
  const now = () => /** @type {LanePlate} */ (checksOf(state).identity.plates.find((each) => each.id === plateId));
  return {
    onmousedown: (/** @type {MouseEvent} */ event) => event.preventDefault(),
    ontouchstart: (/** @type {TouchEvent} */ event) => {
      if (held?.target && event.touches.length === 1 && event.cancelable) event.preventDefault();
    },
    onpointerdown: (/** @type {PointerEvent} */ event) => press(act, now(), event, grip),
    onpointermove: (/** @type {PointerEvent} */ event) => drag(state, act, plateId, event),
    onpointerup: (/** @type {PointerEvent} */ event) => release(state, act, now(), event),
    onpointercancel: () => {
      held = undefined;
      act.rest();
    },
  };
}

/** @param {PointerEvent} event @param {number} height */
function pointOf(event, height) {
  const matrix = /** @type {DOMMatrix} */ (/** @type {SVGSVGElement} */ (event.currentTarget).getScreenCTM());
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { x, mm: height - y, px: matrix.a };
}

/** @param {Act} act @param {LanePlate} plate @param {PointerEvent} event @param {number} grip */
function press(act, plate, event, grip) {
  if (held?.svg.isConnected || !event.isPrimary || event.button !== 0) return;
  const shape = shapeOf(plate);
  const { width, height, start, front } = lines(shape);
  const point = pointOf(event, height);
  const targets = [
    ...plate.lanes.flatMap((lane, i) => lane.readings.map((seen) => ({ kind: /** @type {const} */ ("spot"), id: seen.id, x: laneX(shape, i), mm: drawnMm(shape, readingOf(seen)) }))),
    { kind: /** @type {const} */ ("start"), id: plate.id, x: width + grip, mm: start },
    { kind: /** @type {const} */ ("front"), id: plate.id, x: width + grip, mm: front },
  ];
  const far = (/** @type {{x: number, mm: number}} */ each) => Math.hypot(each.x - point.x, each.mm - point.mm) * point.px;
  const [target] = targets.filter((each) => far(each) <= REACH_PX).sort((one, other) => far(one) - far(other));
  const svg = /** @type {Element} */ (event.currentTarget);
  held = { pointer: event.pointerId, svg, x: event.clientX, y: event.clientY, px: point.px, target, moved: false };
  svg.setPointerCapture(event.pointerId);
  act.rest();
  if (target) focusStill(target.kind === "spot" ? `seen-${target.id}` : `${target.kind}-line-${plate.id}`);
}

/** A finger is on it, so nothing may slide away. @param {string} id */
const focusStill = (id) => document.getElementById(id)?.focus({ preventScroll: true });

/** @param {State} state @param {Act} act @param {string} plateId @param {PointerEvent} event */
function drag(state, act, plateId, event) {
  if (!held || held.pointer !== event.pointerId) return;
  if (!held.moved && Math.hypot(event.clientX - held.x, event.clientY - held.y) < TAP_PX) return;
  held.moved = true;
  const { target, y, px } = held;
  if (!target) return;
  const mm = onRuler(target.mm + (y - event.clientY) / px);
  if (target.kind !== "spot") moveLine(state, act, plateId, target.kind, mm, `drag-${target.kind}-${plateId}`);
  else editSeen(state, act, target.id, (seen, plate) => place(seen, "mm", typedMm(betweenLines(shapeOf(plate), mm))), `drag-${target.id}`);
}

/** @param {State} state @param {Act} act @param {LanePlate} plate @param {PointerEvent} event */
function release(state, act, plate, event) {
  if (!held || held.pointer !== event.pointerId) return;
  const { target, moved } = held;
  held = undefined;
  if (moved) act.rest();
  else if (target?.kind === "spot") act.look({ mark: target.id });
  else if (!target) addAt(state, act, plate, event);
}

/** @param {State} state @param {Act} act @param {LanePlate} plate @param {PointerEvent} event */
function addAt(state, act, plate, event) {
  const shape = shapeOf(plate);
  const { width, height, start, front } = lines(shape);
  const { x, mm } = pointOf(event, height);
  if (plate.lanes.length === 0 || x < 0 || x > width || mm < start - OUTSIDE_MM || mm > front + OUTSIDE_MM) return;
  const id = addSeen(state, act, plate.lanes[nearestLane(shape, x)].id, "centreMm", typedMm(betweenLines(shape, onRuler(mm))));
  focusStill(`seen-${id}`);
}
