// @ts-check
/** The numbers that the words about an origin need, gathered from the answer, the sheet and what is published. */

import { marked, say } from "../texts.js";

/** @typedef {import("../state.js").State} State */

/** Said where a number is not there to be told. */
const NONE = "\u2013";

/** Which figures of the accuracy judge a measured pair by itself. @type {Record<string, string>} */
const JUDGED = {
  "silica-hexane-ethyl-acetate": "one-trial-informative",
  "silica-dichloromethane-methanol": "methanol-one-trial-informative",
};

/** The measured pair on which guesses of which spot is which were judged. */
const GUESSED = "silica-hexane-ethyl-acetate";

const FIFTHS = 5;

/** The measured pair of an advice, or the one that stands for it. @param {any} advice @param {any} library */
export function measuredPair(advice, library) {
  const stands = (/** @type {any} */ solvent) => solventOf(library, solvent.id)?.standIn?.id ?? solvent.id;
  return library?.pairs.find(
    (/** @type {any} */ pair) =>
      pair.sorbent === advice.sorbent && pair.weak.id === stands(advice.weak) && pair.strong.id === stands(advice.strong),
  );
}

/** @param {any} library @param {string} id */
export const solventOf = (library, id) => library?.solvents.find((/** @type {any} */ one) => one.id === id);

/** @param {State} state */
export const adviceOf = (state) => state.answered?.answer.advice;

/** The sheet that the numbers shown belong to. @param {State} state */
export const sheetOf = (state) => state.answered?.sheet ?? state.sheet;

/**
 * All that a text about an origin may name; a dash for what is not known.
 * @param {State} state
 * @returns {Record<string, string | number>}
 */
export function facts(state) {
  const sheet = sheetOf(state);
  const plate = sheet.plates.at(-1);
  return {
    ...Object.fromEntries(ADVISED.map((name) => [name, NONE])),
    low: marked(sheet.window[0]),
    high: marked(sheet.window[1]),
    amount: marked(sheet.amount),
    jar: marked(sheet.jar),
    height: marked(plate?.heightMm ?? NONE),
    width: marked(plate?.widthMm ?? NONE),
    start: marked(plate?.startMm ?? NONE),
    stop: marked(plate?.frontMm ?? NONE),
    ...advised(state),
  };
}

const ADVISED =
  "ratio weak strong percent count lowPercent highPercent lowChance highChance level lowMinutes highMinutes compounds readings deviation from to error standardError cover fifthFrom fifthTo said came plates right rightError".split(
    " ",
  );

/** @param {State} state @returns {Record<string, string | number>} */
function advised(state) {
  const advice = adviceOf(state);
  if (!advice) return {};
  const { pour, card } = advice;
  const { library, accuracy } = state.published;
  const pair = library && measuredPair(advice, library);
  return {
    ratio: advice.ratio.replace(":", " : "),
    weak: advice.weak.name,
    strong: advice.strong.name,
    percent: tenths(pour.percentStrong),
    count: advice.probabilityInWords.args.count,
    lowPercent: tenths(pour.lowPercent),
    highPercent: tenths(pour.highPercent),
    lowChance: Math.round(100 * pour.lowProbability),
    highChance: Math.round(100 * pour.highProbability),
    ...(card ? { level: tenths(card.levelMm) } : {}),
    ...(card?.highMinutes ? { lowMinutes: minutes(card.lowMinutes), highMinutes: minutes(card.highMinutes) } : {}),
    ...(pair ? fitted(pair) : {}),
    ...(pair && accuracy ? { ...judged(pair, accuracy), ...guessed(pair, accuracy) } : {}),
    ...(accuracy ? cameTrue(advice, accuracy) : {}),
  };
}

/** Minutes that nobody needs more exactly. @param {number} value */
export const minutes = (value) => Math.max(1, Math.round(value));

/** @param {number} value */
const tenths = (value) => rounded(value, 1);

/** @param {number} value @param {number} decimals */
const rounded = (value, decimals) => Number(value.toFixed(decimals));

/** @param {any} pair */
const fitted = (pair) => ({
  compounds: pair.compounds,
  readings: pair.readings,
  deviation: rounded(pair.meanDeviationRf, 3),
  from: Math.round(pair.trustedFromPercent),
  to: Math.round(pair.trustedToPercent),
});

/** How well the pair foretold compounds that its fit had not seen. @param {any} pair @param {any} accuracy @returns {Record<string, number>} */
function judged(pair, accuracy) {
  const figures = figuresOf(accuracy);
  const error = figures[`${JUDGED[pair.id]}.error`];
  const cover = figures[`${JUDGED[pair.id]}.cover90`];
  if (!error || !cover) return {};
  return { error: rounded(error.value, 3), standardError: rounded(error.standardError, 3), cover: Math.round(100 * cover.value) };
}

/** Of 100 guesses of which spot is which, how many were right. @param {any} pair @param {any} accuracy @returns {Record<string, number>} */
function guessed(pair, accuracy) {
  const right = figuresOf(accuracy)["unlabelled.guess.right"];
  if (!right || pair.id !== GUESSED) return {};
  return { right: Math.round(100 * right.value), rightError: Math.max(1, Math.round(100 * right.standardError)) };
}

/** How often chances like this one came true. @param {any} advice @param {any} accuracy @returns {Record<string, number>} */
function cameTrue(advice, accuracy) {
  const chance = advice.probabilityGoal ?? advice.probabilityAllInWindow;
  const fifth = 1 + Math.min(FIFTHS - 1, Math.floor(chance * FIFTHS));
  const figures = figuresOf(accuracy);
  const said = figures[`plates.all.fifth-${fifth}.said`];
  const came = figures[`plates.all.fifth-${fifth}.came`];
  if (!said || !came) return {};
  return {
    fifthFrom: (fifth - 1) / FIFTHS,
    fifthTo: fifth / FIFTHS,
    said: rounded(said.value, 2),
    came: rounded(came.value, 2),
    plates: came.count,
  };
}

/** The figures of the program itself, which stand before those it is compared with. @param {any} accuracy */
export const figuresOf = (accuracy) => Object.values(accuracy.contenders)[0];

/** Where the plates are run, in words. @param {State} state */
export const settingWords = (state) => say(`answer.setting-${sheetOf(state).setting}`);
