// @ts-check
/**
 * What stands on the sheet about the checks of a study: same, pure, done. Kept as a study holds it, but each number as it was typed.
 * A part that nobody said anything in is not there.
 */

import { decimal } from "../numbers.js";
import { USUAL_PLATE } from "../sheet/sheet.js";

/**
 * @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act
 *
 * @typedef {{by?: "smiles" | "groups" | "class", smiles?: string, groups?: Record<string, any>, class?: string}} Said what a compound is, as far as somebody said it
 * @typedef {{id: string, name: string} & Said} Reference
 * @typedef {{id: string, name: string, rf?: string, hrf?: string} & Said} Candidate what the unknown might be, with an Rf printed or read elsewhere
 *
 * @typedef {object} Eluent
 * @property {string} weak id of the solvent
 * @property {string} strong id of the solvent
 * @property {string} eluent the ratio, or the share of the stronger solvent
 * @property {import("../sheet/sheet.js").Additive} additive
 *
 * @typedef {{id: string, centreMm?: string, rf?: string, sizeMm?: string, shape?: "streak"}} Seen a spot seen, by its height or by its Rf
 * @typedef {"unknown" | "co-spot" | "reference"} Role
 * @typedef {{id: string, role: Role, reference?: string, readings: Seen[]}} Lane with the id of the reference spotted in it
 * @typedef {{id: string, startMm: string, frontMm: string, lanes: Lane[]} & Eluent} LanePlate
 * @typedef {{references: Reference[], candidates: Candidate[], plates: LanePlate[]}} Identity
 *
 * @typedef {object} Purity
 * @property {string} [spot] id of a compound of the sample
 * @property {string} rf
 * @property {string} spotsSeen
 * @property {string[]} seenBy ids of ways of seeing
 * @property {string} volumeUl
 * @property {string} concentrationPercent
 * @property {string} touches
 * @property {"none" | "weak" | "strong"} [startSpot] what was left at the start line; nothing where nobody looked
 *
 * @typedef {{system: string, measured: Record<string, string>, spots: {id: string, name: string, hrf: string}[]}} Hrf
 *
 * @typedef {{id: string, name: string, part: "start" | "product" | "other", spot?: string} & Said} Species
 * @typedef {{species: string, strength: number, rf?: string}} Mark from 0, looked for and not seen, to 4
 * @typedef {{id: string, minutes: string, marks: Mark[], baseline?: number}} TimePlate
 * @typedef {{expectedMinutes: string, species: Species[], plates: TimePlate[]} & Eluent} Reaction
 *
 * @typedef {{identity?: Identity, purity?: Purity, hrf?: Hrf, reaction?: Reaction}} Checks
 */

/** A spot's size that is taken unless somebody says another [mm]. */
export const USUAL_SIZE_MM = 3;

/** What was entered, and for the rest what one would begin with. @param {State} state @returns {Required<Checks>} */
export function checksOf(state) {
  const { checks } = state.sheet;
  return {
    identity: checks?.identity ?? beginIdentity(state),
    purity: checks?.purity ?? { rf: "", spotsSeen: "", seenBy: [], volumeUl: "", concentrationPercent: "", touches: "" },
    hrf: checks?.hrf ?? { system: "", measured: {}, spots: [] },
    reaction: checks?.reaction ?? beginReaction(state),
  };
}

/**
 * Changes one part, which is then part of the study.
 * @template {keyof Checks} P
 * @param {State} state @param {Act} act @param {P} part @param {(mine: Required<Checks>[P], sheet: import("../sheet/sheet.js").Sheet) => void} change @param {string} [together]
 */
export function editChecks(state, act, part, change, together) {
  act.edit((sheet) => {
    const mine = /** @type {Required<Checks>[P]} */ (sheet.checks?.[part] ?? structuredClone(checksOf({ ...state, sheet })[part]));
    sheet.checks = { ...sheet.checks, [part]: mine };
    change(mine, sheet);
  }, together);
}

/** Whether a plate of the study was run: its eluent is said, and something was read on it. @param {State["sheet"]["plates"][number]} plate */
export const wasRun = ({ eluent, lanes }) => eluent.trim() !== "" && lanes.some(({ readings }) => readings.length > 0);

/** The eluent of the study's last plate that was run; of none, the solvents of the sheet without a ratio, for nobody said one. @param {State} state @returns {Eluent} */
export function usualEluent({ sheet }) {
  const last = sheet.plates.findLast(wasRun);
  const { weak, strong, additive } = last ?? sheet;
  return { weak, strong, eluent: last?.eluent ?? "", additive: { ...additive } };
}

