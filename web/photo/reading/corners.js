// @ts-check
/**
 * The plate in a picture: of the quadrilaterals that straight edges make, that along whose four sides the colour changes, the same way
 * all along, and whose edges end at its corners.
 */

import { linesOf } from "./edges.js";
import { clamp } from "./numbers.js";
import { sideDrawnIn } from "./sides.js";
import { smallOf } from "./small.js";

/** @typedef {{x: number, y: number}} Point @typedef {import("./edges.js").Line} Line @typedef {import("./small.js").Small} Small */
/** @typedef {{line: Line, count: number, step: number, sums: Float64Array[], sizes: Float64Array}} Sampled the change of colour along a line, added up */
/** @typedef {{left: Sampled, right: Sampled, low: Sampled, high: Sampled, points: Point[], score: number}} Quad */

const LINES = 16;
const EVERY = 3;
/** A change of colour [of 255] that counts as a whole one. */
const WHOLE = 22;

/** Where two lines meet. @param {Line} upright @param {Line} level @param {Small} small @returns {Point} */
function meeting(upright, level, { width, height }) {
  const [a, b, c, d] = [upright.offset - upright.slope * (height / 2), upright.slope, level.offset - level.slope * (width / 2), level.slope];
  const y = (c + d * a) / (1 - d * b);
  return { x: a + b * y, y };
}

/** @param {Line} line @param {Small} small @returns {Sampled} */
function sampled(line, { width, height, planes }) {
  const long = line.upright ? height : width;
  const count = Math.floor(long / EVERY) + 1;
  const sums = planes.map(() => new Float64Array(count + 1));
  const sizes = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) {
    const t = i * EVERY;
    const u = line.offset + line.slope * (t - long / 2);
    let size = 0;
    planes.forEach((plane, channel) => {
      let sum = 0;
      for (const d of [2, 3.5, 5]) {
        for (const sign of [1, -1]) {
          const v = Math.round(u + sign * d);
          const x = line.upright ? v : Math.min(t, width - 1);
          const y = line.upright ? Math.min(t, height - 1) : v;
          if (x >= 0 && y >= 0 && x < width && y < height) sum += (sign * plane[y * width + x]) / 3;
          else sum += (sign * planes[channel][clamp(y, 0, height - 1) * width + clamp(x, 0, width - 1)]) / 3;
        }
      }
      sums[channel][i + 1] = sums[channel][i] + sum;
      size += sum * sum;
    });
    sizes[i + 1] = sizes[i] + Math.sqrt(size);
  }
  return { line, count, step: EVERY, sums, sizes };
}

/** How far the colour changes across part of a line, 0…1: its mean change, less where the change is now this way and now that. @param {Sampled} side @param {number} from @param {number} to along the line, in pixels */
function change({ count, step, sums, sizes }, from, to) {
  const a = clamp(Math.round(Math.min(from, to) / step), 0, count);
  const b = clamp(Math.round(Math.max(from, to) / step), 0, count);
  if (b - a < 1) return { size: 0, alike: 0, vector: [0, 0, 0] };
  const vector = sums.map((sum) => (sum[b] - sum[a]) / (b - a));
  const mean = Math.hypot(...vector);
  return { size: mean, alike: mean / ((sizes[b] - sizes[a]) / (b - a) + 1e-6), vector };
}

/** @param {Sampled} side @param {Point} p @param {Point} q */
function sideScore(side, p, q) {
  const [from, to] = side.line.upright ? [p.y, q.y] : [p.x, q.x];
  let least = 1;
  let sum = 0;
  const whole = change(side, from, to);
  for (let k = 0; k < 4; k++) {
    const part = change(side, from + ((to - from) * (k + 0.12)) / 4.24, from + ((to - from) * (k + 1.12)) / 4.24);
    const same = part.vector.reduce((dot, value, c) => dot + value * whole.vector[c], 0) / (part.size * whole.size + 1e-6);
    const score = Math.min(1, part.size / WHOLE) ** 0.5 * part.alike * Math.max(0, same);
    least = Math.min(least, score);
    sum += score / 4;
  }
  return 0.6 * sum + 0.4 * least;
}

/** How much of the change goes on beyond a corner, 0…1. @param {Sampled} side @param {Point} p @param {Point} q the corner in question @param {Small} small */
function goesOn(side, p, q, { width, height }) {
  const [from, to, long] = side.line.upright ? [p.y, q.y, height] : [p.x, q.x, width];
  const length = to - from;
  const [a, b] = [to + 0.04 * length, to + 0.16 * length];
  if (Math.min(a, b) < 2 || Math.max(a, b) > long - 3) return 0;
  const whole = change(side, from, to);
  const after = change(side, a, b);
  const dot = after.vector.reduce((sum, value, c) => sum + value * whole.vector[c], 0);
  return clamp((after.alike * dot) / (whole.size * whole.size + 1e-6), 0, 1);
}

