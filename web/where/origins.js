// @ts-check
/** The origin of every number of the page, as data: what it is, its formula, its sources with their basis, how sure it is. */

import { ownPlates } from "../answer/run.js";
import { say } from "../texts.js";
import { adviceOf, facts, measuredPair, settingWords, sheetOf } from "./facts.js";
import { cautionOrigin, hazardOrigin, strengthsUsed, valueOrigin, valuesUsed } from "./listed.js";
import { cited } from "./sources.js";

/** @typedef {import("../state.js").State} State */
/** @typedef {"read" | "memory" | "own" | "practice" | "measured" | "entered" | "assumed"} Basis */
/** @typedef {{source?: string, locator?: string, page?: number, table?: number, basis: Basis, gives?: string}} Cited a published work, or none; what it gives is the key of a text */

/**
 * @typedef {object} Described its texts are keys: `page.origin-…`
 * @property {string} title
 * @property {string[]} texts
 * @property {string} [apart] said besides where two spots are to be kept apart
 * @property {string} [judged] said besides of a pair on which guesses were judged
 * @property {string} [formula]
 * @property {Cited[]} sources
 * @property {string} sure
 * @property {"pair" | "front" | "setting"} [more] sources, or a sentence, that depend on the answer: those of the measured pair, of the front's speed, of the setting
 * @property {string} [further] id of the fold that tells more
 */

/** @typedef {{title: string, texts: string[], formula?: string, sources: (string | Node)[], sure: string, further?: string}} Told */

/** @type {Cited} */
const LAW = { source: "Snyder1968", basis: "memory", gives: "page.gives-law" };
/** @type {Cited} */
const FIT = { basis: "own", gives: "page.gives-fit" };
/** @type {Cited} */
const ARITHMETIC = { basis: "own" };
/** @type {Cited} */
const PRACTICE = { basis: "practice" };
/** @type {Cited} */
const ENTERED = { basis: "entered" };

/** Said where a number is not there to be told. */
const NONE = "\u2013";

/** What every number of the model rests on. @type {Pick<Described, "formula" | "sources" | "more" | "further">} */
const MODEL = { formula: "page.equation", sources: [LAW, FIT], more: "pair", further: "from-where" };

