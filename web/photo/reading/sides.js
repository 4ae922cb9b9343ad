// @ts-check
/** A side of the plate laid to a part of a pixel: at many places along it, where across it the colour changes most. */

import { robustLine } from "./numbers.js";

/** @typedef {{x: number, y: number}} Point @typedef {import("./small.js").Picture} Picture */

const PLACES = 120;

/**
 * @param {Picture} picture @param {Point} p one end, in pixels @param {Point} q the other @param {boolean} upright @param {number} reach how far the side may lie off, in pixels / 4
 * @returns {import("./edges.js").Line}
 */
export function sideDrawnIn(picture, p, q, upright, reach) {
  let line = through(p, q, upright, picture);
  for (const half of [Math.round(4 * reach) + 3, Math.round(1.6 * reach) + 3]) line = onceMore(picture, p, q, line, half) ?? line;
  return line;
}

/** @param {Point} p @param {Point} q @param {boolean} upright @param {Picture} picture */
function through(p, q, upright, { width, height }) {
  const slope = upright ? (q.x - p.x) / (q.y - p.y) : (q.y - p.y) / (q.x - p.x);
  const offset = upright ? p.x + slope * (height / 2 - p.y) : p.y + slope * (width / 2 - p.x);
  return { upright, slope, offset, votes: 0 };
}

/** @param {Picture} picture @param {Point} p @param {Point} q @param {import("./edges.js").Line} line @param {number} half */
function onceMore(picture, p, q, line, half) {
  const { upright } = line;
  const long = upright ? picture.height : picture.width;
  const [from, to] = upright ? [p.y, q.y] : [p.x, q.x];
  const size = 2 * half + 1;
  const cuts = Array.from({ length: PLACES }, (_, i) => {
    const t = from + ((to - from) * (i + 1.5)) / (PLACES + 2);
    return { t, u: line.offset + line.slope * (t - long / 2), values: new Float32Array(3 * size) };
  });
  const mean = [0, 0, 0];
  for (const cut of cuts) {
    cutAcross(picture, cut, upright, half);
    for (let c = 0; c < 3; c++) mean[c] += step(cut.values, c, size);
  }
  const length = Math.hypot(...mean) || 1;
  const towards = mean.map((each) => each / length);
  const [ts, us, weights] = [[], [], []].map(() => /** @type {number[]} */ ([]));
  const values = new Float32Array(size);
  for (const cut of cuts) {
    for (let k = 0; k < size; k++) values[k] = towards[0] * cut.values[k] + towards[1] * cut.values[size + k] + towards[2] * cut.values[2 * size + k];
    const place = steepest(values);
    if (!place) continue;
    ts.push(cut.t - long / 2);
    us.push(Math.round(cut.u) - half + place.at);
    weights.push(place.force);
  }
  const fit = ts.length > PLACES / 4 ? robustLine(ts, us, weights) : null;
  return fit && { upright, slope: fit.b, offset: fit.a, votes: 0 };
}

/** @param {Picture} picture @param {{t: number, u: number, values: Float32Array}} cut @param {boolean} upright @param {number} half */
function cutAcross({ width, height, data }, { t, u, values }, upright, half) {
  const size = 2 * half + 1;
  const along = Math.round(t);
  for (let k = 0; k < size; k++) {
    const across = Math.round(u) - half + k;
    for (let c = 0; c < 3; c++) values[c * size + k] = 0;
    for (let d = -1; d <= 1; d++) {
      const x = Math.min(Math.max(upright ? across : along + d, 0), width - 1);
      const y = Math.min(Math.max(upright ? along + d : across, 0), height - 1);
      const at = 4 * (y * width + x);
      for (let c = 0; c < 3; c++) values[c * size + k] += data[at + c] / 3;
    }
  }
}

/** The change from the one end of a cut to the other. @param {Float32Array} values @param {number} c @param {number} size */
function step(values, c, size) {
  const part = Math.max(2, Math.floor(size / 4));
  let sum = 0;
  for (let k = 0; k < part; k++) sum += values[c * size + size - 1 - k] - values[c * size + k];
  return sum / part;
}

/** Where a cut climbs most, between pixels by a parabola. @param {Float32Array} values */
function steepest(values) {
  const n = values.length;
  const reach = n > 16 ? 3 : 2;
  let best = -1;
  let most = 0;
  const climbs = new Float32Array(n);
  for (let k = reach; k < n - reach; k++) {
    let climb = 0;
    for (let d = 1; d <= reach; d++) climb += values[k + d] - values[k - d];
    climbs[k] = climb / reach;
    if (climbs[k] > most) [most, best] = [climbs[k], k];
  }
  if (best < reach + 1 || best > n - reach - 2) return null;
  const [a, b, c] = [climbs[best - 1], climbs[best], climbs[best + 1]];
  const bend = a - 2 * b + c;
  return { at: best + (bend < 0 ? (0.5 * (a - c)) / bend : 0), force: most };
}
