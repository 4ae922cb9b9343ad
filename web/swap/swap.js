// @ts-check
/** Another solvent: what of other pairs is as strong as the mixture now, in the order that is wished, ready to be the next plate. */

import { alone } from "../answer/jar.js";
import { list, make } from "../dom.js";
import { button, tick, typedField } from "../entry.js";
import { styled } from "../later.js";
import { furtherTexts, say, sayWith } from "../texts.js";
import { askable } from "../where/origin.js";
import { ask, askWhereNeeded, isCurrent } from "./ask.js";
import { axisView } from "./ladder.js";
import { mixtureText, nowRow, otherRow } from "./row.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./ask.js").Wish} Wish */

await Promise.all([styled(new URL("./swap.css", import.meta.url)), furtherTexts()]);

/** Notes about the shelf: its tick says the same. */
const SAID = ["other.shelf-untold", "other.shelf-none"];

const RANKS = ["apart", "safety", "drying", "measured"];

/** So many pairs are seen at once. */
const FIRST = 3;

/** @param {State} state @param {Act} act @returns {Element[]} */
export function swapView(state, act) {
  queueMicrotask(() => askWhereNeeded(state, act));
  const { swapped } = state.looking;
  const current = isCurrent(state);
  const told = swapped?.answer;
  const close = () => {
    act.look({ swap: "folded", swapTook: undefined });
    act.focus("swap-open");
  };
  const onkeydown = (/** @type {KeyboardEvent} */ event) => {
    if (event.key === "Escape" && !event.isComposing) close();
  };
  return [
    make(
      "div",
      { id: "swap-inside", onkeydown },
      head(close),
      told && matched(told),
      ranks(state, act),
      make("div", { id: "swap-standing", role: "status" }, ...standing(state, act, current)),
      told && answer(state, act, told, current),
      entries(state, act),
      told && notes(told),
    ),
  ];
}

/** @param {() => void} close */
function head(close) {
  return make(
    "div",
    { class: "swap-head", id: "swap-head" },
    make("h2", { id: "swap-title", tabindex: -1 }, say("later.swap")),
    button({ id: "swap-close", label: say("page.close"), name: say("later.swap-close"), press: close }),
  );
}

/** What the rows are matched at. @param {any} told the answer */
function matched({ of, aim }) {
  const one = of.ratio === undefined ? undefined : alone(of);
  const words = { ratio: mixtureText(of), weak: of.weak.name, strong: of.strong.name, solvent: one?.name ?? "", rf: of.rf, aim: aim ?? 0 };
  const key = aim !== undefined ? "later.swap-words-aim" : one ? "later.swap-words-pure" : "later.swap-words";
  return make("p", { id: "swap-words" }, ...sayWith(key, words, { rf: (shown) => askable("swap-middle", shown) }));
}

/** Changes what is wished. @param {State} state @param {Act} act @param {Wish} change */
const wish = (state, act, change) => act.look({ swapWish: { ...state.looking.swapWish, ...change }, swapTook: undefined });

/** What comes first. @param {State} state @param {Act} act */
function ranks(state, act) {
  const { swapWish = {}, swapped } = state.looking;
  const rank = swapWish.rank ?? swapped?.answer?.rank;
  return make(
    "div",
    { class: "swap-wishes", id: "swap-wishes" },
    make("span", { id: "swap-rank-words", class: "aside" }, say("later.swap-rank")),
    make(
      "div",
      { class: "chips", id: "swap-ranks", role: "group", "aria-labelledby": "swap-rank-words" },
      ...RANKS.filter((each) => each !== "apart" || state.sheet.spots.length > 1).map((each) =>
        button({ id: `swap-rank-${each}`, label: say(`later.swap-rank-${each}`), pressed: rank === each, press: () => wish(state, act, { rank: each }) }),
      ),
    ),
  );
}

