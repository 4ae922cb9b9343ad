// @ts-check
/**
 * The projective map between two planes from four points, by the direct linear transform (Hartley and Zisserman, Multiple View
 * Geometry in Computer Vision, 2nd edition 2004, chapter 4, from memory): with four points its eight unknowns are determined.
 */

import { solve } from "./numbers.js";

/** @typedef {{x: number, y: number}} Point @typedef {Float64Array} Map3 nine numbers by rows, the last is 1 */

/** The map that takes each point of `from` to that of `to`; null where three of them lie in a line. @param {Point[]} from @param {Point[]} to @returns {Map3 | null} */
export function homography(from, to) {
  const a = new Float64Array(64);
  const b = new Float64Array(8);
  for (let i = 0; i < 4; i++) {
    const { x, y } = from[i];
    const { x: u, y: v } = to[i];
    a.set([x, y, 1, 0, 0, 0, -u * x, -u * y], 16 * i);
    a.set([0, 0, 0, x, y, 1, -v * x, -v * y], 16 * i + 8);
    b[2 * i] = u;
    b[2 * i + 1] = v;
  }
  const found = solve(a, b);
  return found && Float64Array.of(...found, 1);
}

/** @param {Map3} map @param {Point} point @returns {Point} */
export function mapped(map, { x, y }) {
  const depth = map[6] * x + map[7] * y + map[8];
  return { x: (map[0] * x + map[1] * y + map[2]) / depth, y: (map[3] * x + map[4] * y + map[5]) / depth };
}

/** The map back. @param {Map3} map @returns {Map3} */
export function inverse([a, b, c, d, e, f, g, h, i]) {
  const back = [e * i - f * h, c * h - b * i, b * f - c * e, f * g - d * i, a * i - c * g, c * d - a * f, d * h - e * g, b * g - a * h, a * e - b * d];
  return Float64Array.from(back, (each) => each / back[8]);
}
