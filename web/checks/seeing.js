// @ts-check
/** How to see what is colourless: the ways in the order to use them, with what each says of the compounds of the study. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { fullName } from "../plate/names.js";
import { saidOf } from "../request.js";
import { openWhat } from "../sheet/identity.js";
import { say } from "../texts.js";
import { cited } from "../where/sources.js";
import { askSoon, askedOf, isTold, withFaults } from "./ask.js";
import { checksOf, saidIn } from "./sheet.js";
import { cautionsFold, fromBefore, spoken, standing } from "./standing.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** The compounds of the sample, and the references of which it was said what they are. @param {State} state */
function compoundsOf(state) {
  const { sheet } = state;
  const mine = sheet.spots.map((spot) => ({ name: fullName(sheet, spot.id), ...saidOf(spot) }));
  const further = checksOf(state).identity.references.map((one) => ({ name: one.name.trim(), ...saidIn(one) })).filter((one) => one.name !== "" && Object.keys(one).length > 1);
  return [...mine, ...further.filter(({ name }) => !mine.some((each) => each.name === name))];
}

/** @param {State} state @returns {import("./ask.js").Question} */
export function seeingQuestion(state) {
  const compounds = compoundsOf(state);
  const entries = new Map(state.sheet.spots.map(({ id }, i) => [`compounds[${i}]`, `see-${id}`]));
  return { check: "seeing", body: { compounds: compounds.length === 1 && Object.keys(compounds[0]).length === 1 ? [] : compounds }, entries };
}

/** @param {State} state @param {Act} act @returns {(Element | false | undefined)[]} */
export function seeingView(state, act) {
  const question = seeingQuestion(state);
  queueMicrotask(() => askSoon(state, act, question));
  const wrong = withFaults(state, question);
  const answer = askedOf(state, question)?.answer;
  return [
    make("ul", { class: "see-compounds", id: "see-compounds" }, ...state.sheet.spots.map((spot) => known(state, act, spot, wrong))),
    make(
      "div",
      { id: "see-told" },
      spoken("see", answer && isTold(state, question) && answer.order.text),
      ...standing(wrong, question),
      answer && make("div", { id: "see-answer", class: isTold(state, question) ? undefined : "old" }, fromBefore(isTold(state, question)), make("p", { id: "see-order" }, answer.order.text), ...waysView(state, answer.ways), cautionsFold("see-cautions", answer.cautions)),
    ),
  ];
}

/** Opens what a compound is, up on the sheet, with a way back to here. @param {Act} act @param {import("../sheet/sheet.js").Spot} spot */
async function sayWhat(act, spot) {
  act.look({ whatFrom: { spot: spot.id, entry: `see-what-${spot.id}`, words: say("later.checks-seeing") } });
  await openWhat(act, spot);
}

/** What is known of a compound, and the way to say more. @param {State} state @param {Act} act @param {import("../sheet/sheet.js").Spot} spot @param {State} wrong */
function known(state, act, spot, wrong) {
  const said = saidOf(spot);
  const name = fullName(state.sheet, spot.id);
  const words = "smiles" in said ? String(said.smiles) : Object.keys(said).length > 0 ? say("page.what-said") : say("later.checks-see-unknown");
  const told = wrong.faults.get(`see-${spot.id}`);
  return make(
    "li",
    { id: `see-${spot.id}` },
    make("strong", {}, name),
    make("span", { class: "see-said" }, words),
    button({ id: `see-what-${spot.id}`, label: say("later.checks-see-say"), name: say("page.what-of", { spot: name }), kind: "small", press: () => sayWhat(act, spot) }),
    told && make("p", { class: "fault" }, told.join(" ")),
  );
}

/** Ways that most benches have, where nothing is known of the compounds; the others stand in the fold. */
const FIRST = 6;

/** Whether a way says something of a compound; where nothing is known of any, the first ones do. @param {any} way @param {number} i */
export const isTelling = ({ answers }, i) => (answers.some((/** @type {any} */ { answer }) => answer !== "not-known") ? answers.some((/** @type {any} */ { answer }) => answer === "shows" || answer === "may-show") : i < FIRST);

/** @param {State} state @param {any[]} ways */
function waysView(state, ways) {
  const telling = ways.filter(isTelling);
  const rest = ways.filter((way, i) => !isTelling(way, i));
  return [
    make("ol", { class: "see-ways", id: "see-ways" }, ...telling.map((one) => way(state, one))),
    rest.length > 0 && make("details", { id: "see-rest" }, make("summary", {}, say("later.checks-see-rest", { count: rest.length })), make("ol", { class: "see-ways" }, ...rest.map((one) => way(state, one)))),
  ];
}

/** @param {State} state @param {any} one */
function way(state, { id, name, leaves, answers, how, negative, cautions, source, basis }) {
  return make(
    "li",
    { id: `way-of-${id}`, class: "see-way" },
    make("p", { class: "see-name" }, make("strong", {}, name.text), make("span", { class: "see-leaves" }, say(`later.checks-leaves-${leaves}`))),
    answers.length > 0 &&
      make(
        "ul",
        { class: "see-answers" },
        ...answers.map((/** @type {any} */ each) => make("li", { "data-answer": each.answer }, make("strong", {}, say("later.checks-see-answer", { name: each.name, answer: say(`later.checks-see-${each.answer}`) })), " ", make("span", {}, each.because.text))),
      ),
    make("div", { class: "see-use" }, make("p", { class: "see-how" }, how.text), make("p", { class: "see-negative" }, make("strong", {}, say("later.checks-see-negative")), " ", negative.text)),
    make(
      "div",
      { class: "see-mind" },
      cautions.length > 0 && make("p", { class: "see-cautions" }, make("span", { class: "caution-sign", "aria-hidden": "true" }, "!"), " ", cautions.map((/** @type {any} */ each) => each.text).join(" ")),
      make("p", { class: "see-source" }, cited(state, { source, basis })),
    ),
  );
}
