// @ts-check
/**
 * The plate's own density without spots: a polynomial of the fourth degree over the plate and what is left of it smoothed, both fitted
 * by weights that count what is darker than the ground hardly at all (the thought of asymmetric least squares, Eilers and Boelens 2005,
 * from memory, in two dimensions), on cells of a millimetre. What is left and too broad for a spot is the ground's too.
 */

import { clamp, median, solve } from "./numbers.js";
import { blurred } from "./small.js";
import { opened } from "./thin.js";

/** @typedef {import("./field.js").Field} Field */

export const GROUND_DEGREE = 4;
/** Width of the smoothing of what the polynomial leaves [mm]. */
export const GROUND_WIDTH_MM = 6;
/** What is as broad as this both ways is no spot [mm]. */
export const BROAD_MM = 11;

/** @typedef {{columns: number, rows: number, sizeX: number, sizeY: number, basis: Float64Array[], outer: Uint8Array}} Grid */

/** @param {Field} field @param {((x: number, mm: number) => number) | null} further a further term, such as what lies above the front @returns {Grid} */
function gridOf({ width, height, perMmX, perMmY, heightMm }, further) {
  const [sizeX, sizeY] = [Math.max(2, Math.round(perMmX)), Math.max(2, Math.round(perMmY))];
  const [columns, rows] = [Math.floor(width / sizeX), Math.floor(height / sizeY)];
  const basis = [];
  const outer = new Uint8Array(columns * rows);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const [u, v] = [(2 * (i + 0.5)) / columns - 1, (2 * (j + 0.5)) / rows - 1];
      const terms = [];
      for (let p = 0; p <= GROUND_DEGREE; p++) for (let q = 0; p + q <= GROUND_DEGREE; q++) terms.push(u ** p * v ** q);
      if (further) terms.push(further((i + 0.5) / columns, heightMm * (1 - (j + 0.5) / rows)));
      basis.push(Float64Array.from(terms));
      outer[j * columns + i] = i === 0 || j === 0 || i === columns - 1 || j === rows - 1 ? 1 : 0;
    }
  }
  return { columns, rows, sizeX, sizeY, basis, outer };
}

/** @param {Float32Array} plane @param {number} width @param {Grid} grid */
function cellsOf(plane, width, { columns, rows, sizeX, sizeY }) {
  const cells = new Float32Array(columns * rows);
  const all = new Float32Array(sizeX * sizeY);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      for (let y = 0, k = 0; y < sizeY; y++) for (let x = 0; x < sizeX; x++) all[k++] = plane[(j * sizeY + y) * width + i * sizeX + x];
      all.sort();
      let sum = 0;
      const [from, to] = [all.length >> 2, all.length - (all.length >> 2)];
      for (let k = from; k < to; k++) sum += all[k];
      cells[j * columns + i] = sum / (to - from);
    }
  }
  return cells;
}

/** Weights by what is left: little for what is darker than the ground, and for what is much brighter. @param {Float32Array} rests @param {Grid} grid @param {number} sign */
function weightsOf(rests, { outer }, sign) {
  const below = [];
  const middle = median(rests);
  for (let i = 0; i < rests.length; i++) if (!outer[i] && sign * (rests[i] - middle) < 0) below.push(rests[i] - middle);
  const sigma = Math.max(0.003, 1.4826 * Math.abs(median(below)));
  return Float32Array.from(rests, (rest, i) => {
    const t = (sign * rest) / sigma;
    const weight = t > 0 ? 1 / (1 + (t / 1.5) ** 4) : 1 / (1 + (t / 4) ** 4);
    return (outer[i] ? 0.05 : 1) * weight + 1e-4;
  });
}

/** @param {Float32Array} cells @param {Grid} grid @param {number} sign @param {number} rounds */
function polynomial(cells, grid, sign, rounds) {
  const n = grid.basis[0].length;
  /** @type {Float64Array} */
  let factors = new Float64Array(n);
  let weights = Float32Array.from(cells, (_, i) => (grid.outer[i] ? 0.05 : 1));
  const rests = new Float32Array(cells.length);
  for (let round = 0; round < rounds; round++) {
    const a = new Float64Array(n * n);
    const b = new Float64Array(n);
    for (let i = 0; i < cells.length; i++) {
      const terms = grid.basis[i];
      const weight = weights[i];
      for (let r = 0; r < n; r++) {
        const wr = weight * terms[r];
        b[r] += wr * cells[i];
        for (let c = 0; c <= r; c++) a[r * n + c] += wr * terms[c];
      }
    }
    for (let r = 0; r < n; r++) {
      a[r * n + r] += 1e-6;
      for (let c = r + 1; c < n; c++) a[r * n + c] = a[c * n + r];
    }
    factors = solve(a, b) ?? factors;
    for (let i = 0; i < cells.length; i++) rests[i] = cells[i] - dot(grid.basis[i], factors);
    weights = weightsOf(rests, grid, sign);
  }
  return { factors, rests, weights };
}

