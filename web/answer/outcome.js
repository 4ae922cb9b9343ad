// @ts-check
/** What is to be expected at a ratio, whether it is the advised one or tried out. */

import { decimal } from "../numbers.js";
import { say } from "../texts.js";
import { curvesAt } from "./curves.js";

/**
 * @typedef {object} Outcome
 * @property {number} percent share of the stronger solvent, % v/v
 * @property {number} chance that all that is asked for comes about
 * @property {Record<string, import("./curves.js").At>} spots
 * @property {number | undefined} gap smallest expected distance between neighbours, in Rf; undefined for one spot
 * @property {number | undefined} resolution smallest expected resolution between neighbours, relative
 */

/** Whether an answer has curves to read from. @param {any} answer */
export const hasCurves = (answer) => Boolean(answer?.curves?.percentStrong?.length > 1 && answer.curves.chance?.length);

/**
 * @param {any} answer of /api/advice, with curves
 * @param {number | undefined} percent undefined for the advised ratio, whose chance the answer says itself
 * @returns {Outcome}
 */
export function outcomeAt(answer, percent) {
  const { advice, curves } = answer;
  const { spots, chance, goal, smallestGap, smallestResolution } = curvesAt(curves, percent ?? advice.percentStrong);
  const told = advice.probabilityGoal ?? advice.probabilityAllInWindow;
  return {
    percent: percent ?? advice.percentStrong,
    chance: percent === undefined ? told : (goal ?? chance),
    spots,
    gap: Number.isFinite(smallestGap) ? smallestGap : undefined,
    resolution: smallestResolution,
  };
}

/** A chance in plates of a hundred, without claiming none or all. @param {number} chance */
export function plates(chance) {
  const count = Math.round(100 * chance);
  if (count < 1) return say("page.plates-none");
  return count > 99 ? say("page.plates-all") : String(count);
}

/** Millilitres of each solvent for the amount on the sheet, undefined where that is no number. @param {string} amount @param {number} percent */
export function millilitres(amount, percent) {
  const total = decimal(amount);
  if (!(total !== undefined && total > 0)) return undefined;
  const decimals = total * Math.min(percent, 100 - percent) < 100 ? 2 : 1; // below 1 ml one measures finer
  const strong = Number(((total * percent) / 100).toFixed(decimals));
  return { weak: Number((total - strong).toFixed(decimals)), strong };
}

/** The measured pair an answer rests on, undefined until the library is there. @param {any} library @param {any} advice */
export function pairOf(library, advice) {
  return library?.pairs.find(
    (/** @type {any} */ pair) => pair.sorbent === advice.sorbent && pair.weak.id === advice.weak.id && pair.strong.id === advice.strong.id,
  );
}

/** Where a pair's curve can be trusted [%], within the shares asked for. @param {any} pair @param {number} first @param {number} last */
export function trustedOf(pair, first, last) {
  const from = Math.max(first, pair?.trustedFromPercent ?? first);
  const to = Math.min(last, pair?.trustedToPercent ?? last);
  return { from, to, partly: from > first || to < last };
}
