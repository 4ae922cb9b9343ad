// @ts-check
/** What stands on the sheet about a reaction that is followed: its compounds, its plates, and how strong each spot was by eye. Numbers are kept as typed. */

import { decimal, plain } from "../numbers.js";
import { saidOf } from "../request.js";
import { rfOf as rfRead, typedRf } from "../sheet/geometry.js";
import { say } from "../texts.js";
import { freeCheckId, saidIn } from "./sheet.js";

/**
 * @typedef {import("../sheet/sheet.js").Sheet} Sheet
 *
 * @typedef {import("./sheet.js").Reaction} Reaction
 * @typedef {import("./sheet.js").Species} Species what is looked for
 * @typedef {import("./sheet.js").TimePlate} TimePlate one without a mark was not looked at; so was the start line without a number
 * @typedef {import("./sheet.js").Mark} Mark
 * @typedef {Species["part"]} Part
 *
 * @typedef {Record<string, Record<string, number>>} Assumed strengths as on the plate before, by the ids of plate and row; they count for nothing
 * @typedef {{plate: string, row: string, came?: string}} ChosenMark a plate and one of its rows, by their ids, and a key that is no strength
 */

/** As strong as the starting material's own lane. */
export const STRONGEST = 4;
export const STRENGTHS = [0, 1, 2, 3, 4];

/** The row of what stays where it was spotted; no compound has such an id. */
export const BASELINE = "baseline";

/** When plates are taken [min]; common practice, no source. */
const USUAL_MINUTES = [0, 10, 30, 60, 120, 240, 480, 1440];

/** As many as a study holds. */
export const MOST_PLATES = 200;
export const MOST_SPECIES = 30;

/** @param {Sheet} sheet @returns {Reaction} what is on it, or starting material and product that nobody said anything of */
export function reactionOf(sheet) {
  const last = sheet.plates.findLast(({ eluent }) => eluent.trim() !== "");
  const { weak, strong, additive } = last ?? sheet;
  return (
    sheet.checks?.reaction ?? {
      expectedMinutes: "",
      weak,
      strong,
      eluent: last?.eluent ?? "",
      additive: { ...additive },
      species: [
        { id: "x1", name: say("later.checks-reaction-name-start"), part: "start" },
        { id: "x2", name: say("later.checks-reaction-name-product"), part: "product" },
      ],
      plates: [],
    }
  );
}

/** @param {import("../state.js").Act} act @param {(reaction: Reaction, sheet: Sheet) => void} change @param {string} [together] */
export function editReaction(act, change, together) {
  act.edit((sheet) => {
    sheet.checks ??= {};
    sheet.checks.reaction ??= reactionOf(sheet);
    change(sheet.checks.reaction, sheet);
  }, together);
}

/** Minutes from "30", or from hours "2 h"; undefined where it is none. @param {string} typed */
export function minutesOf(typed) {
  const hours = /^\s*(\d+(?:[.,]\d*)?)\s*(?:h|std\.?)\s*$/i.exec(typed);
  if (!hours) return decimal(typed.replace(/\s*min\.?\s*$/i, ""));
  return 60 * Number(hours[1].replace(",", "."));
}

/** When the next plate is usually taken [min]: the next of the usual times, later twice the last one. @param {Reaction} reaction */
export function nextMinutes({ plates }) {
  const last = Math.max(-1, ...plates.map(({ minutes }) => minutesOf(minutes) ?? -1));
  return USUAL_MINUTES.find((minutes) => minutes > last) ?? 2 * last;
}

/** Halfway between a plate and the one before it [min], as it is typed. @param {Reaction} reaction @param {number} at the place of the plate */
export function minutesBefore({ plates }, at) {
  const after = minutesOf(plates[at].minutes);
  const before = at > 0 ? minutesOf(plates[at - 1].minutes) : 0;
  if (after === undefined || before === undefined || !(after > before)) return "";
  return plain((before + after) / 2, after - before > 2 ? 0 : 1);
}

/**
 * Takes a plate, on which nothing was looked at yet; the first shows the starting material alone.
 * @param {Reaction} reaction @param {Sheet} sheet @param {string} minutes @param {number} [at] its place; the last where none is given
 * @returns {TimePlate}
 */
export function takePlate(reaction, sheet, minutes, at = reaction.plates.length) {
  const marks = reaction.plates.length > 0 ? [] : reaction.species.map((one) => withRf({ species: one.id, strength: one.part === "start" ? STRONGEST : 0 }, rfOf(reaction, sheet, one.id)));
  const plate = { marks, id: freeCheckId(reaction, "t"), minutes };
  reaction.plates.splice(at, 0, plate);
  return plate;
}

/** The rows of a strip: every compound, then the start line where it is looked at. @param {Reaction} reaction @returns {string[]} their ids */
export const rowsOf = ({ species, plates }) => [...species.map(({ id }) => id), ...(plates.some(({ baseline }) => baseline !== undefined) ? [BASELINE] : [])];

