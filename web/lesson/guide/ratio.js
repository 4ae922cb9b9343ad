// @ts-check
/** The ratio with which the later steps begin: one that somebody pulled spots into the window with, else the advised one. */

import { decimal } from "../../numbers.js";
import { told } from "../ask.js";
import { heldTo, reachOf } from "../ratio.js";
import { readyOf } from "../ready.js";
import { seriesQuestion } from "../series/ask.js";
import { foretold } from "../series/read.js";
import { LEFT } from "./steps.js";

/** @typedef {import("../state.js").State} State */

/** What one begins with where nothing is advised yet [% v/v]. */
const USUAL = "20";

/** The share as it is to be entered; undefined where what stands there may stay. @param {State} state @returns {string | undefined} */
export function withSpotsInTheWindow(state) {
  const { lesson } = state;
  const { answer, current } = told(state, seriesQuestion(state));
  if (!answer || !current) return decimal(lesson.percent) === undefined || LEFT.includes(lesson.percent.trim()) ? (readyOf(lesson)?.percent ?? USUAL) : undefined;
  const advised = answer.best.percentStrong;
  const there = inTheWindow(answer, heldTo(reachOf(answer), lesson.percent));
  return there > 0 && there >= inTheWindow(answer, advised) ? undefined : String(Number(advised.toFixed(2)));
}

/** How many spots are expected in the window. @param {any} answer @param {number} percent */
function inTheWindow(answer, percent) {
  const { low, high } = answer.window;
  return Object.values(foretold(answer, percent, false)).filter(({ rf }) => rf >= low && rf <= high).length;
}
