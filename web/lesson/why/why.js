// @ts-check
/** Why polarity moves spots: solvent and compounds on one surface, by the ratio, with the numbers and where they come from. */

import { make } from "../../dom.js";
import { styled } from "../../later.js";
import { marked, say } from "../../texts.js";
import { cited } from "../../where/sources.js";
import { along } from "../along.js";
import { askSoon, told, withFaults } from "../ask.js";
import { percentOf, ratioSlider, reach, standingView } from "../ratio.js";
import { seriesQuestion } from "../series/ask.js";
import { sampleAsked } from "../state.js";
import { surface } from "./surface.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

await styled(new URL("./why.css", import.meta.url));

/** Shares that are asked for at once: close together where the surface fills [% v/v]. */
const STRETCHES = [[0, 0.5, 10], [10, 1, 20], [20, 2, 40], [40, 5, 100]]; // prettier-ignore
const GRID = [...STRETCHES.flatMap(([from, by, to]) => Array.from({ length: Math.round((to - from) / by) }, (_, i) => from + i * by)), 100];

/** @param {State} state @returns {import("../ask.js").Question} */
const question = (state) => ({ name: "why", path: "/api/lesson/why", body: { ...sampleAsked(state.lesson), percentStrong: percentOf(state), percents: GRID }, entries: new Map() });

/** @param {State} state @param {Act} act @returns {Element[]} */
export function view(state, act) {
  const asking = question(state);
  queueMicrotask(() => {
    askSoon(state, act, asking);
    askSoon(state, act, seriesQuestion(state)); // how far it can be pulled
  });
  const { answer, current, standing } = told(state, asking);
  const wrong = withFaults(state, asking);
  const fits = answer?.compounds.length === state.lesson.compounds.length && answer.strong.id === state.lesson.strong;
  return [
    make("p", { class: "lesson-ask" }, say("later.lesson-why-question")),
    ratioSlider(state, act, { id: "why-percent", reach: reach(state) }),
    ...standingView(wrong, "why", standing),
    ...(fits ? [shown(state, answer, current)] : []),
  ];
}

/** @param {State} state @param {any} answer @param {boolean} current */
function shown(state, answer, current) {
  const percent = percentOf(state);
  const read = (/** @type {number[]} */ values) => along(answer.percents, values, percent, Math.log1p);
  const now = { coverage: read(answer.coverage), strength: read(answer.strength), adsorbed: answer.compounds.map((/** @type {any} */ each) => read(each.adsorbed)), balance: answer.compounds.map((/** @type {any} */ each) => each.balance && read(each.balance)) };
  const old = current ? undefined : "old";
  return make(
    "div",
    { id: "why-stage", class: "why", "data-current": current ? "yes" : "no" },
    make(
      "figure",
      { class: "why-figure" },
      surface(answer, now),
      make("figcaption", {}, say("later.lesson-why-caption", { strong: answer.strong.name, weak: answer.weak.name }), " ", say("later.lesson-why-model")),
      table(answer, now),
    ),
    make(
      "div",
      { class: "why-side" },
      make("ul", { id: "why-said", class: old }, ...answer.sentences.map((/** @type {any} */ { text }) => make("li", {}, text))),
    ),
    make("div", { class: "why-sources" }, surfaceSources(state, answer, now, old), ...answer.compounds.map((/** @type {any} */ each, /** @type {number} */ i) => compoundSources(state, each, i, old))),
    make("ul", { class: "aside", id: "why-notes" }, ...answer.notes.map((/** @type {any} */ { text }) => make("li", {}, text))),
  );
}

/** The balance of each compound beside how long it is held. @param {any} answer @param {any} now */
function table(answer, now) {
  return make(
    "table",
    { id: "why-table" },
    make("caption", {}, say("later.lesson-why-table")),
    make("thead", {}, make("tr", {}, ...["compound", "energy", "push", "balance", "time", "rf"].map((column) => make("th", { scope: "col", class: `why-${column}` }, say(`later.lesson-why-column-${column}`))))),
    make("tbody", {}, ...answer.compounds.flatMap((/** @type {any} */ each, /** @type {number} */ i) => rows(each, i, now))),
  );
}

