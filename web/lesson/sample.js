// @ts-check
/** What the lesson is about: its compounds, and the two solvents. */

import { make } from "../dom.js";
import { say } from "../texts.js";

/** @param {import("./state.js").State} state @param {import("./state.js").Act} act @returns {Element[]} */
export function sampleView(state, act) {
  const names = new Map(state.published.tables.compounds.map((/** @type {any} */ each) => [each.id, each.name.text]));
  return [
    make("h2", { id: "lesson-sample-title" }, say("later.lesson-sample")),
    make("ul", {}, ...state.lesson.compounds.map((each) => make("li", {}, `${each.name}: ${names.get(each.compound ?? "") ?? each.smiles ?? ""}`))),
  ];
}
