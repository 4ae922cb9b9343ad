// @ts-check
/** The solvents at hand, and the pairs that they make: measured ones, and those that published strengths know. */

import { make } from "../dom.js";
import { tick } from "../entry.js";
import { faultAt } from "../faults.js";
import { say } from "../texts.js";
import { AGAINST_STREAKS } from "./additive.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * @typedef {{weak: any, strong: any, basis: "measured" | "theory" | "guess"}} Pair solvents of the library, and what the model of them rests on
 */

/**
 * The measured pairs, and those whose solvents stand in for them, then those of theory, then guesses, as far as both solvents
 * are on the shelf; the pair in use is always among them.
 * @param {State} state
 * @returns {Pair[]}
 */
export function pairsAtHand({ sheet, published }) {
  const { library } = published;
  const inUse = (/** @type {Pair} */ pair) => pair.weak.id === sheet.weak && pair.strong.id === sheet.strong;
  return [...measuredPairs(library), ...theoryPairs(library)].filter(
    (pair) => inUse(pair) || (sheet.shelf.includes(pair.weak.id) && sheet.shelf.includes(pair.strong.id)),
  );
}

/** @param {any} library @returns {Pair[]} */
function measuredPairs(library) {
  const solvents = library?.solvents ?? [];
  const standing = (/** @type {string} */ id) => solvents.filter((/** @type {any} */ one) => (one.standIn?.id ?? one.id) === id);
  return (library?.pairs ?? []).flatMap((/** @type {any} */ pair) =>
    standing(pair.weak.id).flatMap((/** @type {any} */ weak) =>
      standing(pair.strong.id).map((/** @type {any} */ strong) => ({ weak, strong, basis: "measured" })),
    ),
  );
}

/** @param {any} library @returns {Pair[]} */
function theoryPairs(library) {
  const solvent = (/** @type {string} */ id) => library.solvents.find((/** @type {any} */ one) => one.id === id);
  const known = (/** @type {string} */ basis) =>
    (library?.theoryPairs ?? [])
      .filter((/** @type {any} */ pair) => pair.basis === basis)
      .map((/** @type {any} */ pair) => ({ weak: solvent(pair.weak), strong: solvent(pair.strong), basis }));
  return [...known("theory"), ...known("guess")];
}

/** A pair in words; one that was not measured says so. @param {Pair} pair */
export function pairText({ weak, strong, basis }) {
  const pair = say("page.pair-option", { weak: weak.name, strong: strong.name });
  return basis === "measured" ? pair : say("page.pair-rests", { pair, basis: say(`page.model-${basis}`) });
}

/** Makes a pair that of the next plate, and of plates that nothing stands on yet. @param {import("./sheet.js").Sheet} sheet @param {string} weak @param {string} strong */
export function choosePair(sheet, weak, strong) {
  Object.assign(sheet, { weak, strong });
  for (const plate of sheet.plates) {
    const untouched = plate.eluent.trim() === "" && plate.lanes.every((lane) => lane.readings.length === 0);
    if (untouched) Object.assign(plate, { weak, strong });
  }
}

/** Ticks for the solvents that a pair can use. @param {State} state @param {Act} act */
export function shelf(state, act) {
  const { library } = state.published;
  const used = new Set([...measuredPairs(library), ...theoryPairs(library)].flatMap(({ weak, strong }) => [weak.id, strong.id]));
  const useful = (library?.solvents ?? []).filter((/** @type {any} */ one) => used.has(one.id));
  const added = (library?.solvents ?? []).filter((/** @type {any} */ one) => AGAINST_STREAKS.includes(one.id));
  const { attributes, told } = faultAt(state, "shelf");
  const ticks = (/** @type {any[]} */ some) => some.map((one) => oneTick(state, act, one));
  return make(
    "details",
    { id: "shelf-fold" },
    make("summary", { id: "shelf", ...attributes }, say("page.shelf", { count: state.sheet.shelf.length })),
    told,
    make("p", { class: "aside" }, say("page.shelf-use")),
    ...ticks(useful),
    make("p", { class: "aside", id: "shelf-added" }, say("page.shelf-added")),
    ...ticks(added),
  );
}

/** @param {State} state @param {Act} act @param {any} one a solvent */
const oneTick = (state, act, one) =>
  tick({
    id: `shelf-${one.id}`,
    label: one.name,
    ticked: state.sheet.shelf.includes(one.id),
    changed: (ticked) =>
      act.edit((sheet) => {
        sheet.shelf = ticked ? [...sheet.shelf, one.id] : sheet.shelf.filter((id) => id !== one.id);
      }),
  });
