// @ts-check
/** What a teacher needs: title and note to hand out, and the key, which is shown behind a press only and is hidden again by a reload or by leaving. */

import { askSoon, told } from "../ask.js";
import { byId, list, make, patch } from "../../dom.js";
import { button, typedField } from "../../entry.js";
import { marked, say } from "../../texts.js";
import { LONGEST, save } from "./file.js";
import { editWork, eluentText, exerciseOf, exerciseQuestion, ratioText, workOf } from "./work.js";

/** @typedef {import("./work.js").State} State @typedef {import("./work.js").Act} Act */

const PRINTED = "exercise-key";

/** @param {State} state @param {Act} act @returns {Element} */
export function teacherView(state, act) {
  const { code } = exerciseOf(state.lesson);
  const work = workOf(state.lesson);
  const isOpen = state.looking.exerciseKey === code;
  return make(
    "details",
    { id: "exercise-teacher" },
    make("summary", { id: "exercise-teacher-open" }, say("later.lesson-exercise-teacher")),
    make("h4", {}, say("later.lesson-exercise-hand-out")),
    make("p", {}, say("later.lesson-exercise-hand-out-how")),
    typedField(state, { id: "exercise-title", label: say("later.lesson-exercise-title"), value: work.title, longest: LONGEST.title, typed: (title) => editWork(act, () => ({ title })) }),
    make("div", { class: "field" }, make("label", { for: "exercise-note" }, say("later.lesson-exercise-note")), make("textarea", { id: "exercise-note", rows: 3, maxlength: LONGEST.note, oninput: (event) => editWork(act, () => ({ note: event.target.value })) }, work.note)),
    button({ id: "exercise-save", label: say("later.lesson-exercise-save"), press: () => save({ code, title: work.title, note: work.note }) }),
    make("p", { class: "aside" }, say("later.lesson-exercise-teacher-how")),
    make(
      "div",
      { class: "exercise-buttons" },
      button({ id: "exercise-key-press", label: say(isOpen ? "later.lesson-exercise-key-hide" : "later.lesson-exercise-key-show"), press: () => act.look({ exerciseKey: isOpen ? undefined : code }) }),
      isOpen && button({ id: "exercise-key-print", label: say("later.lesson-exercise-key-print"), press: () => print(state) }),
    ),
    isOpen && keyBox(state, act, code),
  );
}

/** @param {string} code @returns {import("../ask.js").Question} */
const keyQuestion = (code) => ({ name: "exercise-key", path: "/api/lesson/exercise/key", body: { code }, entries: new Map() });

/** @param {State} state @param {Act} act @param {string} code */
function keyBox(state, act, code) {
  askSoon(state, act, keyQuestion(code));
  const { answer, current } = told(state, keyQuestion(code));
  return make("div", { id: "exercise-key" }, ...(current ? keyView(answer, state) : [make("p", {}, say("later.lesson-exercise-counting"))]));
}

/** @param {any} key @param {State} state @returns {Element[]} */
function keyView(key, state) {
  const exercise = told(state, exerciseQuestion(state.lesson)).answer;
  const shortly = (/** @type {{weak: number, strong: number}} */ ratio) => (ratio.weak === 0 || ratio.strong === 0 ? eluentText(ratio, exercise) : ratioText(ratio));
  const best = { weak: String(key.best.ratio.weak), strong: String(key.best.ratio.strong) };
  const known = { weak: String(key.knownsRun.ratio.weak), strong: String(key.knownsRun.ratio.strong) };
  const head = (/** @type {string[]} */ ...texts) => make("tr", {}, ...texts.map((text) => make("th", { scope: "col" }, text)));
  const cell = (/** @type {string} */ text) => make("td", {}, text);
  return [
    make("h4", {}, say("later.lesson-exercise-key", { code: key.code })),
    make("p", {}, say("later.lesson-exercise-key-course")),
    make(
      "div",
      { class: "exercise-wide", id: "exercise-key-unknowns", role: "group", tabindex: 0, "aria-label": say("later.lesson-exercise-key", { code: key.code }) },
      make(
        "table",
        {},
        make("thead", {}, head(say("later.lesson-exercise-key-unknown"), say("later.lesson-exercise-key-compound"), say("later.lesson-exercise-key-read", best))),
        make("tbody", {}, ...key.unknowns.map((/** @type {any} */ each) => make("tr", {}, cell(each.name), cell(each.compound.name.text), cell(say("later.lesson-exercise-key-mean", each))))),
      ),
    ),
    make(
      "div",
      { class: "exercise-wide", id: "exercise-key-ratios", role: "group", tabindex: 0, "aria-label": say("later.lesson-exercise-key-true") },
      make(
        "table",
        {},
        make("caption", {}, say("later.lesson-exercise-key-true")),
        make("thead", {}, head(say("later.lesson-exercise-key-ratio"), ...key.unknowns.map((/** @type {any} */ each) => each.name), say("later.lesson-exercise-key-serves"))),
        make("tbody", {}, ...key.ratios.map((/** @type {any} */ row) => make("tr", {}, cell(shortly(row.ratio)), ...row.rf.map((/** @type {number} */ rf) => cell(marked(rf.toFixed(2)))), cell(say(row.serves ? "later.lesson-exercise-key-yes" : "later.lesson-exercise-key-no"))))),
      ),
    ),
    list(key.texts.map((/** @type {any} */ each) => each.text)),
    make("p", {}, say("later.lesson-exercise-key-knowns", known)),
    list(key.knowns.map((/** @type {any} */ each) => say("later.lesson-exercise-key-known", { compound: each.name.text, rf: each.rf, low: each.low, high: each.high }))),
  ];
}

/** @param {State} state */
function print(state) {
  const { code } = exerciseOf(state.lesson);
  const { answer, current } = told(state, keyQuestion(code));
  if (!current) return;
  const { title } = workOf(state.lesson);
  patch(byId("lesson-paper"), make("div", { id: "exercise-paper" }, title && make("p", {}, title), ...keyView(answer, state)));
  document.documentElement.dataset.printing = PRINTED;
  window.print();
}

window.addEventListener("afterprint", () => {
  if (document.documentElement.dataset.printing !== PRINTED) return;
  delete document.documentElement.dataset.printing;
  patch(byId("lesson-paper"));
});
