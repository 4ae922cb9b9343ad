// @ts-check
/** The straightened plate: its picture, and over it start line, front, lanes and spots. */

import { draw, make } from "../dom.js";
import { say } from "../texts.js";
import { flatSize } from "./course.js";
import { LOUPE } from "./loupe.js";
import { between, frontAt, inOrder, numberOf, spotsIn, startAt } from "./marks.js";
import { keysOn } from "./plate-keys.js";
import { OUT_PX, OVER_PX, UNDER_PX, elementOf, isHeld, plateHandlers } from "./plate-pointer.js";
import { drawing, rest } from "./store.js";

/**
 * @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Marks} Marks @typedef {import("./store.js").Lane} Lane @typedef {import("./store.js").Spot} Spot
 * @typedef {import("./marks.js").Size} Size @typedef {import("./plate-pointer.js").What} What
 */

/** Points of the front that are drawn. */
const POINTS = 24;

const percent = (/** @type {number} */ share) => `${(100 * share).toFixed(3)}%`;

/** @param {Photo} photo */
export function plateView(photo) {
  const { image } = /** @type {import("./store.js").Flat} */ (photo.flat);
  return make(
    "div",
    { class: "photo-box", id: "photo-flat-box" },
    make("canvas", { id: "photo-flat", width: image.width, height: image.height, role: "img", "aria-label": say("later.photo-flat") }),
    over(photo),
    photo.loupe && make("canvas", { id: "photo-loupe", ...LOUPE, "aria-hidden": "true" }),
  );
}

/** @param {Photo} photo */
function over(photo) {
  const marks = /** @type {Marks} */ (photo.marks);
  const size = flatSize(photo);
  const lanes = inOrder(marks);
  return draw(
    "svg",
    { id: "photo-marks", class: "photo-over", role: "group", "aria-label": say("later.photo-marks"), ...plateHandlers(photo) },
    draw(
      "svg",
      { viewBox: `0 0 ${size.width} ${size.height}`, preserveAspectRatio: "none", width: "100%", height: "100%", "aria-hidden": "true" },
      ...lanes.map((lane) => laneDrawn(photo, marks, size, lane)),
      ...twice(linePath(size, (x) => startAt(marks, size, x)), "photo-start"),
      ...twice(linePath(size, (x) => frontAt(marks, size, x)), "photo-front"),
    ),
    ...lanes.map((lane, i) => laneHandle(photo, size, lane, i + 1, "start")),
    ...lanes.map((lane, i) => lane.id === photo.lane && laneHandle(photo, size, lane, i + 1, "front")),
    ...lanes.flatMap((lane) => spotsIn(marks, lane.id).map((spot, i) => spotDrawn(photo, marks, size, spot, i + 1))),
    ...[0, 1].map((at) => lineHandle(photo, marks, size, "start", at)),
    ...[0, 1, 2].map((at) => lineHandle(photo, marks, size, "front", at)),
  );
}

/** A line that is seen on dark and on bright ground. @param {string} d @param {string} kind */
const twice = (d, kind) => [draw("path", { class: `photo-case ${kind}`, d }), draw("path", { class: `photo-line ${kind}`, d })];

/** @param {Size} size @param {(x: number) => number} heightAt */
function linePath({ width, height }, heightAt) {
  const points = Array.from({ length: POINTS + 1 }, (_, i) => (i * width) / POINTS);
  return `M${points.map((x) => `${x.toFixed(2)} ${(height - heightAt(x)).toFixed(3)}`).join("L")}`;
}

/** @param {Photo} photo @param {Marks} marks @param {Size} size @param {Lane} lane */
function laneDrawn(photo, marks, size, lane) {
  const [from, to] = [startAt(marks, size, lane.startXMm), frontAt(marks, size, lane.frontXMm)];
  const half = lane.widthMm / 2;
  const band = `M${lane.startXMm - half} ${size.height - from}H${lane.startXMm + half}L${lane.frontXMm + half} ${size.height - to}H${lane.frontXMm - half}Z`;
  const path = `M${lane.startXMm} ${size.height - from}L${lane.frontXMm} ${size.height - to}`;
  const isChosen = lane.id === photo.lane;
  return draw("g", { id: `${lane.id}-drawn`, class: isChosen ? "photo-lane chosen" : "photo-lane" }, isChosen && draw("path", { class: "photo-band", d: band }), draw("path", { class: "photo-case", d: path }), draw("path", { class: "photo-line", d: path }));
}

/**
 * Something to be dragged: at a place of the plate, some pixels off it.
 * @param {Photo} photo @param {What} what @param {{x: number, y: number, dx?: number, dy?: number}} at
 * @param {Record<string, string | number>} said @param {...(SVGElement | false | undefined)} shape
 */
function handle(photo, what, { x, y, dx = 0, dy = 0 }, said, ...shape) {
  const id = elementOf(what);
  return draw(
    "svg",
    { id: `${id}-at`, x: percent(x), y: percent(y), overflow: "visible" },
    draw(
      "g",
      {
        id,
        class: `photo-handle photo-${what.kind}${isHeld(what) ? " held" : ""}`,
        role: "slider",
        tabindex: 0,
        ...said,
        onkeydown: keysOn(photo, what),
        onfocus: () => look(photo, what),
        onblur: () => rest(photo),
      },
      draw("g", { transform: `translate(${dx} ${dy})` }, draw("circle", { class: "photo-reach", r: 22 }), ...shape),
    ),
  );
}

