// @ts-check
/** Is the reaction done? Its plates from left to right, how it stands, and its course over time; and the same on paper. */

import { make } from "../dom.js";
import { styled } from "../later.js";
import { say } from "../texts.js";
import { askSoon, askedOf, isTold, withFaults } from "./ask.js";
import { courseView, narrow } from "./course.js";
import { eluentWords } from "./eluent.js";
import { plateDrawing, timeWords } from "./reaction-plate.js";
import { namesOf, questionOf } from "./reaction-question.js";
import { reactionOf, rowsOf, strengthOf } from "./reaction-sheet.js";
import { setupView } from "./reaction-species.js";
import { stripView } from "./reaction-strip.js";
import { onwardView, said, verdictView } from "./reaction-verdict.js";
import { nextView } from "./standing.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

await styled(new URL("./course.css", import.meta.url));

/** As many plates as fit side by side on paper. */
const MOST_ON_PAPER = 12;

/** @param {State} state @param {Act} act @returns {Element[]} */
export function reactionView(state, act) {
  const question = questionOf(state);
  queueMicrotask(() => askSoon(state, act, questionOf(state)));
  narrow.onchange = () => act.look({ came: "course" });
  const wrong = withFaults(state, question);
  const answer = question.body === undefined ? undefined : askedOf(state, question)?.answer;
  const told = isTold(state, question);
  const lookAt = told ? answer.lookAgain?.atMinutes : undefined;
  return [
    make(
      "div",
      { id: "reaction", class: "reaction" },
      setupView(wrong, act),
      stripView(wrong, act, lookAt === undefined ? undefined : Math.round(lookAt)),
      make(
        "div",
        { id: "reaction-answer", class: "reaction-answer" },
        verdictView(state),
        answer?.curve &&
          make(
            "div",
            { id: "reaction-course", class: told ? "course" : "course dated" },
            make("h4", {}, say("later.checks-reaction-course")),
            courseView("reaction-course-drawing", reactionOf(state.sheet), answer),
            make("p", { class: "aside", id: "reaction-course-how" }, say("later.checks-reaction-course-how")),
          ),
        answer && onwardView(answer),
      ),
    ),
  ];
}

/** The same on paper: the strip, how it stands, the course. @param {State} state @returns {Element[]} */
export function reactionPaper(state) {
  const { sheet } = state;
  const reaction = sheet.checks?.reaction;
  if (!reaction || reaction.plates.length === 0) return [];
  const question = questionOf(state);
  const answer = isTold(state, question) ? askedOf(state, question)?.answer : undefined;
  const ran = eluentWords(state, reaction);
  return [
    make(
      "div",
      { id: "reaction-paper", class: "reaction-paper" },
      ran !== "" && make("p", {}, say("later.checks-ran-in", { eluent: ran })),
      make("div", { class: "time-paper" }, ...reaction.plates.slice(-MOST_ON_PAPER).map((plate) => plateOnPaper(sheet, reaction, plate))),
      make("div", { class: "course-paper" }, make("div", {}, ...(answer ? said(answer) : [make("p", {}, say("later.checks-paper-no-answer"))])), answer && courseView("reaction-paper-course", reaction, answer, { width: 480 })),
      answer?.apart && make("p", {}, answer.apart.text.text),
      answer && make("div", { class: "may-go" }, nextView(undefined, answer.next)),
      answer && make("p", { class: "may-go" }, answer.practice.map((/** @type {any} */ each) => each.text).join(" ")),
    ),
  ];
}

/** A plate with its time, and what was seen on it in numbers. @param {State["sheet"]} sheet @param {import("./reaction-sheet.js").Reaction} reaction @param {import("./reaction-sheet.js").TimePlate} plate */
function plateOnPaper(sheet, reaction, plate) {
  const names = namesOf(reaction);
  const grades = rowsOf(reaction).map((row) => `${names.get(row)}\u00a0${strengthOf(plate, row) ?? "?"}`);
  return make("div", {}, plateDrawing(`paper-${plate.id}`, sheet, reaction, plate), make("b", {}, timeWords(plate.minutes)), make("span", {}, grades.join(", ")));
}