/** @param {TimePlate} plate @param {string} row @returns {number | undefined} undefined where it was not looked at */
export const strengthOf = (plate, row) => (row === BASELINE ? plate.baseline : plate.marks.find(({ species }) => species === row)?.strength);

/** @param {Reaction} reaction @param {Sheet} sheet @param {string} plateId @param {string} row @param {number | undefined} strength undefined for not looked at */
export function setStrength(reaction, sheet, plateId, row, strength) {
  const plate = reaction.plates.find(({ id }) => id === plateId);
  if (!plate) return;
  if (row === BASELINE) {
    if (strength === undefined) delete plate.baseline;
    else plate.baseline = strength;
    return;
  }
  const rf = rfOf(reaction, sheet, row, plate);
  plate.marks = plate.marks.filter(({ species }) => species !== row);
  if (strength !== undefined) plate.marks.push(withRf({ species: row, strength }, rf));
}

/** @param {Mark} mark @param {string} rf @returns {Mark} */
const withRf = (mark, rf) => (rf.trim() === "" ? mark : { ...mark, rf });

/** What another tap makes of a strength: starting material fades, everything else comes up. @param {number | undefined} strength @param {Part | "baseline"} part */
export function tapped(strength, part) {
  if (part === "start") return strength === undefined || strength === 0 ? STRONGEST : strength - 1;
  return strength === undefined || strength === STRONGEST ? 0 : strength + 1;
}

/** The Rf of a compound as typed: on this plate, on the first that has one, or on the study's last plate; "" where it has none. @param {Reaction} reaction @param {Sheet} sheet @param {string} id @param {TimePlate} [plate] */
export function rfOf(reaction, sheet, id, plate) {
  const here = plate?.marks.find(({ species }) => species === id)?.rf;
  const first = reaction.plates.flatMap(({ marks }) => marks).find(({ species, rf }) => species === id && rf !== undefined)?.rf;
  return here ?? first ?? rfOfSpot(sheet, reaction.species.find((one) => one.id === id)?.spot);
}

/** The Rf of a compound of the sample on the last plate of the study that shows it alone. @param {Sheet} sheet @param {string | undefined} spot */
function rfOfSpot(sheet, spot) {
  for (const plate of spot === undefined ? [] : sheet.plates.toReversed()) {
    const reading = plate.lanes.flatMap(({ readings }) => readings).find(({ spots }) => spots.length === 1 && spots[0] === spot);
    const rf = reading && rfRead(plate, reading);
    if (rf !== undefined && rf >= 0 && rf <= 1) return typedRf(rf);
  }
  return "";
}

/** Says where a compound runs: on all plates that had the Rf that was shown, so that one that ran otherwise keeps its own. @param {Reaction} reaction @param {Sheet} sheet @param {string} id @param {string} shown @param {string} typed */
export function setRf(reaction, sheet, id, shown, typed) {
  const general = rfOf(reaction, sheet, id);
  for (const mark of reaction.plates.flatMap(({ marks }) => marks)) {
    if (mark.species !== id || (mark.rf ?? general) !== shown) continue;
    if (typed.trim() === "") delete mark.rf;
    else mark.rf = typed;
  }
}

/** What a compound is: what the sample says of it, else what is said here. @param {Sheet} sheet @param {Species} one */
export function whatIs(sheet, one) {
  const spot = sheet.spots.find(({ id }) => id === one.spot);
  return spot ? saidOf(spot) : saidIn(one);
}

/** Adds a spot that came up: a trace on the last plate, and not seen before. @param {Reaction} reaction @returns {Species} */
export function addSpecies(reaction) {
  const taken = new Set(reaction.species.map(({ name }) => name.trim()));
  let number = 1;
  while (taken.has(`X${number}`)) number++;
  /** @type {Species} */
  const added = { id: freeCheckId(reaction, "x"), name: `X${number}`, part: "other" };
  reaction.species.push(added);
  reaction.plates.forEach(({ marks }, i) => marks.push({ species: added.id, strength: i === reaction.plates.length - 1 ? 1 : 0 }));
  return added;
}

/** Takes a compound away with its marks. @param {Reaction} reaction @param {string} id */
export function removeSpecies(reaction, id) {
  reaction.species = reaction.species.filter((one) => one.id !== id);
  for (const plate of reaction.plates) plate.marks = plate.marks.filter(({ species }) => species !== id);
}

/** Whether all times can be read and one lies before the one before it. @param {Reaction} reaction */
export function isOutOfOrder({ plates }) {
  const times = plates.map(({ minutes }) => minutesOf(minutes));
  return times.every((time) => time !== undefined) && times.some((time, i) => i > 0 && /** @type {number} */ (time) < /** @type {number} */ (times[i - 1]));
}

/** Puts the plates in the order of their times. @param {Reaction} reaction */
export const putInOrder = (reaction) => reaction.plates.sort((one, other) => (minutesOf(one.minutes) ?? 0) - (minutesOf(other.minutes) ?? 0));
