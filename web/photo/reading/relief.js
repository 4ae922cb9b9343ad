// @ts-check
/** What stands out of the plate's ground: darkening by spots, with thin structures and glare taken out. */

import { frontAt } from "./field.js";
import { groundOf } from "./ground.js";
import { quantile, scatter } from "./numbers.js";
import { blurred } from "./small.js";
import { largest, linesOnly, opened, widened } from "./thin.js";

/** @typedef {import("./field.js").Field} Field @typedef {import("./light.js").Light} Light */
/**
 * @typedef {object} Relief
 * @property {Field} field
 * @property {Float32Array[]} planes red, green, blue, and their mean by what each is worth: density above the ground, positive at spots, thin structures taken out
 * @property {Float32Array[]} grounds of the same planes
 * @property {Float32Array} thin what is thin, positive where it is dark
 * @property {Float32Array} before the mean before anything thin was taken out
 * @property {Uint8Array} hidden places that say nothing: glare
 * @property {Float64Array} noise of each plane smoothed over half a millimetre
 * @property {Float64Array} unrest of each plane, the same over half a centimetre: how far its ground is blotchy
 * @property {number[]} seen which planes show anything
 * @property {Float32Array[]} smooth the planes smoothed for looking
 * @property {number} sign 1 where spots are darker than the ground, −1 where brighter
 */
/** @typedef {{field: Field, light: Light, sign: number, worth: number[], filled: Float32Array[], thin: Float32Array, before: Float32Array, hidden: Uint8Array}} Cleaned */

/** Half the width of what counts as thin, how far off something broad keeps it from counting, and how far around it is filled in from [mm]. */
export const THIN_HALF_MM = 0.36;
const BESIDE = 0.5;
const FILL = 0.5;
/** What is thin but round is a small spot and no line: its least and largest size [mm]. */
export const DOT = { least: 0.6, most: 1.8 };
/** Width of the smoothing before looking for spots [mm]. */
const LOOK = 0.45;

/** The field without what is thin; where glare hides it. @param {Field} field @param {Light} light @returns {Cleaned} */
export function cleaned(field, light) {
  const { width, height, perMmX, perMmY } = field;
  const sign = light === "uv-366" ? -1 : 1;
  const least = light === "uv-366" ? 0.002 : 0.01;
  const lit = field.lights.map((lights) => quantile(every(lights, 37), 0.5) > least);
  const first = field.planes.map((plane, c) => (lit[c] ? rest(plane, groundOf(field, plane, sign, null, 5), sign) : new Float32Array(plane.length)));
  const weights = first.map((plane, c) => (lit[c] ? 1 / (0.004 + noiseOf(smoothedFor(plane, field), field)) ** 2 : 0));
  const sum = weights.reduce((total, weight) => total + weight, 0) || 1;
  const worth = weights.map((weight) => (weight / sum > 0.02 ? weight / sum : 0));
  const before = mixed(first, worth);
  const halfX = Math.max(1, Math.round(THIN_HALF_MM * perMmX));
  const halfY = Math.max(1, Math.round(THIN_HALF_MM * perMmY));
  const { mask, thin } = thinOf(before, sign, field, halfX, halfY);
  const hidden = glareOf(field, first, worth, sign);
  const filled = field.planes.map((plane, c) => (sign < 0 || !worth[c] ? plane : filledIn(plane, first[c], mask, field)));
  return { field, light, sign, worth, filled, thin, before, hidden };
}

/** @param {Cleaned} clean @param {number[] | null} front where known, since the ground may change there @returns {Relief} */
export function reliefOf({ field, light, sign, worth, filled, thin, before, hidden }, front) {
  const above = front && ((/** @type {number} */ share, /** @type {number} */ mm) => 1 / (1 + Math.exp(-(mm - frontAt(front, share)) / 0.25)));
  const grounds = filled.map((plane, c) => (worth[c] ? groundOf(field, plane, sign, above) : new Float32Array(plane.length)));
  const planes = filled.map((plane, c) => (worth[c] ? rest(plane, grounds[c], sign) : new Float32Array(plane.length)));
  planes.push(mixed(planes, worth));
  grounds.push(mixed(grounds, worth));
  // Under UV 254 spots put out the green.
  const seen = light === "uv-254" ? [1] : worth.filter((each) => each > 0).length > 1 ? [0, 1, 2, 3].filter((c) => c === 3 || worth[c] > 0) : [0, 1, 2].filter((c) => worth[c] > 0);
  const smooth = planes.map((plane, c) => (seen.includes(c) ? smoothedFor(plane, field) : plane));
  const noise = Float64Array.from(smooth, (plane, c) => (seen.includes(c) ? noiseOf(plane, field) : 1));
  const unrest = Float64Array.from(smooth, (plane, c) => (seen.includes(c) ? noiseOf(plane, field, 5) : 1));
  return { field, planes, grounds, thin, before, hidden, noise, unrest, seen, smooth, sign };
}

