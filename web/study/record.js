// @ts-check
/** Writes down what was advised, so that what happened can stand beside it: the latest for each set of plates it rested on, and the one being run. */

import { percentStrong } from "../numbers.js";
import { additiveWords } from "../sheet/additive.js";
import { isUntouched } from "../sheet/sheet.js";

/** @typedef {import("../state.js").Answered} Answered @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("../sheet/sheet.js").GivenAdvice} GivenAdvice */

/**
 * Records the advice of an answer to the sheet as it stands; no step of undo.
 * @param {import("../sheet/history.js").History} history @param {Answered} answered @param {string} program its version
 */
export function recordAdvice(history, answered, program) {
  const { sheet } = history;
  if (answered.sheet !== sheet || isUntouched(sheet)) return;
  const given = givenIn(answered, program);
  if (given.spots.some((each) => each.spot === "")) return; // about a compound that the sheet does not have
  const same = sheet.advices.filter((each) => plates(each) === plates(given));
  const last = same.at(-1);
  if (last && JSON.stringify({ ...last, given: "", program: "" }) === JSON.stringify({ ...given, given: "", program: "" })) return;
  const running = same.find((each) => isRunning(sheet, each));
  const kept = sheet.advices.filter((each) => !same.includes(each) || each === running);
  history.amend({ advices: [...kept, given] });
}

/** Shares this close [% v/v] are one ratio, roughly: the server judges with care. */
const ALIKE = 0.5;

/** Whether a plate was laid out at the ratio of an advice, which must then not give way to what is asked meanwhile. @param {Sheet} sheet @param {GivenAdvice} advice */
function isRunning(sheet, { after, weak, strong, percentStrong: advised }) {
  const isIts = (/** @type {import("../sheet/sheet.js").Plate} */ plate) => plate.weak === weak && plate.strong === strong && Math.abs((percentStrong(plate.eluent) ?? NaN) - advised) <= ALIKE;
  return sheet.plates.some((plate) => !after.includes(plate.id) && isIts(plate));
}

/** @param {GivenAdvice} advice */
const plates = ({ after }) => [...after].sort().join(" ");

/** @param {Answered} answered @param {string} program @returns {GivenAdvice} */
function givenIn({ answer: { advice }, sheet, runs }, program) {
  const idOf = (/** @type {string} */ name) => sheet.spots.find((spot) => spot.name.trim() === name)?.id ?? "";
  return {
    given: new Date().toISOString(),
    program,
    after: runs,
    weak: advice.weak.id,
    strong: advice.strong.id,
    percentStrong: advice.percentStrong,
    additive: additiveWords(sheet.additive) ?? "",
    window: sheet.window.map((each) => Number(each.replace(",", "."))),
    apart: sheet.apart,
    spots: advice.spots.map((/** @type {any} */ { spot, rf, low, high }) => ({ spot: idOf(spot), rf, low, high })),
    probability: advice.probabilityGoal,
    basis: advice.basis,
  };
}
