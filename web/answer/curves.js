// @ts-check
/** Reads the server's curves between their points: straight in ln(% + 1), never rebuilt from anything else. */

/**
 * @typedef {{rf: number, low: number, high: number}} At
 * @param {any} curves of /api/advice
 * @param {number} percent
 * @returns {{spots: Record<string, At>, chance: number, goal: number | undefined, smallestGap: number, smallestResolution: number | undefined}}
 */
export function curvesAt(curves, percent) {
  const { before, share } = between(curves.percentStrong, percent);
  const read = (/** @type {number[] | undefined} */ values) =>
    values?.length ? values[before] + share * (values[Math.min(before + 1, values.length - 1)] - values[before]) : undefined;
  /** @type {Record<string, At>} */
  const spots = {};
  for (const [name, curve] of Object.entries(/** @type {Record<string, any>} */ (curves.spots))) {
    spots[name] = { rf: read(curve.rf) ?? NaN, low: read(curve.low) ?? NaN, high: read(curve.high) ?? NaN };
  }
  return {
    spots,
    chance: read(curves.chance) ?? NaN,
    goal: read(curves.goal),
    smallestGap: read(curves.smallestGap) ?? NaN,
    smallestResolution: read(curves.smallestResolution),
  };
}

/** The point before a share of the strong solvent, and how far the share lies towards the next. @param {number[]} points @param {number} percent */
export function between(points, percent) {
  const held = Math.min(points[points.length - 1], Math.max(points[0], percent));
  let before = 0;
  for (let after = points.length - 1; after - before > 1; ) {
    const middle = (before + after) >> 1;
    if (points[middle] <= held) before = middle;
    else after = middle;
  }
  const next = Math.min(before + 1, points.length - 1);
  const step = Math.log(points[next] + 1) - Math.log(points[before] + 1);
  return { before, share: step > 0 ? (Math.log(held + 1) - Math.log(points[before] + 1)) / step : 0 };
}
