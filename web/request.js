// @ts-check
/** Turns the sheet into a request, and remembers which entry each field came from. */

import { decimal, orAsTyped, percentStrong } from "./numbers.js";
import { givenOn, isGiven } from "./sheet/sheet.js";

/** @typedef {import("./sheet/sheet.js").Sheet} Sheet @typedef {import("./sheet/sheet.js").Plate} Plate */

/**
 * @param {Sheet} sheet
 * @returns {{body: object, entries: Map<string, string>, places: Map<string, string>, runs: string[], waiting: Plate[]}} the
 *     request; from field to the id of its entry; from "run.index" of a spot to the id of its reading; the plate of each run;
 *     plates left out because their eluent is not written yet
 */
export function requestOf(sheet) {
  const entries = new Map([
    ["amountMl", "amount"],
    ["nextPlate.jarDiameterMm", "jar-diameter"],
    ["setting", "setting"],
    ["weak", "pair"],
    ["strong", "pair"],
    ["shelf", "shelf"],
    ["window", "window-low"],
    ["window[0]", "window-low"],
    ["window[1]", "window-high"],
    ["apart", "apart"],
    ["spots", `spot-${sheet.spots[0].id}`],
  ]);
  sheet.spots.forEach((spot, i) => {
    entries.set(`spots[${i}]`, `spot-${spot.id}`);
    entries.set(`spots[${i}].name`, `spot-${spot.id}`);
  });
  const used = sheet.plates.filter((plate) => givenOn(plate).length > 0);
  const written = used.filter((plate) => plate.eluent.trim() !== "");
  /** @type {Map<string, string>} */
  const places = new Map();
  const runs = written.map((plate, i) => run(sheet, plate, i, entries, places));
  const next = sheet.plates.at(-1);
  for (const side of next ? ["height", "start", "front"] : []) entries.set(`nextPlate.plate.${side}Mm`, `${side}-${next?.id}`);
  return {
    body: {
      id: "page",
      sorbent: sheet.sorbent,
      weak: sheet.weak,
      strong: sheet.strong,
      spots: sheet.spots.map((spot) => ({ name: spot.name })),
      runs,
      setting: sheet.setting,
      shelf: sheet.shelf,
      window: sheet.window.map(number),
      ...(sheet.apart.length === 2 ? { apart: [sheet.apart.map((id) => nameOf(sheet, id))] } : {}),
      amountMl: number(sheet.amount),
      nextPlate: {
        jarDiameterMm: number(sheet.jar),
        ...(next ? { plate: { heightMm: number(next.heightMm), startMm: number(next.startMm), frontMm: number(next.frontMm) } } : {}),
      },
      curves: true,
    },
    entries,
    places,
    runs: written.map((plate) => plate.id),
    waiting: used.filter((plate) => !written.includes(plate)),
  };
}

const number = (/** @type {string} */ typed) => orAsTyped(decimal(typed), typed);

/** @param {Sheet} sheet @param {string} id */
const nameOf = (sheet, id) => sheet.spots.find((spot) => spot.id === id)?.name.trim() ?? "";

/** @param {Sheet} sheet @param {Plate} plate @param {number} i @param {Map<string, string>} entries @param {Map<string, string>} places */
function run(sheet, plate, i, entries, places) {
  const place = `runs[${i}]`;
  entries.set(`${place}.percentStrong`, `eluent-${plate.id}`);
  entries.set(`${place}.weak`, `solvents-${plate.id}`);
  entries.set(`${place}.strong`, `solvents-${plate.id}`);
  for (const side of ["height", "width", "start", "front"]) entries.set(`${place}.plate.${side}Mm`, `${side}-${plate.id}`);
  /** @type {object[]} */
  const spots = [];
  plate.lanes.forEach((lane, index) => {
    for (const reading of lane.readings.filter(isGiven)) {
      for (const id of reading.spots.length ? reading.spots : [undefined]) {
        const at = `${place}.plate.spots[${spots.length}]`;
        entries.set(at, `${reading.by}-${reading.id}`);
        entries.set(`${at}.centreMm`, `mm-${reading.id}`);
        entries.set(`${at}.rf`, `rf-${reading.id}`);
        entries.set(`${at}.spot`, `which-${reading.id}`);
        places.set(`${i}.${spots.length}`, reading.id);
        spots.push({
          ...(id === undefined ? {} : { spot: nameOf(sheet, id) }),
          lane: index + 1,
          [reading.by === "mm" ? "centreMm" : "rf"]: number(reading.typed),
        });
      }
    }
  });
  return {
    weak: plate.weak,
    strong: plate.strong,
    percentStrong: orAsTyped(percentStrong(plate.eluent), plate.eluent),
    plate: {
      heightMm: number(plate.heightMm),
      widthMm: number(plate.widthMm),
      startMm: number(plate.startMm),
      frontMm: number(plate.frontMm),
      spots,
    },
    ...(plate.notSeen.length ? { notSeen: plate.notSeen.map((id) => nameOf(sheet, id)) } : {}),
  };
}