/** What to match, and whether the shelf decides. @param {State} state @param {Act} act */
function entries(state, act) {
  const { swapWish = {}, swapped } = state.looking;
  const wrong = { ...state, faults: swapped?.faults ?? new Map() };
  return make(
    "div",
    { class: "swap-entries", id: "swap-entries" },
    typedField(wrong, { id: "swap-match", label: say("later.swap-match"), value: swapWish.match ?? "", typed: (match) => wish(state, act, { match }) }),
    tick({ id: "swap-all", label: say("later.swap-all"), ticked: swapWish.from === "all", changed: (all) => wish(state, act, { from: all ? "all" : "shelf" }) }),
  );
}

/** What is to be said before the rows: what was just chosen, or why there is nothing current. @param {State} state @param {Act} act @param {boolean} current */
function standing(state, act, current) {
  const { swapped } = state.looking;
  const lines = took(state);
  if (current) return [...lines, ...ordered(swapped?.answer)];
  if (state.standing === "refused") return [...lines, make("p", { class: "decisive" }, say("page.faults"))];
  if (state.standing === "unreachable") return [...lines, make("p", { class: "decisive" }, say("page.out-of-reach"))];
  if (swapped?.standing === "refused") {
    const told = [...swapped.faults].filter(([entry]) => entry !== "swap-match").flatMap(([, sentences]) => sentences);
    return [...lines, ...told.map((sentence) => make("p", { class: "fault" }, sentence))];
  }
  if (swapped?.standing === "unreachable") {
    return [...lines, make("p", { class: "decisive" }, say("page.out-of-reach")), button({ id: "swap-again", label: say("later.swap-again"), press: () => ask(state, act) })];
  }
  return [...lines, make("p", { class: swapped?.answer ? "unseen" : "aside", id: "swap-counting" }, say("page.counting"))];
}

/** The order of the rows, for whoever does not see it. @param {any} told the answer */
function ordered({ rank, others }) {
  const [first] = inOrder(others);
  if (!first) return [];
  const pair = say("page.pair-option", { weak: first.weak.name, strong: first.strong.name });
  return [make("p", { class: "unseen", id: "swap-ordered" }, say("later.swap-ordered", { rank: say(`later.swap-rank-${rank}`), pair }))];
}

/** In the order of the answer, those that do not reach last. @param {any[]} others */
const inOrder = (others) => [...others.filter(({ equal }) => equal), ...others.filter(({ equal }) => !equal)];

/** @param {State} state */
function took({ sheet, looking, published }) {
  const { swapTook } = looking;
  if (!swapTook || swapTook.weak !== sheet.weak || swapTook.strong !== sheet.strong) return [];
  const name = (/** @type {string} */ id) => published.library?.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  return [make("p", { class: "decisive", id: "swap-took" }, say("later.swap-took", { weak: name(swapTook.weak), strong: name(swapTook.strong) }))];
}

/** The rows: the pair now, the first few others, and the rest in a fold. @param {State} state @param {Act} act @param {any} told the answer @param {boolean} current */
function answer(state, act, told, current) {
  const rows = inOrder(told.others).map((/** @type {any} */ other) => otherRow(state, act, told, other, current));
  const further = rows.slice(FIRST);
  const isAsked = state.looking.swapped?.standing === "counting" || state.standing === "waiting" || state.standing === "counting";
  return make(
    "div",
    { id: "swap-said", class: current ? undefined : "old", "aria-busy": !current && isAsked ? "true" : undefined },
    make(
      "div",
      { class: "ladder", id: "ladder" },
      axisView(told.of.rf),
      make("ol", { id: "ladder-rows", "aria-label": say("later.swap-rows") }, nowRow(state, told), ...rows.slice(0, FIRST)),
      further.length > 0 &&
        make("details", { id: "swap-further" }, make("summary", { id: "swap-further-title" }, say("later.swap-further", { count: further.length })), make("ol", { id: "ladder-further", "aria-labelledby": "swap-further-title" }, ...further)),
    ),
    rows.length === 0 && make("p", { class: "decisive", id: "swap-none" }, say("later.swap-none")),
  );
}

/** @param {any} told the answer */
function notes(told) {
  const kept = told.notes.filter((/** @type {any} */ note) => !SAID.includes(note.key));
  return make("div", { id: "swap-notes", class: "aside" }, list(kept.map((/** @type {any} */ note) => note.text)));
}
