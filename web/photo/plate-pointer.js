// @ts-check
/** What a finger or a mouse does on the straightened plate: drags lines, lanes and spots; a tap adds a spot. */

import { addSpotAt, flatSize, readLanes } from "./course.js";
import { between, laneAdded, laneMoved, laneXAt, lineMoved, spotMoved } from "./marks.js";
import { changeMarks, drawing, freshMark, rest } from "./store.js";

/**
 * @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Marks} Marks
 * @typedef {{kind: "line", line: "start" | "front", at: number} | {kind: "lane", id: string, end: "start" | "front"} | {kind: "spot", id: string}} What can be moved
 * @typedef {{x: number, mm: number}} Place on the plate [mm]
 */

/** How far grips are beside a line, over it and under the plate [px]. */
export const OUT_PX = 14;
export const OVER_PX = 28;
export const UNDER_PX = 22;
/** A press takes what is nearest from this near; one that moves less is a tap [px]. */
const REACH_PX = 22;
const TAP_PX = 5;

/** @type {{pointer: number, svg: Element, x: number, y: number, pxX: number, pxMm: number, what: What | undefined, from: Place, moved: boolean} | undefined} */
let held;

/** The id of the element that shows it. @param {What} what */
export function elementOf(what) {
  if (what.kind === "line") return `photo-${what.line}-${what.at}`;
  return what.kind === "lane" ? `photo-${what.id}${what.end === "front" ? "-top" : ""}` : `photo-${what.id}`;
}

/** @param {What} what */
export const isHeld = (what) => held?.what !== undefined && elementOf(held.what) === elementOf(what);

/** Where something is, and how many pixels off its grip lies. @param {Photo} photo @param {What} what @returns {Place & {dx: number, dy: number}} */
function whereIs(photo, what) {
  const marks = /** @type {Marks} */ (photo.marks);
  const size = flatSize(photo);
  if (what.kind === "line") {
    const last = what.line === "start" ? 1 : 2;
    const side = what.at === 0 ? -1 : what.at === last ? 1 : 0;
    return { x: (what.at * size.width) / last, mm: marks[what.line][what.at], dx: side * OUT_PX, dy: side === 0 ? -OVER_PX : 0 };
  }
  if (what.kind === "lane") {
    const lane = marks.lanes.find(({ id }) => id === what.id);
    const isStart = what.end === "start";
    return { x: (isStart ? lane?.startXMm : lane?.frontXMm) ?? 0, mm: isStart ? 0 : size.height, dx: 0, dy: isStart ? UNDER_PX : -UNDER_PX + 4 };
  }
  const spot = marks.spots.find(({ id }) => id === what.id);
  return spot ? { x: between(marks, size, spot).x, mm: spot.mm, dx: 0, dy: 0 } : { x: 0, mm: 0, dx: 0, dy: 0 };
}

/** All that can be moved; lines before lanes before spots where they are equally near. @param {Photo} photo @returns {What[]} */
function movable({ marks, lane }) {
  const { lanes, spots } = /** @type {Marks} */ (marks);
  return [
    ...spots.map(({ id }) => ({ kind: /** @type {const} */ ("spot"), id })),
    ...[0, 1].map((at) => ({ kind: /** @type {const} */ ("line"), line: /** @type {const} */ ("start"), at })),
    ...[0, 1, 2].map((at) => ({ kind: /** @type {const} */ ("line"), line: /** @type {const} */ ("front"), at })),
    ...lanes.map(({ id }) => ({ kind: /** @type {const} */ ("lane"), id, end: /** @type {const} */ ("start") })),
    ...lanes.filter(({ id }) => id === lane).map(({ id }) => ({ kind: /** @type {const} */ ("lane"), id, end: /** @type {const} */ ("front") })),
  ];
}

/** Moves something to a place; what has been moved is read anew when it rests. @param {Photo} photo @param {What} what @param {Place} to @param {string} together */
export function moveTo(photo, what, { x, mm }, together) {
  const size = flatSize(photo);
  changeMarks(
    photo,
    (marks) => {
      if (what.kind === "line") return lineMoved(marks, size, what.line, what.at, mm);
      return what.kind === "lane" ? laneMoved(marks, size, what.id, what.end, x) : spotMoved(marks, size, what.id, mm);
    },
    together,
  );
}

/** @param {Photo} photo @param {What} what @returns {Place} */
export const placeOf = (photo, what) => {
  const { x, mm } = whereIs(photo, what);
  return { x, mm };
};

