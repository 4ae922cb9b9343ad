// @ts-check
/** Spots of a lane: peaks of its profiles that are broad both ways, each in the channel that shows it best. */

import { bellAt, bellsFitted } from "./bells.js";
import { frontAt, rowOf, startAt } from "./field.js";
import { shareUp } from "./lanes.js";
import { clamp } from "./numbers.js";
import { crossing, darkening, joined, peaksOf } from "./peaks.js";
import { shapeOf } from "./shapes.js";

/** @typedef {import("./relief.js").Relief} Relief @typedef {import("./lanes.js").Lane} Lane @typedef {import("./profile.js").Cut} Cut @typedef {import("./profile.js").Signal} Signal */
/** @typedef {{mm: number, sizeMm: number, low: number, high: number, at: number, height: number, clear: number, plane: number, shares: number, joined: boolean, down: number, up: number}} Outline */
/** @typedef {{lane: number, xMm: number, mm: number, rf: number, errorMm: number, sizeMm: number, widthMm: number, shape: import("./shapes.js").Shape, contrast: number}} Spot */

/** Least prominence: over the noise, as darkening, and as a share of the top. */
export const RISE = { noises: 5, least: 0.04, share: 0.05 };
/** What is longer than this [mm] and fainter, or hardly more than the ground's blotches, is taken for the ground's; up to `round` [mm] not where spots put out the plate's own light, whose ground is even. */
const FAINT_LONG = { mm: 7, contrast: 0.14, round: 10, unrests: 6 };
/** Shortest and narrowest spot [mm, at half of its darkening]. */
export const SHORTEST_MM = 0.5;

/** Least contrast of what is proposed. */
const FAINTEST = 0.045;
/** A centre is never surer than this [mm]: what the ground and the straightening leave. */
const SUREST_MM = 0.08;

/** A plateau is longer than this [mm]; its ripples are as deep as this share of it, those of a ring's rims too, within this distance [mm]. */
const PLATEAU = { longer: 6, ripple: 0.35 };
const RING = { ripple: 0.15, within: 6, beside: 0.5 };

/** @param {Signal} signal @param {Cut} cut @param {Relief} relief @param {number} [share] of what is usually asked of a peak @returns {Outline[]} */
export function outlinesOf(signal, cut, relief, share = 1) {
  const { noise } = signal;
  const values = signal.signal;
  const found = peaksOf(values, (height) => share * Math.max(RISE.noises * noise, RISE.least, RISE.share * height));
  const peaks = joined(found, (p, q) => isPlateau(p, q, values, cut.stepMm) || isRing(p, q, signal.plane, cut, relief));
  const curves = curvesOf(peaks, values, cut.stepMm);
  return peaks.map((peak, i) => {
    const { curve, from, to, top, fitted } = curves[i];
    const most = darkening(curve(top));
    const [lowTop, highTop] = fitted ? [top, top] : [peak.lowTop, peak.highTop];
    const [down, up] = [crossing(curve, lowTop, -1, from, 0.5 * most), crossing(curve, highTop, 1, to, 0.5 * most)];
    const [low, high] = [crossing(curve, lowTop, -1, from, 0.2 * most), crossing(curve, highTop, 1, to, 0.2 * most)];
    const mm = (/** @type {number} */ k) => cut.fromMm + k * cut.stepMm;
    return { mm: mm((down + up) / 2), sizeMm: (high - low) * cut.stepMm, low: mm(low), high: mm(high), down: mm(down), up: mm(up), at: mm(top), height: curve(top), clear: peak.rise / noise, plane: signal.plane, shares: peak.rise / peak.height, joined: fitted };
  });
}

/** @param {import("./peaks.js").Peak} p @param {import("./peaks.js").Peak} q @param {Float64Array} values @param {number} stepMm */
function isPlateau(p, q, values, stepMm) {
  const least = Math.min(p.height, q.height);
  if (p.highValley < (1 - PLATEAU.ripple) * least) return false;
  let [from, to] = [p.lowTop, q.highTop];
  while (from > 0 && values[from - 1] > 0.6 * p.highValley) from--;
  while (to < values.length - 1 && values[to + 1] > 0.6 * p.highValley) to++;
  return (to - from) * stepMm > PLATEAU.longer + 4;
}

/** Whether, between two tops, it is on both sides as dark as at the tops. @param {import("./peaks.js").Peak} p @param {import("./peaks.js").Peak} q @param {number} plane @param {Cut} cut @param {Relief} relief */
function isRing(p, q, plane, cut, relief) {
  if ((q.at - p.at) * cut.stepMm > RING.within) return false;
  const { field, smooth } = relief;
  const sides = (/** @type {number} */ k) => {
    const row = clamp(Math.round(rowOf(field, cut.fromMm + k * cut.stepMm)), 0, field.height - 1) * field.width;
    const x = cut.xs[k] * field.perMmX - 0.5;
    const most = [0, 0];
    for (let d = RING.beside; d <= 3; d += 1 / field.perMmX) {
      for (const way of [0, 1]) {
        const at = clamp(Math.round(x + (way === 0 ? -d : d) * field.perMmX), 0, field.width - 1);
        most[way] = Math.max(most[way], smooth[plane][row + at]);
      }
    }
    return most;
  };
  const valley = sides(p.to);
  return Math.min(...valley) >= (1 - RING.ripple) * Math.min(p.height, q.height);
}

