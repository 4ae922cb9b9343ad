// @ts-check
/**
 * Peaks that overlap, parted: a sum of bells, each with a width of its own below and above its top, fitted by least squares
 * (Levenberg 1944, Marquardt, J. SIAM 11 (1963) 431; from memory).
 */

import { solve } from "./numbers.js";

/** @typedef {{height: number, at: number, below: number, above: number}} Bell below and above: standard deviations on either side of its top */

/** @param {Bell} bell @param {number} t */
export function bellAt({ height, at, below, above }, t) {
  const z = (t - at) / (t < at ? below : above);
  return height * Math.exp(-0.5 * z * z);
}

/** @param {Bell[]} bells @param {number} t */
export const sumAt = (bells, t) => bells.reduce((sum, bell) => sum + bellAt(bell, t), 0);

/** @param {ArrayLike<number>} values @param {number} from @param {Bell[]} bells */
function misfit(values, from, bells) {
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += (values[k] - sumAt(bells, from + k)) ** 2;
  return sum;
}

/**
 * @param {ArrayLike<number>} values at from, from + 1, … @param {number} from @param {Bell[]} first where to begin
 * @param {{even?: boolean, narrowest: number, widest: number}} bounds even: both sides of a bell alike
 * @returns {{bells: Bell[], misfit: number}} misfit: sum of squares
 */
export function bellsFitted(values, from, first, { even = false, narrowest, widest }) {
  let bells = first.map((bell) => ({ ...bell }));
  let rest = misfit(values, from, bells);
  let damping = 1e-3;
  const n = 4 * bells.length;
  for (let round = 0; round < 40; round++) {
    const { a, b } = equations(values, from, bells, n, even);
    let better = false;
    for (let trial = 0; trial < 6 && !better; trial++) {
      const damped = Float64Array.from(a);
      for (let i = 0; i < n; i++) damped[i * n + i] += damping * a[i * n + i] + 1e-9;
      const move = solve(damped, Float64Array.from(b));
      if (!move) break;
      const next = bells.map((bell, i) => moved(bell, move, 4 * i, even, narrowest, widest));
      const now = misfit(values, from, next);
      if (now < rest) {
        const gain = (rest - now) / (rest + 1e-12);
        [bells, rest, better, damping] = [next, now, true, damping / 5];
        if (gain < 1e-6) return { bells, misfit: rest };
      } else damping *= 6;
    }
    if (!better) break;
  }
  return { bells, misfit: rest };
}

/** The normal equations of the least squares. @param {ArrayLike<number>} values @param {number} from @param {Bell[]} bells @param {number} n @param {boolean} even */
function equations(values, from, bells, n, even) {
  const a = new Float64Array(n * n);
  const b = new Float64Array(n);
  const slope = new Float64Array(n);
  for (let k = 0; k < values.length; k++) {
    const t = from + k;
    let sum = 0;
    bells.forEach((bell, i) => {
      const isBelow = t < bell.at;
      const width = isBelow ? bell.below : bell.above;
      const z = (t - bell.at) / width;
      const shape = Math.exp(-0.5 * z * z);
      sum += bell.height * shape;
      slope[4 * i] = shape;
      slope[4 * i + 1] = (bell.height * shape * z) / width;
      const widths = (bell.height * shape * z * z) / width;
      slope[4 * i + 2] = even || isBelow ? widths : 0;
      slope[4 * i + 3] = even || isBelow ? 0 : widths;
    });
    const rest = values[k] - sum;
    for (let r = 0; r < n; r++) {
      b[r] += slope[r] * rest;
      for (let c = 0; c < n; c++) a[r * n + c] += slope[r] * slope[c];
    }
  }
  return { a, b };
}

/** @param {Bell} bell @param {Float64Array} move @param {number} i @param {boolean} even @param {number} narrowest @param {number} widest */
function moved({ height, at, below, above }, move, i, even, narrowest, widest) {
  const bound = (/** @type {number} */ width) => Math.min(widest, Math.max(narrowest, width));
  const low = bound(below + move[i + 2]);
  return { height: Math.max(0, height + move[i]), at: at + Math.min(5, Math.max(-5, move[i + 1])), below: low, above: even ? low : bound(above + move[i + 3]) };
}
