// @ts-check
/** Predict, run, compare: known compounds to place, then unknowns by a code to bring into the window. */

import { askSoon, told, withFaults } from "../ask.js";
import { list, make } from "../../dom.js";
import { styled } from "../../later.js";
import { say } from "../../texts.js";
import { beginView } from "./begin.js";
import { teacherView } from "./key.js";
import { placeView } from "./place.js";
import { reachView } from "./reach.js";
import { exerciseOf, exerciseQuestion, workOf } from "./work.js";

/** @typedef {import("./work.js").State} State @typedef {import("./work.js").Act} Act */

await styled(new URL("./exercise.css", import.meta.url));

/** The solvents that are poured: those of the code that is open, or those chosen for a new one; none while they are not known. @param {State} state */
export function pairOf(state) {
  const { code, pair } = exerciseOf(state.lesson);
  const { answer, current, standing } = told(state, exerciseQuestion(state.lesson));
  if (!code || standing === "refused") return state.published.tables.exercisePairs[Number(pair)];
  return current ? { weak: answer.weak.id, strong: answer.strong.id } : { weak: "", strong: "" };
}

/** @param {State} state @param {Act} act @returns {Element[]} */
export const view = (state, act) => {
  // whoever comes back to this part finds the key hidden
  if (document.documentElement.dataset.part !== "exercise") state.looking.exerciseKey = undefined;
  const question = exerciseQuestion(state.lesson);
  askSoon(state, act, question);
  const { answer, current, standing } = told(state, question);
  const { code } = exerciseOf(state.lesson);
  if (!code) return [beginView(state, act)];
  const begin = make("details", { id: "exercise-another" }, make("summary", { id: "exercise-another-open" }, say("later.lesson-exercise-another")), beginView(state, act));
  if (!current || !answer) {
    const why = standing === "refused" ? [...withFaults(state, question).faults.values()].flat().join(" ") : say(standing === "unreachable" ? "later.lesson-exercise-unreachable" : "later.lesson-exercise-counting");
    return standing === "refused" ? [make("p", { class: "fault", id: "exercise-refused" }, why), beginView(state, act)] : [make("p", { id: "exercise-standing" }, why)];
  }
  const { title, note } = workOf(state.lesson);
  return [
    make("p", { id: "exercise-head" }, make("strong", { id: "exercise-code-shown" }, code), title && ` ${title}`),
    note && make("p", { id: "exercise-note-shown" }, note),
    begin,
    placeView(state, act, answer),
    reachView(state, act, answer),
    teacherView(state, act),
  ].filter((each) => each !== "");
};