/** @param {Float32Array} plane @param {Float32Array} ground @param {number} sign */
const rest = (plane, ground, sign) => plane.map((value, i) => sign * (value - ground[i]));

/** @param {Float32Array[]} planes @param {number[]} worth */
const mixed = (planes, worth) => planes[0].map((value, i) => worth[0] * value + worth[1] * planes[1][i] + worth[2] * planes[2][i]);

/** @param {Float32Array} plane @param {number} step */
const every = (plane, step) => Float32Array.from({ length: Math.floor(plane.length / step) }, (_, i) => plane[i * step]);

/** @param {Float32Array} plane @param {Field} field */
const smoothedFor = (plane, { width, height, perMmX, perMmY }) => blurred(plane, width, height, LOOK * perMmX, LOOK * perMmY);

/** Scatter of a smoothed plane about what lies to the left and right of each place. @param {Float32Array} smooth @param {Field} field @param {number} [apartMm] how far to the left and right */
function noiseOf(smooth, { width, height, perMmX }, apartMm = 1.6) {
  const apart = Math.min(Math.round(apartMm * perMmX), Math.floor(width / 3));
  const [columns, rows] = [Math.floor((width - 2 * apart) / 3), Math.floor(height / 4)];
  const rests = Float32Array.from({ length: columns * rows }, (_, i) => {
    const at = 4 * Math.floor(i / columns) * width + apart + 3 * (i % columns);
    return smooth[at] - 0.5 * (smooth[at - apart] + smooth[at + apart]);
  });
  return Math.max(0.0008, scatter(rests) / Math.sqrt(1.5));
}

/** @param {Float32Array} before @param {number} sign @param {Field} field @param {number} halfX @param {number} halfY */
function thinOf(before, sign, { width, height, perMmX, perMmY }, halfX, halfY) {
  const smooth = blurred(before.map((value) => sign * value), width, height, 0.6);
  const open = opened(smooth, width, height, halfX, halfY);
  const beside = largest(open, width, height, Math.round(BESIDE * perMmX), Math.round(BESIDE * perMmY));
  const thin = smooth.map((value, i) => value - open[i]);
  const some = every(thin, 11);
  const limit = quantile(some, 0.5) + 5 * scatter(some) + 0.01;
  const mask = Uint8Array.from(thin, (value, i) => (value > limit && value > 0.5 * Math.max(0, beside[i]) ? 1 : 0));
  const lines = linesOnly(mask, width, height, { least: DOT.least * perMmX, most: DOT.most * perMmX });
  return { thin, mask: widened(lines, width, height, 1) };
}

/** What is masked, by what lies around it. @param {Float32Array} plane @param {Float32Array} rests above a first ground @param {Uint8Array} mask @param {Field} field */
function filledIn(plane, rests, mask, { width, height, perMmX, perMmY }) {
  const open = Float32Array.from(mask, (masked) => 1 - masked);
  const sums = blurred(rests.map((value, i) => value * open[i]), width, height, FILL * perMmX, FILL * perMmY);
  const shares = blurred(open, width, height, FILL * perMmX, FILL * perMmY);
  return plane.map((value, i) => (mask[i] ? value - rests[i] + sums[i] / (shares[i] + 0.02) : value));
}

/** Reflections: brighter than the ground in every channel that shows something, in one much brighter or white; a millimetre about them. @param {Field} field @param {Float32Array[]} planes @param {number[]} worth @param {number} sign */
function glareOf({ width, height, perMmX, lights }, planes, worth, sign) {
  const mask = new Uint8Array(width * height);
  if (sign < 0) return mask;
  const smooth = planes.filter((_, c) => worth[c] > 0).map((plane) => blurred(plane, width, height, 1));
  for (let i = 0; i < mask.length; i++) {
    let least = Infinity;
    let most = -Infinity;
    for (const plane of smooth) {
      if (plane[i] < least) least = plane[i];
      if (plane[i] > most) most = plane[i];
    }
    const white = lights[0][i] > 0.93 && lights[1][i] > 0.93 && lights[2][i] > 0.93;
    if ((least < -0.2 && most < -0.05) || (white && least < -0.08)) mask[i] = 1;
  }
  return widened(mask, width, height, Math.round(0.8 * perMmX));
}
