// @ts-check
/** What the lanes say of each reference, large in words; under it why, and by how much. */

import { draw, list, make } from "../dom.js";
import { marked, say, sayWith } from "../texts.js";
import { askSign, askable } from "../where/origin.js";
import { askedOf } from "./ask.js";
import { cautionsFold, fromBefore, nextView, ofHundredWords, sentences } from "./standing.js";

/** @typedef {import("../state.js").State} State @typedef {import("./sheet.js").Identity} Identity */

const SIZE = { width: 320, height: 46 };

/** @param {State} state @param {Identity} identity @param {import("./ask.js").Question} question @param {boolean} current */
export function verdictsView(state, identity, question, current) {
  const answer = question.body && askedOf(state, question)?.answer;
  if (!answer) return undefined;
  return make(
    "div",
    { id: "verdicts", class: current ? "verdicts" : "verdicts old" },
    fromBefore(current),
    ...answer.verdicts.map((/** @type {any} */ one, /** @type {number} */ i) => verdict(one, i)),
    ...[answer.mixture, answer.unexplained].map((told) => told && make("p", { class: "decisive" }, told.text)),
    candidates(answer.candidates),
    nextView("same-next", answer.next),
    sentences("same-ways", say("later.checks-second-ways"), answer.secondWays),
    sentences("same-warnings", say("later.checks-warnings"), answer.warnings),
    cautionsFold("same-cautions", answer.cautions),
  );
}

/** Each verdict in a few words. @param {State} state @param {import("./ask.js").Question} question */
export const verdictsSpoken = (state, question) => (askedOf(state, question)?.answer.verdicts ?? []).map((/** @type {any} */ one) => `${one.reference}: ${say(`later.checks-verdict-${one.verdict}`)}.`).join(" ");

/** The sign of what is not settled. */
export const mark = () => make("span", { class: "caution-sign", role: "img", "aria-label": say("later.checks-unsettled") }, "!");

/** Whether a verdict is none yet, or lanes speak against each other. @param {any} told */
export const isOpen = ({ verdict: word, reasons }) => word === "undecided" || (reasons ?? []).some((/** @type {any} */ { key }) => /contradict/.test(key));

/** @param {any} told @param {number} [i] its place, where it is not on paper */
export function verdict(told, i) {
  return make(
    "div",
    { class: "verdict", id: i === undefined ? undefined : `verdict-${i}`, "data-verdict": told.verdict },
    make("h4", {}, told.reference),
    make("p", { class: "verdict-words" }, isOpen(told) && mark(), say(`later.checks-verdict-${told.verdict}`)),
    make("p", {}, told.inWords.text),
    told.gapRf && gapBar(told),
    told.reasons?.length > 0 && list(told.reasons.map((/** @type {any} */ one) => one.text)),
  );
}

/** The gap with its error, from the 0 of one compound on; shaded what these lanes would often miss. @param {any} told */
function gapBar({ gapRf: { value, low, high }, leastToldApartRf: least }) {
  const [gap, from, to] = [value, low, high].map(Number);
  const sign = gap < 0 ? -1 : 1;
  const ends = [from * sign, to * sign].sort((one, other) => one - other);
  const top = Math.max(0.1, ends[1], 1.6 * (least ?? 0)) * 1.05;
  const bottom = Math.min(0, ends[0]);
  const x = (/** @type {number} */ rf) => Number((((rf - bottom) / (top - bottom)) * SIZE.width).toFixed(1));
  const shown = { gap: Math.abs(gap), low: ends[0], high: ends[1], ...(least === undefined ? {} : { least }) };
  const key = least === undefined ? "later.checks-gap" : "later.checks-gap-least";
  return make(
    "figure",
    { class: "gap-bar" },
    draw(
      "svg",
      { viewBox: `-4 0 ${SIZE.width + 8} ${SIZE.height}`, role: "img", "aria-label": say(key, shown) },
      least !== undefined && draw("rect", { class: "gap-one", x: x(Math.max(bottom, -least)), y: 8, width: x(least) - x(Math.max(bottom, -least)), height: 18 }),
      draw("line", { class: "gap-axis", x1: 0, x2: SIZE.width, y1: 26, y2: 26 }),
      ...ticks(bottom, top).map((rf) => [draw("line", { class: "gap-axis", x1: x(rf), x2: x(rf), y1: 26, y2: 30 }), draw("text", { class: "gap-number", x: x(rf), y: 42, "text-anchor": "middle" }, marked(String(Number(rf.toFixed(2)))))]).flat(),
      draw("line", { class: "gap-error", x1: x(ends[0]), x2: x(ends[1]), y1: 17, y2: 17 }),
      draw("circle", { class: "gap-value", cx: x(Math.abs(gap)), cy: 17, r: 5 }),
    ),
    make("figcaption", {}, ...sayWith(key, shown, { gap: (told) => askable("check-gap", told) })),
  );
}

/** @param {number} from @param {number} to */
function ticks(from, to) {
  const step = [0.02, 0.05, 0.1, 0.2, 0.5].find((each) => (to - from) / each <= 6) ?? 1;
  return Array.from({ length: 12 }, (_, i) => (Math.ceil(from / step) + i) * step).filter((rf) => rf <= to);
}

/** How many of those that it might be lie within the error. @param {any} told */
export function candidates(told) {
  if (!told) return undefined;
  const row = (/** @type {any} */ one) =>
    make(
      "tr",
      {},
      make("th", { scope: "row" }, one.name),
      make("td", {}, one.rf ? say("later.checks-rf-error", { rf: one.rf.value, low: one.rf.low, high: one.rf.high }) : "\u2013"),
      make("td", {}, one.chanceWithin === undefined ? "\u2013" : ofHundredWords(one.chanceWithin)),
      make("td", {}, say(`later.checks-basis-${one.basis}`)),
    );
  return make(
    "div",
    { class: "check-table same-candidates" },
    make("h4", {}, say("later.checks-candidates-told"), " ", askSign("check-candidates", say("later.checks-candidates-told"))),
    make("p", {}, told.text.text),
    told.each?.length > 0 &&
      make(
        "table",
        {},
        make("thead", {}, make("tr", {}, ...["name", "rf", "within", "basis"].map((each) => make("th", { scope: "col" }, say(`later.checks-column-${each}`))))),
        make("tbody", {}, ...told.each.map(row)),
      ),
  );
}
