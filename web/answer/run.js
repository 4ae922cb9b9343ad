// @ts-check
/** Puts a plate that is about to run on the sheet, to be filled in once it has; and tells what was run. */

import { addPlate, findPlate, givenOn, readingsOf } from "../sheet/sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * On the plate that nothing was seen on yet, if there is one; the focus goes to its first lane.
 * @param {State} state @param {Act} act @param {{eluent: string, weak: string, strong: string, additive: import("../sheet/sheet.js").Additive}} ran
 */
export function runPlate(state, act, ran) {
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
