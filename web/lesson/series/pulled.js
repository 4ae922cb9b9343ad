// @ts-check
/** The plate that is pulled along the ratio by hand, and what stands beside it at the same pull. */

import { plates, trustedOf } from "../../answer/outcome.js";
import { shareText } from "../../answer/shares.js";
import { list, make } from "../../dom.js";
import { say } from "../../texts.js";
import { measuredPair } from "../../where/facts.js";
import { eluentText, heldTo, ratioSlider, reachOf } from "../ratio.js";
import { placesOf, plateFigure } from "./plates.js";
import { foretold, valueAt } from "./read.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** What at least so many of a hundred samples bear out is told as expected; less is open. */
const MOST = 60;
/** Two distances in Rf nearer than this are read as one [1]. */
const ALIKE = 0.02;
/** So many pairs of compounds are told at once; the rest is folded. */
const SHOWN = 3;

/** @param {State} state @param {Act} act @param {any} answer @param {"shown" | "hidden"} cloud */
export function pulledView(state, act, answer, cloud) {
  const reach = reachOf(answer);
  const percent = heldTo(reach, state.lesson.percent);
  const { weak, strong } = answer;
  return make(
    "div",
    { id: "series-pulled" },
    ratioSlider(state, act, { id: "series-share", reach, spoken: () => spoken(answer, heldTo(reach, state.lesson.percent)) }),
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

/** The plate at the share that is set, with nothing beside it and nothing to pull. @param {State} state @param {any} answer @param {"shown" | "hidden"} cloud */
export function pulledAlone(state, answer, cloud) {
  const percent = heldTo(reachOf(answer), state.lesson.percent);
  return make(
    "div",
    { id: "series-large" },
    plateFigure({ id: "series-hand", at: foretold(answer, percent, cloud === "shown"), percent, pair: answer, kind: "large" }),
    trust(state, answer, percent),
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
  const told = against.partings
    .map((/** @type {any} */ parting) => partingTold(parting, gap(here, parting), gap(there, parting), valueAt(against.percentStrong, parting.wider, percent) ?? NaN))
    .sort((/** @type {{weight: number}} */ one, /** @type {{weight: number}} */ other) => other.weight - one.weight)
    .map((/** @type {{sentence: string}} */ { sentence }) => sentence);
  const further = told.slice(SHOWN);
  return make(
    "div",
    { id: "series-partings" },
    list(told.slice(0, SHOWN)),
    further.length > 0 && make("details", { id: "series-partings-more" }, make("summary", {}, say("later.lesson-series-partings-more", { count: further.length })), list(further)),
  );
}

/**
 * How two compounds part there and here, and how much that matters: what parts by far and surely comes first, what is alike last.
 * @param {{one: string, other: string}} pair @param {number} here @param {number} there distances [Rf] @param {number} wider share of the samples that part better there
 */
function partingTold({ one, other }, here, there, wider) {
  const values = { one, other, here, there };
  const better = there > here;
  const sure = Math.round(100 * (better ? wider : 1 - wider)); // as it is told, so that no open one is as sure as one that is told
  const weight = Math.abs(there - here);
  if (weight <= ALIKE) return { sentence: say("later.lesson-series-alike", values), weight: weight - 2 };
  if (sure < MOST) return { sentence: say("later.lesson-series-open", { ...values, count: plates(wider) }), weight: weight - 1 };
  return { sentence: say(better ? "later.lesson-series-better" : "later.lesson-series-worse", { ...values, count: plates(sure / 100) }), weight: (weight * sure) / 100 };
}
