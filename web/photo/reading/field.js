// @ts-check
/** The plate as a field of optical density, −ln(light), of red, green and blue: what takes away a share of the light adds the same everywhere, however bright the light. */

import { LINEAR } from "./light.js";

/**
 * @typedef {object} Field rows from the upper edge down
 * @property {number} width pixels @property {number} height
 * @property {number} perMmX pixels a millimetre across @property {number} perMmY and upwards
 * @property {number} widthMm @property {number} heightMm
 * @property {Float32Array[]} planes densities by channel @property {Float32Array[]} lights linear light by channel
 */

/** Light that is always there (sensor, stray light); keeps the darkest from being all noise. */
const DARK = 0.003;

/** @param {import("./flat.js").Flat} flat @returns {Field} */
export function fieldOf({ width: across, height: down, data, widthMm, heightMm }) {
  const [width, height] = [across / 2, down / 2];
  const lights = [0, 1, 2].map(() => new Float32Array(width * height));
  const planes = lights.map((plane) => new Float32Array(plane.length));
  for (let y = 0, to = 0; y < height; y++) {
    for (let x = 0; x < width; x++, to++) {
      const at = 4 * (2 * y * across + 2 * x);
      const below = at + 4 * across;
      for (let c = 0; c < 3; c++) {
        const light = 0.25 * (LINEAR[data[at + c]] + LINEAR[data[at + 4 + c]] + LINEAR[data[below + c]] + LINEAR[data[below + 4 + c]]);
        lights[c][to] = light;
        planes[c][to] = -Math.log(light + DARK);
      }
    }
  }
  return { width, height, perMmX: width / widthMm, perMmY: height / heightMm, widthMm, heightMm, planes, lights };
}

/** The row of a height. @param {Field} field @param {number} mm */
export const rowOf = ({ heightMm, perMmY }, mm) => (heightMm - mm) * perMmY - 0.5;

/** The height of a row. @param {Field} field @param {number} row */
export const heightOf = ({ heightMm, perMmY }, row) => heightMm - (row + 0.5) / perMmY;

/** The height of a straight start line. @param {number[]} start left and right [mm] @param {number} share 0 at the left edge, 1 at the right */
export const startAt = ([left, right], share) => left + share * (right - left);

/** The height of a front: the parabola through three heights. @param {number[]} front left, middle, right [mm] @param {number} share */
export const frontAt = ([left, middle, right], share) => left * (1 - share) * (1 - 2 * share) + middle * 4 * share * (1 - share) + right * share * (2 * share - 1);
