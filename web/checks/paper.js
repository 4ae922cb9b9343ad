// @ts-check
/** All checks of the study on one page of paper: what was read, what it says, what to do next, and what to mind. */

import { list, make } from "../dom.js";
import { fullName } from "../plate/names.js";
import { lines, mmOf, rfOf } from "../sheet/geometry.js";
import { exampleWords } from "../sheet/sample.js";
import { language, say } from "../texts.js";
import { askedOf, isTold } from "./ask.js";
import { hrfQuestion } from "./correction.js";
import { eluentWords, ranInWords } from "./eluent.js";
import { readingOf, shapeOf } from "./lane-moves.js";
import { lanesOnPaper } from "./lane-plate.js";
import { amountWords, contradicts, pureQuestion, pureRanIn, seenWords } from "./pure.js";
import { reactionPaper } from "./reaction.js";
import { laneWords } from "./references.js";
import { sameQuestion } from "./same-question.js";
import { isTelling, seeingQuestion } from "./seeing.js";
import { checksOf } from "./sheet.js";
import { nextView, sentences } from "./standing.js";
import { candidates, isOpen, mark, verdict } from "./verdicts.js";

/** @typedef {import("../state.js").State} State @typedef {import("./ask.js").Question} Question */

/** @param {State} state */
export function paperView(state) {
  const { checks, title, example } = state.sheet;
  const { identity } = checksOf(state);
  const same = checks?.identity && current(state, sameQuestion(state, identity));
  const hrf = checks?.hrf && current(state, hrfQuestion(state));
  const pure = checks?.purity && current(state, pureQuestion(state));
  const seeing = state.looking.checked?.seeing && current(state, seeingQuestion(state));
  const done = checks?.reaction ? reactionPaper(state) : [];
  const reaction = state.looking.checked?.reaction;
  const cautions = cautionsOf([same, hrf, pure, reaction?.standing === "told" && reaction.answer, seeing]);
  return make(
    "div",
    { id: "checks-paper", class: "only-paper" },
    make("div", { class: "paper-head" }, make("h2", {}, say("page.checks-open")), make("p", {}, [title.trim() || say("page.untitled"), today()].join(" \u00b7 "))),
    make("p", { class: "paper-by-hand" }, ...["sample", "by", "date"].map((each) => make("span", {}, say(`later.checks-paper-${each}`)))),
    example !== "no" && make("p", {}, exampleWords(state.sheet)),
    checks?.identity && part("same", isUnsettled(same), ...sameOnPaper(state, same)),
    hrf && make("p", { class: "paper-hrf" }, hrf.corrected.map((/** @type {any} */ one) => say("later.checks-hrf-corrected", one)).join(" "), " ", hrf.text.text),
    make("div", { class: "paper-two" }, checks?.purity && part("pure", Boolean(pure) && contradicts(pure), ...pureOnPaper(state, pure)), done.length > 0 && part("done", reaction?.standing === "told" && ["not-told", "gone-wrong"].includes(reaction.answer.state), ...done)),
    seeing && part("seeing", false, ...seeingOnPaper(seeing)),
    cautions.length > 0 && make("div", { class: "paper-cautions" }, make("h4", {}, "! ", say("later.checks-cautions")), list(cautions)),
    make("p", { class: "paper-left-out" }, say("later.checks-paper-left-out")),
  );
}

const today = () => new Date().toLocaleDateString(language() === "en" ? "en-GB" : language(), { day: "numeric", month: "long", year: "numeric" });

/** What to mind, each once; that the data sheets come first is said by the first who says it. @param {any[]} answers @returns {string[]} */
function cautionsOf(answers) {
  const all = answers.flatMap((answer) => (answer ? answer.cautions ?? [] : []));
  const sheets = all.filter(({ key }) => /caution-sheet/.test(key)).sort((one, other) => other.text.length - one.text.length)[0];
  return [...new Set(all.filter((each) => each === sheets || !/caution-sheet/.test(each.key)).map(({ text }) => text))];
}

/** Whether a comparison is undecided, or its lanes speak against each other. @param {any} answer */
const isUnsettled = (answer) => Boolean(answer?.verdicts.some(isOpen));

/** The answer to what stands on the sheet. @param {State} state @param {Question} question */
const current = (state, question) => (isTold(state, question) ? askedOf(state, question)?.answer : undefined);

