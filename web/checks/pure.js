// @ts-check
/** Is it pure? What was seen of one compound, by which means, and what could hide. */

import { make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { faultAt } from "../faults.js";
import { fullName } from "../plate/names.js";
import { saidOf } from "../request.js";
import { rfOf, typedRf } from "../sheet/geometry.js";
import { say } from "../texts.js";
import { askSign } from "../where/origin.js";
import { askSoon, askedEluent, askedOf, isTold, number, where, withFaults } from "./ask.js";
import { eluentWords } from "./eluent.js";
import { checksOf, editChecks, usualEluent, wasRun } from "./sheet.js";
import { cautionsFold, fromBefore, nextView, ofHundredWords, sentences, spoken, standing } from "./standing.js";
import { tables } from "./tables.js";
import { mark } from "./verdicts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Purity} Purity */

/** What is left at the start line. */
const START_SPOTS = /** @type {const} */ (["none", "weak", "strong"]);
const AMOUNTS = /** @type {const} */ (["volumeUl", "concentrationPercent", "touches"]);
/** One spot, one touch, 1 µl, 1 %: what stands faint in an empty entry. */
const USUAL_AMOUNT = "1";

/** @param {State} state @returns {import("./ask.js").Question} */
export function pureQuestion(state) {
  const { purity } = checksOf(state);
  const { sheet } = state;
  const spot = sheet.spots.find(({ id }) => id === purity.spot);
  const entries = new Map([["rf", "rf-pure"], ["spotsSeen", "count-pure"], ["seenBy", "pure-ways"], ["startSpot", "pure-start"], ["eluent", "rf-pure"], ...AMOUNTS.map((name) => /** @type {[string, string]} */ ([name, `amount-${name}`]))]);
  if (purity.rf.trim() === "") return { check: "purity", body: undefined, entries };
  const body = {
    ...(spot?.name.trim() ? { name: spot.name.trim() } : {}),
    ...(spot ? saidOf(spot) : {}),
    rf: number(purity.rf),
    spotsSeen: number(purity.spotsSeen.trim() || USUAL_AMOUNT),
    seenBy: purity.seenBy,
    ...Object.assign({}, ...AMOUNTS.map((name) => where(name, purity[name]))),
    ...(purity.startSpot ? { startSpot: purity.startSpot } : {}),
    ...askedEluent(sheet, ranOn(state).eluent),
  };
  return { check: "purity", body, entries };
}

/** Where a compound was read last on the plates of the study. @param {State["sheet"]} sheet @param {string | undefined} id */
function lastRead({ plates }, id) {
  for (const plate of [...plates].reverse()) {
    for (const reading of plate.lanes.flatMap((lane) => lane.readings)) {
      const rf = id !== undefined && reading.spots.includes(id) ? rfOf(plate, reading) : undefined;
      if (rf !== undefined) return { plate, rf: reading.by === "rf" ? reading.typed : typedRf(rf) };
    }
  }
  return undefined;
}

/**
 * In what the spot ran, and the number of the plate of the study that this is taken from: where the compound was read last, else the last that was run;
 * of none, that of the plate of lanes, without a number.
 * @param {State} state
 * @returns {{eluent: import("./sheet.js").Eluent, number?: number}}
 */
function ranOn(state) {
  const { plates } = state.sheet;
  const { purity } = checksOf(state);
  const own = lastRead(state.sheet, purity.spot)?.plate;
  const plate = own && wasRun(own) ? own : plates.findLast(wasRun);
  if (plate) return { eluent: plate, number: plates.indexOf(plate) + 1 };
  const lanes = state.sheet.checks?.identity?.plates.findLast(({ eluent }) => eluent.trim() !== "");
  return { eluent: lanes ?? usualEluent(state) };
}

/** In what the spot ran, and where that is taken from; nothing where nobody said it. @param {State} state */
export function pureRanIn(state) {
  const { eluent, number: plate } = ranOn(state);
  const ran = eluentWords(state, eluent);
  if (ran === "") return "";
  return plate === undefined ? say("later.checks-pure-as-lanes", { eluent: ran }) : say("later.checks-pure-as-on", { eluent: ran, number: plate });
}

/** What was seen, where it was counted. @param {Purity} purity @param {any} answer */
export const seenWords = (purity, answer) => (purity.spotsSeen.trim() === "" ? say("later.checks-pure-count-unsaid") : answer.seen.text);

/** What was applied, and that one touch was reckoned with where nobody counted them. @param {Purity} purity @param {any} answer */
export const amountWords = (purity, answer) => [answer.amounts.text.text, ...(purity.touches.trim() === "" ? [say("later.checks-pure-touch-reckoned")] : [])].join(" ");

/** @param {State} state @param {Act} act @returns {(Element | false | undefined)[]} */
export function pureView(state, act) {
  const question = pureQuestion(state);
  queueMicrotask(() => askSoon(state, act, question));
  const wrong = withFaults(state, question);
  const answer = question.body && askedOf(state, question)?.answer;
  return [
    make(
      "div",
      { class: "same-sides", id: "pure-sides" },
      make("div", { id: "pure-entry" }, ...entries(state, act, wrong)),
      make(
        "div",
        { id: "pure-told" },
        spoken("pure", answer && isTold(state, question) && seenWords(checksOf(state).purity, answer)),
        question.body === undefined && make("p", { id: "pure-wanting", class: "decisive" }, say("later.checks-pure-wanting")),
        ...standing(wrong, question),
        answer && answerView(checksOf(state).purity, answer, isTold(state, question)),
      ),
    ),
  ];
}

/** @param {State} state @param {Act} act @param {State} wrong */
function entries(state, act, wrong) {
  const { purity } = checksOf(state);
  const { sheet } = state;
  const edit = (/** @type {(mine: Purity) => void} */ change, /** @type {string} */ together = "") => editChecks(state, act, "purity", change, together || undefined);
  const field = (/** @type {string} */ id, /** @type {"rf" | "spotsSeen" | typeof AMOUNTS[number]} */ name, /** @type {string} */ label) => {
    const entry = typedField(wrong, { id, label, value: purity[name], mode: "decimal", typed: (typed) => edit((mine) => { mine[name] = typed; }, id), left: act.rest });
    if (name !== "rf") entry.querySelector("input")?.setAttribute("placeholder", say("later.checks-usual", { number: USUAL_AMOUNT }));
    return entry;
  };
  const choose = (/** @type {string} */ id) =>
    edit((mine) => {
      if (mine.spot === id) delete mine.spot;
      else Object.assign(mine, { spot: id, rf: lastRead(sheet, id)?.rf ?? mine.rf });
    });
  const ways = tables(act).ways;
  const known = [...ways, ...purity.seenBy.filter((id) => !ways.some((way) => way.id === id)).map((id) => ({ id, name: id }))];
  return [
    chips(wrong, "pure-spot", say("later.checks-pure-spot"), sheet.spots.map(({ id }) => ({ id, label: fullName(sheet, id), pressed: purity.spot === id, press: () => choose(id) }))),
    make("div", { class: "two", id: "pure-numbers" }, field("rf-pure", "rf", say("later.checks-pure-rf")), field("count-pure", "spotsSeen", say("later.checks-pure-count"))),
    make("p", { class: "aside", id: "pure-eluent" }, pureRanIn(state) || say("later.checks-pure-no-eluent")),
    chips(wrong, "pure-ways", say("later.checks-pure-ways"), known.map((way) => ({ id: way.id, label: way.name?.text ?? way.name, pressed: purity.seenBy.includes(way.id), press: () => edit((mine) => { mine.seenBy = mine.seenBy.includes(way.id) ? mine.seenBy.filter((each) => each !== way.id) : [...mine.seenBy, way.id]; }) }))),
    purity.seenBy.length === 0 && make("p", { class: "aside", id: "pure-ways-wanting" }, say("later.checks-pure-ways-wanting")),
    chips(wrong, "pure-start", say("later.checks-pure-start"), START_SPOTS.map((each) => ({ id: each, label: say(`later.checks-pure-start-${each}`), pressed: purity.startSpot === each, press: () =>
      edit((mine) => {
        if (mine.startSpot === each) delete mine.startSpot;
        else mine.startSpot = each;
      }) }))),
    make("div", { class: "two", id: "pure-amounts" }, ...AMOUNTS.map((name) => field(`amount-${name}`, name, say(`later.checks-pure-${AMOUNT_WORDS[name]}`)))),
  ];
}

const AMOUNT_WORDS = { volumeUl: "volume", concentrationPercent: "concentration", touches: "touches" };

/** @param {State} state @param {string} id @param {string} words @param {{id: string, label: string, pressed: boolean, press: () => void}[]} all */
function chips(state, id, words, all) {
  const { told } = faultAt(state, id);
  return make(
    "div",
    { class: "field", id },
    make("span", { id: `${id}-words`, class: "entry-words" }, words),
    make("div", { class: "chips", role: "group", "aria-labelledby": `${id}-words` }, ...all.map((each) => button({ id: `${id}-${each.id}`, label: each.label, pressed: each.pressed, press: each.press }))),
    told,
  );
}

/** @param {Purity} purity @param {any} answer @param {boolean} current */
function answerView(purity, answer, current) {
  return make(
    "div",
    { id: "pure-answer", class: current ? undefined : "old" },
    fromBefore(current),
    make("p", { class: "pure-seen" }, contradicts(answer) && mark(), seenWords(purity, answer)),
    answer.couldHide.length > 0 && make("div", { id: "pure-hide" }, make("h4", {}, say("later.checks-pure-hide"), " ", askSign("check-hidden", say("later.checks-pure-hide"))), make("ul", { class: "hide-list" }, ...answer.couldHide.map(hidden))),
    answer.amounts && make("div", { id: "pure-amounts-told" }, make("h4", {}, say("later.checks-pure-amounts"), " ", askSign("check-amounts", say("later.checks-pure-amounts"))), make("p", {}, amountWords(purity, answer))),
    nextView("pure-next", answer.next),
    sentences("pure-second", say("later.checks-second-ways"), answer.secondWays),
    sentences("pure-warnings", say("later.checks-warnings"), answer.warnings),
    cautionsFold("pure-cautions", answer.cautions),
  );
}

/** Whether what was seen speaks against what the compound is said to be. @param {any} answer */
export const contradicts = ({ warnings }) => (warnings ?? []).some((/** @type {any} */ { key }) => key === "pure.warn-something-else");

/** @param {any} one */
function hidden({ kind, chance, text }) {
  return make(
    "li",
    { "data-kind": kind },
    chance !== undefined && make("meter", { min: 0, max: 1, value: chance, "aria-label": say("later.checks-pure-chance") }),
    chance !== undefined && make("span", { class: "hide-chance" }, ofHundredWords(chance)),
    make("span", {}, text.text),
  );
}
