// @ts-check
/** Runs of a table become plates of a sheet. */

import { titleFrom } from "../line.js";
import { addPlate, freeId, isGiven, readingsOf } from "../sheet/sheet.js";
import { plateOnSheet } from "../study/study.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {{spots: any[], plates: any[]}} Runs as the program read them, in the form of a study */

/** Puts runs after the plates of a sheet; a plate that nothing was entered on makes room. @param {Sheet} sheet @param {Runs} runs */
export function ontoSheet(sheet, { spots, plates }) {
  sheet.plates = sheet.plates.filter((plate) => plate.eluent.trim() !== "" || plate.notSeen.length > 0 || readingsOf(plate).some(isGiven));
  /** Id on the sheet by the id in the table. @type {Map<string, string>} */
  const ids = new Map();
  const used = usedIn(plates);
  for (const { id, name } of spots.filter((spot) => used.has(spot.id))) {
    const known = sheet.spots.find((spot) => spot.id === id && spot.name.trim() === name.trim()) ?? sheet.spots.find((spot) => spot.name.trim() === name.trim());
    ids.set(id, known?.id ?? freeId(sheet, "s"));
    if (!known) sheet.spots.push({ id: /** @type {string} */ (ids.get(id)), name });
  }
  for (const plate of plates) put(sheet, plateOnSheet(structuredClone(plate)), ids);
}

/** With ids of its own. @param {Sheet} sheet @param {import("../sheet/sheet.js").Plate} plate @param {Map<string, string>} ids */
function put(sheet, plate, ids) {
  const mine = (/** @type {string[]} */ spots) => spots.map((id) => ids.get(id) ?? id);
  const { id, lanes } = addPlate(sheet, "");
  const place = sheet.plates[sheet.plates.length - 1];
  Object.assign(place, plate, { id, lanes: [], notSeen: mine(plate.notSeen) });
  for (const lane of plate.lanes.length ? plate.lanes : lanes) {
    const added = { id: freeId(sheet, "l"), readings: /** @type {import("../sheet/sheet.js").Reading[]} */ ([]) };
    place.lanes.push(added);
    for (const reading of lane.readings) added.readings.push({ ...reading, id: freeId(sheet, "r"), spots: mine(reading.spots) });
  }
}

/** @param {any[]} plates @returns {Set<string>} */
const usedIn = (plates) =>
  new Set(plates.flatMap(({ lanes, notSeen }) => [...notSeen, ...lanes.flatMap((/** @type {any} */ lane) => lane.readings.flatMap((/** @type {any} */ each) => each.spots))]));

/** A study of these runs alone, in the solvents of the last. @param {Sheet} sheet an empty one @param {Runs} runs @param {string} file its name */
export function asNewStudy(sheet, runs, file) {
  const last = runs.plates[runs.plates.length - 1];
  Object.assign(sheet, { title: titleFrom(file.replace(/\.[^.]*$/, "")), spots: [], plates: [], weak: last.weak, strong: last.strong, additive: { ...last.additive } });
  ontoSheet(sheet, runs);
  if (sheet.spots.length === 0) sheet.spots.push({ id: "s1", name: "A" });
  return sheet;
}
