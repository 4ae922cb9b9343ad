// @ts-check
/** What if another ratio were run: a slider over the curves that came with the answer, and two ratios side by side. */

import { make } from "../dom.js";
import { hasCurves, millilitres, outcomeAt, plates, trustedOf } from "./outcome.js";
import { runPlate } from "./run.js";
import { nearestStop, ratioOf, shareText, stopsBetween, stopsFurther } from "./shares.js";
import { marked, say, sayWith } from "../texts.js";
import { measuredPair } from "../where/facts.js";
import { askable } from "../where/origin.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./outcome.js").Outcome} Outcome */

/** How many stops each key goes. */
const KEYS = /** @type {Record<string, number>} */ ({
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -5,
  PageUp: 5,
  Home: -Infinity,
  End: Infinity,
});

/** @param {State} state @param {Act} act @returns {Element[]} */
export function whatIfView(state, act) {
  const { answer } = state.answered ?? {};
  if (!hasCurves(answer)) return [];
  const now = outcomeAt(answer, state.looking.percent);
  return [
    make(
      "div",
      { id: "what-if" },
      make("h3", {}, say("page.whatif")),
      make("label", { for: "what-if-share" }, say("page.whatif-share", { strong: answer.advice.strong.name })),
      slider(answer, now, act),
      make("div", { id: "what-if-now" }, ...read(state, answer.advice, now)),
      buttons(state, act, now),
      state.looking.locked !== undefined && comparison(state, outcomeAt(answer, state.looking.locked), now),
    ),
  ];
}

/** @param {any} answer @param {Outcome} now @param {Act} act */
function slider({ advice, curves }, now, act) {
  const [first, last] = [curves.percentStrong[0], curves.percentStrong.at(-1)];
  const stops = stopsBetween(first, last, advice.percentStrong);
  const look = (/** @type {number} */ percent) => act.look({ percent: percent === advice.percentStrong ? undefined : percent });
  return make("input", {
    id: "what-if-share",
    type: "range",
    min: Math.log1p(first),
    max: Math.log1p(last),
    step: "any",
    value: Math.log1p(now.percent),
    "aria-valuetext": spoken(advice, now),
    oninput: (event) => look(nearestStop(stops, Math.expm1(Number(event.target.value)))),
    onkeydown: (event) => {
      const steps = KEYS[event.key];
      if (steps === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      look(stopsFurther(stops, now.percent, steps));
    },
  });
}

/** @param {any} advice @param {Outcome} now */
function spoken(advice, now) {
  const ratio = ratioOf(now.percent, advice);
  const values = { percent: shareText(now.percent), strong: advice.strong.name, count: plates(now.chance) };
  return ratio ? say("page.whatif-spoken", { ...values, ratio }) : say("page.whatif-spoken-share", values);
}

/** The same lines whatever the ratio, so that nothing below them moves. @param {State} state @param {any} advice @param {Outcome} now */
function read(state, advice, now) {
  const share = shareText(now.percent);
  const { from, to, partly } = trustedOf(measuredPair(advice, state.published.library), 0, 100);
  const inside = now.percent >= from && now.percent <= to;
  const trust = { from: shareText(from), to: shareText(to) };
  return [
    make(
      "p",
      { class: "share" },
      say("page.whatif-share-now", { percent: share, strong: advice.strong.name }),
      make("span", { class: "simple" }, ratioOf(now.percent, advice) ?? say("page.whatif-no-ratio")),
    ),
    make("p", {}, ...sayWith("page.whatif-chance", { count: plates(now.chance) }, { count: (shown) => askable("chance-curve", shown) })),
    now.gap !== undefined && make("p", {}, ...sayWith("page.whatif-gap", { gap: now.gap }, { gap: (shown) => askable("gap-curve", shown) })),
    partly && make("p", { class: "aside" }, say(inside ? "page.whatif-trusted" : "page.whatif-guess", trust)),
  ];
}

/** @param {State} state @param {Act} act @param {Outcome} now */
function buttons(state, act, now) {
  const { percent, locked } = state.looking;
  const back = () => {
    act.look({ percent: undefined });
    act.focus("what-if-share"); // the button that was pressed can no longer be
  };
  const free = () => {
    act.look({ locked: undefined });
    act.focus("what-if-hold");
  };
  return make(
    "div",
    { id: "what-if-buttons", class: "buttons" },
    make("button", { type: "button", id: "what-if-back", disabled: percent === undefined, onclick: back }, say("page.whatif-back")),
    make("button", { type: "button", id: "what-if-run", disabled: percent === undefined, onclick: () => runTried(state, act, now) }, say("page.run-tried")),
    make("button", { type: "button", id: "what-if-hold", onclick: () => act.look({ locked: now.percent }) }, say("page.whatif-hold")),
    locked !== undefined &&
      make("button", { type: "button", id: "what-if-free", onclick: free }, say("page.whatif-free", { percent: shareText(locked) })),
  );
}

/** @param {State} state @param {Act} act @param {Outcome} now */
function runTried(state, act, now) {
  const { advice } = /** @type {any} */ (state.answered).answer;
  const eluent = ratioOf(now.percent, advice)?.match(/^\d+ : \d+$/)?.[0] ?? `${shareText(now.percent)} %`;
  runPlate(state, act, eluent);
}

/** @param {State} state @param {Outcome} held @param {Outcome} now */
function comparison(state, held, now) {
  const { answer, sheet } = /** @type {any} */ (state.answered);
  const { weak, strong } = answer.advice;
  const none = say("page.whatif-nothing");
  const poured = [held, now].map((each) => millilitres(answer.advice, sheet.setting, each.percent));
  const rows = [
    [say("page.whatif-ratio"), ...[held, now].map((each) => ratioOf(each.percent, answer.advice) ?? none)],
    [say("page.whatif-ml", { solvent: weak.name }), ...poured.map((ml) => (ml ? marked(String(ml.weak)) : none))],
    [say("page.whatif-ml", { solvent: strong.name }), ...poured.map((ml) => (ml ? marked(String(ml.strong)) : none))],
    [say("page.whatif-of-100"), plates(held.chance), plates(now.chance)],
    ...(now.gap === undefined ? [] : [[say("page.whatif-gap-row"), ...[held, now].map((each) => (each.gap === undefined ? none : marked(each.gap.toFixed(2))))]]),
    ...Object.keys(now.spots).map((spot) => [
      say("page.chart-rf-column", { spot }),
      ...[held, now].map((each) => say("page.whatif-from-to", each.spots[spot])),
    ]),
  ];
  const head = [held, now].map((each) => say("page.whatif-column", { percent: shareText(each.percent) }));
  return make(
    "table",
    { id: "what-if-both" },
    make("caption", {}, say("page.whatif-both", { strong: strong.name })),
    make(
      "thead",
      {},
      make(
        "tr",
        {},
        make("td"),
        make("th", { scope: "col" }, say("page.whatif-held"), make("br"), head[0]),
        make("th", { scope: "col" }, say("page.whatif-tried"), make("br"), head[1]),
      ),
    ),
    make(
      "tbody",
      {},
      ...rows.map(([name, ...cells]) =>
        make("tr", {}, make("th", { scope: "row" }, name), ...cells.map((cell) => make("td", {}, cell))),
      ),
    ),
  );
}
