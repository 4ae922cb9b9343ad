// @ts-check
/** Lanes from what stands out: upright rows of spots, which may all lean one way, at distances that are mostly alike. */

import { frontAt, startAt } from "./field.js";
import { clamp, median } from "./numbers.js";

/** @typedef {import("./blobs.js").Blob} Blob @typedef {{startXMm: number, frontXMm: number, widthMm: number}} Lane */

/** How far rows lean at most and usually, from start to front, and how close two of them are [mm]. */
const LEAN = { most: 5, usual: 2 };
const APART_LEAST = 2.6;

/** How far up between start (0) and front (1). @param {import("./blobs.js").Lines} lines @param {number} widthMm @param {{xMm: number, mm: number}} place */
export function shareUp({ start, front }, widthMm, { xMm, mm }) {
  const share = clamp(xMm / widthMm, 0, 1);
  const foot = startAt(start, share);
  return (mm - foot) / (frontAt(front, share) - foot);
}

/** The middle of a lane at a share of the way up. @param {Lane} lane @param {number} share */
export const middleAt = ({ startXMm, frontXMm }, share) => startXMm + share * (frontXMm - startXMm);

/** @param {Blob[]} blobs @param {import("./blobs.js").Lines} lines @param {number} widthMm @returns {Lane[]} */
export function lanesOf(blobs, lines, widthMm) {
  const places = blobs.map((blob) => ({ x: blob.xMm, up: shareUp(lines, widthMm, blob), weight: Math.min(1, blob.clear / 12) }));
  if (places.length === 0) return [];
  const lean = leanOf(places);
  const footed = places.map(({ x, up, weight }) => ({ x: x - lean * up, weight })).sort((p, q) => p.x - q.x);
  const middles = rowsOf(footed, widthMm);
  const gaps = middles.slice(1).map((x, i) => x - middles[i]);
  const usual = gaps.length > 0 ? median(gaps) : Math.min(8, widthMm / 2);
  const lane = clamp(0.8 * usual, 2.5, 10);
  return middles.map((x) => ({ startXMm: clamp(x, 0, widthMm), frontXMm: clamp(x + lean, 0, widthMm), widthMm: lane }));
}

/** How far all rows lean from start to front: so that the places of the rows lie closest together, and not far without need. @param {{x: number, up: number, weight: number}[]} places */
function leanOf(places) {
  let best = { lean: 0, value: 0 };
  for (let lean = -LEAN.most; lean <= LEAN.most; lean += 0.25) {
    let value = 0;
    for (let i = 0; i < places.length; i++) {
      for (let j = 0; j < i; j++) {
        const d = places[i].x - places[j].x - lean * (places[i].up - places[j].up);
        value += places[i].weight * places[j].weight * Math.exp((-d * d) / 0.9);
      }
    }
    value *= Math.exp(-0.5 * (lean / LEAN.usual) ** 2);
    if (value > best.value) best = { lean, value };
  }
  return best.lean;
}

/** Tops of the crowd of places. @param {{x: number, weight: number}[]} places @param {number} widthMm */
function rowsOf(places, widthMm) {
  const step = 0.1;
  const crowd = Float64Array.from({ length: Math.ceil(widthMm / step) + 1 }, (_, i) => places.reduce((sum, { x, weight }) => sum + weight * Math.exp(-((i * step - x) ** 2) / (2 * 0.9 * 0.9)), 0));
  const tops = [];
  for (let i = 1; i < crowd.length - 1; i++) if (crowd[i] > crowd[i - 1] && crowd[i] >= crowd[i + 1] && crowd[i] > 0.3) tops.push({ x: i * step, value: crowd[i] });
  tops.sort((p, q) => q.value - p.value);
  /** @type {{x: number, value: number}[]} */
  const kept = [];
  for (const top of tops) if (kept.every(({ x }) => Math.abs(x - top.x) >= APART_LEAST)) kept.push(top);
  const xs = kept.map(({ x }) => x).sort((p, q) => p - q);
  return xs.map((x) => middleOf(places.filter((place) => Math.abs(place.x - x) < 1.8), x));
}

/** @param {{x: number, weight: number}[]} places @param {number} otherwise */
function middleOf(places, otherwise) {
  const sum = places.reduce((total, { weight }) => total + weight, 0);
  return sum > 0 ? places.reduce((total, { x, weight }) => total + weight * x, 0) / sum : otherwise;
}
