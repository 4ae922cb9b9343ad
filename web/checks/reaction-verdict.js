// @ts-check
/** How the reaction stands: in a word, why, when to look again, how likely each is, and in what its plates would tell more. */

import { list, make } from "../dom.js";
import { say } from "../texts.js";
import { askSign } from "../where/origin.js";
import { askedOf, isTold, withFaults } from "./ask.js";
import { questionOf } from "./reaction-question.js";
import { cautionsView, nextView, spoken, standing } from "./standing.js";

/** @typedef {import("../state.js").State} State */

/** What a reaction may do. */
const STATES = ["running", "stalled", "finished", "gone-wrong"];

/** @param {any} message */
const textOf = (message) => message.text;

/** @param {number} chance */
const hundredths = (chance) => Math.round(100 * chance);

/** No chance is shown as certain, nor as none. @param {number} chance */
function chanceWords(chance) {
  if (chance > 0.99) return say("later.checks-reaction-above");
  return chance < 0.01 ? say("later.checks-reaction-below") : say("later.checks-reaction-hundred", { count: hundredths(chance) });
}

/** @param {State} state */
export function verdictView(state) {
  const question = questionOf(state);
  const told = isTold(state, question);
  const answer = question.body && askedOf(state, question)?.answer;
  return make(
    "div",
    { id: "reaction-verdict", class: answer && !told ? "course-verdict dated" : "course-verdict" },
    spoken("reaction", told && `${stateWords(answer)}. ${sentenceOf(answer)}`),
    ...standing(withFaults(state, question), question),
    ...(answer ? [!told && make("p", { class: "aside" }, say("page.changed")), ...said(answer), chances(answer)] : []),
  );
}

/** @param {any} answer */
const stateWords = (answer) => say(`later.checks-reaction-state-${answer.state}`);

/** What is said of it, without the word that stands above it already. @param {any} answer */
function sentenceOf(answer) {
  const [sentence, word] = [textOf(answer.inWords), `${stateWords(answer)}: `];
  return sentence.startsWith(word) ? sentence.slice(word.length) : sentence;
}

/** The word, when to look again, and the reasons. @param {any} answer */
export const said = (answer) => [
  make("p", { class: "course-word" }, stateWords(answer)),
  make("p", { class: "course-sentence" }, sentenceOf(answer)),
  answer.lookAgain && make("p", { class: "decisive look-again" }, textOf(answer.lookAgain.text)),
  answer.reasons.length > 0 && list(answer.reasons.map(textOf)),
  ...answer.warnings.map((/** @type {any} */ warning) => make("p", { class: "decisive" }, textOf(warning))),
];

/** How likely each is, as bars with their numbers. @param {any} answer */
function chances({ chances: all }) {
  const known = STATES.filter((each) => typeof all[each] === "number");
  if (known.length === 0) return undefined;
  return make(
    "div",
    { id: "reaction-chances", role: "group", "aria-labelledby": "reaction-chances-words" },
    make("h4", { id: "reaction-chances-words" }, say("later.checks-reaction-chances"), " ", askSign("check-course", say("later.checks-reaction-chances"))),
    ...known.map((each) =>
      make(
        "div",
        { class: "state-chance", id: `reaction-chance-${each}` },
        make("span", { id: `reaction-chance-words-${each}` }, say(`later.checks-reaction-state-${each}`)),
        make("meter", { min: 0, max: 100, value: hundredths(all[each]), "aria-labelledby": `reaction-chance-words-${each}` }),
        make("span", { class: "chance-number" }, chanceWords(all[each])),
      ),
    ),
  );
}

/** How far starting material and product run from each other, in what they would part better, and what to mind. @param {any} answer */
export const onwardView = (answer) =>
  make(
    "div",
    { id: "reaction-onward", class: "reaction-onward" },
    answer.apart && make("div", { id: "reaction-apart" }, make("h4", {}, say("later.checks-reaction-apart")), make("p", {}, textOf(answer.apart.text))),
    nextView("reaction-eluents", answer.next),
    before(answer),
  );

/** How a plate is taken, and what may hurt somebody: folded on the screen, open on paper. @param {any} answer */
const before = ({ practice, cautions }) =>
  make("details", { id: "reaction-before" }, make("summary", {}, say("later.checks-reaction-before")), list(practice.map(textOf)), cautionsView("reaction-cautions", cautions));
