// @ts-check
/** Small numbers' work: quantiles, robust scatter, linear equations. */

/** A quantile of what stands in a list, which is left as it is; NaN of nothing. @param {ArrayLike<number>} values @param {number} share 0…1 */
export function quantile(values, share) {
  if (values.length === 0) return NaN;
  const sorted = Float64Array.from(values).sort();
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
}

/** @param {ArrayLike<number>} values */
export const median = (values) => quantile(values, 0.5);

/** 1.4826 times the median of |deviations| from the median: the standard deviation where the scatter is normal (Hampel 1974, from memory). @param {ArrayLike<number>} values */
export function scatter(values) {
  const middle = median(values);
  return 1.4826 * median(Float64Array.from(values, (value) => Math.abs(value - middle)));
}

/** @param {number} value @param {number} low @param {number} high */
export const clamp = (value, low, high) => (value < low ? low : value > high ? high : value);

/**
 * Solves n linear equations by Gauss's elimination with partial pivoting.
 * @param {Float64Array} a n × n by rows; used up
 * @param {Float64Array} b n; used up
 * @returns {Float64Array | null} null where the equations do not determine the answer
 */
export function solve(a, b) {
  const n = b.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i * n + k]) > Math.abs(a[best * n + k])) best = i;
    const pivot = a[best * n + k];
    if (!(Math.abs(pivot) > 1e-14)) return null;
    if (best !== k) swapRows(a, b, n, k, best);
    for (let i = k + 1; i < n; i++) {
      const factor = a[i * n + k] / pivot;
      if (factor === 0) continue;
      for (let j = k; j < n; j++) a[i * n + j] -= factor * a[k * n + j];
      b[i] -= factor * b[k];
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = b[k];
    for (let j = k + 1; j < n; j++) sum -= a[k * n + j] * b[j];
    b[k] = sum / a[k * n + k];
  }
  return b;
}

/** @param {Float64Array} a @param {Float64Array} b @param {number} n @param {number} i @param {number} j */
function swapRows(a, b, n, i, j) {
  for (let k = 0; k < n; k++) [a[i * n + k], a[j * n + k]] = [a[j * n + k], a[i * n + k]];
  [b[i], b[j]] = [b[j], b[i]];
}

/**
 * A straight line y = a + b·x through points, those far from it counted less (Tukey's biweight, cut at 4.685 scatters: Beaton and
 * Tukey, Technometrics 1974, from memory).
 * @param {ArrayLike<number>} xs @param {ArrayLike<number>} ys @param {ArrayLike<number>} [weights]
 * @returns {{a: number, b: number, rest: number} | null} rest: scatter about the line
 */
export function robustLine(xs, ys, weights) {
  const n = xs.length;
  if (n < 2) return null;
  const own = Float64Array.from({ length: n }, (_, i) => weights?.[i] ?? 1);
  const rests = new Float64Array(n);
  let line = plainLine(xs, ys, own);
  let rest = 0;
  for (let round = 0; round < 12 && line; round++) {
    for (let i = 0; i < n; i++) rests[i] = Math.abs(ys[i] - line.a - line.b * xs[i]);
    rest = 1.4826 * median(rests);
    const cut = 4.685 * Math.max(rest, 1e-6) * (round < 3 ? 2 : 1);
    const now = own.map((weight, i) => (rests[i] < cut ? weight * (1 - (rests[i] / cut) ** 2) ** 2 : 0));
    line = plainLine(xs, ys, now) ?? line;
  }
  return line && { ...line, rest };
}

/** @param {ArrayLike<number>} xs @param {ArrayLike<number>} ys @param {Float64Array} weights */
function plainLine(xs, ys, weights) {
  let [sum, x, y, xx, xy] = [0, 0, 0, 0, 0];
  for (let i = 0; i < weights.length; i++) {
    sum += weights[i];
    x += weights[i] * xs[i];
    y += weights[i] * ys[i];
  }
  if (!(sum > 0)) return null;
  x /= sum;
  y /= sum;
  for (let i = 0; i < weights.length; i++) {
    xx += weights[i] * (xs[i] - x) ** 2;
    xy += weights[i] * (xs[i] - x) * (ys[i] - y);
  }
  const b = xx > 1e-12 ? xy / xx : 0;
  return { a: y - b * x, b };
}
