// @ts-check
/** Draws the bare plate, in millimetres: the layer on its backing, with a cut edge and grain, and what is drawn on it in pencil. */

import { draw } from "../dom.js";
import { decimal } from "../numbers.js";

/** @typedef {{height: number, width: number, start: number, front: number, run: number}} Lines */

/** A plate wider than this for its height takes a row for itself. */
const BROAD = 0.9;

/** @param {Lines} lines */
export const isBroad = ({ width, height }) => width > BROAD * height;

/**
 * Millimetres that a pixel of the screen shows at most where the plate is as large as such a box, so that letters and spots
 * keep a size that can be read and touched on a plate of any size.
 * @param {Lines} lines @param {{across: number, high: number}} box in px
 */
export const pixelMm = ({ width, height }, { across, high }) => Math.max(width / across, height / high);

/** Where a dot of the grain lies in its tile of 40 by 40, and how large it is. */
const GRAIN = [
  [3, 5, 0.7], [11, 2, 0.5], [19, 7, 0.8], [30, 4, 0.5], [37, 11, 0.7], [7, 14, 0.5], [15, 18, 0.6], [25, 13, 0.5],
  [33, 21, 0.8], [2, 24, 0.6], [12, 29, 0.8], [21, 25, 0.5], [28, 32, 0.6], [38, 35, 0.5], [6, 37, 0.5], [18, 38, 0.7],
]; // prettier-ignore

/**
 * @param {string} id of the drawing
 * @param {Lines} lines
 * @param {number} pixel in mm
 * @param {[string, string]} window Rf from, to, as typed
 */
export function layer(id, lines, pixel, window) {
  const { width, height } = lines;
  const cut = cutEdge(id, lines, pixel);
  const dots = GRAIN.map(([cx, cy, r]) => draw("circle", { cx: cx * pixel, cy: cy * pixel, r: r * pixel }));
  return draw(
    "g",
    { class: "bare", "aria-hidden": "true" },
    draw("defs", {}, draw("pattern", { id: `${id}-grain`, class: "grain", width: 40 * pixel, height: 40 * pixel, patternUnits: "userSpaceOnUse" }, ...dots)),
    draw("rect", { class: "backing", width, height, rx: 0.8 * pixel, "stroke-width": 0.8 * pixel }),
    draw("path", { class: "layer", d: cut, "stroke-width": 0.6 * pixel }),
    ...windowBand(lines, pixel, window),
    draw("path", { d: cut, fill: `url(#${id}-grain)` }),
  );
}

/** The edge of the layer: it crumbles a little where it was cut, always in the same places. @param {string} id @param {Lines} lines @param {number} pixel */
function cutEdge(id, { width, height }, pixel) {
  let seed = [...id].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 9973, 7);
  const crumb = () => {
    seed = (seed * 137 + 71) % 9973;
    return (0.6 + (2.2 * seed) / 9973) * pixel;
  };
  const along = (/** @type {number} */ length) => {
    const steps = Math.max(4, Math.round(length / (26 * pixel)));
    return Array.from({ length: steps }, (_, i) => Math.max((i * length) / steps, 1.5 * pixel));
  };
  const points = [
    ...along(width).map((x) => [x, crumb()]),
    ...along(height).map((y) => [width - crumb(), y]),
    ...along(width).map((x) => [width - x, height - crumb()]),
    ...along(height).map((y) => [crumb(), height - y]),
  ];
  return `M${points.map((point) => point.map((mm) => mm.toFixed(2)).join(" ")).join("L")}Z`;
}

/** Where spots are wanted: a lighter band between two faint pencil ticks at either edge. @param {Lines} lines @param {number} pixel @param {[string, string]} window */
function windowBand({ width, height, start, run }, pixel, window) {
  const [low, high] = window.map(decimal);
  if (!(low !== undefined && high !== undefined && low >= 0 && high > low && high <= 1)) return [];
  const [bottom, top] = [low, high].map((rf) => height - start - rf * run);
  const edge = 3 * pixel;
  const mark = (/** @type {number} */ y) => `M${edge} ${y}h${9 * pixel}M${width - edge} ${y}h${-9 * pixel}`;
  return [
    draw("rect", { class: "window", x: edge, y: top, width: width - 2 * edge, height: bottom - top }),
    draw("path", { class: "pencil faint", d: mark(bottom) + mark(top), "stroke-width": 1.1 * pixel }),
  ];
}

/** A line by hand across the plate, about a height of 0. @param {number} width @param {number} pixel */
export function pencilLine(width, pixel) {
  const edge = 5 * pixel;
  const by = (/** @type {number} */ share) => edge + share * (width - 2 * edge);
  const wave = `M${edge} ${0.5 * pixel}Q${by(0.25)} ${-0.7 * pixel} ${by(0.5)} 0T${width - edge} ${0.3 * pixel}`;
  return [
    draw("path", { class: "pencil", d: wave, "stroke-width": 1.3 * pixel }),
    draw("path", { class: "pencil faint", d: `M${by(0.03)} ${0.9 * pixel}L${by(0.55)} ${0.7 * pixel}`, "stroke-width": 0.8 * pixel }),
  ];
}

/** The ticks of the lanes on a start line at a height of 0. @param {number[]} lanes their distances from the left @param {number} pixel */
export const laneTicks = (lanes, pixel) =>
  draw("path", { class: "pencil", d: lanes.map((x) => `M${x} ${-3.5 * pixel}v${7 * pixel}`).join(""), "stroke-width": 1.2 * pixel });
