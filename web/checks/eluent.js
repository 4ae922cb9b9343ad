// @ts-check
/** In what a plate of a check was run: two solvents, their ratio, and what was added. */

import { make } from "../dom.js";
import { choice, typedField } from "../entry.js";
import { solventNames } from "../plate/size.js";
import { additiveEntry } from "../sheet/additive.js";
import { pairText, pairsAtHand } from "../sheet/shelf.js";
import { marked, say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Eluent} Eluent */

/** An eluent in words; nothing where no ratio was written. @param {State} state @param {Eluent} eluent */
export function eluentWords(state, eluent) {
  const ratio = eluent.eluent.trim();
  return ratio === "" ? "" : say("later.checks-eluent-words", { ...solventNames(state, /** @type {any} */ (eluent)), ratio: marked(ratio) });
}

/**
 * @param {State} state with the faults that belong here
 * @param {Act} act
 * @param {{id: string, eluent: Eluent, changed: (change: (mine: Eluent) => void, together?: string) => void}} entry the entries' ids are "pair-", "eluent-" and "additive-" with its id
 */
export function eluentEntry(state, act, { id, eluent, changed }) {
  const own = `${eluent.weak} ${eluent.strong}`;
  const options = pairsAtHand(state).map((pair) => ({ value: `${pair.weak.id} ${pair.strong.id}`, text: pairText(pair) }));
  if (!options.some((each) => each.value === own)) options.push({ value: own, text: say("page.pair-option", solventNames(state, /** @type {any} */ (eluent))) });
  return make(
    "div",
    { class: "check-eluent", id: `ran-in-${id}` },
    choice(state, {
      id: `pair-${id}`,
      label: say("page.plate-solvents"),
      value: own,
      options,
      chosen: (value) => changed((mine) => ([mine.weak, mine.strong] = value.split(" "))),
    }),
    typedField(state, {
      id: `eluent-${id}`,
      label: say("page.eluent", solventNames(state, /** @type {any} */ (eluent))),
      value: eluent.eluent,
      typed: (typed) => changed((mine) => (mine.eluent = typed), `eluent-${id}`),
      left: act.rest,
    }),
    additiveEntry(state, {
      id: `additive-${id}`,
      label: say("page.additive"),
      additive: eluent.additive,
      changed: (change, together) => changed((mine) => Object.assign(mine.additive, change), together),
      left: act.rest,
    }),
  );
}
