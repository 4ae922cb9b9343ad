// @ts-check
/** The plate that is pulled along the ratio by hand, and what stands beside it at the same pull. */

import { plates, trustedOf } from "../../answer/outcome.js";
import { nearestStop, shareText, stopsBetween, stopsFurther } from "../../answer/shares.js";
import { list, make } from "../../dom.js";
import { say } from "../../texts.js";
import { measuredPair } from "../../where/facts.js";
import { eluentText, placesOf, plateFigure } from "./plates.js";
import { foretold, pulledShare, valueAt } from "./read.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** How many stops each key goes. */
const KEYS = /** @type {Record<string, number>} */ ({ ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -5, PageUp: 5, Home: -Infinity, End: Infinity });
/** A pull that rests so long is said [ms]. */
const SETTLED = 700;
/** What more samples than this bear out is told as expected [1]; less is open. */
const MOST = 0.6;
/** Two distances in Rf nearer than this are read as one [1]. */
const ALIKE = 0.02;

let settling = 0;

/** @param {State} state @param {Act} act @param {any} answer @param {"shown" | "hidden"} cloud */
export function pulledView(state, act, answer, cloud) {
  const percent = pulledShare(answer, state.lesson.percent);
  const { weak, strong } = answer;
  return make(
    "div",
    { id: "series-pulled" },
    make("label", { for: "series-share" }, say("later.lesson-series-pull", { strong: strong.name })),
    slider(state, act, answer, percent),
    make("p", { id: "series-share-now" }, make("strong", {}, eluentText(percent, answer)), ` ${say("later.lesson-series-pulled", { percent: shareText(percent), strong: strong.name })}`),
    trust(state, answer, percent),
    make(
      "div",
      { id: "series-large" },
      plateFigure({ id: "series-hand", at: foretold(answer, percent, cloud === "shown"), percent, pair: { weak, strong }, kind: "large", title: say("later.lesson-series-pulled-title"), further: strengthLine(answer.otherLayer, "strengthHere", percent) }),
      otherPair(answer, percent),
      otherLayer(answer, percent),
    ),
    make("div", { id: "series-beside" }, partings(answer, percent), ...[answer.against, answer.otherLayer].map((beside) => beside && list(beside.sentences.map((/** @type {any} */ each) => each.text)))),
  );
}

/** Where the measured curve of a pair cannot be trusted everywhere, whether it can here. @param {State} state @param {any} answer @param {number} percent */
function trust({ published }, answer, percent) {
  const { from, to, partly } = trustedOf(measuredPair(answer, published.library), answer.curves.percentStrong[0], answer.curves.percentStrong.at(-1));
  const inside = percent >= from && percent <= to;
  return partly && make("p", { class: "aside", id: "series-trust" }, say(inside ? "page.whatif-trusted" : "page.whatif-guess", { from: shareText(from), to: shareText(to) }));
}

/** ε on one of two layers. @param {any} layers @param {"strengthHere" | "strengthThere"} which @param {number} percent */
function strengthLine(layers, which, percent) {
  const strength = layers && valueAt(layers.percentStrong, layers[which], percent);
  return strength === undefined ? [] : [say("later.lesson-series-epsilon", { strength })];
}

/** @param {State} state @param {Act} act @param {any} answer @param {number} percent */
function slider(state, act, answer, percent) {
  const points = answer.curves.percentStrong;
  const stops = stopsBetween(points[0], points.at(-1), answer.best.percentStrong);
  const pull = (/** @type {number} */ share) => {
    act.edit((lesson) => { lesson.percent = String(Number(share.toFixed(2))); });
    clearTimeout(settling);
    settling = window.setTimeout(() => act.speak(spoken(answer, pulledShare(answer, state.lesson.percent))), SETTLED);
  };
  return make("input", {
    id: "series-share",
    type: "range",
    min: Math.log1p(points[0]),
    max: Math.log1p(points.at(-1)),
    step: "any",
    value: Math.log1p(percent),
    "aria-valuetext": `${eluentText(percent, answer)}, ${say("later.lesson-series-pulled", { percent: shareText(percent), strong: answer.strong.name })}`,
    oninput: (event) => pull(nearestStop(stops, Math.expm1(Number(event.target.value)))),
    onkeydown: (event) => {
      const steps = KEYS[event.key];
      if (steps === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      pull(stopsFurther(stops, percent, steps));
    },
  });
}

/** @param {any} answer @param {number} percent */
const spoken = (answer, percent) => say("later.lesson-series-spoken", { eluent: eluentText(percent, answer), spots: placesOf(foretold(answer, percent, false)) });

/** The equally strong share of the other pair, where it has one. @param {any} against @param {number} percent */
const equalShare = (against, percent) => valueAt(against.percentStrong, against.equalPercent, percent);

/** @param {any} answer @param {number} percent */
function otherPair({ against }, percent) {
  if (!against) return undefined;
  const equal = equalShare(against, percent);
  if (equal === undefined) return make("p", { id: "series-other-none" }, say("later.lesson-series-against-none"));
  const title = `${against.weak.name} / ${against.strong.name}`;
  return plateFigure({ id: "series-other", at: foretold(against, equal, false), percent: equal, pair: against, kind: "large", band: "band", title });
}

/** @param {any} answer @param {number} percent */
function otherLayer({ otherLayer, weak, strong }, percent) {
  if (!otherLayer) return undefined;
  const at = Object.fromEntries(Object.entries(otherLayer.spots).map(([name, spot]) => [name, { rf: valueAt(otherLayer.percentStrong, spot.rf, percent) ?? NaN }]));
  const further = strengthLine(otherLayer, "strengthThere", percent);
  return plateFigure({ id: "series-layer", at, percent, pair: { weak, strong }, kind: "large", title: say("later.lesson-series-layer-title", { sorbent: otherLayer.sorbentText }), further });
}

/** Which compounds part better or worse in the other pair. @param {any} answer @param {number} percent */
function partings(answer, percent) {
  const { against } = answer;
  const equal = against && equalShare(against, percent);
  if (equal === undefined) return undefined;
  const here = foretold(answer, percent, false);
  const there = foretold(against, equal, false);
  const gap = (/** @type {any} */ at, /** @type {any} */ { one, other }) => Math.abs(at[one].rf - at[other].rf);
  const said = against.partings.map((/** @type {any} */ parting) => {
    const wider = valueAt(against.percentStrong, parting.wider, percent) ?? NaN;
    const [mine, theirs] = [gap(here, parting), gap(there, parting)];
    const values = { one: parting.one, other: parting.other, here: mine, there: theirs };
    if (wider > MOST && theirs > mine + ALIKE) return say("later.lesson-series-better", { ...values, count: plates(wider) });
    if (wider < 1 - MOST && theirs < mine - ALIKE) return say("later.lesson-series-worse", { ...values, count: plates(1 - wider) });
    return say("later.lesson-series-open", { one: parting.one, other: parting.other, count: plates(wider) });
  });
  return make("ul", { id: "series-partings" }, ...said.map((/** @type {string} */ sentence) => make("li", {}, sentence)));
}
