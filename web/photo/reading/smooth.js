// @ts-check
/**
 * Smoothing and baselines of a profile.
 * - Savitzky and Golay, Anal. Chem. 36 (1964) 1627 (from memory): the value at the middle of a polynomial fitted to 2m + 1 points.
 * - Whittaker's smoother after Eilers, Anal. Chem. 75 (2003) 3631 (from memory): least squares of the deviations plus λ times the
 *   squared second differences.
 * - Asymmetric least squares, Eilers and Boelens 2005 (from memory): the same with weight p above the curve and 1 − p below, so that
 *   peaks do not lift the baseline; p 0.001…0.1, λ grows with the fourth power of the width that counts as baseline.
 */

import { solve } from "./numbers.js";

/** Weights of the value in the middle. @param {number} half m: points on each side @param {number} degree of the polynomial @returns {Float64Array} 2m + 1 weights, together 1 */
export function savitzkyGolay(half, degree) {
  const size = degree + 1;
  const normal = new Float64Array(size * size);
  for (let i = -half; i <= half; i++) for (let r = 0; r < size; r++) for (let c = 0; c < size; c++) normal[r * size + c] += (i / half) ** (r + c);
  const right = new Float64Array(size);
  right[0] = 1;
  const first = solve(normal, right);
  if (!first) throw new RangeError(`A polynomial of degree ${degree} is not determined by ${2 * half + 1} points.`);
  return Float64Array.from({ length: 2 * half + 1 }, (_, k) => first.reduce((sum, factor, power) => sum + factor * ((k - half) / half) ** power, 0));
}

/** A list weighed about each of its places; beyond its ends the end values are mirrored through the end point. @param {ArrayLike<number>} values @param {Float64Array} weights odd count */
export function weighed(values, weights) {
  const n = values.length;
  const half = (weights.length - 1) / 2;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let k = -half; k <= half; k++) {
      const at = i + k;
      const value = at < 0 ? 2 * values[0] - values[Math.min(-at, n - 1)] : at >= n ? 2 * values[n - 1] - values[Math.max(2 * n - 2 - at, 0)] : values[at];
      sum += weights[k + half] * value;
    }
    out[i] = sum;
  }
  return out;
}

/**
 * Whittaker's smoother with second differences: solves (W + λ D'D) z = W y, a band of five, by Cholesky's way in one pass.
 * @param {ArrayLike<number>} values @param {ArrayLike<number>} weights each ≥ 0, not all 0 @param {number} lambda
 */
export function whittaker(values, weights, lambda) {
  const n = values.length;
  const z = new Float64Array(n);
  if (n < 3) return Float64Array.from(values);
  const d = new Float64Array(n);
  const c = new Float64Array(n);
  const e = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const ends = Math.min(i, n - 1 - i);
    const diagonal = weights[i] + 1e-9 + lambda * (ends === 0 ? 1 : ends === 1 ? (n === 3 ? 4 : 5) : 6);
    const next = i + 1 < n ? lambda * (i === 0 || i === n - 2 ? -2 : -4) : 0;
    const after = i + 2 < n ? lambda : 0;
    const one = i >= 1 ? c[i - 1] : 0;
    const two = i >= 2 ? e[i - 2] : 0;
    d[i] = diagonal - (i >= 1 ? d[i - 1] * one * one : 0) - (i >= 2 ? d[i - 2] * two * two : 0);
    c[i] = (next - (i >= 1 ? d[i - 1] * one * e[i - 1] : 0)) / d[i];
    e[i] = after / d[i];
    z[i] = weights[i] * values[i] - (i >= 1 ? one * z[i - 1] : 0) - (i >= 2 ? two * z[i - 2] : 0);
  }
  for (let i = n - 1; i >= 0; i--) z[i] = z[i] / d[i] - (i + 1 < n ? c[i] * z[i + 1] : 0) - (i + 2 < n ? e[i] * z[i + 2] : 0);
  return z;
}

/**
 * A baseline under peaks that point up: what lies above it by more than `above` counts p, the rest 1.
 * @param {ArrayLike<number>} values @param {ArrayLike<number>} trust each ≥ 0 @param {number} lambda @param {number} p weight of what lies above @param {number} above
 */
export function asymmetric(values, trust, lambda, p, above) {
  const n = values.length;
  const weights = Float64Array.from(trust);
  let baseline = new Float64Array(n);
  for (let round = 0; round < 12; round++) {
    for (let i = 0; i < n; i++) weights[i] = trust[i] * (values[i] > baseline[i] + above ? p : 1) + 0.002;
    baseline = whittaker(Float64Array.from(values, (value, i) => (value * (weights[i] - 0.002)) / weights[i]), weights, lambda);
  }
  return baseline;
}
