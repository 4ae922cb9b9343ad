// @ts-check
/**
 * Start line and front where they can be seen: a thin dark line right across the plate, or, for the front, an edge where the ground
 * changes. Each place of the plate says how much it looks like part of such a line; that line is best whose places say most.
 */

import { heightOf, rowOf } from "./field.js";
import { clamp, quantile, scatter } from "./numbers.js";
import { blurred } from "./small.js";

/** @typedef {import("./relief.js").Relief} Relief @typedef {import("./field.js").Field} Field */
/** @typedef {{width: number, height: number, margin: number, step: number, values: Float32Array}} Votes one column about every half millimetre, in scatters */
/** @typedef {{a: number, b: number, c: number, score: number}} Curve row = a + b·t + c·(1 − t²), t −1…1 across */

/** What a place may add at least and at most, so that a letter does not outweigh a line. */
const LEAST = -2;
const MOST = 4;
/** From where to where on either side of an edge its ground is looked at, and on to where its slope [mm]. */
const EDGE = { gap: 0.2, near: 1.1, far: 2.4 };
/** What may lie bare at the plate's upper rim [mm]. */
const RIM = 1.6;
/** Scores from which on a line is proposed, and at which it is sure. */
const LINE = { least: 1.2, sure: 2.4 };
const FRONT_EDGE = { least: 1.85, sure: 2.8 };

/** How much each place looks like part of a thin level line. @param {Relief} relief @returns {Votes} */
function ridgeVotes({ field, before, sign }) {
  const d = Math.max(2, Math.round(0.55 * field.perMmY));
  return votesOf(field, before, d + 3, (sums, row) => {
    const middle = (sums[row + 2] - sums[row - 1]) / 3;
    const up = (sums[row - d + 1] - sums[row - d - 2]) / 3;
    const down = (sums[row + d + 3] - sums[row + d]) / 3;
    return sign > 0 ? middle - Math.max(up, down) : Math.abs(middle - (up + down) / 2);
  });
}

/** How much each place looks like an edge between above and below, less what a slope of the ground makes of it. @param {Relief} relief @returns {Votes} */
function edgeVotes({ field, planes }) {
  const [gap, near, far] = [EDGE.gap, EDGE.near, EDGE.far].map((mm) => Math.max(1, Math.round(mm * field.perMmY)));
  const slope = (gap + near) / (near + far);
  /** @param {Float64Array} sums @param {number} row @param {number} from @param {number} to */
  const change = (sums, row, from, to) => (sums[row - from] - sums[row - to] - sums[row + 1 + to] + sums[row + 1 + from]) / (to - from);
  return votesOf(field, planes[3], far + 1, (sums, row) => change(sums, row, gap, near) - slope * change(sums, row, near, far));
}

/** @param {Field} field @param {Float32Array} plane @param {number} rim rows that are left out @param {(sums: Float64Array, row: number) => number} filter of a column's running sums */
function votesOf({ width: across, height, perMmX }, plane, rim, filter) {
  const step = Math.max(1, Math.round(perMmX / 2));
  const margin = Math.round(1.5 * perMmX);
  const width = Math.floor((across - 2 * margin) / step);
  const values = new Float32Array(width * height);
  const sums = new Float64Array(height + 1);
  for (let i = 0; i < width; i++) {
    const x = margin + i * step;
    for (let y = 0, at = x; y < height; y++, at += across) sums[y + 1] = sums[y] + (plane[at - 2] + plane[at - 1] + plane[at] + plane[at + 1] + plane[at + 2]) / 5;
    for (let y = rim; y < height - rim; y++) values[y * width + i] = filter(sums, y);
  }
  const some = Float32Array.from({ length: Math.floor(values.length / 5) }, (_, i) => values[5 * i]);
  const [middle, sigma] = [quantile(some, 0.5), Math.max(scatter(some), 1e-4)];
  for (let i = 0; i < values.length; i++) values[i] = (values[i] - middle) / sigma;
  return { width, height, margin, step, values };
}

/** Votes between bounds; with the sign turned where wanted. @param {Votes} votes @param {number} most @param {number} way */
const bounded = (votes, most, way) => ({ ...votes, values: votes.values.map((value) => clamp(way * value, LEAST, most)) });

/** The mean of votes along a curve, between rows by their shares. @param {Votes} votes @param {number} a @param {number} b @param {number} c @param {number} every columns */
function along({ width, height, values }, a, b, c, every) {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < width; i += every) {
    const t = (2 * i + 1) / width - 1;
    const row = a + b * t + c * (1 - t * t);
    count++;
    if (!(row >= 0 && row < height - 1)) continue;
    const low = row | 0;
    const at = low * width + i;
    sum += values[at] + (row - low) * (values[at + width] - values[at]);
  }
  return sum / count;
}

/** @param {number} b @param {number} c */
const price = (b, c) => 0.004 * (Math.abs(b) + Math.abs(c));

