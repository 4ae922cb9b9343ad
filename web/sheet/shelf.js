// @ts-check
/** The solvents at hand, and the measured pairs that they make. */

import { make } from "../dom.js";
import { tick } from "../entry.js";
import { faultAt } from "../faults.js";
import { say } from "../texts.js";
import { AGAINST_STREAKS } from "./additive.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * The measured pairs, and those whose solvents stand in for them, as far as both solvents are on the shelf; the pair in use is
 * always among them.
 * @param {State} state
 * @returns {{weak: any, strong: any}[]}
 */
export function pairsAtHand({ sheet, published }) {
  const solvents = published.library?.solvents ?? [];
  const standing = (/** @type {string} */ id) => solvents.filter((/** @type {any} */ one) => (one.standIn?.id ?? one.id) === id);
  const offered = (published.library?.pairs ?? []).flatMap((/** @type {any} */ pair) =>
    standing(pair.weak.id).flatMap((/** @type {any} */ weak) =>
      standing(pair.strong.id).map((/** @type {any} */ strong) => ({ weak, strong })),
    ),
  );
  const inUse = (/** @type {any} */ pair) => pair.weak.id === sheet.weak && pair.strong.id === sheet.strong;
  return offered.filter(
    (/** @type {any} */ pair) => inUse(pair) || (sheet.shelf.includes(pair.weak.id) && sheet.shelf.includes(pair.strong.id)),
  );
}

/** Ticks for the solvents that a measured pair can use. @param {State} state @param {Act} act */
export function shelf(state, act) {
  const measured = new Set(
    (state.published.library?.pairs ?? []).flatMap((/** @type {any} */ pair) => [pair.weak.id, pair.strong.id]),
  );
  const useful = (state.published.library?.solvents ?? []).filter((/** @type {any} */ one) =>
    measured.has(one.standIn?.id ?? one.id),
  );
  const added = (state.published.library?.solvents ?? []).filter((/** @type {any} */ one) => AGAINST_STREAKS.includes(one.id));
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
