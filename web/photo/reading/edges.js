// @ts-check
/**
 * Straight edges of a picture: each point votes, by the size and direction of its gradient, for the lines through it (Duda and Hart,
 * Comm. ACM 15 (1972) 11; direction used as by O'Gorman and Clowes 1976; from memory). Upright lines are x = offset + slope·(y −
 * height/2), level ones y = offset + slope·(x − width/2).
 */

import { robustLine } from "./numbers.js";

/** @typedef {{upright: boolean, offset: number, slope: number, votes: number}} Line */

const STEEPEST = 0.5;
const SLOPE_STEP = 0.02;
const SLOPES = 2 * Math.round(STEEPEST / SLOPE_STEP) + 1;
const OFFSET_STEP = 2;

/** @typedef {{upright: boolean, x: Float32Array, y: Float32Array, slope: Float32Array, weight: Float32Array, count: number}} Edges */

/**
 * Points where the colour changes most along its change, apart by direction.
 * @param {import("./small.js").Small} small
 */
function edgePoints({ width, height, planes }) {
  const size = width * height;
  const [gx, gy, force] = [new Float32Array(size), new Float32Array(size), new Float32Array(size)];
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      for (const p of planes) {
        const dx = p[at + 1] - p[at - 1];
        const dy = p[at + width] - p[at - width];
        const f = Math.sqrt(dx * dx + dy * dy);
        if (f > force[at]) {
          force[at] = f;
          gx[at] = dx;
          gy[at] = dy;
        }
      }
    }
  }
  const make = (/** @type {boolean} */ upright) => ({ upright, x: new Float32Array(size), y: new Float32Array(size), slope: new Float32Array(size), weight: new Float32Array(size), count: 0 });
  const [uprights, levels] = [make(true), make(false)];
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const f = force[at];
      if (f < 1.5) continue;
      const [dx, dy] = [gx[at], gy[at]];
      const isUpright = Math.abs(dx) > Math.abs(dy);
      const step = isUpright ? 1 : width;
      if (f < force[at - step] || f < force[at + step]) continue;
      const slope = isUpright ? -dy / dx : -dx / dy;
      if (Math.abs(slope) > STEEPEST + 0.15) continue;
      const edges = isUpright ? uprights : levels;
      const k = edges.count++;
      edges.x[k] = x;
      edges.y[k] = y;
      edges.slope[k] = slope;
      edges.weight[k] = Math.min(f, 12) ** 0.7;
    }
  }
  return [uprights, levels];
}

/** The lines with most votes, each set apart from the others. @param {import("./small.js").Small} small @param {number} most of each direction @returns {{uprights: Line[], levels: Line[]}} */
export function linesOf(small, most) {
  const [uprights, levels] = edgePoints(small);
  return { uprights: voted(uprights, small.width, small.height, most), levels: voted(levels, small.height, small.width, most) };
}

/** @param {Edges} edges @param {number} wide extent across the lines @param {number} long extent along them @param {number} most @returns {Line[]} */
function voted(edges, wide, long, most) {
  const margin = Math.ceil(0.3 * long);
  const offsets = Math.ceil((wide + 2 * margin) / OFFSET_STEP) + 1;
  const votes = new Float32Array(SLOPES * offsets);
  const [across, along] = edges.upright ? [edges.x, edges.y] : [edges.y, edges.x];
  for (let i = 0; i < edges.count; i++) {
    const t = along[i] - long / 2;
    const middle = Math.round(edges.slope[i] / SLOPE_STEP) + (SLOPES - 1) / 2;
    for (let s = Math.max(0, middle - 5), end = Math.min(SLOPES - 1, middle + 5); s <= end; s++) {
      const slope = (s - (SLOPES - 1) / 2) * SLOPE_STEP;
      const bin = Math.round((across[i] - slope * t + margin) / OFFSET_STEP);
      if (bin > 0 && bin < offsets - 1) votes[s * offsets + bin] += edges.weight[i];
    }
  }
  const lines = [];
  while (lines.length < most) {
    let best = 0;
    for (let i = 1; i < votes.length; i++) if (votes[i] > votes[best]) best = i;
    if (!(votes[best] > 12)) break;
    const [s, bin] = [Math.floor(best / offsets), best % offsets];
    const rough = { upright: edges.upright, slope: (s - (SLOPES - 1) / 2) * SLOPE_STEP, offset: bin * OFFSET_STEP - margin, votes: votes[best] };
    lines.push(drawnIn(rough, edges, across, along, long));
    for (let t = Math.max(0, s - 4); t <= Math.min(SLOPES - 1, s + 4); t++) {
      for (let b = Math.max(0, bin - 3); b <= Math.min(offsets - 1, bin + 3); b++) votes[t * offsets + b] = 0;
    }
  }
  return lines;
}

/** A line laid through the points near it. @param {Line} line @param {Edges} edges @param {Float32Array} across @param {Float32Array} along @param {number} long */
function drawnIn(line, edges, across, along, long) {
  const [ts, us, weights] = [[], [], []].map(() => /** @type {number[]} */ ([]));
  for (let i = 0; i < edges.count; i++) {
    const t = along[i] - long / 2;
    if (Math.abs(across[i] - line.offset - line.slope * t) > 3.5 || Math.abs(edges.slope[i] - line.slope) > 0.15) continue;
    ts.push(t);
    us.push(across[i]);
    weights.push(edges.weight[i]);
  }
  const fit = ts.length > 8 ? robustLine(ts, us, weights) : null;
  return fit && Math.abs(fit.b - line.slope) < 0.06 ? { ...line, offset: fit.a, slope: fit.b } : line;
}