/**
 * The best curve: coarse by every third column, then finer about the best.
 * @param {Votes} votes @param {number} from row @param {number} to row @param {number} tilt most [rows] @param {number} bow most [rows]
 * @returns {Curve}
 */
function bestCurve(votes, from, to, tilt, bow) {
  /** @type {Curve} */
  let best = { a: from, b: 0, c: 0, score: -Infinity };
  const attempt = (/** @type {number} */ a, /** @type {number} */ b, /** @type {number} */ c, /** @type {number} */ every) => {
    const score = along(votes, a, b, c, every) - price(b, c);
    if (score > best.score) best = { a, b, c, score };
  };
  for (let a = from; a <= to; a += 1.5) for (let b = -tilt; b <= tilt; b += 3) for (let c = -bow; c <= bow; c += 3) attempt(a, b, c, 3);
  best = { ...best, score: -Infinity };
  for (const size of [1, 0.5]) {
    const { a, b, c } = best;
    for (let i = -3; i <= 3; i++) for (let j = -3; j <= 3; j++) for (let k = bow > 0 ? -3 : 0; k <= (bow > 0 ? 3 : 0); k++) attempt(a + i * size, b + j * size, c + k * size, 1);
  }
  return best;
}

/** The same curve laid where the votes are highest, each counting as far as it usually does there. @param {Votes} votes @param {Curve} curve @param {number} way @param {number} bow */
function drawnIn(votes, curve, way, bow) {
  const there = Float32Array.from({ length: votes.width }, (_, i) => {
    const t = (2 * i + 1) / votes.width - 1;
    const row = clamp(Math.round(curve.a + curve.b * t + curve.c * (1 - t * t)), 1, votes.height - 2);
    return Math.max(...[-1, 0, 1].map((d) => way * votes.values[(row + d) * votes.width + i]));
  });
  const open = bounded(votes, Math.max(MOST, 1.5 * quantile(there, 0.5)), way);
  let best = { ...curve, score: -Infinity };
  for (const size of [1, 0.4, 0.2]) {
    const { a, b, c } = best;
    for (let i = -2; i <= 2; i++) {
      for (let j = -2; j <= 2; j++) {
        for (let k = bow > 0 ? -2 : 0; k <= (bow > 0 ? 2 : 0); k++) {
          const score = along(open, a + i * size, b + j * size, c + k * size, 1);
          if (score > best.score) best = { a: a + i * size, b: b + j * size, c: c + k * size, score };
        }
      }
    }
  }
  return { ...best, score: curve.score, open: best.score };
}

/** Heights at the plate's left edge, middle and right edge. @param {Field} field @param {Votes} votes @param {Curve} curve @returns {[number, number, number]} */
function heightsOf(field, { width, margin, step }, { a, b, c }) {
  const at = (/** @type {number} */ x) => {
    const t = (2 * ((x - margin) / step) + 1) / width - 1;
    return clamp(heightOf(field, a + b * t + c * (1 - t * t)), 0, field.heightMm);
  };
  return [at(-0.5), at((field.width - 1) / 2), at(field.width - 0.5)];
}

/** @param {number} score @param {{least: number, sure: number}} bounds */
const sureness = (score, { least, sure }) => clamp((score - least) / (sure - least), 0, 1);

/** @param {Relief} relief @returns {{start: [number, number] | null, front: [number, number, number] | null, startSure: number, frontSure: number}} */
export function linesOf(relief) {
  const { field } = relief;
  const ridge = ridgeVotes(relief);
  const tilt = Math.round(0.08 * field.width);
  const bow = Math.round(4 * field.perMmY);
  const row = (/** @type {number} */ share) => Math.round(rowOf(field, share * field.heightMm));
  const votes = bounded(ridge, MOST, 1);
  const low = bestCurve(votes, row(0.4), row(0.03), tilt, 0);
  const startSure = sureness(low.score, LINE);
  const start = heightsOf(field, ridge, drawnIn(ridge, low, 1, 0));
  const high = bestCurve(votes, Math.max(row(0.985), Math.round(RIM * field.perMmY)), row(0.5), tilt, bow);
  let front = { heights: heightsOf(field, ridge, drawnIn(ridge, high, 1, bow)), sure: sureness(high.score, LINE) };
  if (front.sure < 0.6) {
    const edges = edgeVotes(relief);
    // Beside an edge there is a shadow of it the other way round: that is taken which is deeper.
    const [up, down] = [1, -1].map((way) => drawnIn(edges, bestCurve(bounded(edges, MOST, way), Math.round((EDGE.far + RIM) * field.perMmY), row(0.5), tilt, bow), way, bow));
    const edge = up.open > down.open ? up : down;
    const sure = sureness(edge.score, FRONT_EDGE);
    if (sure > front.sure) front = { heights: heightsOf(field, edges, edge), sure };
  }
  return { start: startSure > 0 ? [start[0], start[2]] : null, front: front.sure > 0 ? front.heights : null, startSure, frontSure: front.sure };
}
