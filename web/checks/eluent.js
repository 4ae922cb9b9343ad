// @ts-check
/** In what a plate of a check was run: two solvents, their ratio, and what was added. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { solventNames } from "../plate/size.js";
import { additiveEntry } from "../sheet/additive.js";
import { pairText, pairsAtHand } from "../sheet/shelf.js";
import { marked, say } from "../texts.js";
import { plateRunIn, usualEluent } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Eluent} Eluent */

/** An eluent in words; nothing where no ratio was written. @param {State} state @param {Eluent} eluent */
export function eluentWords(state, eluent) {
  const ratio = eluent.eluent.trim();
  return ratio === "" ? "" : say("later.checks-eluent-words", { ...solventNames(state, /** @type {any} */ (eluent)), ratio: marked(ratio) });
}

/** In what it was run, and on which plate of the study, too; or that nobody said it. @param {State} state @param {Eluent} eluent */
export function ranInWords(state, eluent) {
  const words = eluentWords(state, eluent);
  if (words === "") return say("later.checks-eluent-unsaid");
  const number = plateRunIn(state, eluent);
  return number === undefined ? say("later.checks-ran-in", { eluent: words }) : say("later.checks-ran-in-as-on", { eluent: words, number });
}

/** The eluent of the next jar, where there is one. @param {State} state @returns {Eluent | undefined} */
function nextJar({ answered, standing }) {
  const advice = answered?.answer.advice;
  if (!advice || standing !== "current") return undefined;
  const { weak, strong, additive } = answered.sheet;
  return { weak, strong, eluent: advice.ratio.replace(":", " : "), additive: { ...additive } };
}

/** What can be taken with one press where no ratio was said: that of a plate that was run, and of the next jar. @param {State} state @param {{id: string, eluent: Eluent, changed: (change: (mine: Eluent) => void) => void}} entry */
export function eluentOffers(state, { id, eluent, changed }) {
  if (eluent.eluent.trim() !== "") return undefined;
  const usual = usualEluent(state);
  const jar = nextJar(state);
  const take = (/** @type {Eluent} */ one) => () => changed((mine) => Object.assign(mine, { weak: one.weak, strong: one.strong, eluent: one.eluent, additive: { ...one.additive } }));
  const number = plateRunIn(state, usual);
  return make(
    "div",
    { class: "buttons eluent-offers", id: `offers-${id}` },
    number !== undefined && button({ id: `as-on-plate-${id}`, label: say("later.checks-eluent-as-on", { eluent: eluentWords(state, usual), number }), kind: "small", press: take(usual) }),
    jar && button({ id: `next-jar-${id}`, label: say("later.checks-eluent-next-jar", { eluent: eluentWords(state, jar) }), kind: "small", press: take(jar) }),
  );
}

/**
 * @param {State} state with the faults that belong here
 * @param {Act} act
 * @param {{id: string, eluent: Eluent, changed: (change: (mine: Eluent) => void, together?: string) => void, solvents?: string}} entry the entries' ids are "pair-", "eluent-" and "additive-" with its id
 */
export function eluentEntry(state, act, { id, eluent, changed, solvents = "page.plate-solvents" }) {
  const own = `${eluent.weak} ${eluent.strong}`;
  const options = pairsAtHand(state).map((pair) => ({ value: `${pair.weak.id} ${pair.strong.id}`, text: pairText(pair) }));
  if (!options.some((each) => each.value === own)) options.push({ value: own, text: say("page.pair-option", solventNames(state, /** @type {any} */ (eluent))) });
  return make(
    "div",
    { class: "check-eluent", id: `ran-in-${id}` },
    choice(state, {
      id: `pair-${id}`,
      label: say(solvents),
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