/** @param {Sampled} left @param {Sampled} right @param {Sampled} low @param {Sampled} high @param {Small} small @returns {Quad | null} */
function quadOf(left, right, low, high, small) {
  const { width, height } = small;
  const points = [meeting(left.line, low.line, small), meeting(right.line, low.line, small), meeting(right.line, high.line, small), meeting(left.line, high.line, small)];
  for (const { x, y } of points) if (x < -0.04 * width || y < -0.04 * height || x > 1.04 * width || y > 1.04 * height) return null;
  const [a, b, c, d] = points;
  const tall = Math.min(a.y - d.y, b.y - c.y);
  const wide = Math.min(b.x - a.x, c.x - d.x);
  if (tall < 0.18 * height || wide < 0.12 * width || wide > 4 * tall || tall > 6 * wide) return null;
  const scores = [sideScore(low, a, b), sideScore(right, b, c), sideScore(high, d, c), sideScore(left, a, d)];
  const score = scores.reduce((sum, each) => sum + each, 0) / 4;
  return { left, right, low, high, points, score: 0.6 * score + 0.4 * Math.min(...scores) };
}

/** @param {Quad} quad @param {Small} small */
function judged({ left, right, low, high, points: [a, b, c, d], score }, small) {
  const on = [goesOn(low, b, a, small), goesOn(low, a, b, small), goesOn(high, c, d, small), goesOn(high, d, c, small), goesOn(left, d, a, small), goesOn(left, a, d, small), goesOn(right, c, b, small), goesOn(right, b, c, small)];
  const area = ((b.x - a.x + c.x - d.x) * (a.y - d.y + b.y - c.y)) / (4 * small.width * small.height);
  return score - 0.06 * on.reduce((sum, each) => sum + each, 0) + 0.12 * Math.min(area, 0.8);
}


/**
 * @param {import("./small.js").Picture} picture
 * @returns {{corners: Point[], sure: number} | null} lower left, lower right, upper right, upper left in fractions of the picture
 */
export function cornersOf(picture) {
  const small = smallOf(picture, 480);
  const found = linesOf(small, LINES);
  const uprights = found.uprights.map((line) => sampled(line, small));
  const levels = found.levels.map((line) => sampled(line, small));
  /** @type {Quad[]} */
  const quads = [];
  const byPlace = (/** @type {Sampled} */ p, /** @type {Sampled} */ q) => p.line.offset - q.line.offset;
  uprights.sort(byPlace);
  levels.sort(byPlace);
  for (let l = 0; l < uprights.length; l++) {
    for (let r = l + 1; r < uprights.length; r++) {
      for (let h = 0; h < levels.length; h++) {
        for (let w = h + 1; w < levels.length; w++) {
          const quad = quadOf(uprights[l], uprights[r], levels[w], levels[h], small);
          if (quad && quad.score > 0.15) quads.push(quad);
        }
      }
    }
  }
  quads.sort((p, q) => q.score - p.score);
  const best = quads.slice(0, 300).map((quad) => ({ quad, value: judged(quad, small) })).sort((p, q) => q.value - p.value)[0];
  if (!best || best.quad.score < 0.25) return null;
  const corners = drawnIn(best.quad, picture, small);
  return { corners, sure: clamp((best.quad.score - 0.2) / 0.5, 0, 1) };
}

/** The sides laid anew at the full picture, and where they meet. @param {Quad} quad @param {import("./small.js").Picture} picture @param {Small} small */
function drawnIn({ left, right, low, high, points: [a, b, c, d] }, picture, small) {
  const { scale } = small;
  const big = (/** @type {Point} */ p) => ({ x: (p.x + 0.5) * scale - 0.5, y: (p.y + 0.5) * scale - 0.5 });
  const [bottom, edge, top, side] = [
    sideDrawnIn(picture, big(a), big(b), false, scale),
    sideDrawnIn(picture, big(b), big(c), true, scale),
    sideDrawnIn(picture, big(d), big(c), false, scale),
    sideDrawnIn(picture, big(a), big(d), true, scale),
  ];
  const whole = { width: picture.width, height: picture.height, scale: 1, planes: [] };
  const sides = { bottom, edge, top, side };
  return [meeting(sides.side, sides.bottom, whole), meeting(sides.edge, sides.bottom, whole), meeting(sides.edge, sides.top, whole), meeting(sides.side, sides.top, whole)].map(({ x, y }) => ({
    x: clamp((x + 0.5) / picture.width, 0, 1),
    y: clamp((y + 0.5) / picture.height, 0, 1),
  }));
}