/** @param {Float64Array} a @param {Float64Array} b */
function dot(a, b) {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** What the polynomial leaves, smoothed with the same weights. @param {Float32Array} rests @param {Float32Array} weights @param {Grid} grid @param {number} sign */
function smoothed(rests, weights, grid, sign) {
  let smooth = new Float32Array(rests.length);
  for (let round = 0; round < 3; round++) {
    const top = blurred(Float32Array.from(rests, (rest, i) => rest * weights[i]), grid.columns, grid.rows, GROUND_WIDTH_MM / 2);
    const under = blurred(weights, grid.columns, grid.rows, GROUND_WIDTH_MM / 2);
    smooth = Float32Array.from(top, (value, i) => value / (under[i] + 0.02));
    weights = weightsOf(Float32Array.from(rests, (rest, i) => rest - smooth[i]), grid, sign);
  }
  return smooth;
}

/**
 * What is broad both ways, as the rim of a shadow or of a reflection is, by cells: an opening along the rows and one along the columns (see thin.js),
 * the lesser of both, raised by what they take from an empty plate.
 * @param {Float32Array} rests above the ground @param {Grid} grid
 */
function broadOf(rests, { columns, rows }) {
  const inner = Float32Array.from(rests, (_, i) => rests[clamp(Math.floor(i / columns), 1, rows - 2) * columns + clamp(i % columns, 1, columns - 2)]);
  const half = (BROAD_MM - 1) / 2;
  const along = opened(inner, columns, rows, half, 0);
  const least = opened(inner, columns, rows, 0, half).map((value, i) => Math.min(value, along[i]));
  const taken = median(least.map((value, i) => inner[i] - value));
  return blurred(least.map((value) => value + taken), columns, rows, 1);
}

/**
 * The ground of a plane.
 * @param {Field} field @param {Float32Array} plane @param {number} sign 1 where spots are darker, −1 where they are brighter
 * @param {((share: number, mm: number) => number) | null} [further] a term that jumps, known everywhere
 * @param {number} [rounds] how often the weights are found anew
 */
export function groundOf(field, plane, sign, further = null, rounds = 9) {
  const grid = gridOf(field, further);
  const cells = cellsOf(plane, field.width, grid);
  const { factors, rests, weights } = polynomial(cells, grid, sign, rounds);
  const jump = further ? factors[factors.length - 1] : 0;
  const smooth = smoothed(rests, weights, grid, sign);
  const broad = broadOf(rests.map((rest, i) => sign * (rest - smooth[i])), grid);
  const sums = Float32Array.from(cells, (cell, i) => cell - rests[i] + smooth[i] + sign * broad[i] - (further ? jump * grid.basis[i][factors.length - 1] : 0));
  return spread(sums, grid, field, jump, further);
}

/** Cells to pixels, bilinear, straight on at the rim. @param {Float32Array} sums @param {Grid} grid @param {Field} field @param {number} jump @param {((share: number, mm: number) => number) | null} further */
function spread(sums, { columns, rows, sizeX, sizeY }, { width, height, heightMm }, jump, further) {
  const out = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const v = (y + 0.5) / sizeY - 0.5;
    const j = clamp(Math.floor(v), 0, rows - 2);
    const fy = clamp(v - j, -0.6, 1.6);
    for (let x = 0; x < width; x++) {
      const u = (x + 0.5) / sizeX - 0.5;
      const i = clamp(Math.floor(u), 0, columns - 2);
      const fx = clamp(u - i, -0.6, 1.6);
      const at = j * columns + i;
      const value = (1 - fy) * ((1 - fx) * sums[at] + fx * sums[at + 1]) + fy * ((1 - fx) * sums[at + columns] + fx * sums[at + columns + 1]);
      out[y * width + x] = value + (further ? jump * further((x + 0.5) / width, heightMm * (1 - (y + 0.5) / height)) : 0);
    }
  }
  return out;
}
