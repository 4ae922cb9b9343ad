// @ts-check
/** Puts a plate that is about to run on the sheet, to be filled in once it has; and tells what was run. */

import { addPlate, findPlate, givenOn, readingsOf } from "../sheet/sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * On the plate that nothing was seen on yet, if there is one; the pair and the additive are those of the answer. The focus goes to its first lane.
 * @param {State} state @param {Act} act @param {string} eluent the ratio or share
 */
export function runPlate(state, act, eluent) {
  const { answer, sheet: asked } = /** @type {import("../state.js").Answered} */ (state.answered);
  const ran = { eluent, weak: answer.advice.weak.id, strong: answer.advice.strong.id, additive: { ...asked.additive } };
  let id = state.sheet.plates.find((plate) => readingsOf(plate).length === 0 && plate.notSeen.length === 0)?.id ?? "";
  act.edit((sheet) => {
    if (!id) ({ id } = addPlate(sheet, ""));
    Object.assign(findPlate(sheet, id), ran);
  });
  document.getElementById(`add-${findPlate(state.sheet, id).lanes[0].id}`)?.focus({ preventScroll: true });
  document.getElementById(`plate-${id}`)?.scrollIntoView({ block: "start", inline: "start" });
}

/**
 * Whether a plate of the pair, with a reading, went into an answer.
 * @param {import("../state.js").Answered | undefined} answered @param {string} weak id of the solvent @param {string} strong id of the solvent
 */
export function ownPlates(answered, weak, strong) {
  const isOwn = (/** @type {import("../sheet/sheet.js").Plate} */ plate) => plate.weak === weak && plate.strong === strong && givenOn(plate).length > 0;
  return Boolean(answered?.sheet.plates.some((plate) => answered.runs.includes(plate.id) && isOwn(plate)));
}
