// @ts-check
/** A lesson of five minutes: leads through the parts step by step, with one thing to do and one question at each. */

import { make } from "../../dom.js";
import { button } from "../../entry.js";
import { say } from "../../texts.js";
import { identityOf } from "../compound.js";
import { pairNames } from "../sample.js";
import { withSpotsInTheWindow } from "./ratio.js";
import { STEPS, showOnly } from "./steps.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../state.js").Lesson} Lesson */

/** @typedef {{step: number, open: boolean, expected?: string}} Guide where one is in it, and what was expected before it was seen */

/** What may be expected of the weak solvent alone. */
const EXPECTED = ["low", "spread", "high"];

/** Where one is in it; undefined where nobody began. @param {Lesson} lesson @returns {Guide | undefined} */
function guideOf({ parts }) {
  const guide = parts.guide;
  return Number.isInteger(guide?.step) && STEPS[guide.step] ? guide : undefined;
}

/** Whether the part is not to be seen yet, because one is to think first. @param {Lesson} lesson */
export function hidesPart(lesson) {
  const guide = guideOf(lesson);
  return guide !== undefined && guide.open && STEPS[guide.step].part === undefined;
}

/** Somebody goes to a part without it: then what is to be thought of first stands in the way no longer. @param {Lesson} lesson */
export function seePart(lesson) {
  if (hidesPart(lesson)) lesson.parts.guide = { ...lesson.parts.guide, open: false };
}

/** @param {State} state @param {Act} act @returns {Element[]} */
export function guideView(state, act) {
  const guide = guideOf(state.lesson);
  return guide?.open ? open(state, act, guide) : folded(state, act, guide);
}

/** @param {State} state @param {Act} act @param {number} step */
function go(state, act, step) {
  const { part, set, only, ratio } = STEPS[step];
  const percent = ratio && withSpotsInTheWindow(state);
  act.edit((lesson) => {
    lesson.parts.guide = { ...lesson.parts.guide, step, open: true };
    if (part) lesson.part = part;
    set?.(lesson);
    showOnly(lesson, only);
    if (percent !== undefined) lesson.percent = percent;
  });
  act.focus("guide-title");
}

/** What leads into it. @param {State} state @param {Act} act @param {Guide | undefined} guide */
function folded(state, act, guide) {
  const back = guide && { number: guide.step + 1, count: STEPS.length };
  return [
    make("h2", { id: "guide-title", class: "unseen" }, say("later.lesson-guide-title")),
    make(
      "div",
      { class: "guide-folded", id: "guide-folded" },
      back
        ? button({ id: "guide-back", label: say("later.lesson-guide-go-on", back), press: () => resume(act) })
        : button({ id: "guide-start", label: say("later.lesson-guide-start"), press: () => go(state, act, 0) }),
      back && guide.step > 0 && button({ id: "guide-anew", label: say("later.lesson-guide-anew"), kind: "small", press: () => go(state, act, 0) }),
      !back && make("p", { class: "aside" }, say("later.lesson-guide-words", { count: STEPS.length })),
    ),
  ];
}

/** Goes on where one left, with the parts as they are by now. @param {Act} act */
function resume(act) {
  act.edit((lesson) => {
    lesson.parts.guide = { ...lesson.parts.guide, open: true };
    const { part, only } = STEPS[lesson.parts.guide.step];
    lesson.part = part ?? lesson.part;
    showOnly(lesson, only);
  });
  act.focus("guide-title");
}

/** @param {State} state @param {Act} act @param {Guide} guide */
function open(state, act, guide) {
  const { step } = guide;
  const { id, part } = STEPS[step];
  const last = step === STEPS.length - 1;
  const values = valuesOf(state);
  return [
    make(
      "div",
      { class: "guide-open", id: "guide-open" },
      make("p", { class: "aside guide-at", id: "guide-at" }, say("later.lesson-guide-step", { number: step + 1, count: STEPS.length })),
      make("h2", { id: "guide-title", tabindex: "-1" }, say(`later.lesson-guide-do-${id}${isNear(state, id) ? "-near" : ""}`, values)),
      make("p", { class: "guide-ask", id: "guide-ask" }, say(`later.lesson-guide-ask-${id}`, values)),
      id === "expect" && expecting(act, guide),
      id === "weak" && guide.expected && make("p", { class: "aside", id: "guide-expected" }, say("later.lesson-guide-expected", { expected: say(`later.lesson-guide-expect-${guide.expected}`) })),
      part && part !== state.lesson.part && button({ id: "guide-there", label: say("later.lesson-guide-there", { part: say(`later.lesson-part-${part}`) }), press: () => go(state, act, step) }),
      make("details", { id: `guide-note-${id}`, class: "guide-note" }, make("summary", {}, say("later.lesson-guide-note")), make("p", {}, say(`later.lesson-guide-note-${id}`, values))),
      make(
        "div",
        { class: "guide-moves", id: "guide-moves" },
        button({ id: "guide-previous", label: say("later.lesson-guide-previous"), disabled: step === 0, press: () => go(state, act, step - 1) }),
        !last && button({ id: "guide-next", label: say("later.lesson-guide-next"), kind: "main", press: () => go(state, act, step + 1) }),
        button({ id: "guide-leave", label: say(last ? "later.lesson-guide-done" : "later.lesson-guide-leave"), kind: last ? "main" : undefined, press: () => leave(act, last) }),
        part && make("a", { class: "button quiet", id: "guide-to-part", href: "#lesson-part" }, say("later.lesson-guide-to-part")),
      ),
    ),
  ];
}

/** Once it is through it begins anew next time. @param {Act} act @param {boolean} last */
function leave(act, last) {
  act.edit((lesson) => {
    if (last) delete lesson.parts.guide;
    else lesson.parts.guide = { ...lesson.parts.guide, open: false };
    showOnly(lesson, undefined);
  });
  act.focus(last ? "guide-start" : "guide-back");
}

/** @param {Act} act @param {Guide} guide */
function expecting(act, { expected }) {
  return make(
    "div",
    { class: "chips", id: "guide-expecting", role: "group", "aria-labelledby": "guide-ask" },
    ...EXPECTED.map((each) =>
      button({
        id: `guide-expect-${each}`,
        label: say(`later.lesson-guide-expect-${each}`),
        pressed: expected === each,
        press: () => act.edit((lesson) => { lesson.parts.guide = { ...lesson.parts.guide, expected: each }; }),
      })),
  );
}

/** What the sentences name. @param {State} state */
const valuesOf = (state) => ({
  ...pairNames(state),
  compounds: state.lesson.compounds.map((each) => `${each.name.trim() || say("page.unnamed")} (${identityOf(state, each)})`).join(", "),
});

/** Whether the model of the pair does not go as far as the pure solvent of a step. @param {State} state @param {string} id of the step */
function isNear({ lesson, published: { library } }, id) {
  const measured = (/** @type {string} */ solvent) => library.solvents.find((/** @type {any} */ one) => one.id === solvent)?.standIn?.id ?? solvent;
  const pair = library.pairs.find((/** @type {any} */ each) => each.weak.id === measured(lesson.weak) && each.strong.id === measured(lesson.strong));
  return pair !== undefined && ((id === "weak" && pair.trustedFromPercent > 0) || (id === "strong" && pair.trustedToPercent < 100));
}
