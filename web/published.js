// @ts-check
/** The two solvents as published: each value with its unit, its source, and whether somebody had that source in hand. */

import { citations } from "./citations.js";
import { make } from "./dom.js";
import { say, sayWith } from "./texts.js";
import { PROPERTY, shownValue } from "./where/listed.js";
import { askable } from "./where/origin.js";

/** @type {Record<string, string>} */
const BASIS = { read: "page.basis-read", memory: "page.basis-memory", own: "page.basis-own" };

/** What stands in the fold. @param {any} advice @param {import("./state.js").Published} all @returns {Element[]} */
export function published(advice, { library, sources }) {
  const cited = citations(sources);
  const two = [advice.weak, advice.strong].map((named) =>
    library.solvents.find((/** @type {any} */ one) => one.id === named.id),
  );
  return [
    make("p", {}, say("page.published-use")),
    ...two.flatMap((solvent) => [
      make("h4", {}, solvent.name),
      make("ul", {}, ...[...values(solvent, advice.sorbent, cited), ...hazards(solvent, cited)].map((pieces) => make("li", {}, ...pieces))),
    ]),
    ...cited.works(),
  ];
}

/** @param {any} solvent @param {string} sorbent @param {ReturnType<typeof citations>} cited */
function values(solvent, sorbent, cited) {
  return Object.entries(PROPERTY).flatMap(([property, name]) =>
    solvent.values
      .filter((/** @type {any} */ value) => value.property === property && isShown(value, sorbent))
      .map((/** @type {any} */ value) =>
        sayWith(
          "page.published-value",
          {
            what: say(name),
            condition: value.condition ? ` (${value.conditionText})` : "",
            value: shownValue(value),
            origin: origin(value, cited),
          },
          { value: (shown) => askable("value", shown, { solvent: solvent.id, place: String(solvent.values.indexOf(value)) }) },
        ),
      ),
  );
}

/** Of several figures the preferred one; of the strengths those on the layer asked about. @param {any} value @param {string} sorbent */
function isShown(value, sorbent) {
  const other = value.property === "eluent_strength" && !value.condition.startsWith(sorbent);
  return !other && !value.use.startsWith("kept");
}

/** The hazard statements by their source. @param {any} solvent @param {ReturnType<typeof citations>} cited */
function hazards(solvent, cited) {
  /** @type {Map<string, string[]>} */
  const codes = new Map();
  for (const hazard of solvent.hazards) {
    const from = origin(hazard, cited) + (hazard.note ? `; ${hazard.note}` : "");
    codes.set(from, [...(codes.get(from) ?? []), hazard.code]);
  }
  return [...codes].map(([from, all]) => [
    say("page.published-value", { what: say("page.hazard-statements"), condition: "", value: all.join(", "), origin: from }),
  ]);
}

/** @param {any} value @param {ReturnType<typeof citations>} cited */
function origin(value, cited) {
  const place = value.locator ? `${cited.number(value.source)}, ${value.locator}` : cited.number(value.source);
  return `${place}; ${say(BASIS[value.basis])}`;
}
