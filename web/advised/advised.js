// @ts-check
/** What was advised and what happened, side by side; and how often the advice of this laboratory came true. */

import { make } from "../dom.js";
import { styled } from "../later.js";
import { plain } from "../numbers.js";
import { ofHundred } from "../plate/names.js";
import { get } from "../server.js";
import { ratioWords } from "../studies/eluent.js";
import { timeOf } from "../study/head.js";
import { furtherTexts, marked, say } from "../texts.js";
import { askable } from "../where/origin.js";
import { laboratoryChart } from "./laboratory.js";
import { strip } from "./strip.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").GivenAdvice} GivenAdvice */

await Promise.all([styled(new URL("./advised.css", import.meta.url)), furtherTexts()]);

/** What the server made of it, and for which state of the study. @type {{of: string, answer: any, standing: "asked" | "come" | "gone"}} */
const outcomes = { of: "", answer: undefined, standing: "asked" };

/** @param {State} state @param {Act} act @returns {(Element | false)[]} */
export function advisedView(state, act) {
  const { sheet, study } = state;
  const { kind, at } = study.standing;
  if (kind === "untouched") return [make("p", { class: "aside" }, say("later.advised-untouched"))];
  const now = `${sheet.id} ${kind === "saved" ? at : "-"} ${document.documentElement.lang}`;
  if (kind === "saved" && outcomes.of !== now) fetchOutcomes(act, sheet.id, now);
  const own = outcomes.of.startsWith(sheet.id) ? outcomes.answer : undefined;
  return [
    make("p", { class: "aside" }, say("later.advised-what")),
    sheet.advices.length === 0 && make("p", { id: "advised-none" }, say("later.advised-none")),
    kind !== "saved" && kind !== "saving" && make("p", { class: "aside" }, say("later.advised-unsaved")),
    make("ol", { id: "advised-list", class: "advised-list" }, ...sheet.advices.map((advice, i) => row(state, advice, i, own?.study?.[i]))),
    ...(own ? laboratory(state, act, own.laboratory) : []),
    outcomes.standing === "gone" && make("p", { class: "aside" }, say("later.studies-gone")),
  ];
}

/** @param {Act} act @param {string} id @param {string} now */
async function fetchOutcomes(act, id, now) {
  Object.assign(outcomes, { of: now, standing: "asked" });
  try {
    const answer = await get(`/api/outcomes?study=${id}`);
    if (outcomes.of !== now) return;
    Object.assign(outcomes, { answer, standing: "come" });
  } catch {
    if (outcomes.of === now) Object.assign(outcomes, { of: "", standing: "gone" });
  }
  act.look({ came: "outcomes" });
}

/** @param {State} state @param {GivenAdvice} advice @param {number} i @param {any} outcome undefined as long as it is not known */
function row(state, advice, i, outcome) {
  const { sheet } = state;
  const plate = outcome?.plate === undefined ? -1 : sheet.plates.findIndex((each) => each.id === outcome.plate);
  const eluent = ratioWords(state, advice, advice.percentStrong);
  return make(
    "li",
    { id: `advised-${i}`, class: "advised-row", "data-outcome": outcome?.outcome },
    make("p", { class: "advised-ratio" }, advice.additive ? say("page.eluent-with", { eluent, additive: advice.additive }) : eluent),
    make(
      "p",
      { class: "aside" },
      say("later.advised-when", { when: timeOf(advice.given), plates: rested(sheet, advice) }),
      " ",
      ...said(advice),
    ),
    strip(sheet, advice, outcome),
    make("p", { class: "advised-outcome" }, plate >= 0 && make("strong", {}, say("later.advised-plate", { number: plate + 1 }), " "), outcome ? outcome.text.text : say("later.advised-open")),
  );
}

/** The chance as it was said. @param {GivenAdvice} advice */
function said({ probability }) {
  const count = String(ofHundred(probability));
  return [say("later.advised-said"), " ", askable("said", say("later.of-hundred", { count }))];
}

/** The plates that it rested on, by their numbers. @param {import("../sheet/sheet.js").Sheet} sheet @param {GivenAdvice} advice */
function rested(sheet, { after }) {
  const numbers = after.map((id) => sheet.plates.findIndex((plate) => plate.id === id) + 1).filter((number) => number > 0);
  if (after.length === 0) return say("later.rested-none");
  if (numbers.length < after.length) return say("later.rested-gone");
  return say(numbers.length === 1 ? "later.rested-one" : "later.rested", { plates: numbers.join(", ") });
}

/** @param {State} state @param {Act} act @param {any} told */
function laboratory(state, act, told) {
  const { scored, cameTrue, low, high, groups } = told;
  if (!(scored > 0)) return [make("p", { id: "laboratory", class: "aside" }, say("later.laboratory-none"))];
  const of100 = (/** @type {number} */ share) => plain(100 * share, 0);
  return [
    make("h3", {}, say("later.laboratory")),
    make(
      "p",
      { id: "laboratory" },
      say(scored === 1 ? "later.laboratory-one" : "later.laboratory-scored", { scored, said: of100(told.said) }),
      " ",
      askable("came-true", say(scored === 1 ? (cameTrue === 1 ? "later.laboratory-one-came" : "later.laboratory-one-missed") : "later.laboratory-came", { cameTrue, scored, low: of100(low), high: of100(high) })),
    ),
    ...(groups?.length && scored >= 10 ? [laboratoryChart(state, act, told)] : [make("p", { class: "aside" }, say("later.laboratory-few"))]),
  ];
}
