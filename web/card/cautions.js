// @ts-check
/** What to mind with the solvents chosen: reminders, and the hazard statements by code and wording. */

import { make } from "../dom.js";
import { say } from "../texts.js";
import { askable } from "../where/origin.js";

/** Of the cautions for every solvent, those for filling a jar, developing and clearing up. */
const AT_THE_HOOD = ["sheet-first", "hood", "vapours", "uv-lamps", "waste", "labels"];

/** @param {any} advice @param {any} library @param {string} additive id of what is added, where it is a solvent known here @returns {Element[]} */
export function cautionsView(advice, library, additive) {
  const poured = [advice.weak.id, advice.strong.id, additive];
  const all = poured.map((id) => library.solvents.find((/** @type {any} */ one) => one.id === id)).filter((solvent) => solvent !== undefined);
  const general = library.cautions.filter((/** @type {any} */ one) => AT_THE_HOOD.includes(one.key));
  return [
    make("h3", {}, say("page.cautions")),
    make("ul", { class: "short" }, ...[...general.map((/** @type {any} */ one) => one.text), ...ownCautions(all)].map((text) => make("li", {}, text))),
    ...all.map((solvent) => make("p", { class: "statements" }, make("b", {}, `${solvent.name}: `), ...statements(solvent))),
  ];
}

/** What to mind with solvents, each sentence once. @param {any[]} solvents @returns {string[]} */
export const ownCautions = (solvents) => [
  ...new Set(solvents.flatMap((solvent) => solvent.cautions.map((/** @type {any} */ one) => one.text))),
];

/** The statements of a solvent, each code askable. @param {any} solvent @returns {(Node | string)[]} */
export const statements = (solvent) =>
  solvent.hazards.flatMap((/** @type {any} */ hazard) => [
    askable("hazard", hazard.code, { solvent: solvent.id, code: hazard.code }),
    ` ${hazard.text} `,
  ]);
