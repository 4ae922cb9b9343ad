// @ts-check
/** What a mouse, a pen or a finger does on a plate: a tap on the layer adds a spot, a drag moves a spot or a line. */

import { betweenLines, drawnMm, laneX, lines, nearestLane, onRuler } from "../sheet/geometry.js";
import { findPlate } from "../sheet/sheet.js";
import { addSeen, elementOf, focusWithoutScrolling, moveTo, openReading } from "./moves.js";

/**
 * @typedef {import("../state.js").State} State
 * @typedef {import("../state.js").Act} Act
 * @typedef {import("../sheet/sheet.js").Plate} Plate
 * @typedef {import("./moves.js").Movable} Movable
 * @typedef {{x: number, mm: number, px: number}} Point on a plate: mm from the left, mm from below, px of the screen in a mm
 * @typedef {{what: Movable, x: number, mm: number}} Target
 */

/** How near a press has to come to take a spot or a grip, in px; what comes no nearer is the bare layer. */
export const REACH_PX = 22;
/** A mouse takes a line itself, too, from this near. */
const ON_LINE_PX = 5;
/** A tap this far outside the lines is no spot, in mm. */
const OUTSIDE_MM = 3;
/** A press that moves less is a tap. */
const TAP_PX = 5;
/** Of spots that lie upon each other, the one that is open is taken. */
const OPEN_PX = 3;
/** How far the middle of a grip is from the edge of the plate, in px. */
export const GRIP_PX = 8;

/** What the pointer that is down has taken. @type {{pointer: number, svg: Element, x: number, y: number, px: number, target: Target | undefined, takes: "at once" | "once moved", moved: "yes" | "no"} | undefined} */
let held;

/** @param {State} state @param {Act} act @param {Plate} plate @param {number} grip how far the grips are from the plate's edge, in mm */
export function pointerHandlers(state, act, plate, grip) {
  return {
    // the focus goes where the press says, not where the browser thinks
    onmousedown: (/** @type {MouseEvent} */ event) => event.preventDefault(),
    // browsers do not heed touch-action on what is inside a drawing: what can be moved takes the finger, else the page scrolls
    ontouchstart: (/** @type {TouchEvent} */ event) => {
      if (held?.target && event.touches.length === 1 && event.cancelable) event.preventDefault();
    },
    onpointerdown: (/** @type {PointerEvent} */ event) => press(state, act, findPlate(state.sheet, plate.id), event, grip),
    onpointermove: (/** @type {PointerEvent} */ event) => move(act, event),
    onpointerup: (/** @type {PointerEvent} */ event) => release(state, act, findPlate(state.sheet, plate.id), event),
    onpointercancel: (/** @type {PointerEvent} */ event) => {
      if (held?.pointer !== event.pointerId) return;
      held = undefined;
      act.rest();
    },
  };
}

/** @param {PointerEvent} event @param {number} height @returns {Point} */
function pointOf(event, height) {
  const svg = /** @type {SVGSVGElement} */ (event.currentTarget);
  const matrix = /** @type {DOMMatrix} */ (svg.getScreenCTM());
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return { x, mm: height - y, px: matrix.a };
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {PointerEvent} event @param {number} grip */
function press(state, act, plate, event, grip) {
  if (held?.svg.isConnected || !event.isPrimary || event.button !== 0) return;
  const point = pointOf(event, lines(plate).height);
  const near = nearest(state, plate, point, grip);
  const target = near ?? (event.pointerType === "mouse" ? lineAt(plate, point) : undefined);
  held = {
    pointer: event.pointerId,
    svg: /** @type {Element} */ (event.currentTarget),
    x: event.clientX,
    y: event.clientY,
    px: point.px,
    target,
    takes: near ? "at once" : "once moved",
    moved: "no",
  };
  /** @type {Element} */ (event.currentTarget).setPointerCapture(event.pointerId);
  act.rest();
  if (near) focusWithoutScrolling(elementOf(near.what));
}

/** The spot or grip that a press takes. @param {State} state @param {Plate} plate @param {Point} point @param {number} grip @returns {Target | undefined} */
function nearest(state, plate, point, grip) {
  const { width, start, front } = lines(plate);
  /** @type {Target[]} */
  const targets = [
    ...plate.lanes.flatMap((lane, index) =>
      lane.readings.map((reading) => ({
        what: { kind: /** @type {const} */ ("spot"), id: reading.id },
        x: laneX(plate, index),
        mm: drawnMm(plate, reading),
      })),
    ),
    { what: { kind: "start", id: plate.id }, x: width + grip, mm: start },
    { what: { kind: "front", id: plate.id }, x: width + grip, mm: front },
  ];
  const reached = targets
    .map((target) => {
      const px = Math.hypot(target.x - point.x, target.mm - point.mm) * point.px;
      return { target, px, order: target.what.id === state.looking.reading ? px - OPEN_PX : px };
    })
    .filter(({ px }) => px <= REACH_PX);
  reached.sort((one, other) => one.order - other.order);
  return reached[0]?.target;
}

/** @param {Plate} plate @param {Point} point @returns {Target | undefined} */
function lineAt(plate, { x, mm, px }) {
  const at = lines(plate);
  const kind = /** @type {const} */ (["start", "front"]).find((each) => Math.abs(at[each] - mm) * px <= ON_LINE_PX);
  return kind && { what: { kind, id: plate.id }, x, mm: at[kind] };
}

/** @param {Act} act @param {PointerEvent} event */
function move(act, event) {
  if (!held || held.pointer !== event.pointerId) return;
  if (held.moved === "no" && Math.hypot(event.clientX - held.x, event.clientY - held.y) < TAP_PX) return;
  held.moved = "yes";
  const { target, y, px } = held;
  if (!target) return;
  // by how far the pointer went, not by where it is: what stands above the plate may have gone with the change
  const mm = target.mm + (y - event.clientY) / px;
  act.edit((sheet) => moveTo(sheet, target.what, onRuler(mm)), `drag-${elementOf(target.what)}`);
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {PointerEvent} event */
function release(state, act, plate, event) {
  if (!held || held.pointer !== event.pointerId) return;
  const { target, takes, moved } = held;
  held = undefined;
  if (moved === "yes") act.rest();
  else if (!target || takes === "once moved") addAt(state, act, plate, event);
  else if (target.what.kind === "spot") openReading(act, target.what.id);
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {PointerEvent} event */
function addAt(state, act, plate, event) {
  const { width, height, start, front } = lines(plate);
  const { x, mm } = pointOf(event, height);
  if (x < 0 || x > width || mm < start - OUTSIDE_MM || mm > front + OUTSIDE_MM) return;
  addSeen(state, act, plate.id, plate.lanes[nearestLane(plate, x)].id, betweenLines(plate, onRuler(mm)));
}
