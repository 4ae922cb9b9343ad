// @ts-check
/** Places that stand out as a spot does: broader than a pencil line both ways, not right across the plate. */

import { frontAt, heightOf, rowOf, startAt } from "./field.js";
import { clamp } from "./numbers.js";

/** @typedef {import("./relief.js").Relief} Relief */
/** @typedef {{xMm: number, mm: number, signal: number, clear: number, acrossMm: number, alongMm: number, plane: number}} Blob clear: signal over noise */
/** @typedef {{start: number[], front: number[]}} Lines */

/** Signal over noise, and signal, from which on something is looked at. */
const CLEAR = 5;
const FAINTEST = 0.04;
const NARROWEST = 0.5;
/** How far above the front and below the start line is looked: lines are not exactly where a hand marks them [mm]. */
const BEYOND = { front: 1, start: 0.6 };

/** @param {Relief} relief @param {Lines} lines @returns {Blob[]} */
export function blobsOf(relief, { start, front }) {
  const { field, noise, seen, hidden, smooth } = relief;
  const { width, height, perMmX, perMmY } = field;
  const best = new Float32Array(width * height);
  const which = new Uint8Array(best.length);
  for (const c of seen) {
    const share = 1 / noise[c];
    for (let i = 0; i < best.length; i++) {
      const value = smooth[c][i] * share;
      if (value > best[i] && !hidden[i]) [best[i], which[i]] = [value, c];
    }
  }
  const blobs = [];
  const [reachX, reachY] = [Math.max(1, Math.round(0.7 * perMmX)), Math.max(1, Math.round(0.7 * perMmY))];
  for (let x = Math.round(perMmX); x < width - perMmX; x++) {
    const share = (x + 0.5) / width;
    const from = Math.max(reachY, Math.round(rowOf(field, frontAt(front, share) + BEYOND.front)));
    const to = Math.min(height - 1 - reachY, Math.round(rowOf(field, startAt(start, share) - BEYOND.start)));
    for (let y = from; y <= to; y++) {
      const at = y * width + x;
      if (best[at] < CLEAR || smooth[which[at]][at] < FAINTEST || !isTop(best, width, x, y, reachX, reachY)) continue;
      const blob = measured(smooth[which[at]], relief, x, y);
      const byLine = y - from < 2 * perMmY || to - y < 2 * perMmY;
      if (blob && !(byLine && blob.acrossMm > 3 * blob.alongMm)) blobs.push({ ...blob, clear: best[at], plane: which[at] });
    }
  }
  return blobs;
}

/** @param {Float32Array} plane @param {number} width @param {number} x @param {number} y @param {number} reachX @param {number} reachY */
function isTop(plane, width, x, y, reachX, reachY) {
  const value = plane[y * width + x];
  for (let v = y - reachY; v <= y + reachY; v++) {
    for (let u = Math.max(0, x - reachX), end = Math.min(width - 1, x + reachX); u <= end; u++) {
      const other = plane[v * width + u];
      if (other > value || (other === value && (v < y || (v === y && u < x)))) return false;
    }
  }
  return true;
}

/** @param {Float32Array} plane @param {Relief} relief @param {number} x @param {number} y */
function measured(plane, { field }, x, y) {
  const { width, height, perMmX, perMmY } = field;
  const half = plane[y * width + x] / 2;
  const [left, right] = [-1, 1].map((way) => run(plane, y * width + x, way, way < 0 ? x : width - 1 - x, half));
  const [up, down] = [-1, 1].map((way) => run(plane, y * width + x, way * width, way < 0 ? y : height - 1 - y, half));
  const acrossMm = (left + right) / perMmX;
  const alongMm = (up + down) / perMmY;
  if (acrossMm < NARROWEST || alongMm < NARROWEST || acrossMm > 0.5 * field.widthMm) return null;
  const offset = clamp((right - left) / 2, -perMmX, perMmX);
  return { xMm: (x + 0.5 + offset) / perMmX, mm: heightOf(field, y), signal: 2 * half, acrossMm, alongMm };
}

/** How many pixels one way until a plane falls below a level. @param {Float32Array} plane @param {number} at @param {number} step @param {number} most @param {number} level */
function run(plane, at, step, most, level) {
  for (let k = 1; k <= most; k++) {
    const value = plane[at + k * step];
    if (value < level) {
      const before = plane[at + (k - 1) * step];
      return k - 1 + (before - level) / (before - value);
    }
  }
  return most;
}
