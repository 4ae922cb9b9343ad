// @ts-check
/** Turns the plates of lanes into a question, and remembers which entry each field came from. */

import { saidOf } from "../request.js";
import { rfOf } from "../sheet/geometry.js";
import { say } from "../texts.js";
import { askedEluent, number, where } from "./ask.js";
import { unknownHrf } from "./correction.js";
import { readingOf, shapeOf } from "./lane-moves.js";
import { referenceName } from "./references.js";
import { isPlaced, saidIn } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("./sheet.js").Identity} Identity @typedef {import("./sheet.js").LanePlate} LanePlate @typedef {import("./sheet.js").Lane} Lane @typedef {import("./sheet.js").Seen} Seen */

/** What is known of a compound: what was said here, else of the one of that name in the sample. @param {State["sheet"]} sheet @param {{name: string} & import("./sheet.js").Said} one */
export function knownOf(sheet, one) {
  const here = saidIn(one);
  const name = one.name.trim();
  const same = name !== "" && Object.keys(here).length === 0 ? sheet.spots.find((spot) => spot.name.trim() === name) : undefined;
  return same ? saidOf(same) : here;
}

/** Lanes that something was seen in. @param {LanePlate} plate */
const used = ({ lanes }) => lanes.filter(({ readings }) => readings.some(isPlaced));

/** Lanes that can be asked about: what was spotted together with the unknown counts once it was seen alone, too. @param {Identity} identity @param {LanePlate} plate */
function compared(identity, plate) {
  const alone = new Set(identity.plates.flatMap(used).flatMap(({ role, reference }) => (role === "reference" ? [reference] : [])));
  return used(plate).filter(({ role, reference }) => role === "unknown" || alone.has(reference));
}

/** The first lane that is still empty on a plate where something was seen, or on the only one. @param {Identity} identity */
export function emptyLane({ plates }) {
  const begun = plates.filter((plate) => used(plate).length > 0);
  for (const plate of begun.length ? begun : plates.slice(0, 1)) {
    const at = plate.lanes.findIndex((lane) => !lane.readings.some(isPlaced));
    if (at >= 0) return { plate, lane: plate.lanes[at], number: at + 1 };
  }
  return undefined;
}

/** @param {State} state @param {Identity} identity @returns {import("./ask.js").Question} */
export function sameQuestion(state, identity) {
  const { sheet } = state;
  const hrf = unknownHrf(state);
  /** @type {Map<string, string>} */
  const entries = new Map([["references", "add-reference"], ["plates", "add-lane-plate"]]);
  const plates = identity.plates.filter((plate) => compared(identity, plate).length > 0);
  const roles = new Set(plates.flatMap((plate) => compared(identity, plate).map(({ role }) => role)));
  const last = plates.at(-1);
  if (!last || !roles.has("unknown") || roles.size < 2) return { check: "identity", body: undefined, entries };
  for (const [field, entry] of [["eluent", "eluent"], ["eluent.percentStrong", "eluent"], ["eluent.weak", "pair"], ["eluent.strong", "pair"], ["eluent.additive", "additive"]]) entries.set(field, `${entry}-${last.id}`);
  const asked = new Set(plates.flatMap((plate) => compared(identity, plate).map(({ reference }) => reference)));
  const references = identity.references.filter(({ id }) => asked.has(id));
  references.forEach(({ id }, i) => {
    entries.set(`references[${i}]`, `reference-${id}`);
    entries.set(`references[${i}].smiles`, `smiles-${id}`);
  });
  const candidates = identity.candidates.filter(({ name, rf }) => name.trim() !== "" || (rf ?? "").trim() !== "");
  candidates.forEach(({ id }, i) => {
    for (const side of ["name", "rf", "hrf", "smiles"]) entries.set(`candidates[${i}].${side}`, `${side}-${id}`);
    entries.set(`candidates[${i}]`, `name-${id}`);
  });
  const body = {
    plates: plates.map((plate, i) => askedPlate(identity, plate, `plates[${i}]`, entries)),
    references: references.map((one) => ({ name: referenceName(identity, one.id), ...knownOf(sheet, one) })),
    ...(candidates.length ? { candidates: candidates.map((one) => ({ name: one.name.trim(), ...where("rf", one.rf), ...where("hrf", one.hrf), ...knownOf(sheet, one) })) } : {}),
    ...(hrf === undefined ? {} : { unknown: { name: say("later.checks-lane-unknown"), hrf } }),
    ...askedEluent(sheet, last),
  };
  return { check: "identity", body, entries };
}

/** @param {Identity} identity @param {LanePlate} plate @param {string} at @param {Map<string, string>} entries */
function askedPlate(identity, plate, at, entries) {
  for (const line of ["start", "front"]) entries.set(`${at}.${line}Mm`, `${line}-${plate.id}`);
  return {
    startMm: number(plate.startMm),
    frontMm: number(plate.frontMm),
    lanes: compared(identity, plate).map(({ id, role, reference, readings }, i) => {
      entries.set(`${at}.lanes[${i}]`, `add-check-${id}`);
      return {
        role,
        ...(reference ? { reference: referenceName(identity, reference) } : {}),
        spots: readings.filter(isPlaced).map((seen, k) => askedSpot(seen, `${at}.lanes[${i}].spots[${k}]`, entries)),
      };
    }),
  };
}

/** @param {Seen} seen @param {string} at @param {Map<string, string>} entries */
function askedSpot({ id, centreMm, rf, sizeMm, shape }, at, entries) {
  const own = centreMm === undefined ? `rf-${id}` : `mm-${id}`;
  entries.set(at, own);
  entries.set(`${at}.sizeMm`, `size-${id}`);
  return { ...(centreMm === undefined ? { rf: number(rf ?? "") } : { centreMm: number(centreMm) }), ...where("sizeMm", sizeMm), shape: shape ?? "round" };
}

/** The Rf of a spot of a lane. @param {LanePlate} plate @param {Seen} seen */
export const seenRf = (plate, seen) => rfOf(shapeOf(plate), readingOf(seen));