/** What each peak is by itself: the profile where it stands alone, a fitted bell where neighbours run into each other. @param {import("./peaks.js").Peak[]} peaks @param {Float64Array} signal @param {number} stepMm */
function curvesOf(peaks, signal, stepMm) {
  const own = peaks.map((peak) => ({ curve: (/** @type {number} */ k) => signal[clamp(Math.round(k), 0, signal.length - 1)], from: peak.from, to: peak.to, top: peak.at, fitted: false }));
  for (let i = 0; i < peaks.length; ) {
    let j = i;
    while (j + 1 < peaks.length && peaks[j].highValley > 0.12 * Math.min(peaks[j].height, peaks[j + 1].height)) j++;
    if (j > i) {
      const group = peaks.slice(i, j + 1);
      const [from, to] = [group[0].from, group[group.length - 1].to];
      const first = group.map((peak) => ({ height: peak.height, at: peak.at, below: 1 / stepMm, above: 1 / stepMm }));
      const { bells } = bellsFitted(signal.subarray(from, to + 1), from, first, { narrowest: 0.35 / stepMm, widest: 5 / stepMm });
      bells.forEach((bell, k) => {
        if (Math.abs(bell.at - group[k].at) * stepMm > 1.2 || bell.height < 0.3 * group[k].height) return;
        own[i + k] = { curve: (t) => bellAt(bell, t), from: Math.round(bell.at - 4 * bell.below), to: Math.round(bell.at + 4 * bell.above), top: Math.round(bell.at), fitted: true };
      });
    }
    i = j + 1;
  }
  return own;
}

/** Of the outlines of all planes, each spot once: that which is clearest. @param {Outline[]} outlines */
export function eachOnce(outlines) {
  /** @type {Outline[]} */
  const kept = [];
  for (const outline of [...outlines].sort((p, q) => q.clear - p.clear)) {
    const isNew = kept.every((other) => Math.abs(other.mm - outline.mm) > Math.max(0.8, 0.35 * Math.min(other.sizeMm, outline.sizeMm)) && (outline.at > other.up + 0.3 || outline.at < other.down - 0.3));
    if (isNew) kept.push(outline);
  }
  return kept.sort((p, q) => p.mm - q.mm);
}

/**
 * How a spot looks across its lane: null where it is a line and no spot.
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

/**
 * @param {Relief} relief @param {Outline} outline @param {{index: number, lane: Lane, cut: Cut, lines: import("./blobs.js").Lines}} of
 * @param {boolean} asked a person says there is a spot
 * @returns {Spot | null}
 */
export function spotOf(relief, outline, { index, lane, cut, lines }, asked = false) {
  const { widthMm } = relief.field;
  const { start, front } = lines;
  const k = clamp(Math.round((outline.mm - cut.fromMm) / cut.stepMm), 0, cut.count - 1);
  const sides = across(relief, outline, cut.xs[k], clamp(0.75 * lane.widthMm, 3, 7));
  const isLine = outline.up - outline.down < SHORTEST_MM || sides.halfMm < SHORTEST_MM || sides.open === 2;
  if (isLine && !asked) return null;
  const xMm = Math.abs(sides.xMm - cut.xs[k]) < 1.5 ? sides.xMm : cut.xs[k];
  const place = { xMm, mm: outline.mm };
  const rf = shareUp(lines, widthMm, place);
  const share = clamp(xMm / widthMm, 0, 1);
  const run = frontAt(front, share) - startAt(start, share);
  const byLine = Math.min(Math.abs(rf), Math.abs(1 - rf)) * run < 1.2;
  if (!asked && (rf < -0.03 || rf > 1.02 || (byLine && (sides.open > 0 || sides.halfMm > 3 * (outline.up - outline.down))))) return null;
  const shape = shapeOf(outline, run);
  const length = outline.up - outline.down;
  const seen = darkening(outline.height);
  const blotchy = relief.seen.length > 1;
  const isGround = outline.sizeMm > FAINT_LONG.mm && ((seen < FAINT_LONG.contrast && (blotchy || outline.sizeMm > FAINT_LONG.round)) || (blotchy && outline.height < FAINT_LONG.unrests * relief.unrest[outline.plane]));
  if (!asked && (seen < RISE.least - 0.005 || isGround)) return null;
  const contrast = darkening(Math.max(outline.height, heightAt(relief, outline, xMm)));
  if (!asked && contrast < FAINTEST) return null;
  const noisy = clamp((0.5 * length) / Math.max(outline.clear, 1), 0.03, 1.5);
  const errorMm = Math.sqrt(noisy ** 2 + SUREST_MM ** 2 + (shape === "streak" ? outline.sizeMm ** 2 / 12 : shape === "merged" ? 0.3 ** 2 : 0));
  return { lane: index, xMm, mm: outline.mm, rf, errorMm, sizeMm: outline.sizeMm, widthMm: sides.widthMm, shape, contrast };
}
