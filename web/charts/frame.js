// @ts-check
/** The paper of a chart: its measures, scales, axes and titles. Lengths in units of the drawing, about one pixel each. */

import { d3 } from "../d3.js";
import { draw } from "../dom.js";
import { marked } from "../texts.js";

export const WIDTH = 360;
export const HEIGHT = 300;
const TOP = 46; // three rows of labels over the upright marks
const BOTTOM = 44;
const LEFT = 57;

/** About the width of one character at the size of the chart's text. */
export const CHARACTER = 6.6;

/** Characters of a name in the drawing, before it is cut. */
const NAME = 9;

/**
 * A name that fits into the drawing: a long one is cut, and told from its fellows by the number of its line in the sample, as
 * on the plates.
 * @param {string} name @param {number | undefined} number undefined where there are no fellows
 */
export function shortened(name, number) {
  const letters = [...name];
  if (letters.length <= NAME) return name;
  const end = `\u2026${number ?? ""}`;
  return letters.slice(0, NAME - end.length).join("").trimEnd() + end;
}

/** Shares with a mark on the axis. */
const TICKS = [0, 1, 2, 5, 10, 20, 50, 100];

/**
 * @typedef {object} Frame
 * @property {(percent: number) => number} x
 * @property {(value: number) => number} y
 * @property {{left: number, right: number, top: number, bottom: number}} area
 */

/**
 * Scales of a chart: across in ln(% + 1), so that small shares have room.
 * @param {number[]} shares @param {number} most of the upright axis @param {number} room on the right, for labels
 * @returns {Frame}
 */
export function frameOf(shares, most, room) {
  const area = { left: LEFT, right: WIDTH - Math.max(14, room), top: TOP, bottom: HEIGHT - BOTTOM };
  return {
    x: d3.scaleSymlog([shares[0], shares[shares.length - 1]], [area.left, area.right]).constant(1).clamp(true),
    y: d3.scaleLinear([0, most], [area.bottom, area.top]),
    area,
  };
}

/** The share under a place of the drawing. @param {Frame} frame @param {number} x */
export const shareUnder = (frame, x) => /** @type {any} */ (frame.x).invert(x);

/**
 * Axes with their titles.
 * @param {Frame} frame @param {string} across @param {string} upright
 */
export function axes(frame, across, upright) {
  const { area } = frame;
  const bottom = draw("g", { class: "chart-axis", transform: `translate(0,${area.bottom})` });
  const side = draw("g", { class: "chart-axis", transform: `translate(${area.left},0)` });
  const [first, last] = /** @type {any} */ (frame.x).domain();
  d3.select(bottom).call(
    d3.axisBottom(frame.x).tickValues(TICKS.filter((tick) => tick >= first && tick <= last)).tickFormat(String).tickSizeOuter(0).offset(0),
  );
  const written = /** @type {any} */ (frame.y).tickFormat(5);
  d3.select(side).call(
    d3.axisLeft(frame.y).ticks(5).tickFormat((/** @type {number} */ tick) => marked(written(tick))).tickSizeOuter(0).offset(0),
  );
  const middle = (area.top + area.bottom) / 2;
  return [
    bottom,
    side,
    draw("text", { class: "chart-axis-title", x: (area.left + area.right) / 2, y: HEIGHT - 8, "text-anchor": "middle" }, across),
    draw("text", { class: "chart-axis-title", x: 0, y: 0, transform: `translate(14,${middle}) rotate(-90)`, "text-anchor": "middle" }, upright),
  ];
}

/**
 * A curve in pieces: those where the pair's curve can be trusted, and those beyond, which are drawn in dashes.
 * @template T
 * @param {number[]} shares
 * @param {(percent: number, i: number) => T} at the point of a share; the index is that of the share, or between two of them
 * @param {{from: number, to: number}} trusted
 * @returns {{beyond: boolean, points: T[]}[]}
 */
export function pieces(shares, at, trusted) {
  const cuts = [...new Set([shares[0], trusted.from, trusted.to, shares[shares.length - 1]])];
  const found = [];
  for (let c = 0; c + 1 < cuts.length; c++) {
    const [from, to] = [cuts[c], cuts[c + 1]];
    const within = shares.filter((share) => share > from && share < to);
    const beyond = to <= trusted.from || from >= trusted.to;
    found.push({ beyond, points: [from, ...within, to].map((share) => at(share, indexOf(shares, share))) });
  }
  return found;
}

/** Where a share lies among those of the curve: its index, or a number between two on the scale of the chart. @param {number[]} shares @param {number} share */
export function indexOf(shares, share) {
  const after = shares.findIndex((each) => each >= share);
  if (after <= 0 || shares[after] === share) return Math.max(0, after);
  const [low, high] = [Math.log1p(shares[after - 1]), Math.log1p(shares[after])];
  return after - 1 + (Math.log1p(share) - low) / (high - low);
}

/** A value at an index that may lie between two. @param {number[]} values @param {number} index */
export function valueAt(values, index) {
  const before = Math.floor(index);
  const share = index - before;
  return share === 0 ? values[before] : values[before] + share * (values[before + 1] - values[before]);
}

/** Heights moved as little as it takes to lie a line apart and inside limits, in their order. @param {number[]} heights @param {number} least @param {number} from @param {number} to */
export function spread(heights, least, from, to) {
  const order = heights.map((_, i) => i).sort((a, b) => heights[a] - heights[b]);
  const placed = [...heights];
  let floor = from;
  for (const i of order) floor = (placed[i] = Math.max(placed[i], floor)) + least;
  let ceiling = to;
  for (const i of order.reverse()) ceiling = (placed[i] = Math.min(placed[i], ceiling)) - least;
  return placed;
}
