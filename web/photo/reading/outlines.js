// @ts-check
/** Outlines along a lane: peaks of its profiles, each as it is by itself. */

import { bellAt, bellsFitted } from "./bells.js";
import { rowOf } from "./field.js";
import { clamp } from "./numbers.js";
import { crossing, darkening, joined, peaksOf } from "./peaks.js";

/** @typedef {import("./relief.js").Relief} Relief @typedef {import("./profile.js").Cut} Cut @typedef {import("./profile.js").Signal} Signal @typedef {import("./peaks.js").Peak} Peak */
/** @typedef {{mm: number, sizeMm: number, low: number, high: number, at: number, height: number, clear: number, plane: number, shares: number, joined: boolean, down: number, up: number}} Outline */

/** Least prominence: over the noise; as density, on the ground and, where a top is as high as `high`, on the flank of something else; and as a share of the darkening of the top. */
export const RISE = { noises: 5, least: 0.04, high: 0.15, onFlank: 0.02, share: 0.05 };

/** A plateau is longer than this [mm]; its ripples are as deep as this share of its darkening. */
const PLATEAU = { longer: 10, ripple: 0.35 };
/** The rims of a ring are within this distance [mm]; on both sides of its middle, from `beside` to `reach` [mm], it is nearly as dark as they are, and darker than the middle by `filled` of what the middle lacks. */
const RING = { within: 6, ripple: 0.15, beside: 0.5, reach: 3, filled: 0.3 };

/** What the top of a peak has to rise above the valleys beside it. @param {number} height @param {number} noise */
const leastRise = (height, noise) => Math.max(RISE.noises * noise, height > RISE.high ? RISE.onFlank : RISE.least, Math.log1p(RISE.share * Math.expm1(height)));

/** @param {Signal} signal @param {Cut} cut @param {Relief} relief @param {number} [share] of what is usually asked of a peak @returns {Outline[]} */
export function outlinesOf(signal, cut, relief, share = 1) {
  const { noise } = signal;
  const values = signal.signal;
  const found = peaksOf(values, (height) => share * leastRise(height, noise));
  const peaks = joined(found, (p, q) => isPlateau(p, q, values, cut.stepMm) || isRing(p, q, signal, cut, relief));
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

/** Whether each is dark at more than half of the other's darkening. @param {Peak} p @param {Peak} q */
const areAlike = (p, q) => 2 * darkening(Math.min(p.height, q.height)) > darkening(Math.max(p.height, q.height));

/** @param {Peak} p @param {Peak} q @param {Float64Array} values @param {number} stepMm */
function isPlateau(p, q, values, stepMm) {
  if (!areAlike(p, q) || darkening(p.highValley) < (1 - PLATEAU.ripple) * darkening(Math.min(p.height, q.height))) return false;
  let [from, to] = [p.lowTop, q.highTop];
  while (from > 0 && values[from - 1] > 0.6 * p.highValley) from--;
  while (to < values.length - 1 && values[to + 1] > 0.6 * p.highValley) to++;
  return (to - from) * stepMm > PLATEAU.longer;
}

/** Whether, between two tops, it is dark on both sides. @param {Peak} p @param {Peak} q @param {Signal} signal @param {Cut} cut @param {Relief} relief */
function isRing(p, q, { plane, signal }, cut, relief) {
  if (!areAlike(p, q) || (q.at - p.at) * cut.stepMm > RING.within) return false;
  const [least, valley] = [Math.min(p.height, q.height), signal[p.to]];
  const asked = Math.max((1 - RING.ripple) * least, valley + RING.filled * (least - valley));
  return [-1, 1].every((way) => mostBeside(way, p.to, plane, cut, relief) >= asked);
}

/** The most beside the middle of a profile's point. @param {number} way −1: to the left, 1: to the right @param {number} k @param {number} plane @param {Cut} cut @param {Relief} relief */
function mostBeside(way, k, plane, cut, { field, smooth }) {
  const row = clamp(Math.round(rowOf(field, cut.fromMm + k * cut.stepMm)), 0, field.height - 1) * field.width;
  let most = 0;
  for (let mm = RING.beside; mm <= RING.reach; mm += 1 / field.perMmX) {
    const at = clamp(Math.round((cut.xs[k] + way * mm) * field.perMmX - 0.5), 0, field.width - 1);
    most = Math.max(most, smooth[plane][row + at]);
  }
  return most;
}

/** What each peak is by itself: the profile where it stands alone, a fitted bell where neighbours run into each other. @param {Peak[]} peaks @param {Float64Array} signal @param {number} stepMm */
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
