// @ts-check
/** The origin of what is listed in the library: hazard statements, cautions, published values; each row tells its own. */

import { marked, say } from "../texts.js";
import { adviceOf, solventOf } from "./facts.js";
import { cited } from "./sources.js";

/** @typedef {import("../state.js").State} State @typedef {import("./origins.js").Told} Told */

/** What a property is called. @type {Record<string, string>} */
export const PROPERTY = {
  eluent_strength: "page.eluent-strength",
  boiling_point: "page.boiling-point",
  flash_point: "page.flash-point",
};

/** How sure somebody was who recalled a value. @type {Record<string, string>} */
const RECALLED = { H: "page.recalled-well", M: "page.recalled-fairly", L: "page.recalled-poorly" };

/** @param {State} state @param {Record<string, string>} which a solvent and a code @returns {Told} */
export function hazardOrigin(state, { solvent, code }) {
  const found = solventOf(state.published.library, solvent);
  const hazard = found.hazards.find((/** @type {any} */ one) => one.code === code);
  return {
    title: say("page.origin-hazard", { code, solvent: found.name }),
    texts: [hazard.text, say("page.origin-hazard-what"), ...note(hazard)],
    sources: [cited(state, hazard)],
    sure: say("page.origin-hazard-sure"),
    further: "published",
  };
}

/** @param {State} state @param {Record<string, string>} which the key of a caution @returns {Told} */
export function cautionOrigin(state, { key }) {
  const { cautions, solvents } = state.published.library;
  const all = [...cautions, ...solvents.flatMap((/** @type {any} */ one) => one.cautions)];
  const caution = all.find((/** @type {any} */ one) => one.key === key);
  return {
    title: say("page.origin-caution"),
    texts: [caution.text],
    sources: [cited(state, caution)],
    sure: say("page.origin-hazard-sure"),
  };
}

/** @param {State} state @param {Record<string, string>} which a solvent, and the place of the value among its values @returns {Told} */
export function valueOrigin(state, { solvent, place }) {
  const found = solventOf(state.published.library, solvent);
  const value = found.values[Number(place)];
  return {
    title: say("page.origin-value", { what: say(PROPERTY[value.property]), solvent: found.name }),
    texts: [
      say("page.origin-value-what", { value: shownValue(value), condition: value.condition ? ` (${value.conditionText})` : "" }),
      ...(value.derivedFrom ? [say("page.origin-value-derived", { from: value.derivedFrom })] : []),
      ...(value.use ? [say("page.origin-value-use", { use: value.use.replace(/^(preferred|kept): /, "") })] : []),
      ...note(value),
    ],
    sources: [cited(state, value)],
    sure: value.uncertainty
      ? say("page.origin-value-within", { uncertainty: value.uncertainty })
      : say(RECALLED[value.confidence] ?? "page.origin-value-sure"),
    further: "published",
  };
}

/** A value as printed, with a minus that reads as one. @param {any} value */
export const shownValue = (value) => [marked(value.value.replace(/^-/, "\u2212")), value.unit].filter(Boolean).join(" ");

/** @param {{note?: string}} row */
const note = ({ note: told }) => (told ? [say("page.origin-note", { note: told })] : []);

/** The figures of the two solvents that the speed of a front rests on. @param {State} state @returns {import("./origins.js").Cited[]} */
export function valuesUsed(state) {
  const advice = adviceOf(state);
  if (!advice || !state.published.library) return [];
  return [advice.weak, advice.strong].flatMap(({ id }) =>
    solventOf(state.published.library, id)
      .values.filter((/** @type {any} */ value) => USED[value.property] && !value.use.startsWith("kept"))
      .map((/** @type {any} */ value) => ({
        source: value.source,
        locator: say(USED[value.property], { solvent: solventOf(state.published.library, id).name, value: shownValue(value), locator: value.locator }),
        basis: value.basis,
      })),
  );
}

/** The printed strengths that a pair without measurements was made from. @param {any} library @param {string[]} solvents @returns {import("./origins.js").Cited[]} */
export function strengthsUsed(library, solvents) {
  return solvents.flatMap((id) => {
    const solvent = solventOf(library, id);
    return (solvent?.values ?? [])
      .filter((/** @type {any} */ value) => value.property === "eluent_strength" && value.condition === STRENGTHS && !value.use.startsWith("kept"))
      .map((/** @type {any} */ value) => ({
        source: value.source,
        locator: say("page.used-strength", { solvent: solvent.name, value: shownValue(value), locator: value.locator }),
        basis: value.basis,
      }));
  });
}

/** The table of strengths that such pairs are made from. */
const STRENGTHS = "silica newer";

/** @type {Record<string, string>} */
const USED = { surface_tension: "page.used-tension", viscosity: "page.used-viscosity" };