/** @param {Photo} photo */
export const plateHandlers = (photo) => ({
  onmousedown: (/** @type {MouseEvent} */ event) => event.preventDefault(),
  ontouchstart: (/** @type {TouchEvent} */ event) => {
    if (held?.what && event.touches.length === 1 && event.cancelable) event.preventDefault();
  },
  onpointerdown: (/** @type {PointerEvent} */ event) => press(photo, event),
  onpointermove: (/** @type {PointerEvent} */ event) => drag(photo, event),
  onpointerup: (/** @type {PointerEvent} */ event) => release(photo, event),
  onpointercancel: (/** @type {PointerEvent} */ event) => {
    if (held?.pointer === event.pointerId) letGo(photo);
  },
});

/** @param {Photo} photo @param {PointerEvent} event */
function press(photo, event) {
  if (held?.svg.isConnected || !event.isPrimary || event.button !== 0) return;
  const svg = /** @type {Element} */ (event.currentTarget);
  const box = svg.getBoundingClientRect();
  const size = flatSize(photo);
  const [pxX, pxMm] = [box.width / size.width, box.height / size.height];
  const near = movable(photo)
    .map((what) => {
      const from = whereIs(photo, what);
      const at = { x: box.left + from.x * pxX + from.dx, y: box.bottom - from.mm * pxMm + from.dy };
      return { what, from, px: Math.hypot(at.x - event.clientX, at.y - event.clientY) };
    })
    .filter(({ px }) => px <= REACH_PX)
    .sort((one, other) => one.px - other.px);
  const from = near[0]?.from ?? { x: (event.clientX - box.left) / pxX, mm: (box.bottom - event.clientY) / pxMm };
  held = { pointer: event.pointerId, svg, x: event.clientX, y: event.clientY, pxX, pxMm, what: near[0]?.what, from, moved: false };
  svg.setPointerCapture(event.pointerId);
  rest(photo);
  if (!held.what) return;
  magnify(photo);
  document.getElementById(elementOf(held.what))?.focus({ preventScroll: true });
}

/** @param {Photo} photo @param {PointerEvent} event */
function drag(photo, event) {
  if (held?.pointer !== event.pointerId) return;
  const [right, down] = [event.clientX - held.x, event.clientY - held.y];
  if (!held.moved && Math.hypot(right, down) < TAP_PX) return;
  held.moved = true;
  const { what, from, pxX, pxMm } = held;
  if (!what) return;
  moveTo(photo, what, { x: from.x + right / pxX, mm: from.mm - down / pxMm }, `drag-${elementOf(what)}`);
  magnify(photo);
}

/** @param {Photo} photo */
function magnify(photo) {
  if (!held?.what || !photo.flat) return;
  const { width, height } = flatSize(photo);
  const { x, mm } = placeOf(photo, held.what);
  photo.loupe = { image: photo.flat.image, x: x / width, y: 1 - mm / height };
  drawing.again();
}

/** @param {Photo} photo @param {PointerEvent} event */
function release(photo, event) {
  if (held?.pointer !== event.pointerId) return;
  const { what, from, moved } = held;
  letGo(photo);
  if (!what && !moved) tapped(photo, from);
  else if (what && moved && what.kind !== "spot") readLanes(photo);
}

/** @param {Photo} photo */
function letGo(photo) {
  held = undefined;
  photo.loupe = undefined;
  rest(photo);
  drawing.again();
}

/** @param {Photo} photo @param {Place} place */
async function tapped(photo, { x, mm }) {
  const { width, height } = flatSize(photo);
  if (x < 0 || x > width || mm < 0 || mm > height) return;
  if (photo.marks?.lanes.length === 0) {
    const id = freshMark(photo, "lane");
    changeMarks(photo, (marks) => laneMoved(laneAdded(marks, { width, height }, id), { width, height }, id, "start", x));
  }
  const marks = /** @type {Marks} */ (photo.marks);
  const far = (/** @type {import("./store.js").Lane} */ lane) => Math.abs(laneXAt(marks, { width, height }, lane, mm) - x);
  const [nearest] = [...marks.lanes].sort((one, other) => far(one) - far(other));
  const adding = addSpotAt(photo, nearest.id, mm);
  const added = photo.spot;
  document.getElementById(`photo-${added}`)?.focus({ preventScroll: true });
  await adding;
}
