// @ts-check
/** Light: from the numbers of a picture to linear light (IEC 61966-2-1, sRGB), and by which light the plate was seen. */

import { quantile } from "./numbers.js";

/** @typedef {"uv-254" | "uv-366" | "daylight"} Light */

/** Linear light 0…1 of each number of a picture. */
export const LINEAR = Float32Array.from({ length: 256 }, (_, value) => (value <= 10 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4));

/**
 * Bright green is UV 254; dark is UV 366; else daylight.
 * @param {import("./small.js").Picture} picture @param {(x: number, y: number) => boolean} [inside] whether a place, in fractions, is to be looked at
 * @returns {Light}
 */
export function lightOf({ width, height, data }, inside = () => true) {
  const channels = [0, 1, 2].map(() => /** @type {number[]} */ ([]));
  const step = Math.max(1, Math.floor(Math.max(width, height) / 160));
  for (let y = step >> 1; y < height; y += step) {
    for (let x = step >> 1; x < width; x += step) {
      if (!inside(x / width, y / height)) continue;
      for (let c = 0; c < 3; c++) channels[c].push(LINEAR[data[4 * (y * width + x) + c]]);
    }
  }
  const [red, green, blue] = channels.map((values) => quantile(values, 0.6));
  if (green > 0.02 && green > 1.8 * red && green > 1.25 * blue) return "uv-254";
  return 0.3 * red + 0.6 * green + 0.1 * blue < 0.06 || (blue > 1.6 * green && green < 0.12) ? "uv-366" : "daylight";
}
