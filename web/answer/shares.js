// @ts-check
/** Shares of the stronger solvent that are sensible to try, and the simple ratios that pour them. */

import { marked, say } from "../texts.js";

/** Weak : strong, as poured in practice: small whole parts, finer where little of the strong solvent is in them. */
const PARTS = [
  [200, 1], [100, 1], [99, 1], [80, 1], [60, 1], [50, 1], [49, 1], [40, 1], [30, 1], [25, 1], [24, 1], [20, 1], [19, 1],
  [15, 1], [12, 1], [10, 1], [9, 1], [8, 1], [7, 1], [6, 1], [17, 3], [5, 1], [9, 2], [4, 1], [7, 2], [3, 1], [5, 2], [7, 3],
  [2, 1], [13, 7], [3, 2], [4, 3], [11, 9], [1, 1], [9, 11], [3, 4], [2, 3], [7, 13], [1, 2], [3, 7], [2, 5], [1, 3], [1, 4],
  [3, 17], [1, 5], [1, 7], [1, 9], [1, 19],
];

/** How far a ratio may lie from a share and still stand for it, as a part of that share. */
const NEAR = 0.01;

/** Below this, steps are halves of a per cent; above, whole ones. */
const FINE_UP_TO = 10;

/** The simple ratio nearest to a share [%], undefined where none is near. @param {number} percent */
export function handyRatio(percent) {
  /** @type {{weak: number, strong: number, percent: number} | undefined} */
  let best;
  for (const [weak, strong] of PARTS) {
    const share = (100 * strong) / (weak + strong);
    if (!best || Math.abs(share - percent) < Math.abs(best.percent - percent)) best = { weak, strong, percent: share };
  }
  return best && Math.abs(best.percent - percent) <= NEAR * percent ? best : undefined;
}

/**
 * A share as the ratio one pours: "7 : 3", "about 2 : 1", "pure hexane"; undefined where no simple one is near.
 * @param {number} percent
 * @param {{weak: {name: string}, strong: {name: string}}} advice
 */
export function ratioOf(percent, advice) {
  if (percent <= 0) return say("page.pure", { solvent: advice.weak.name });
  if (percent >= 100) return say("page.pure", { solvent: advice.strong.name });
  const handy = handyRatio(percent);
  if (!handy) return undefined;
  const ratio = `${handy.weak} : ${handy.strong}`;
  return Math.abs(handy.percent - percent) < 0.005 ? ratio : say("page.ratio-near", { ratio });
}

/** A share without decimals that mean nothing. @param {number} percent */
export const readable = (percent) => Number(percent.toFixed(percent < FINE_UP_TO ? 1 : 0));

/** A share as it is read, with the mark of the language. @param {number} percent */
export const shareText = (percent) => marked(String(readable(percent)));

/**
 * The shares a slider stops at, in order: halves of a per cent to 10, whole ones above, and one more, the advised.
 * @param {number} from @param {number} to @param {number} advised
 */
export function stopsBetween(from, to, advised) {
  const stops = [from, to, advised];
  for (let half = 1; half <= 2 * FINE_UP_TO; half++) stops.push(half / 2);
  for (let whole = FINE_UP_TO + 1; whole < to; whole++) stops.push(whole);
  return [...new Set(stops.filter((stop) => stop >= from && stop <= to))].sort((a, b) => a - b);
}

/** The stop nearest on the slider's scale. @param {number[]} stops @param {number} percent */
export function nearestStop(stops, percent) {
  const way = (/** @type {number} */ stop) => Math.abs(Math.log1p(stop) - Math.log1p(percent));
  return stops.reduce((best, stop) => (way(stop) < way(best) ? stop : best));
}

/** So many stops further, held at the ends. @param {number[]} stops @param {number} percent @param {number} steps */
export function stopsFurther(stops, percent, steps) {
  const at = stops.indexOf(nearestStop(stops, percent));
  return stops[Math.min(stops.length - 1, Math.max(0, at + steps))];
}
