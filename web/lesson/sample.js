// @ts-check
/** What the lesson is about: its compounds, and the two solvents; folded to one line once it is set. */

import { make } from "../dom.js";
import { button, choice } from "../entry.js";
import { faultAt } from "../faults.js";
import { pairsAtHand } from "../sheet/shelf.js";
import { language, say } from "../texts.js";
import { compoundView, identityOf } from "./compound.js";
import { LETTERS, READY, readyOf, takeReady } from "./ready.js";
import { MOST_COMPOUNDS } from "./state.js";

/** @typedef {import("./state.js").State} State @typedef {import("./state.js").Act} Act */

/** @param {State} state with the faults of the sample @param {Act} act @returns {Element[]} */
export function sampleView(state, act) {
  return [
    make("h2", { id: "lesson-sample-title", class: "unseen" }, say("later.lesson-sample")),
    make(
      "details",
      { id: "sample-fold" },
      make("summary", { id: "sample-line" }, ...line(state)),
      make("div", { class: "lesson-sample-inside", id: "sample-inside" }, compounds(state, act), eluent(state, act), ready(state, act)),
    ),
  ];
}

/** The sample in one line. @param {State} state */
function line(state) {
  const { weak, strong } = pairNames(state);
  const mark = readyOf(state.lesson);
  return [
    make("span", { class: "line-title" }, say("later.lesson-sample")),
    ...state.lesson.compounds.map((each, i) =>
      make("span", { class: "line-compound" }, make("span", { class: `swatch colour-${i}`, "aria-hidden": "true" }), make("b", {}, each.name.trim() || say("page.unnamed")), ` ${identityOf(state, each)}`)),
    make("span", { class: "line-pair" }, say("page.pair-option", { weak, strong })),
    mark && make("span", { class: "aside" }, say("later.lesson-ready-mark", { sample: say(`later.lesson-ready-${mark.id}`) })),
  ].filter((each) => each !== undefined);
}

/** The names of the two solvents. @param {State} state */
export function pairNames({ lesson, published }) {
  const name = (/** @type {string} */ id) => published.library.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  return { weak: name(lesson.weak), strong: name(lesson.strong) };
}

/** @param {State} state @param {Act} act */
function compounds(state, act) {
  const { attributes, told } = faultAt(/** @type {any} */ (state), "add-compound");
  const full = state.lesson.compounds.length >= MOST_COMPOUNDS;
  return make(
    "div",
    { id: "lesson-compounds" },
    make("ul", { class: "compound-rows", "aria-label": say("later.lesson-compounds") }, ...state.lesson.compounds.map((each, i) => compoundView(state, act, each, i))),
    make("button", { type: "button", id: "add-compound", disabled: full, onclick: () => add(act), ...attributes }, say("later.lesson-add-compound")),
    told,
  );
}

/** @param {Act} act */
function add(act) {
  let added = "";
  act.edit((lesson) => {
    const taken = lesson.compounds.map(({ name }) => name.trim());
    added = `c${Math.max(0, ...lesson.compounds.map(({ id }) => Number(id.slice(1)) || 0)) + 1}`;
    lesson.compounds.push({ id: added, name: [...LETTERS].find((letter) => !taken.includes(letter)) ?? "", by: "table" });
  });
  act.focus(`lesson-what-${added}`);
}

/** All pairs whose model is there, measured ones first. @param {State} state @returns {import("../sheet/shelf.js").Pair[]} */
function pairs({ lesson, published }) {
  const shelf = published.library.solvents.map((/** @type {any} */ one) => one.id);
  return pairsAtHand(/** @type {any} */ ({ sheet: { weak: lesson.weak, strong: lesson.strong, shelf }, published }));
}

/** @param {State} state @param {Act} act */
function eluent(state, act) {
  const { lesson } = state;
  const all = pairs(state);
  const byName = (/** @type {any} */ a, /** @type {any} */ b) => a.text.localeCompare(b.text, language());
  const weak = [...new Map(all.map((pair) => [pair.weak.id, { value: pair.weak.id, text: pair.weak.name }])).values()].sort(byName);
  const beside = all.filter((pair) => pair.weak.id === lesson.weak);
  const strong = beside.map((pair) => ({
    value: pair.strong.id,
    text: pair.basis === "measured" ? pair.strong.name : say("page.pair-rests", { pair: pair.strong.name, basis: say(`page.model-${pair.basis}`) }),
  }));
  const take = (/** @type {string} */ id) =>
    act.edit((next) => {
      const known = all.filter((pair) => pair.weak.id === id);
      next.weak = id;
      if (!known.some((pair) => pair.strong.id === next.strong)) next.strong = known[0].strong.id;
    });
  return make(
    "div",
    { id: "lesson-eluent" },
    choice(/** @type {any} */ (state), { id: "lesson-weak", label: say("later.lesson-weak"), value: lesson.weak, options: weak, chosen: take }),
    choice(/** @type {any} */ (state), { id: "lesson-strong", label: say("later.lesson-strong"), value: lesson.strong, options: strong, chosen: (id) => act.edit((next) => { next.strong = id; }) }),
    choice(/** @type {any} */ (state), {
      id: "lesson-setting",
      label: say("page.setting"),
      value: lesson.setting,
      options: ["class", "bench", ...(lesson.setting === "automated" ? ["automated"] : [])].map((id) => ({ value: id, text: say(`page.setting-${id}`) })),
      chosen: (id) => act.edit((next) => { next.setting = /** @type {any} */ (id); }),
    }),
  );
}

/** @param {State} state @param {Act} act */
function ready(state, act) {
  const now = readyOf(state.lesson);
  return make(
    "div",
    { id: "lesson-ready", role: "group", "aria-labelledby": "lesson-ready-title" },
    make("h3", { id: "lesson-ready-title" }, say("later.lesson-ready")),
    make("p", { class: "aside" }, say("later.lesson-ready-words")),
    make("div", { class: "chips" }, ...READY.map((each) =>
      button({ id: `ready-${each.id}`, label: say(`later.lesson-ready-${each.id}`), pressed: now === each, press: () => act.edit((lesson) => takeReady(lesson, each)) }))),
  );
}