/** @type {Record<string, Described>} */
export const ORIGINS = {
  ratio: { ...MODEL, title: "page.origin-ratio", texts: ["page.origin-ratio-what"], sure: "page.origin-ratio-sure" },
  pour: {
    title: "page.origin-pour",
    texts: ["page.origin-pour-what"],
    formula: "page.origin-pour-formula",
    sources: [ARITHMETIC, { ...PRACTICE, gives: "page.gives-division" }],
    sure: "page.origin-pour-sure",
  },
  chance: {
    ...MODEL,
    title: "page.origin-chance",
    texts: ["page.chance-meaning"],
    apart: "page.origin-chance-apart",
    sources: [LAW, FIT, { basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-chance-sure",
  },
  share: { ...MODEL, title: "page.origin-share", texts: ["page.origin-share-what"], sure: "page.origin-chance-sure" },
  alternative: { ...MODEL, title: "page.origin-alternative", texts: ["page.origin-alternative-what"], sure: "page.origin-alternative-sure" },
  rf: { ...MODEL, title: "page.origin-rf", texts: ["page.origin-rf-what"], sure: "page.origin-rf-sure" },
  gap: { ...MODEL, title: "page.origin-gap", texts: ["page.origin-gap-what"], formula: "page.origin-gap-formula", sure: "page.origin-rf-sure" },
  factor: { ...MODEL, title: "page.origin-factor", texts: ["page.origin-factor-what"], formula: "page.origin-factor-formula", sure: "page.origin-fit-sure" },
  resolution: {
    ...MODEL,
    title: "page.origin-resolution",
    texts: ["page.origin-resolution-what"],
    formula: "page.origin-resolution-formula",
    sources: [{ source: "Geiss1987", basis: "memory", gives: "page.gives-form" }, LAW, FIT],
    sure: "page.origin-resolution-sure",
  },
  which: { ...MODEL, title: "page.origin-which", texts: ["page.origin-which-what"], judged: "page.origin-which-judged", sure: "page.origin-which-sure" },
  fit: { ...MODEL, title: "page.origin-fit", texts: ["page.origin-fit-what"], sure: "page.origin-fit-sure" },
  accuracy: { ...MODEL, title: "page.origin-accuracy", texts: ["page.origin-accuracy-what"], formula: undefined, sure: "page.origin-accuracy-sure" },
  "rf-curve": { ...MODEL, title: "page.origin-rf-curve", texts: ["page.origin-rf-curve-what", "page.origin-curve-read"], sure: "page.origin-rf-sure" },
  "chance-curve": {
    ...MODEL,
    title: "page.origin-chance-curve",
    texts: ["page.origin-chance-curve-what", "page.origin-curve-read"],
    apart: "page.origin-chance-apart",
    sources: [LAW, FIT, { basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-chance-sure",
  },
  "gap-curve": {
    ...MODEL,
    title: "page.origin-gap-curve",
    texts: ["page.origin-gap-what", "page.origin-curve-read"],
    formula: "page.origin-gap-formula",
    sure: "page.origin-rf-sure",
  },
  "resolution-curve": {
    ...MODEL,
    title: "page.origin-resolution-curve",
    texts: ["page.origin-resolution-what", "page.origin-curve-read"],
    formula: "page.origin-resolution-formula",
    sources: [{ source: "Geiss1987", basis: "memory", gives: "page.gives-form" }, LAW, FIT],
    sure: "page.origin-resolution-sure",
  },
  level: {
    title: "page.origin-level",
    texts: ["page.origin-level-what"],
    formula: "page.origin-level-formula",
    sources: [ARITHMETIC, { ...ENTERED, gives: "page.gives-jar" }, { ...PRACTICE, gives: "page.gives-room" }],
    sure: "page.origin-level-sure",
  },
  minutes: {
    title: "page.origin-minutes",
    texts: ["page.origin-minutes-what"],
    formula: "page.origin-minutes-formula",
    sources: [
      { source: "PlanarFlow", table: 1, basis: "read", gives: "page.gives-front" },
      { basis: "own", gives: "page.gives-front-spread" },
    ],
    more: "front",
    sure: "page.origin-minutes-sure",
  },
  stop: { title: "page.origin-stop", texts: ["page.origin-stop-what"], sources: [ENTERED, PRACTICE], sure: "page.origin-length-sure" },
  start: { title: "page.origin-start", texts: ["page.origin-start-what"], sources: [ENTERED, PRACTICE], sure: "page.origin-length-sure" },
  run: { title: "page.origin-run", texts: ["page.origin-run-what"], sources: [ARITHMETIC], sure: "page.origin-length-sure" },
  plate: { title: "page.origin-plate", texts: ["page.origin-plate-what"], sources: [ENTERED, PRACTICE], sure: "page.origin-entered-sure" },
  amount: { title: "page.origin-amount", texts: ["page.origin-amount-what"], sources: [ENTERED, PRACTICE], sure: "page.origin-entered-sure" },
  jar: { title: "page.origin-jar", texts: ["page.origin-jar-what"], sources: [ENTERED, PRACTICE], sure: "page.origin-entered-sure" },
  saturation: { title: "page.origin-saturation", texts: ["page.origin-saturation-what"], sources: [PRACTICE], sure: "page.origin-practice-sure" },
  window: {
    title: "page.origin-window",
    texts: ["page.origin-window-what"],
    formula: "page.origin-window-formula",
    sources: [
      { source: "Mondello2002", page: 176, basis: "read", gives: "page.gives-window" },
      { ...PRACTICE, gives: "page.gives-column" },
      { ...ENTERED, gives: "page.gives-own-window" },
    ],
    sure: "page.origin-window-sure",
  },
  reading: {
    title: "page.origin-reading",
    texts: ["page.origin-reading-what"],
    formula: "page.origin-reading-formula",
    sources: [{ source: "IupacRf", page: 845, basis: "read", gives: "page.gives-definition" }, ENTERED],
    sure: "page.origin-reading-sure",
  },
  group: { ...MODEL, title: "page.origin-group", texts: ["page.origin-group-what"], sure: "page.origin-group-sure" },
  "molar-mass": { title: "page.origin-molar-mass", texts: ["page.origin-molar-mass-what"], sources: [ARITHMETIC], sure: "page.origin-molar-mass-sure" },
  "scout-ratio": { ...MODEL, title: "page.origin-scout-ratio", texts: ["page.origin-scout-ratio-what"], sure: "page.origin-scout-sure" },
  "scout-chance": {
    ...MODEL,
    title: "page.origin-scout-chance",
    texts: ["page.origin-scout-chance-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-scout-sure",
  },
  model: { ...MODEL, formula: undefined, sources: [], title: "page.origin-model", texts: [], sure: "page.origin-model-sure-measured" },
  "swap-middle": { ...MODEL, title: "page.origin-swap-middle", texts: ["page.origin-swap-middle-what"], sure: "page.origin-swap-chance-sure" },
  "swap-equal": { ...MODEL, title: "page.origin-swap-equal", texts: ["page.origin-swap-equal-what"], sure: "page.origin-swap-equal-sure" },
  "swap-chance": {
    ...MODEL,
    title: "page.origin-swap-chance",
    texts: ["page.origin-swap-chance-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-swap-chance-sure",
  },
  "swap-apart": {
    ...MODEL,
    title: "page.origin-swap-apart",
    texts: ["page.origin-swap-apart-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-swap-chance-sure",
  },
  "swap-goal": {
    ...MODEL,
    title: "page.origin-swap-goal",
    texts: ["page.origin-swap-goal-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-swap-chance-sure",
  },
  "swap-spot": { ...MODEL, title: "page.origin-swap-spot", texts: ["page.origin-swap-spot-what"], sure: "page.origin-swap-chance-sure" },
  setting: {
    title: "page.origin-setting",
    texts: [],
    more: "setting",
    sources: [{ basis: "assumed", gives: "page.gives-setting" }],
    sure: "page.origin-setting-sure",
    further: "from-where",
  },
};

/**
 * What to tell of a number.
 * @param {State} state
 * @param {string} asked the key, with which of them after a question mark
 * @returns {Told}
 */
export function originOf(state, asked) {
  const [about, query = ""] = asked.split("?");
  const which = Object.fromEntries(new URLSearchParams(query));
  if (about === "hazard") return hazardOrigin(state, which);
  if (about === "value") return valueOrigin(state, which);
  if (about === "caution") return cautionOrigin(state, which);
  const origin = ORIGINS[about];
  if (!origin) throw new Error(`Nothing tells where "${about}" comes from.`);
  const pair = pairOf(state, origin, which);
  const unmeasured = pair !== undefined && pair.basis !== "measured";
  /** @type {Record<string, string | number>} */
  const known = { name: "", effect: NONE, energy: NONE, lowShare: NONE, highShare: NONE, ...facts(state), spot: which.spot ?? "", model: pair ? say(`page.model-${pair.basis}`) : NONE, ...which };
  const told = [
    ...(about === "swap-equal" && which.aim ? ["page.origin-swap-aim-what"] : origin.texts),
    ...(origin.apart && sheetOf(state).apart.length ? [origin.apart] : []),
    ...(which.energy ? [which.basis === "own" ? "page.origin-group-analogy" : "page.origin-group-energy"] : []),
    ...(origin.judged && known.right !== NONE ? [origin.judged] : []),
    ...(pair && (unmeasured || about === "model") ? [`page.origin-model-${pair.basis}`] : []),
  ];
  return {
    title: say(origin.title, known),
    texts: [...told.map((text) => say(text, known)), ...(origin.more === "setting" ? [settingWords(state)] : [])],
    formula: origin.formula && say(origin.formula, known),
    sources: [...restsOn(state, pair), ...origin.sources, ...(origin.more === "front" ? valuesUsed(state) : [])].map((one) => cited(state, one)),
    sure: say(sureOf(about, origin, known, pair && unmeasured ? (ownPlates(state.answered, pair.weakId, pair.strongId) ? "own" : "theory") : "measured"), known),
    further: which.weakId ? undefined : origin.further,
  };
}

/** @typedef {{basis: string, weakId: string, strongId: string}} PairAsked */

/** The pair that a number of the model belongs to: the one it names, or that of the advice. @param {State} state @param {Described} origin @param {Record<string, string>} which @returns {PairAsked | undefined} */
function pairOf(state, origin, { basis, weakId, strongId }) {
  if (origin.more !== "pair") return undefined;
  if (weakId) return { basis, weakId, strongId };
  const advice = adviceOf(state);
  return advice && { basis: advice.basis ?? "measured", weakId: advice.weak.id, strongId: advice.strong.id };
}

/** The works whose plates the pair's curve was fitted to, or those that print the strengths it was made from. @param {State} state @param {PairAsked | undefined} pair @returns {Cited[]} */
function restsOn(state, pair) {
  const { library } = state.published;
  if (!pair || !library) return [];
  if (pair.basis !== "measured") return strengthsUsed(library, [pair.weakId, pair.strongId]);
  const found = measuredPair({ sorbent: sheetOf(state).sorbent, weak: { id: pair.weakId }, strong: { id: pair.strongId } }, library);
  return (found?.sources ?? []).map((/** @type {string} */ source) => ({ source, basis: "measured" }));
}

/** Of a pair that was not judged by itself nothing is said in figures. @param {string} about @param {Described} origin @param {Record<string, string | number>} known @param {"measured" | "theory" | "own"} stands theory alone, or one's own plates besides */
function sureOf(about, origin, known, stands) {
  if (stands !== "measured" && about !== "swap-equal" && origin.more === "pair") return `page.origin-model-sure-${stands}`;
  const unjudged = origin.sure === "page.origin-rf-sure" && known.error === NONE;
  return unjudged ? "page.origin-unjudged-sure" : origin.sure;
}
