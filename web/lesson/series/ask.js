// @ts-check
/** What the series asks of the server: the series itself, and what is set beside it. */

import { told } from "../ask.js";
import { sampleAsked } from "../state.js";

/** @typedef {import("../state.js").State} State @typedef {import("../ask.js").Question} Question */

const PATH = "/api/lesson/series";

/** What is entered in this part, or what one begins with. @param {State} state @returns {{shows: "series" | "ends" | "solvents" | "layers", cloud: "shown" | "hidden", against?: string}} */
export const entered = ({ lesson }) => ({ shows: "series", cloud: "hidden", ...lesson.parts.series });

/** @param {State} state @returns {Question} */
export const seriesQuestion = ({ lesson }) => ({ name: "series", path: PATH, body: lesson.compounds.length ? sampleAsked(lesson) : undefined, entries: new Map() });

/** What is asked besides; nothing where only the series is shown. @param {State} state @returns {Question} */
export function besideQuestion(state) {
  const main = told(state, seriesQuestion(state));
  return { name: `series-${entered(state).shows}`, path: PATH, body: besideBody(state, main), entries: new Map([["against", "series-against"]]) };
}

/** @param {State} state @param {{answer: any, current: boolean}} main */
function besideBody(state, { answer, current }) {
  const sample = sampleAsked(state.lesson);
  switch (entered(state).shows) {
    case "ends":
      return current ? { ...sample, percents: endsOf(answer) } : undefined;
    case "solvents": {
      const [weak, strong] = chosenPair(state).split(" ");
      return current && strong ? { ...sample, against: { weak, strong } } : undefined;
    }
    case "layers":
      return current ? { ...sample, otherLayer: "alumina" } : undefined;
    default:
      return undefined;
  }
}

/** The weak end, the advised share, the strong end. @param {any} answer */
function endsOf({ curves, best }) {
  const points = curves.percentStrong;
  return [...new Set([points[0], best.percentStrong, points.at(-1)])].sort((a, b) => a - b);
}

/** The pairs that can be set beside that of the lesson: measured ones first, then those by theory with the same weak solvent. @param {State} state */
export function pairsBeside({ lesson, published }) {
  const { pairs, theoryPairs, solvents } = published.library;
  const name = new Map(solvents.map((/** @type {any} */ each) => [each.id, each.name]));
  const measured = pairs.map((/** @type {any} */ each) => ({ weak: each.weak.id, strong: each.strong.id }));
  const all = [...measured, ...theoryPairs.filter((/** @type {any} */ each) => each.weak === lesson.weak)];
  return all
    .filter(({ weak, strong }) => weak !== lesson.weak || strong !== lesson.strong)
    .map(({ weak, strong }) => ({ value: `${weak} ${strong}`, text: `${name.get(weak)} / ${name.get(strong)}` }));
}

/** The ids of the pair set beside, or "". @param {State} state */
export function chosenPair(state) {
  const pairs = pairsBeside(state);
  const { against } = entered(state);
  return pairs.find(({ value }) => value === against)?.value ?? pairs[0]?.value ?? "";
}
