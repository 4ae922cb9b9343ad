// @ts-check
/** What compounds are called and coloured on a plate, and what the answer takes an unlabelled spot for. */

import { COLOURS } from "../sheet/sheet.js";
import { say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../sheet/sheet.js").Sheet} Sheet */

/** Letters of a name that fit beside a spot. */
const SHORT = 4;

/** The class of a compound's colour. @param {Sheet} sheet @param {string} id */
export const colourOf = (sheet, id) => `colour-${Math.max(0, placeOf(sheet, id)) % COLOURS}`;

/** @param {Sheet} sheet @param {string} id */
const placeOf = (sheet, id) => sheet.spots.findIndex((spot) => spot.id === id);

/** A compound's name in full. @param {Sheet} sheet @param {string} id */
export const fullName = (sheet, id) => sheet.spots[placeOf(sheet, id)]?.name.trim() || say("page.unnamed");

/**
 * A name that fits beside a spot: for a long one the letter of its line in the sample, where it stands, too; its number where
 * that letter is another's name.
 * @param {Sheet} sheet @param {string} id
 */
export function shortName(sheet, id) {
  const place = placeOf(sheet, id);
  const letters = [...(sheet.spots[place]?.name.trim() ?? "")];
  if (letters.length === 0) return String(place + 1);
  if (letters.length <= SHORT) return letters.join("");
  const letter = place < 26 ? String.fromCharCode(65 + place) : "";
  return letter && sheet.spots.every((spot) => spot.name.trim() !== letter) ? letter : String(place + 1);
}

/** The names of a reading's compounds in a row. @param {Sheet} sheet @param {string[]} spots */
export function namesOf(sheet, spots) {
  if (spots.length === 0) return say("page.unlabelled");
  if (spots.length === 1) return fullName(sheet, spots[0]);
  return say("page.both", { one: fullName(sheet, spots[0]), other: fullName(sheet, spots[1]) });
}

/**
 * What the latest answer takes a reading for that is not labelled: no compound where it is likely none of the sample;
 * undefined where the answer says nothing.
 * @param {State} state @param {import("../sheet/sheet.js").Reading} reading
 * @returns {{spots: string[], probability: number} | undefined}
 */
export function guessOf({ sheet, answered }, reading) {
  if (reading.spots.length > 0 || !answered) return undefined;
  const found = (answered.answer.whichIsWhich ?? []).find(
    (/** @type {any} */ each) => answered.places.get(`${each.run}.${each.index}`) === reading.id,
  );
  if (!found) return undefined;
  const ids = found.guess.map((/** @type {string} */ name) => answered.sheet.spots.find((spot) => spot.name.trim() === name)?.id);
  const known = ids.every((/** @type {string | undefined} */ id) => sheet.spots.some((spot) => spot.id === id));
  return known ? { spots: ids, probability: found.probability } : undefined;
}

/** A chance of 100, never said to be certain. @param {number} probability */
export const ofHundred = (probability) => Math.min(99, Math.max(1, Math.round(100 * probability)));
