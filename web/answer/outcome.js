// @ts-check
/** What is to be expected at a ratio, whether it is the advised one or tried out. */

import { say } from "../texts.js";
import { curvesAt } from "./curves.js";

/**
 * @typedef {object} Outcome
 * @property {number} percent share of the stronger solvent, % v/v
 * @property {number} chance that all that is asked for comes about
 * @property {number} inWindow chance that all spots lie in the window
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
  const advised = percent === undefined || percent === advice.percentStrong;
  const inWindow = advised ? advice.probabilityAllInWindow : chance;
  return {
    percent: percent ?? advice.percentStrong,
    chance: advised ? (advice.probabilityGoal ?? inWindow) : (goal ?? chance),
    inWindow,
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

/** The smallest step of what is measured with, in ml, as the server takes it where none is named. */
const GRADUATION = /** @type {Record<string, number>} */ ({ bench: 0.1, class: 0.1, automated: 0.01 });

/** Millilitres of each solvent at a ratio, for the amount that the advice pours. @param {any} advice @param {string} setting @param {number} percent */
export function millilitres(advice, setting, percent) {
  const { weakMl, strongMl } = advice.pour;
  if (percent === advice.percentStrong) return { weak: weakMl, strong: strongMl };
  const step = GRADUATION[setting];
  const measured = (/** @type {number} */ ml) => Number((Math.round(ml / step) * step).toFixed(2));
  return { weak: measured(((weakMl + strongMl) * (100 - percent)) / 100), strong: measured(((weakMl + strongMl) * percent) / 100) };
}

/** Where a pair's curve can be trusted [%], within the shares asked for. @param {any} pair @param {number} first @param {number} last */
export function trustedOf(pair, first, last) {
  const from = Math.max(first, pair?.trustedFromPercent ?? first);
  const to = Math.min(last, pair?.trustedToPercent ?? last);
  return { from, to, partly: from > first || to < last };
}
