// @ts-check
/** What is chosen for a worksheet: its code, or what makes a new one. */

import { make } from "../../dom.js";
import { button, choice, tick, typedField } from "../../entry.js";
import { say } from "../../texts.js";

/**
 * @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act
 *
 * @typedef {object} Kept what was entered
 * @property {"code" | "choices"} by which of both counts
 * @property {string} code that was opened
 * @property {string} [typed] a code that is being typed
 * @property {number} seed
 * @property {string[]} questions
 * @property {string} variants
 * @property {string} pair
 * @property {string} title
 * @property {"both" | "questions" | "answers"} parts what comes on paper
 * @property {"all" | "answers" | "none"} codeOn the pages on which the code stands: it opens the answers
 */

const KINDS = ["rf", "order", "co-spot", "ratio", "edge"];
const PAIRS = [["hexane/ethyl-acetate", "hexane"], ["heptane/ethyl-acetate", "heptane"], ["cyclohexane/ethyl-acetate", "cyclohexane"], ["hexane/acetone", "acetone"]];
const CODE_ON = ["answers", "all", "none"];
const MOST_VARIANTS = 6;
/** A seed has so many bits. */
const SEEDS = 1 << 20;
const LONGEST_CODE = 40;
const LONGEST_TITLE = 80;

/** @type {Kept} */
const FIRST = { by: "choices", code: "", seed: 1, questions: KINDS, variants: "2", pair: PAIRS[0][0], title: "", parts: "both", codeOn: "answers" };

/** @param {import("../state.js").Lesson} lesson @returns {Kept} */
export const keptOf = (lesson) => ({ ...FIRST, ...lesson.parts.worksheet });

/** What counts now, whether it was chosen or came by a code. @param {Kept} kept @param {any} answer */
export const chosenOf = (kept, answer) => (kept.by === "code" && answer ? { seed: answer.seed, questions: answer.questions, variants: String(answer.variants), pair: answer.pair } : { seed: kept.seed, questions: kept.questions, variants: kept.variants, pair: kept.pair });

/** @param {Act} act @param {Partial<Kept>} change */
const enter = (act, change) =>
  act.edit((lesson) => {
    lesson.parts.worksheet = { ...keptOf(lesson), ...change };
  });

/** The code, to be read off, or typed and opened. @param {State} state @param {Act} act @param {Kept} kept @param {any} answer */
export function codeEntry(state, act, kept, answer) {
  const shown = kept.typed ?? (kept.by === "code" ? kept.code : answer?.code ?? "");
  const open = () => enter(act, { by: "code", code: shown.trim(), typed: undefined });
  return make(
    "div",
    { class: "worksheet-code" },
    typedField(state, { id: "worksheet-code", label: say("later.lesson-worksheet-code"), value: shown, longest: LONGEST_CODE, typed: (typed) => enter(act, { typed }), entered: open }),
    button({ id: "worksheet-open", label: say("later.lesson-worksheet-open"), disabled: shown.trim() === "", press: open }),
    button({ id: "worksheet-new", label: say("later.lesson-worksheet-new"), press: () => choose(act, kept, answer, { seed: drawnSeed() }) }),
    make("p", { class: "aside" }, say("later.lesson-worksheet-code-help")),
  );
}

const drawnSeed = () => crypto.getRandomValues(new Uint32Array(1))[0] % SEEDS;

/** Changes what is chosen; what a code brought stays as far as it is not changed. @param {Act} act @param {Kept} kept @param {any} answer @param {Partial<Kept>} change */
const choose = (act, kept, answer, change) => enter(act, { ...chosenOf(kept, answer), ...change, by: "choices", typed: undefined });

/** @param {State} state @param {Act} act @param {Kept} kept @param {any} answer @returns {Element[]} */
export function choiceEntries(state, act, kept, answer) {
  const chosen = chosenOf(kept, answer);
  const toggled = (/** @type {string} */ kind, /** @type {boolean} */ ticked) => KINDS.filter((each) => (each === kind ? ticked : chosen.questions.includes(each)));
  return [
    make(
      "fieldset",
      { id: "worksheet-which" },
      make("legend", {}, say("later.lesson-worksheet-which")),
      ...KINDS.map((kind) => tick({ id: `worksheet-ask-${kind}`, label: say(`later.lesson-worksheet-ask-${kind}`), ticked: chosen.questions.includes(kind), changed: (ticked) => choose(act, kept, answer, { questions: toggled(kind, ticked) }) })),
    ),
    make(
      "div",
      { class: "worksheet-choices" },
      choice(state, { id: "worksheet-variants", label: say("later.lesson-worksheet-variants"), value: chosen.variants, options: Array.from({ length: MOST_VARIANTS }, (_, i) => ({ value: String(i + 1), text: String(i + 1) })), chosen: (variants) => choose(act, kept, answer, { variants }) }),
      choice(state, { id: "worksheet-pair", label: say("later.lesson-worksheet-pair"), value: chosen.pair, options: PAIRS.map(([value, name]) => ({ value, text: say(`later.lesson-worksheet-pair-${name}`) })), chosen: (pair) => choose(act, kept, answer, { pair }) }),
      choice(state, { id: "worksheet-parts", label: say("later.lesson-worksheet-parts"), value: kept.parts, options: ["both", "questions", "answers"].map((value) => ({ value, text: partsWords(value) })), chosen: (parts) => enter(act, { parts: /** @type {Kept["parts"]} */ (parts) }) }),
      choice(state, { id: "worksheet-code-place", label: say("later.lesson-worksheet-code-place"), value: kept.codeOn, options: CODE_ON.map((value) => ({ value, text: say(`later.lesson-worksheet-code-place-${value}`) })), chosen: (codeOn) => enter(act, { codeOn: /** @type {Kept["codeOn"]} */ (codeOn) }) }),
      typedField(state, { id: "worksheet-title", label: say("later.lesson-worksheet-title"), value: kept.title, longest: LONGEST_TITLE, typed: (title) => enter(act, { title }) }),
    ),
  ];
}

/** @param {string} parts */
const partsWords = (parts) => say(parts === "both" ? "later.lesson-worksheet-both" : parts === "questions" ? "later.lesson-worksheet-questions" : "later.lesson-worksheet-answers");