/** A compound's numbers, and below them what its energies are made of. @param {any} compound @param {number} i @param {any} now */
function rows({ name, groups, energySum }, i, now) {
  const balance = now.balance[i];
  const cells = balance === undefined ? [undefined, undefined, undefined] : [energySum, energySum - balance, balance];
  return [
    make(
      "tr",
      { id: `why-row-${i}` },
      make("th", { scope: "row" }, name),
      ...cells.map((value) => make("td", {}, value === undefined ? "\u2013" : say("later.lesson-why-number", { value }))),
      make("td", { class: "why-time" }, say("later.lesson-why-of-hundred", { count: Math.round(100 * now.adsorbed[i]) })),
      make("td", {}, say("later.lesson-why-rf", { rf: 1 - now.adsorbed[i] })),
    ),
    make("tr", { id: `why-parts-${i}`, class: "why-parts" }, make("td", { colspan: 6 }, partsOf(groups))),
  ];
}

/** The groups that bind, with their energies, the strongest first. @param {any[]} groups */
function partsOf(groups) {
  const binding = groups.filter(({ energy }) => energy > 0).sort((one, other) => other.energy - one.energy);
  if (binding.length === 0) return say("later.lesson-why-no-part");
  return binding.map(({ name: group, count, energy }) => say(count > 1 ? "later.lesson-why-part" : "later.lesson-why-part-once", { count, group, energy })).join(", ");
}

/** @param {State} state @param {any} answer @param {any} now @param {string | undefined} old */
function surfaceSources(state, answer, now, old) {
  const names = new Map([answer.weak, answer.strong].map(({ id, name }) => [id, name]));
  const nameOf = (/** @type {string} */ id) => names.get(id) ?? state.published.library.solvents.find((/** @type {any} */ each) => each.id === id)?.name ?? id;
  return make(
    "details",
    { id: "why-source-surface" },
    make("summary", {}, say("later.lesson-why-surface-numbers", { taken: Math.round(100 * now.coverage), strength: now.strength })),
    make("p", {}, say("later.lesson-why-law")),
    make("p", {}, say("later.lesson-why-activity", { value: answer.activity.value, series: answer.series.text }), " ", answer.activity.said.text, "."),
    answer.caution && make("p", { id: "why-caution", class: old }, make("span", { class: "caution-sign", "aria-hidden": "true" }, "!"), " ", answer.caution.said.text, " ", cited(state, answer.caution)),
    make(
      "ul",
      {},
      ...answer.inputs.map((/** @type {any} */ each) =>
        make("li", {}, say("later.lesson-why-input", { solvent: nameOf(each.solvent), property: say(`later.lesson-why-property-${each.property.replace("_", "-")}`), value: marked(`${each.value} ${each.unit}`.trim()) }), " ", cited(state, each), each.note ? ` ${each.note}` : ""),
      ),
    ),
  );
}

/** @param {State} state @param {any} compound @param {number} i @param {string | undefined} old */
function compoundSources(state, compound, i, old) {
  const { hold, push, area, energySum } = compound;
  return make(
    "details",
    { id: `why-source-${i}` },
    make("summary", {}, say("later.lesson-why-compound-numbers", { name: compound.name })),
    make(
      "ul",
      {},
      ...compound.groups.map((/** @type {any} */ group) =>
        make("li", {}, say("later.lesson-why-energy", { group: group.name, count: group.count, energy: group.energy }), " ", cited(state, group), " ", make("span", { class: "aside" }, group.note)),
      ),
    ),
    hold === undefined
      ? make("p", {}, say("later.lesson-why-no-size"))
      : make("p", { class: old }, say("later.lesson-why-balance", { energy: energySum, area, hold, push, net: hold - push })),
  );
}