/** The number of the study's last plate that was run in this eluent. @param {State} state @param {Eluent} eluent @returns {number | undefined} */
export function plateRunIn({ sheet }, { weak, strong, eluent, additive }) {
  const words = (/** @type {Eluent} */ one) => JSON.stringify([one.weak, one.strong, one.eluent.replace(/\s/g, ""), one.additive.kind, one.additive.text]);
  const own = words({ weak, strong, eluent, additive });
  const at = eluent.trim() === "" ? -1 : sheet.plates.findLastIndex((plate) => wasRun(plate) && words(plate) === own);
  return at < 0 ? undefined : at + 1;
}

/** @param {State} state @returns {Identity} */
function beginIdentity(state) {
  /** @type {Identity} */
  const begun = { references: [{ id: "k1", name: "" }], candidates: [], plates: [] };
  addLanePlate(begun, state);
  return begun;
}

/** @param {State} state @returns {Reaction} */
const beginReaction = (state) => ({
  expectedMinutes: "",
  ...usualEluent(state),
  species: [
    { id: "x1", name: "", part: "start" },
    { id: "x2", name: "", part: "product" },
  ],
  plates: [{ id: "t1", minutes: "0", marks: [] }],
});

/** An id with a letter before it that nothing of a part has yet. @param {object} part @param {string} letter */
export function freeCheckId(part, letter) {
  const taken = JSON.stringify(part);
  let number = 1;
  while (taken.includes(`"id":"${letter}${number}"`)) number++;
  return `${letter}${number}`;
}

/** Lanes of one reference: it with the unknown in one lane, and alone in the next. @param {Identity} identity @param {LanePlate} plate @param {string} reference */
export function addLanesOf(identity, plate, reference) {
  for (const role of /** @type {const} */ (["co-spot", "reference"])) plate.lanes.push({ id: freeCheckId([identity, plate], "l"), role, reference, readings: [] });
}

/** A plate with the unknown and the last of the references, cut and run like the one before it. @param {Identity} identity @param {State} state */
export function addLanePlate(identity, state) {
  const before = identity.plates.at(-1);
  const like = before ?? state.sheet.plates.at(-1) ?? USUAL_PLATE;
  const { weak, strong, eluent, additive } = before ?? usualEluent(state);
  /** @type {LanePlate} */
  const plate = { id: freeCheckId(identity, "i"), weak, strong, eluent, additive: { ...additive }, startMm: like.startMm, frontMm: like.frontMm, lanes: [] };
  plate.lanes.push({ id: freeCheckId(identity, "l"), role: "unknown", readings: [] });
  const last = identity.references.at(-1);
  if (last) addLanesOf(identity, plate, last.id);
  identity.plates.push(plate);
}

/** Another lane of the unknown, the last of the plate. @param {Identity} identity @param {LanePlate} plate */
export function addUnknownLane(identity, plate) {
  plate.lanes.push({ id: freeCheckId(identity, "l"), role: "unknown", readings: [] });
}

/** Adds a reference with its two lanes on the last plate. @param {Identity} identity @returns {string} its id */
export function addReference(identity) {
  const id = freeCheckId(identity, "k");
  identity.references.push({ id, name: "" });
  const plate = identity.plates.at(-1);
  if (plate) addLanesOf(identity, plate, id);
  return id;
}

/** Takes a reference away with its lanes; a plate that is left with nothing but the unknown goes, too, unless it is the only one. @param {Identity} identity @param {string} id */
export function removeReference(identity, id) {
  identity.references = identity.references.filter((each) => each.id !== id);
  for (const plate of identity.plates) plate.lanes = plate.lanes.filter((lane) => lane.reference !== id);
  const kept = identity.plates.filter(({ lanes }) => lanes.some(({ role }) => role !== "unknown"));
  identity.plates = kept.length > 0 ? kept : identity.plates.slice(0, 1);
}

/** A spot of a lane with where it stands. @param {Identity} identity @param {string} id */
export function findSeen(identity, id) {
  for (const plate of identity.plates) {
    for (const lane of plate.lanes) {
      const seen = lane.readings.find((each) => each.id === id);
      if (seen) return { plate, lane, seen };
    }
  }
  return undefined;
}

/** A spot counts once its place is given. @param {Seen} seen */
export const isPlaced = ({ centreMm, rf }) => (centreMm ?? rf ?? "").trim() !== "";

/** What a compound is, as the server takes it; nothing where it was not said. @param {Said} said */
export function saidIn({ by, smiles, groups, class: kind }) {
  if (by === "smiles") return smiles?.trim() ? { smiles: smiles.trim() } : {};
  if (by === "class") return kind ? { class: kind } : {};
  const counts = Object.entries(groups ?? {}).filter(([, count]) => decimal(String(count)) !== 0);
  return by === "groups" && counts.length > 0 ? { groups: Object.fromEntries(counts) } : {};
}
