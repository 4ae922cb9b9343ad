// @ts-check
/** The origin of every number of the page, as data: what it is, its formula, its sources with their basis, how sure it is. */

import { ownPlates } from "../answer/run.js";
import { furtherTexts, say } from "../texts.js";
import { CHECK_ORIGINS } from "./checks.js";
import { COLUMN_ORIGINS } from "./column.js";
import { adviceOf, facts, measuredPair, settingWords, sheetOf } from "./facts.js";
import { cautionOrigin, hazardOrigin, strengthsUsed, valueOrigin, valuesUsed } from "./listed.js";
import { cited } from "./sources.js";

await furtherTexts();

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
const LAW = { source: "Snyder1968", basis: "memory", gives: "later.gives-law" };
/** @type {Cited} */
const FIT = { basis: "own", gives: "later.gives-fit" };
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
  ...COLUMN_ORIGINS,
  ...CHECK_ORIGINS,
  ratio: { ...MODEL, title: "later.origin-ratio", texts: ["later.origin-ratio-what"], sure: "later.origin-ratio-sure" },
  pour: {
    title: "later.origin-pour",
    texts: ["later.origin-pour-what"],
    formula: "later.origin-pour-formula",
    sources: [ARITHMETIC, { ...PRACTICE, gives: "later.gives-division" }],
    sure: "later.origin-pour-sure",
  },
  chance: {
    ...MODEL,
    title: "later.origin-chance",
    texts: ["page.chance-meaning"],
    apart: "later.origin-chance-apart",
    sources: [LAW, FIT, { basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-chance-sure",
  },
  share: { ...MODEL, title: "later.origin-share", texts: ["later.origin-share-what"], sure: "later.origin-chance-sure" },
  alternative: { ...MODEL, title: "later.origin-alternative", texts: ["later.origin-alternative-what"], sure: "later.origin-alternative-sure" },
  rf: { ...MODEL, title: "later.origin-rf", texts: ["later.origin-rf-what"], sure: "later.origin-rf-sure" },
  gap: { ...MODEL, title: "later.origin-gap", texts: ["later.origin-gap-what"], formula: "later.origin-gap-formula", sure: "later.origin-rf-sure" },
  factor: { ...MODEL, title: "later.origin-factor", texts: ["later.origin-factor-what"], formula: "later.origin-factor-formula", sure: "later.origin-fit-sure" },
  resolution: {
    ...MODEL,
    title: "later.origin-resolution",
    texts: ["later.origin-resolution-what"],
    formula: "later.origin-resolution-formula",
    sources: [{ source: "Geiss1987", basis: "memory", gives: "later.gives-form" }, LAW, FIT],
    sure: "later.origin-resolution-sure",
  },
  which: { ...MODEL, title: "later.origin-which", texts: ["later.origin-which-what"], judged: "later.origin-which-judged", sure: "later.origin-which-sure" },
  fit: { ...MODEL, title: "later.origin-fit", texts: ["later.origin-fit-what"], sure: "later.origin-fit-sure" },
  accuracy: { ...MODEL, title: "later.origin-accuracy", texts: ["later.origin-accuracy-what"], formula: undefined, sure: "later.origin-accuracy-sure" },
  "rf-curve": { ...MODEL, title: "later.origin-rf-curve", texts: ["later.origin-rf-curve-what", "later.origin-curve-read"], sure: "later.origin-rf-sure" },
  "chance-curve": {
    ...MODEL,
    title: "later.origin-chance-curve",
    texts: ["later.origin-chance-curve-what", "later.origin-curve-read"],
    apart: "later.origin-chance-apart",
    sources: [LAW, FIT, { basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-chance-sure",
  },
  "gap-curve": {
    ...MODEL,
    title: "later.origin-gap-curve",
    texts: ["later.origin-gap-what", "later.origin-curve-read"],
    formula: "later.origin-gap-formula",
    sure: "later.origin-rf-sure",
  },
  "resolution-curve": {
    ...MODEL,
    title: "later.origin-resolution-curve",
    texts: ["later.origin-resolution-what", "later.origin-curve-read"],
    formula: "later.origin-resolution-formula",
    sources: [{ source: "Geiss1987", basis: "memory", gives: "later.gives-form" }, LAW, FIT],
    sure: "later.origin-resolution-sure",
  },
  said: { ...MODEL, title: "later.origin-said", texts: ["later.origin-said-what"], sure: "later.origin-said-sure" },
  "came-true": {
    title: "later.origin-came-true",
    texts: ["later.origin-came-true-what"],
    formula: "later.origin-came-true-formula",
    sources: [{ ...ENTERED }, ARITHMETIC],
    sure: "later.origin-came-true-sure",
  },
  level: {
    title: "later.origin-level",
    texts: ["later.origin-level-what"],
    formula: "later.origin-level-formula",
    sources: [ARITHMETIC, { ...ENTERED, gives: "later.gives-jar" }, { ...PRACTICE, gives: "later.gives-room" }],
    sure: "later.origin-level-sure",
  },
  minutes: {
    title: "later.origin-minutes",
    texts: ["later.origin-minutes-what"],
    formula: "later.origin-minutes-formula",
    sources: [
      { source: "PlanarFlow", table: 1, basis: "read", gives: "later.gives-front" },
      { basis: "own", gives: "later.gives-front-spread" },
    ],
    more: "front",
    sure: "later.origin-minutes-sure",
  },
  stop: { title: "later.origin-stop", texts: ["later.origin-stop-what"], sources: [ENTERED, PRACTICE], sure: "later.origin-length-sure" },
  start: { title: "later.origin-start", texts: ["later.origin-start-what"], sources: [ENTERED, PRACTICE], sure: "later.origin-length-sure" },
  run: { title: "later.origin-run", texts: ["later.origin-run-what"], sources: [ARITHMETIC], sure: "later.origin-length-sure" },
  plate: { title: "later.origin-plate", texts: ["later.origin-plate-what"], sources: [ENTERED, PRACTICE], sure: "later.origin-entered-sure" },
  amount: { title: "later.origin-amount", texts: ["later.origin-amount-what"], sources: [ENTERED, PRACTICE], sure: "later.origin-entered-sure" },
  jar: { title: "later.origin-jar", texts: ["later.origin-jar-what"], sources: [ENTERED, PRACTICE], sure: "later.origin-entered-sure" },
  saturation: { title: "later.origin-saturation", texts: ["later.origin-saturation-what"], sources: [PRACTICE], sure: "later.origin-practice-sure" },
  window: {
    title: "later.origin-window",
    texts: ["later.origin-window-what"],
    formula: "later.origin-window-formula",
    sources: [
      { source: "Mondello2002", page: 176, basis: "read", gives: "later.gives-window" },
      { ...PRACTICE, gives: "later.gives-column" },
      { ...ENTERED, gives: "later.gives-own-window" },
    ],
    sure: "later.origin-window-sure",
  },
  reading: {
    title: "later.origin-reading",
    texts: ["later.origin-reading-what"],
    formula: "later.origin-reading-formula",
    sources: [{ source: "IupacRf", page: 845, basis: "read", gives: "later.gives-definition" }, ENTERED],
    sure: "later.origin-reading-sure",
  },
  group: { ...MODEL, title: "later.origin-group", texts: ["later.origin-group-what"], sure: "later.origin-group-sure" },
  "molar-mass": { title: "later.origin-molar-mass", texts: ["later.origin-molar-mass-what"], sources: [ARITHMETIC], sure: "later.origin-molar-mass-sure" },
  "scout-ratio": { ...MODEL, title: "later.origin-scout-ratio", texts: ["later.origin-scout-ratio-what"], sure: "later.origin-scout-sure" },
  "scout-chance": {
    ...MODEL,
    title: "later.origin-scout-chance",
    texts: ["later.origin-scout-chance-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-scout-sure",
  },
  model: { ...MODEL, formula: undefined, sources: [], title: "later.origin-model", texts: [], sure: "page.origin-model-sure-measured" },
  "swap-middle": { ...MODEL, title: "later.origin-swap-middle", texts: ["later.origin-swap-middle-what"], sure: "later.origin-swap-chance-sure" },
  "swap-equal": { ...MODEL, title: "later.origin-swap-equal", texts: ["later.origin-swap-equal-what"], sure: "later.origin-swap-equal-sure" },
  "swap-chance": {
    ...MODEL,
    title: "later.origin-swap-chance",
    texts: ["later.origin-swap-chance-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-swap-chance-sure",
  },
  "swap-apart": {
    ...MODEL,
    title: "later.origin-swap-apart",
    texts: ["later.origin-swap-apart-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-swap-chance-sure",
  },
  "swap-goal": {
    ...MODEL,
    title: "later.origin-swap-goal",
    texts: ["later.origin-swap-goal-what"],
    sources: [LAW, FIT, { basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-swap-chance-sure",
  },
  "swap-spot": { ...MODEL, title: "later.origin-swap-spot", texts: ["later.origin-swap-spot-what"], sure: "later.origin-swap-chance-sure" },
  setting: {
    title: "later.origin-setting",
    texts: [],
    more: "setting",
    sources: [{ basis: "assumed", gives: "later.gives-setting" }],
    sure: "later.origin-setting-sure",
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
    ...(about === "swap-equal" && which.aim ? ["later.origin-swap-aim-what"] : origin.texts),
    ...(origin.apart && sheetOf(state).apart.length ? [origin.apart] : []),
    ...(which.energy ? [which.basis === "own" ? "later.origin-group-analogy" : "later.origin-group-energy"] : []),
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
  const unjudged = origin.sure === "later.origin-rf-sure" && known.error === NONE;
  return unjudged ? "later.origin-unjudged-sure" : origin.sure;
}
