// @ts-check
/** What a spot's outline along its lane says of it. */

/** @typedef {"compact" | "streak" | "sharp-head" | "merged"} Shape */

/** A streak is longer than this [mm], or than this share of the run. */
export const LONG = { mm: 8, share: 0.25 };
/** How many times as long one way as the other, from the top to a fifth of it. */
export const TAIL = 2.2;

/** @param {import("./outlines.js").Outline} outline @param {number} run start line to front [mm] @returns {Shape} */
export function shapeOf({ low, high, at, sizeMm, joined, shares }, run) {
  if (sizeMm > LONG.mm || sizeMm > LONG.share * run) return "streak";
  const [below, above] = [at - low, high - at];
  if (below > TAIL * above && sizeMm > 3) return "sharp-head";
  if (above > TAIL * below && sizeMm > 3) return "streak";
  return joined && shares < 0.25 ? "merged" : "compact";
}
