// @ts-check
/** Spots of a lane: outlines that are broad across it too, each in the channel that shows it best. */

import { frontAt, rowOf, startAt } from "./field.js";
import { shareUp } from "./lanes.js";
import { clamp } from "./numbers.js";
import { RISE } from "./outlines.js";
import { crossing, darkening } from "./peaks.js";
import { shapeOf } from "./shapes.js";

/** @typedef {import("./relief.js").Relief} Relief @typedef {import("./lanes.js").Lane} Lane @typedef {import("./profile.js").Cut} Cut @typedef {import("./outlines.js").Outline} Outline */
/** @typedef {{lane: number, xMm: number, mm: number, rf: number, errorMm: number, sizeMm: number, widthMm: number, shape: import("./shapes.js").Shape, contrast: number}} Spot */

/** What is longer than this [mm] and fainter, or hardly more than the ground's blotches, is taken for the ground's; up to `round` [mm] not where spots put out the plate's own light, whose ground is even. */
const FAINT_LONG = { mm: 7, contrast: 0.14, round: 10, unrests: 6 };
/** Shortest and narrowest spot [mm, at half of its darkening]. */
export const SHORTEST_MM = 0.5;
/** What is shorter, narrower [mm, at a fifth of its darkening] and fainter than this is dirt. */
const SPECK = { mm: 1.15, widthMm: 1.25, contrast: 0.16 };
/** How far to each side a spot is followed that runs out of its lane [mm], and from what contrast on: a crescent does, and what is faint so far is the ground's. */
const WIDE = { mm: 8, contrast: 0.3 };
/** How far from the way of its lane a spot's middle may lie, and how near to start line or front what is flat is taken for the line [mm]. */
const OFF_LANE_MM = 1.5;
const BY_LINE_MM = 1.2;

/** Least contrast of what is proposed. */
const FAINTEST = 0.055;
/** A centre is never surer than this [mm]: what the ground and the straightening leave. */
const SUREST_MM = 0.08;

/**
 * How a spot looks across its lane; open: on how many sides its darkening does not fall to half.
 * @param {Relief} relief @param {Outline} outline @param {number} xMm @param {number} reachMm
 */
function across({ field, planes, hidden }, outline, xMm, reachMm) {
  const { width, height, perMmX } = field;
  const [first, last] = [Math.max(0, Math.round(rowOf(field, outline.up))), Math.min(height - 1, Math.round(rowOf(field, outline.down)))];
  const middle = Math.round(xMm * perMmX - 0.5);
  const reach = Math.round(reachMm * perMmX);
  const values = new Float64Array(2 * reach + 1);
  for (let d = -reach; d <= reach; d++) {
    const x = clamp(middle + d, 0, width - 1);
    let [sum, count] = [0, 0];
    for (let y = first; y <= last; y++) {
      if (hidden[y * width + x]) continue;
      sum += planes[outline.plane][y * width + x];
      count++;
    }
    values[d + reach] = count > 0 ? sum / count : 0;
  }
  const near = Math.round(1.2 * perMmX);
  let top = reach;
  const smooth = values.map((_, i) => (values[Math.max(0, i - 2)] + values[Math.max(0, i - 1)] + values[i] + values[Math.min(2 * reach, i + 1)] + values[Math.min(2 * reach, i + 2)]) / 5);
  for (let k = Math.max(0, reach - near); k <= Math.min(2 * reach, reach + near); k++) if (smooth[k] > smooth[top]) top = k;
  const curve = (/** @type {number} */ k) => smooth[k];
  const most = darkening(smooth[top]);
  const [left, right] = [crossing(curve, top, -1, 0, 0.5 * most), crossing(curve, top, 1, 2 * reach, 0.5 * most)];
  const [farLeft, farRight] = [crossing(curve, top, -1, 0, 0.2 * most), crossing(curve, top, 1, 2 * reach, 0.2 * most)];
  const open = (left === 0 ? 1 : 0) + (right === 2 * reach ? 1 : 0);
  return { xMm: (middle - reach + (left + right) / 2 + 0.5) / perMmX, halfMm: (right - left) / perMmX, widthMm: (farRight - farLeft) / perMmX, open };
}

