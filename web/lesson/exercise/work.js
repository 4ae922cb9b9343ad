// @ts-check
/** What was entered in the exercise: the code that is open, and for each code what was done with it. */

import { say } from "../../texts.js";

/**
 * @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../state.js").Lesson} Lesson
 *
 * @typedef {object} Work what was done with one code; numbers as they were typed
 * @property {string} title @property {string} note of the teacher
 * @property {string[]} placed the Rf at which each known compound is expected; empty where it is not placed yet
 * @property {"yes" | "no"} shown whether the model is shown beside
 * @property {string} share of the strong solvent for the next plate [% v/v], or a ratio
 * @property {string[]} plates the shares of the plates run [% v/v]
 * @property {number} hints how many are open for these plates
 * @property {"yes" | "no"} compared whether the program's plates are shown
 *
 * @typedef {object} Exercise
 * @property {string} code that is open; empty where none is
 * @property {string} typed in the field of the code
 * @property {string} level @property {string} pair of a new one
 * @property {Record<string, Work>} work by code
 */

/** So many codes keep what was done with them; the oldest goes first. */
const MOST_KEPT = 20;

/** @returns {Work} */
const newWork = () => ({ title: "", note: "", placed: ["", "", ""], shown: "no", share: "", plates: [], hints: 0, compared: "no" });

/** What stands in the lesson. @param {Lesson} lesson @returns {Exercise} */
export const exerciseOf = (lesson) => ({ code: "", typed: "", level: "groups-told", pair: "0", work: {}, ...lesson.parts.exercise });

/** What was done with the code that is open. @param {Lesson} lesson @returns {Work} */
export function workOf(lesson) {
  const { code, work } = exerciseOf(lesson);
  return { ...newWork(), ...work[code] };
}

/** Changes what stands in the exercise. @param {Act} act @param {Partial<Exercise>} change */
export const editExercise = (act, change) =>
  act.edit((lesson) => {
    lesson.parts.exercise = { ...exerciseOf(lesson), ...change };
  });

/** Changes what was done with the code that is open. @param {Act} act @param {(work: Work) => Partial<Work>} change */
export const editWork = (act, change) =>
  act.edit((lesson) => {
    const exercise = exerciseOf(lesson);
    const work = workOf(lesson);
    const others = Object.entries(exercise.work).filter(([code]) => code !== exercise.code).slice(1 - MOST_KEPT);
    lesson.parts.exercise = { ...exercise, work: { ...Object.fromEntries(others), [exercise.code]: { ...work, ...change(work) } } };
  });

/** The question for what the open code makes. @param {Lesson} lesson @returns {import("../ask.js").Question} */
export function exerciseQuestion(lesson) {
  const { code } = exerciseOf(lesson);
  return { name: "exercise", path: "/api/lesson/exercise", body: code ? { code } : undefined, entries: new Map([["code", "exercise-code"]]) };
}

/** The names of the spots' colours, by their place. @param {number} index */
export const colour = (index) => `colour-${index}`;

/** An eluent in words; a solvent alone is no ratio. @param {{weak: number, strong: number}} ratio @param {{weak: {name: string}, strong: {name: string}}} solvents */
export function eluentText(ratio, { weak, strong }) {
  const pure = ratio.strong === 0 ? weak : ratio.weak === 0 ? strong : undefined;
  return pure ? say("later.lesson-exercise-pure", { solvent: pure.name }) : say("later.lesson-exercise-eluent", { ratio: ratioText(ratio), weak: weak.name, strong: strong.name });
}

/** A ratio as the bench says it. @param {{weak: number, strong: number}} ratio */
export const ratioText = ({ weak, strong }) => `${weak} : ${strong}`;
