// @ts-check
/** Reads what the server sent along the share of the strong solvent: curves, clouds, and the share of equal strength, which may be missing. */

import { between } from "../../answer/curves.js";

/** @typedef {{rf: number, low?: number, high?: number, cloud?: number[]}} At where a compound is [Rf] */

/**
 * A value at a share; none where one of its neighbours is missing.
 * @param {number[]} points @param {(number | null)[]} values @param {number} percent
 */
export function valueAt(points, values, percent) {
  const { before, share } = between(points, percent);
  const low = values[before];
  const high = values[Math.min(before + 1, values.length - 1)];
  if (share === 0) return low ?? undefined;
  if (share === 1) return high ?? undefined;
  return low === null || high === null ? undefined : low + share * (high - low);
}

/**
 * Where each compound is at a share, with its cloud where that is shown.
 * @param {any} answer @param {number} percent @param {boolean} clouded
 * @returns {Record<string, At>}
 */
export function foretold({ curves, clouds }, percent, clouded) {
  /** @type {Record<string, At>} */
  const all = {};
  for (const [name, curve] of Object.entries(/** @type {Record<string, any>} */ (curves.spots))) {
    const read = (/** @type {number[]} */ values) => valueAt(curves.percentStrong, values, percent) ?? NaN;
    const cloud = clouded ? clouds?.spots[name].map((/** @type {number[]} */ sample) => valueAt(clouds.percentStrong, sample, percent)) : undefined;
    all[name] = { rf: read(curve.rf), low: read(curve.low), high: read(curve.high), cloud };
  }
  return all;
}
