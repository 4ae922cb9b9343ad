// @ts-check
/** The plate as seen from straight above: the perspective of four corners taken out. */

import { homography, mapped } from "./homography.js";

/** @typedef {{x: number, y: number}} Point @typedef {import("./small.js").Picture} Picture */
/** @typedef {{width: number, height: number, data: Uint8ClampedArray<ArrayBuffer>, perMm: number, widthMm: number, heightMm: number}} Flat the first row is the plate's upper edge; two of its pixels are one of the field */

/** Most pixels of the field a millimetre, and most of it upwards and across: two of the flat picture each. */
const DENSE = 6;
const MOST = 600;

/** Pixels of the field a millimetre. @param {number} widthMm @param {number} heightMm */
export const fieldDensity = (widthMm, heightMm) => Math.min(DENSE, MOST / Math.max(widthMm, heightMm));

/**
 * What speaks against four corners: they do not go round lower left, lower right, upper right, upper left, or hold too little.
 * @param {Point[]} corners in fractions @param {{width: number, height: number}} picture
 * @returns {"corners-crossed" | "corners-small" | null}
 */
export function cornersFault(corners, { width, height }) {
  const points = corners.map(({ x, y }) => ({ x: x * width, y: y * height }));
  if (points.length !== 4 || points.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) return "corners-crossed";
  const sides = points.map((p, i) => Math.hypot(points[(i + 1) % 4].x - p.x, points[(i + 1) % 4].y - p.y));
  const turns = points.map((p, i) => {
    const [q, r] = [points[(i + 1) % 4], points[(i + 2) % 4]];
    return (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x);
  });
  if (turns.some((turn) => !(turn < 0))) return sides.some((side) => side < 4) ? "corners-small" : "corners-crossed";
  const area = Math.abs(points.reduce((sum, p, i) => sum + p.x * points[(i + 1) % 4].y - points[(i + 1) % 4].x * p.y, 0)) / 2;
  return area < 0.01 * width * height || Math.min(...sides) < 40 ? "corners-small" : null;
}

/**
 * @param {Picture} picture @param {Point[]} corners in fractions, lower left first @param {number} widthMm @param {number} heightMm
 * @returns {Flat | null} null where the corners determine no map
 */
export function flatOf(picture, corners, widthMm, heightMm) {
  const perMm = 2 * fieldDensity(widthMm, heightMm);
  const [width, height] = [2 * Math.round((widthMm * perMm) / 2), 2 * Math.round((heightMm * perMm) / 2)];
  const plate = [{ x: 0, y: height }, { x: width, y: height }, { x: width, y: 0 }, { x: 0, y: 0 }];
  const map = homography(plate, corners.map(({ x, y }) => ({ x: x * picture.width - 0.5, y: y * picture.height - 0.5 })));
  if (!map) return null;
  const data = new Uint8ClampedArray(4 * width * height);
  const middle = mapped(map, { x: width / 2, y: height / 2 });
  const beside = mapped(map, { x: width / 2 + 1, y: height / 2 + 1 });
  const finer = Math.hypot(beside.x - middle.x, beside.y - middle.y) / Math.SQRT2 > 1.3 ? 2 : 1;
  fill(picture, map, { width, height, data }, finer);
  return { width, height, data, perMm, widthMm, heightMm };
}

/**
 * Each pixel as the mean of finer² places, each between four pixels of the picture (bilinear).
 * @param {Picture} picture @param {Float64Array} map @param {{width: number, height: number, data: Uint8ClampedArray}} flat @param {number} finer
 */
function fill({ width: across, height: down, data: from }, map, { width, height, data }, finer) {
  const share = 1 / (finer * finer);
  for (let row = 0, to = 0; row < height; row++) {
    for (let column = 0; column < width; column++, to += 4) {
      let red = 0;
      let green = 0;
      let blue = 0;
      for (let part = 0; part < finer * finer; part++) {
        const u = column + ((part % finer) + 0.5) / finer;
        const v = row + (Math.floor(part / finer) + 0.5) / finer;
        const depth = 1 / (map[6] * u + map[7] * v + map[8]);
        const x = Math.min(Math.max((map[0] * u + map[1] * v + map[2]) * depth, 0), across - 1.001);
        const y = Math.min(Math.max((map[3] * u + map[4] * v + map[5]) * depth, 0), down - 1.001);
        const i = x | 0;
        const j = y | 0;
        const fx = x - i;
        const fy = y - j;
        const at = 4 * (j * across + i);
        const below = at + 4 * across;
        const a = (1 - fx) * (1 - fy);
        const b = fx * (1 - fy);
        const c = (1 - fx) * fy;
        const d = fx * fy;
        red += a * from[at] + b * from[at + 4] + c * from[below] + d * from[below + 4];
        green += a * from[at + 1] + b * from[at + 5] + c * from[below + 1] + d * from[below + 5];
        blue += a * from[at + 2] + b * from[at + 6] + c * from[below + 2] + d * from[below + 6];
      }
      data[to] = red * share;
      data[to + 1] = green * share;
      data[to + 2] = blue * share;
      data[to + 3] = 255;
    }
  }
}