/** What stands above the ground in the middle of a spot, over three quarters of a millimetre. @param {Relief} relief @param {Outline} outline @param {number} xMm */
function heightAt({ field, planes }, { plane, at }, xMm) {
  const [x, y] = [Math.round(xMm * field.perMmX - 0.5), Math.round(rowOf(field, at))];
  const reach = Math.max(1, Math.round(0.35 * field.perMmX));
  let [sum, count] = [0, 0];
  for (let v = Math.max(0, y - reach), end = Math.min(field.height - 1, y + reach); v <= end; v++) {
    for (let u = Math.max(0, x - reach), last = Math.min(field.width - 1, x + reach); u <= last; u++) {
      sum += planes[plane][v * field.width + u];
      count++;
    }
  }
  return count > 0 ? sum / count : 0;
}

/** @typedef {ReturnType<typeof across>} Sides */

/** Whether an outline is no spot by its size: a line, or dirt. @param {Outline} outline @param {Sides} sides */
function isLineOrDirt({ up, down, sizeMm, height }, { halfMm, widthMm, open }) {
  if (up - down < SHORTEST_MM || halfMm < SHORTEST_MM || open === 2) return true;
  return sizeMm < SPECK.mm && widthMm < SPECK.widthMm && darkening(height) < SPECK.contrast;
}

/** Whether an outline is of the ground: faint, or faint and long, or hardly more than the ground's blotches. @param {Outline} outline @param {Relief} relief */
function isGround({ height, sizeMm, plane }, { seen, unrest }) {
  const faint = darkening(height);
  if (faint < RISE.least - 0.005) return true;
  if (sizeMm <= FAINT_LONG.mm) return false;
  const blotchy = seen.length > 1;
  return (faint < FAINT_LONG.contrast && (blotchy || sizeMm > FAINT_LONG.round)) || (blotchy && height < FAINT_LONG.unrests * unrest[plane]);
}

/** Whether an outline is of a line, or beyond one. @param {Outline} outline @param {Sides} sides @param {number} rf @param {number} run [mm] */
function isAtLine({ up, down }, { open, halfMm }, rf, run) {
  const near = Math.min(Math.abs(rf), Math.abs(1 - rf)) * run < BY_LINE_MM;
  return rf < -0.03 || rf > 1.02 || (near && (open > 0 || halfMm > 3 * (up - down)));
}

/**
 * @param {Relief} relief @param {Outline} outline @param {{index: number, lane: Lane, cut: Cut, lines: import("./blobs.js").Lines}} of
 * @param {boolean} asked a person says there is a spot
 * @returns {Spot | null}
 */
export function spotOf(relief, outline, { index, lane, cut, lines }, asked = false) {
  const { widthMm } = relief.field;
  const { mm, sizeMm, height } = outline;
  const way = cut.xs[clamp(Math.round((mm - cut.fromMm) / cut.stepMm), 0, cut.count - 1)];
  const near = across(relief, outline, way, clamp(0.75 * lane.widthMm, 3, 7));
  const isWide = near.open === 2;
  const sides = isWide ? across(relief, outline, way, WIDE.mm) : near;
  const isOff = Math.abs(sides.xMm - way) >= OFF_LANE_MM;
  const xMm = isOff ? way : sides.xMm;
  const rf = shareUp(lines, widthMm, { xMm, mm });
  const share = clamp(xMm / widthMm, 0, 1);
  const run = frontAt(lines.front, share) - startAt(lines.start, share);
  const contrast = darkening(Math.max(height, heightAt(relief, outline, xMm)));
  const isBeside = isWide && (isOff || darkening(height) < WIDE.contrast);
  const isNone = isBeside || contrast < FAINTEST || isLineOrDirt(outline, sides) || isAtLine(outline, sides, rf, run) || isGround(outline, relief);
  if (isNone && !asked) return null;
  const shape = shapeOf(outline, run);
  const noisy = clamp((0.5 * (outline.up - outline.down)) / Math.max(outline.clear, 1), 0.03, 1.5);
  const errorMm = Math.sqrt(noisy ** 2 + SUREST_MM ** 2 + (shape === "streak" ? sizeMm ** 2 / 12 : shape === "merged" ? 0.3 ** 2 : 0));
  return { lane: index, xMm, mm, rf, errorMm, sizeMm, widthMm: sides.widthMm, shape, contrast };
}
