// @ts-check
/** Turns the sheet into a request, and remembers which entry each field came from. */

import { PAIRS } from "./draft.js";
import { decimal, orAsTyped, percentStrong } from "./numbers.js";

/**
 * @param {import("./draft.js").Sheet} sheet
 * @returns {{body: object, entries: Map<string, string>}} the request, and from field to the id of its entry
 */
export function requestOf(sheet) {
  const entries = new Map([
    ["amountMl", "amount"],
    ["setting", "setting"],
    ["weak", "pair"],
    ["strong", "pair"],
    ["spots", `spot-${sheet.spots[0].id}`],
  ]);
  sheet.spots.forEach((spot, i) => entries.set(`spots[${i}].name`, `spot-${spot.id}`));
  /** @type {object[]} */
  const runs = [];
  sheet.plates.forEach((plate, index) => {
    const typed = sheet.spots.filter((spot) => (plate.rf[spot.id] ?? "").trim() !== "");
    if (plate.eluent.trim() === "" && typed.length === 0) return;
    const place = `runs[${runs.length}]`;
    entries.set(`${place}.percentStrong`, `eluent-${index}`);
    entries.set(`${place}.rf`, `rf-${index}-${sheet.spots[0].id}`);
    /** @type {Record<string, number | string>} */
    const rf = {};
    for (const spot of typed) {
      entries.set(`${place}.rf.${spot.name.trim()}`, `rf-${index}-${spot.id}`);
      rf[spot.name.trim()] = orAsTyped(decimal(plate.rf[spot.id]), plate.rf[spot.id]);
    }
    const run = { percentStrong: orAsTyped(percentStrong(plate.eluent), plate.eluent), rf };
    runs.push(run);
  });
  const pair = PAIRS[sheet.pair];
  return {
    body: {
      id: "page",
      weak: pair.weak,
      strong: pair.strong,
      spots: sheet.spots.map((spot) => ({ name: spot.name })),
      runs,
      setting: sheet.setting,
      amountMl: orAsTyped(decimal(sheet.amount), sheet.amount),
    },
    entries,
  };
}
