// @ts-check
/** Why: the reasons, what to know, other ways, the charts, and what is published about the two solvents. */

import { chartsView } from "../charts/charts.js";
import { make } from "../dom.js";
import { provenance } from "../provenance.js";
import { published } from "../published.js";
import { ownCautions, statements } from "../card/cautions.js";
import { say } from "../texts.js";
import { askableMessage } from "../where/origin.js";
import { askableAlternative, isDecisive } from "./jar.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** @param {any} message */
const text = (message) => message.text;

/** @param {State} state @param {Act} act */
export function whyView(state, act) {
  const title = make("h2", { id: "why-title" }, say("page.why"));
  if (!state.answered || !state.published.library) return [title, make("p", {}, say("page.no-answer"))];
  const { advice, notes } = state.answered.answer;
  return [
    title,
    make(
      "div",
      { id: "reasons" },
      items(advice.why.map(askableMessage)),
      ...messages("page.notes", notes.filter((/** @type {any} */ note) => !isDecisive(note)).map(askableMessage)),
      ...messages("page.alternatives", advice.alternatives.map(askableAlternative)),
    ),
    ...chartsView(state, act),
    provenance(advice, state.answered.sheet.setting, /** @type {any} */ (state.published)),
    hazards(advice, state.published.library),
    published(advice, /** @type {any} */ (state.published)),
  ];
}

/** @param {(Node | string)[][]} sentences each in pieces */
const items = (sentences) => make("ul", {}, ...sentences.map((pieces) => make("li", {}, ...pieces)));

/** @param {string} heading @param {(Node | string)[][]} sentences each in pieces */
function messages(heading, sentences) {
  return sentences.length ? [make("h3", {}, say(heading)), items(sentences)] : [];
}

/** What to mind with these two. @param {any} advice @param {any} library */
function hazards(advice, library) {
  const two = library.solvents.filter((/** @type {any} */ one) => [advice.weak.id, advice.strong.id].includes(one.id));
  const own = ownCautions(two);
  return make(
    "div",
    { class: "caution", id: "hazards" },
    make("h3", {}, say("page.hazards", { weak: advice.weak.name, strong: advice.strong.name })),
    ...(own.length ? [items(own.map((sentence) => [sentence]))] : []),
    make(
      "details",
      { id: "hazard-statements" },
      make("summary", {}, say("page.hazard-statements")),
      items(two.map((/** @type {any} */ one) => [`${one.name}: `, ...statements(one)])),
    ),
  );
}
