// @ts-check
/** Why: the reasons, what to know, other ways, the charts, and what is published about the two solvents. */

import { chartsView } from "../charts/charts.js";
import { make } from "../dom.js";
import { later } from "../later.js";
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
    whereFold(state, act, advice, state.answered.sheet.setting),
    hazards(advice, state.published.library, state.answered.sheet.additive.kind),
    publishedFold(state, act, advice),
  ];
}

const fetchProvenance = () => import("../provenance.js");

/** Where the number comes from; fetched when it is first unfolded. @param {State} state @param {Act} act @param {any} advice @param {string} setting it was asked for */
function whereFold(state, act, advice, setting) {
  const view = state.looking.where === "open" ? later("where", fetchProvenance, act) : undefined;
  return make(
    "details",
    { id: "from-where", ontoggle: (event) => act.look({ where: event.target.open ? "open" : "folded" }) },
    make("summary", {}, say("page.from-where")),
    ...(view?.provenance(advice, setting, state.published) ?? []),
  );
}

const fetchPublished = () => import("../published.js");

/** The two solvents as published; fetched when it is first unfolded. @param {State} state @param {Act} act @param {any} advice */
function publishedFold(state, act, advice) {
  const view = state.looking.published === "open" ? later("published", fetchPublished, act) : undefined;
  return make(
    "details",
    { id: "published", ontoggle: (event) => act.look({ published: event.target.open ? "open" : "folded" }) },
    make("summary", {}, say("page.published", { weak: advice.weak.name, strong: advice.strong.name })),
    ...(view?.published(advice, state.published) ?? []),
  );
}

/** @param {(Node | string)[][]} sentences each in pieces */
const items = (sentences) => make("ul", {}, ...sentences.map((pieces) => make("li", {}, ...pieces)));

/** @param {string} heading @param {(Node | string)[][]} sentences each in pieces */
function messages(heading, sentences) {
  return sentences.length ? [make("h3", {}, say(heading)), items(sentences)] : [];
}

/** What to mind with what is poured. @param {any} advice @param {any} library @param {string} additive id of what is added, where it is a solvent known here */
function hazards(advice, library, additive) {
  const poured = library.solvents.filter((/** @type {any} */ one) => [advice.weak.id, advice.strong.id, additive].includes(one.id));
  const added = poured.find((/** @type {any} */ one) => one.id === additive);
  const names = { weak: advice.weak.name, strong: advice.strong.name };
  const own = ownCautions(poured);
  return make(
    "div",
    { class: "caution", id: "hazards" },
    make("h3", {}, added ? say("page.hazards-three", { ...names, additive: added.name }) : say("page.hazards", names)),
    ...(own.length ? [items(own.map((sentence) => [sentence]))] : []),
    make(
      "details",
      { id: "hazard-statements" },
      make("summary", {}, say("page.hazard-statements")),
      items(poured.map((/** @type {any} */ one) => [`${one.name}: `, ...statements(one)])),
    ),
  );
}