/** @param {"same" | "pure" | "done" | "seeing"} name @param {boolean} unsettled then the sign stands beside the headline @param {...(Element | false | undefined)} inside */
const part = (name, unsettled, ...inside) => make("section", { class: `paper-part paper-${name}` }, make("h3", {}, unsettled && mark(), say(`later.checks-${name}`)), ...inside);

/** Where there is no answer to what was entered it is said, for paper cannot ask. */
const notTold = () => make("p", {}, say("later.checks-paper-no-answer"));

/** @param {State} state @param {any} answer */
function sameOnPaper(state, answer) {
  const { identity } = checksOf(state);
  return [
    make(
      "div",
      { class: "paper-same-sides" },
      make("div", {}, make("div", { class: "paper-plates" }, ...identity.plates.map((plate, i) => make("figure", {}, lanesOnPaper(identity, plate, i + 1), make("figcaption", {}, ...readings(state, plate))))), nextView(undefined, answer?.next)),
      make(
        "div",
        {},
        ...(answer ? answer.verdicts.map((/** @type {any} */ one) => verdict(one)) : [notTold()]),
        ...[answer?.mixture, answer?.unexplained].map((told) => told && make("p", {}, told.text)),
        answer && candidates(answer.candidates),
      ),
    ),
    make("div", { class: "paper-two" }, ...further(answer)),
  ];
}

/** What goes first where there is no room, the last of it before the first. @param {any} answer */
const further = (answer) =>
  [sentences(undefined, say("later.checks-second-ways"), answer?.secondWays), sentences(undefined, say("later.checks-warnings"), answer?.warnings)].map((each) => {
    if (each) each.classList.add("may-go");
    return each;
  });

/** Each lane with its numbers, and in what it was run. @param {State} state @param {import("./sheet.js").LanePlate} plate */
function readings(state, plate) {
  const { identity } = checksOf(state);
  const shape = shapeOf(plate);
  const lanes = plate.lanes.map((lane, i) => {
    const spots = lane.readings.map((seen) => {
      const [mm, rf] = [mmOf(shape, readingOf(seen)), rfOf(shape, readingOf(seen))];
      return mm === undefined || rf === undefined ? say("later.checks-spot-unread") : say("later.checks-paper-spot", { mm, rf });
    });
    return make("span", {}, `${laneWords(identity, lane, i + 1)}: ${spots.join("; ") || "\u2013"}`);
  });
  const ran = eluentWords(state, plate);
  return [make("span", {}, ran ? ranInWords(state, plate) : say("later.checks-paper-run", { mm: lines(shape).run })), ...lanes];
}

/** @param {State} state @param {any} answer */
function pureOnPaper(state, answer) {
  const { purity } = checksOf(state);
  const ran = pureRanIn(state);
  const of = purity.spot ? `${fullName(state.sheet, purity.spot)}, Rf ${purity.rf}` : `Rf ${purity.rf}`;
  if (!answer) return [make("p", {}, of), notTold()];
  return [
    make("p", {}, `${of}. ${ran || say("later.checks-paper-eluent-unsaid")}`),
    make("p", {}, make("strong", {}, seenWords(purity, answer))),
    sentences(undefined, say("later.checks-pure-hide"), answer.couldHide.map((/** @type {any} */ one) => one.text)),
    answer.amounts && make("p", {}, amountWords(purity, answer)),
    nextView(undefined, answer.next),
    ...further(answer),
  ];
}

/** The ways in their order; how each is done stays on the screen. @param {any} answer */
function seeingOnPaper(answer) {
  const row = (/** @type {any} */ way, /** @type {number} */ i) =>
    make(
      "tr",
      { class: i >= 4 ? "may-go" : undefined },
      make("th", { scope: "row" }, `${i + 1}. ${way.name.text}`),
      make("td", {}, say(`later.checks-leaves-${way.leaves}`)),
      make("td", {}, way.answers.map((/** @type {any} */ each) => say("later.checks-see-answer", { name: each.name, answer: say(`later.checks-see-${each.answer}`) }).replace(/\s*:$/, "")).join("; ")),
    );
  return [make("p", {}, answer.order.text), make("table", { class: "paper-ways" }, make("tbody", {}, ...answer.ways.filter(isTelling).map(row)))];
}
