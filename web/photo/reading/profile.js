// @ts-check
/** What a lane looks like along its height: the mean across it, along the way its spots went. */

import { frontAt, rowOf, startAt } from "./field.js";
import { middleAt, shareUp } from "./lanes.js";
import { clamp } from "./numbers.js";
import { asymmetric, savitzkyGolay, weighed } from "./smooth.js";

/** @typedef {import("./relief.js").Relief} Relief @typedef {import("./lanes.js").Lane} Lane @typedef {import("./blobs.js").Blob} Blob */
/** @typedef {{fromMm: number, stepMm: number, count: number, xs: Float64Array, trust: Float64Array, values: Float64Array[], grounds: Float64Array[]}} Cut from below upwards; values and grounds by plane */
/** @typedef {{raw: Float64Array, baseline: Float64Array, signal: Float64Array, noise: number, plane: number}} Signal */

/** What is looked at beyond start line and front [mm]. */
const BEYOND = 3.5;
/** Half the width over which a profile's points are smoothed [mm]; the width from which a change counts as baseline [mm], and the weight of what lies above it. */
export const SMOOTH_HALF_MM = 0.55;
export const BASELINE_WIDTH_MM = 40;
export const ASYMMETRY = 0.003;

/** Across from the lane's middle, how far its spots lie to the side at each height. @param {Blob[]} blobs of the lane @param {Lane} lane @param {import("./blobs.js").Lines} lines @param {number} widthMm */
export function wayOf(blobs, lane, lines, widthMm) {
  const knots = blobs.map((blob) => ({ mm: blob.mm, x: blob.xMm, weight: blob.clear })).sort((p, q) => p.mm - q.mm);
  /** @type {{mm: number, x: number, weight: number}[]} */
  const apart = [];
  for (const knot of knots) {
    const last = apart[apart.length - 1];
    if (!last || knot.mm - last.mm > 1.5) apart.push({ ...knot });
    else if (knot.weight > last.weight) apart[apart.length - 1] = { ...knot };
  }
  const off = apart.map(({ mm, x }) => ({ mm, d: clamp(x - middleAt(lane, shareUp(lines, widthMm, { xMm: x, mm })), -0.5 * lane.widthMm, 0.5 * lane.widthMm) }));
  return (/** @type {number} */ mm, /** @type {number} */ middle) => {
    if (off.length === 0) return middle;
    let k = off.findIndex((knot) => knot.mm > mm);
    if (k === 0) return middle + off[0].d;
    if (k < 0) return middle + off[off.length - 1].d;
    const share = (mm - off[k - 1].mm) / (off[k].mm - off[k - 1].mm);
    return middle + off[k - 1].d + share * (off[k].d - off[k - 1].d);
  };
}

/** @param {Relief} relief @param {Lane} lane @param {import("./blobs.js").Lines} lines @param {Blob[]} blobs @returns {Cut} */
export function cutOf(relief, lane, lines, blobs) {
  const { field, planes, grounds, hidden, seen } = relief;
  const { width, height, perMmX, perMmY, widthMm, heightMm } = field;
  const shareX = clamp((lane.startXMm + lane.frontXMm) / 2 / widthMm, 0, 1);
  const low = clamp(startAt(lines.start, shareX) - BEYOND, 0.5, heightMm);
  const high = clamp(frontAt(lines.front, shareX) + BEYOND, low + 2, heightMm - 0.5);
  const [last, first] = [Math.min(height - 1, Math.round(rowOf(field, low))), Math.max(0, Math.round(rowOf(field, high)))];
  const count = last - first + 1;
  const way = wayOf(blobs, lane, lines, widthMm);
  const half = clamp(0.3 * lane.widthMm, 0.8, 1.4) * perMmX;
  const xs = new Float64Array(count);
  const trust = new Float64Array(count);
  const values = planes.map(() => new Float64Array(count));
  const under = planes.map(() => new Float64Array(count));
  const fromMm = heightMm - (last + 0.5) / perMmY;
  for (let k = 0; k < count; k++) {
    const mm = fromMm + k / perMmY;
    const share = clamp(shareUp(lines, widthMm, { xMm: lane.startXMm, mm }), -0.2, 1.2);
    const x = way(mm, middleAt(lane, share)) * perMmX - 0.5;
    xs[k] = (x + 0.5) / perMmX;
    const row = (last - k) * width;
    for (let u = Math.max(0, Math.ceil(x - 2 * half)), end = Math.min(width - 1, x + 2 * half); u <= end; u++) {
      if (hidden[row + u]) continue;
      const weight = Math.exp((-2 * (u - x) ** 2) / (half * half));
      trust[k] += weight;
      for (const c of seen) {
        values[c][k] += weight * planes[c][row + u];
        under[c][k] += weight * grounds[c][row + u];
      }
    }
  }
  const full = half * Math.sqrt(Math.PI / 2);
  for (const c of seen) for (const list of [values[c], under[c]]) fill(list, trust, 0.25 * full);
  for (let k = 0; k < count; k++) trust[k] = clamp(trust[k] / full, 0, 1);
  return { fromMm, stepMm: 1 / perMmY, count, xs, trust, values, grounds: under };
}

/** Sums to means; where hardly anything was seen, straight between what was. @param {Float64Array} list @param {Float64Array} trust @param {number} least */
function fill(list, trust, least) {
  let before = -1;
  for (let k = 0; k < list.length; k++) {
    if (trust[k] < least) continue;
    list[k] /= trust[k];
    for (let g = before + 1; g < k; g++) list[g] = before < 0 ? list[k] : list[before] + ((list[k] - list[before]) * (g - before)) / (k - before);
    before = k;
  }
  for (let g = before + 1; g < list.length; g++) list[g] = before < 0 ? 0 : list[before];
}

/** A plane's profile, its baseline and what stands above it. @param {Cut} cut @param {number} plane @param {Relief} relief @returns {Signal} */
export function signalOf({ values, grounds, trust, stepMm, count }, plane, relief) {
  const half = Math.max(2, Math.round(SMOOTH_HALF_MM / stepMm));
  const smooth = count > 2 * half + 1 ? weighed(values[plane], savitzkyGolay(half, 2)) : values[plane];
  const lambda = (BASELINE_WIDTH_MM / stepMm / (2 * Math.PI)) ** 4;
  const sure = trust.map((each) => each + 0.01);
  const baseline = asymmetric(smooth, sure, lambda, ASYMMETRY, 2 * relief.noise[plane]);
  const raw = values[plane].map((value, k) => relief.sign * grounds[plane][k] + value);
  return {
    raw,
    baseline: baseline.map((value, k) => relief.sign * grounds[plane][k] + value),
    signal: smooth.map((value, k) => value - baseline[k]),
    noise: relief.noise[plane] * 0.8,
    plane,
  };
}