/** @param {Photo} photo @param {What} what */
function look(photo, what) {
  const marks = /** @type {Marks} */ (photo.marks);
  const spot = what.kind === "spot" ? marks.spots.find(({ id }) => id === what.id) : undefined;
  const lane = what.kind === "lane" ? what.id : spot?.lane;
  if (lane === undefined || (lane === photo.lane && spot?.id === photo.spot)) return;
  photo.lane = lane;
  photo.spot = spot?.id;
  queueMicrotask(() => drawing.again());
}

/** @param {Photo} photo @param {Marks} marks @param {Size} size @param {"start" | "front"} line @param {number} at */
function lineHandle(photo, marks, size, line, at) {
  const last = line === "start" ? 1 : 2;
  const x = at / last;
  const mm = marks[line][at];
  const side = at === 0 ? -1 : at === last ? 1 : 0;
  const place = side === -1 ? "left" : side === 1 ? "right" : "middle";
  const said = {
    "aria-orientation": "vertical",
    "aria-label": say(`later.photo-${line}-${place}`),
    "aria-valuemin": 0,
    "aria-valuemax": size.height,
    "aria-valuenow": mm.toFixed(1),
    "aria-valuetext": say("later.photo-height", { mm }),
  };
  const shape = side === 0 ? "M0 24V6M-7 6H7L0 -5Z" : `M${-side * 11} 0L${side * 5} -8V8Z`;
  return handle(photo, { kind: "line", line, at }, { x, y: 1 - mm / size.height, dx: side * OUT_PX, dy: side === 0 ? -OVER_PX : 0 }, said, draw("path", { class: "photo-case", d: shape }), draw("path", { class: "photo-grip", d: shape }));
}

/** @param {Photo} photo @param {Size} size @param {Lane} lane @param {number} number @param {"start" | "front"} end */
function laneHandle(photo, size, lane, number, end) {
  const x = end === "start" ? lane.startXMm : lane.frontXMm;
  const said = {
    "aria-orientation": "horizontal",
    "aria-label": say(end === "start" ? "later.photo-lane" : "later.photo-lane-top", { lane: number }),
    "aria-valuemin": 0,
    "aria-valuemax": size.width,
    "aria-valuenow": x.toFixed(1),
    "aria-valuetext": say("later.photo-across", { mm: x }),
  };
  const round = lane.id === photo.lane ? "photo-number chosen" : "photo-number";
  const shape = end === "start" ? [draw("circle", { class: round, r: 13 }), draw("text", { class: "photo-digit", y: 5, "text-anchor": "middle" }, String(number))] : [draw("path", { class: "photo-grip", d: "M-8 -5H8L0 7Z" })];
  return handle(photo, { kind: "lane", id: lane.id, end }, { x: x / size.width, y: end === "start" ? 1 : 0, dy: end === "start" ? UNDER_PX : -UNDER_PX + 4 }, said, ...shape);
}

/** @param {Photo} photo @param {Marks} marks @param {Size} size @param {Spot} spot @param {number} number */
function spotDrawn(photo, marks, size, spot, number) {
  const { x, rf, error } = between(marks, size, spot);
  const [cx, cy] = [percent(x / size.width), percent(1 - spot.mm / size.height)];
  const ring = { cx, cy, rx: percent(Math.max(0.8, spot.widthMm / 2) / size.width), ry: percent(Math.max(0.5, spot.sizeMm / 2) / size.height) };
  const what = /** @type {const} */ ({ kind: "spot", id: spot.id });
  const inLane = spot.lane === photo.lane;
  const classes = ["photo-spot", inLane ? "of-lane" : "", spot.id === photo.spot ? "chosen" : "", isHeld(what) ? "held" : ""];
  return draw(
    "g",
    {
      id: elementOf(what),
      class: classes.filter(Boolean).join(" "),
      role: "slider",
      tabindex: 0,
      "aria-orientation": "vertical",
      "aria-label": say("later.photo-spot", { number, lane: numberOf(marks, spot.lane) }),
      "aria-valuemin": 0,
      "aria-valuemax": 1,
      "aria-valuenow": Math.min(1, Math.max(0, rf)).toFixed(2),
      "aria-valuetext": say("later.photo-spot-value", { rf, error, mm: spot.mm }),
      onkeydown: keysOn(photo, what),
      onfocus: () => look(photo, what),
      onblur: () => rest(photo),
    },
    draw("circle", { class: "photo-reach", cx, cy, r: 22 }),
    draw("ellipse", { class: "photo-case", ...ring }),
    draw("ellipse", { class: "photo-ring", ...ring }),
    draw("line", { class: "photo-centre", x1: percent((x - 1.2) / size.width), x2: percent((x + 1.2) / size.width), y1: cy, y2: cy }),
  );
}
