// @ts-check
/** The one ratio that a lesson pulls along, as a slider, and how an answer stands. */

import { make } from "../dom.js";
import { decimal } from "../numbers.js";
import { say } from "../texts.js";

/** @typedef {import("./state.js").State} State @typedef {import("./state.js").Act} Act */

/** @param {State} state the share as a number; 20 where what was entered is none */
export const percentOf = (state) => Math.min(100, Math.max(0, decimal(state.lesson.percent) ?? 20));

/** @param {State} state */
export const strongName = (state) => state.published.library.solvents.find((/** @type {any} */ each) => each.id === state.lesson.strong)?.name ?? state.lesson.strong;

/** @param {State} state @param {Act} act @param {string} part */
export function ratioSlider(state, act, part) {
  const percent = percentOf(state);
  const words = say("later.lesson-climb-share-now", { percent, strong: strongName(state) });
  return make(
    "div",
    { class: "lesson-ratio", id: `${part}-ratio` },
    make("label", { for: `${part}-percent` }, say("later.lesson-climb-share", { strong: strongName(state) })),
    make("input", { id: `${part}-percent`, type: "range", min: 0, max: 100, step: 1, value: percent, "aria-valuetext": words, oninput: (event) => act.edit((lesson) => { lesson.percent = event.target.value; }) }),
    make("p", { id: `${part}-percent-now` }, words),
  );
}

/** What is told while an answer is on its way or was refused. @param {State} state with its faults @param {string} part @param {string | undefined} standing */
export function standingView(state, part, standing) {
  if (standing === "unreachable") return [make("p", { class: "decisive", id: `${part}-out` }, say("page.out-of-reach"))];
  if (standing !== "refused") return [];
  return [...state.faults.values()].flat().map((sentence) => make("p", { class: "fault" }, sentence));
}
