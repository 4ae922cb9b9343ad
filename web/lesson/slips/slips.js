// @ts-check
/** What goes wrong: one slip at a time beside a plate done right, and what it does to the advice. */

import { make } from "../../dom.js";
import { button } from "../../entry.js";
import { styled } from "../../later.js";
import { say } from "../../texts.js";
import { askSoon, told, withFaults } from "../ask.js";
import { percentOf, ratioSlider, reach } from "../ratio.js";
import { seriesQuestion } from "../series/ask.js";
import { sampleAsked } from "../state.js";
import { plates } from "./picture.js";
import { KINDS, SLIPS, fieldOf, slipsOf } from "./state.js";
import { numbers } from "./told.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

await styled(new URL("slips.css", import.meta.url));

/** What is asked of the server. @param {State} state @returns {import("../ask.js").Question} */
function questionOf(state) {
  const { lesson } = state;
  const { slip, sizes } = slipsOf(lesson);
  const body = { ...sampleAsked(lesson), percentStrong: percentOf(state), slip, ...(sizes[slip] !== undefined && { [fieldOf(slip)]: sizes[slip] }) };
  return { name: "slips", path: "/api/lesson/slips", body: lesson.compounds.length > 0 ? body : undefined, entries: new Map([[fieldOf(slip), "lesson-slips-size"], ["percentStrong", "lesson-slips-percent"]]) };
}

/** @param {State} state @param {Act} act @returns {Element[]} */
export function view(state, act) {
  const question = questionOf(state);
  askSoon(state, act, question);
  askSoon(state, act, seriesQuestion(state)); // how far it can be pulled
  const { answer, current } = told(state, question);
  const { slip, shown } = slipsOf(state.lesson);
  const about = answer?.slip === slip ? answer : undefined;
  const faults = [...withFaults(state, question).faults.values()].flat();
  return [
    choosing(state, act),
    make(
      "div",
      { id: "lesson-slips-now", "data-standing": current && about ? "told" : "counting", "data-slip": slip },
      make("h3", { id: "lesson-slips-title" }, say(`later.lesson-slips-name-${slip}`)),
      ...(about ? described(about) : [make("p", { id: "lesson-slips-counting" }, say("later.lesson-slips-counting"))]),
      faults.length > 0 && make("p", { id: "lesson-slips-faults", class: "fault" }, say("later.lesson-slips-refused", { faults: faults.join(" ") })),
      ...(about ? [entries(state, act, about), plates(state, about), ...(shown ? numbers(state, act, about) : [guessing(act)])] : []),
    ),
  ];
}

/** @param {any} answer */
function described(answer) {
  return [
    make("p", { id: "lesson-slips-what" }, answer.what.text),
    ...(answer.kind === "illustration" ? [make("p", { id: "lesson-slips-illustration", class: "aside" }, say("later.lesson-slips-illustration"))] : []),
  ];
}

/** All slips by what their numbers rest on. @param {State} state @param {Act} act */
function choosing(state, act) {
  const { slip } = slipsOf(state.lesson);
  const pick = (/** @type {string} */ id) =>
    act.edit((lesson) => {
      lesson.parts.slips = { ...slipsOf(lesson), slip: id, shown: false, guess: undefined };
    });
  return make(
    "div",
    { id: "lesson-slips-choose", class: "slips-choose" },
    ...KINDS.map((kind) =>
      make(
        "div",
        { id: `lesson-slips-kind-${kind}`, role: "group", "aria-labelledby": `lesson-slips-kind-${kind}-title` },
        make("h3", { id: `lesson-slips-kind-${kind}-title` }, say(`later.lesson-slips-kind-${kind}`)),
        make("div", { class: "slips-row" }, ...SLIPS.filter((each) => each.kind === kind).map(({ id }) => button({ id: `lesson-slips-${id}`, label: say(`later.lesson-slips-name-${id}`), pressed: id === slip, press: () => pick(id) }))),
      ),
    ),
  );
}

/** How large the slip is, and which eluent it happens in. @param {State} state @param {Act} act @param {any} answer */
function entries(state, act, answer) {
  const { field, low, high, step } = answer.size;
  const { slip, sizes } = slipsOf(state.lesson);
  const value = sizes[slip] ?? answer.size.value;
  const resize = (/** @type {number} */ size) =>
    act.edit((lesson) => {
      const before = slipsOf(lesson);
      lesson.parts.slips = { ...before, sizes: { ...before.sizes, [slip]: size } };
    });
  return make(
    "div",
    { id: "lesson-slips-entries", class: "slips-entries" },
    slider({ id: "lesson-slips-size", label: say(`later.lesson-slips-size-${hyphened(field)}`), low, high, step, value, shown: inUnit(field, value), moved: resize }),
    ratioSlider(state, act, { id: "lesson-slips-percent", reach: reach(state) }),
  );
}

/** @param {{id: string, label: string, low: number, high: number, step: number, value: number, shown: string, moved: (value: number) => void}} entry */
function slider({ id, label, low, high, step, value, shown, moved }) {
  return make(
    "div",
    { class: "field", id: `${id}-field` },
    make("label", { for: id }, label),
    make("input", { id, type: "range", min: low, max: high, step, value, "aria-valuetext": shown, oninput: (event) => moved(Number(event.target.value)) }),
    make("output", { id: `${id}-shown`, for: id }, shown),
  );
}

const hyphened = (/** @type {string} */ field) => field.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** @param {string} field @param {number} value */
function inUnit(field, value) {
  const unit = field.endsWith("Mm") ? "mm" : field.endsWith("Percent") ? "percent" : "times";
  return say(`later.lesson-slips-in-${unit}`, { value });
}

/** Which way will it err? Said before the numbers are shown. @param {Act} act */
function guessing(act) {
  const reveal = (/** @type {string | undefined} */ guess) => {
    act.edit((lesson) => {
      lesson.parts.slips = { ...slipsOf(lesson), shown: true, guess };
    });
    act.focus("lesson-slips-told");
  };
  return make(
    "div",
    { id: "lesson-slips-guess", role: "group", "aria-labelledby": "lesson-slips-guess-title" },
    make("h3", { id: "lesson-slips-guess-title" }, say("later.lesson-slips-guess")),
    make(
      "div",
      { class: "slips-row" },
      ...["weak", "strong", "same", "either"].map((guess) => button({ id: `lesson-slips-guess-${guess}`, label: say(`later.lesson-slips-guess-${guess}`), press: () => reveal(guess) })),
      button({ id: "lesson-slips-show", label: say("later.lesson-slips-show"), kind: "small", press: () => reveal(undefined) }),
    ),
  );
}
