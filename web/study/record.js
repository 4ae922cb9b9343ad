// @ts-check
/** Writes down what was advised, so that what happened can stand beside it: one advice for each set of plates it rested on. */

import { additiveWords } from "../sheet/additive.js";
import { isUntouched } from "../sheet/sheet.js";

/** @typedef {import("../state.js").Answered} Answered @typedef {import("../sheet/sheet.js").GivenAdvice} GivenAdvice */

/**
 * Records the advice of an answer to the sheet as it stands; no step of undo.
 * @param {import("../sheet/history.js").History} history @param {Answered} answered @param {string} program its version
 */
export function recordAdvice(history, answered, program) {
  const { sheet } = history;
  if (answered.sheet !== sheet || isUntouched(sheet)) return;
  const given = givenIn(answered, program);
  if (given.spots.some((each) => each.spot === "")) return; // about a compound that the sheet does not have
  const at = sheet.advices.findIndex((each) => plates(each) === plates(given));
  const before = sheet.advices[at];
  if (before && JSON.stringify({ ...before, given: "", program: "" }) === JSON.stringify({ ...given, given: "", program: "" })) return;
  history.amend({ advices: before ? sheet.advices.map((each, i) => (i === at ? given : each)) : [...sheet.advices, given] });
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
