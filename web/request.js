// @ts-check
/** Turns the sheet into a request, and remembers which entry each field came from. */

import { decimal, orAsTyped, percentStrong } from "./numbers.js";
import { additiveWords } from "./sheet/additive.js";
import { givenOn, isGiven, whatOf } from "./sheet/sheet.js";

/** @typedef {import("./sheet/sheet.js").Sheet} Sheet @typedef {import("./sheet/sheet.js").Plate} Plate */

/** Shapes of a spot that count; any other is words. */
const SHAPES = ["compact", "streak", "sharp-head", "merged"];

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
    enterWhat(spot, `spots[${i}]`, entries);
  });
  const used = sheet.plates.filter((plate) => givenOn(plate).length > 0);
  const written = used.filter((plate) => plate.eluent.trim() !== "");
  /** @type {Map<string, string>} */
  const places = new Map();
  const runs = written.map((plate, i) => run(sheet, plate, i, entries, places));
  const next = sheet.plates.at(-1);
  entries.set("additive", next && additiveWords(next.additive) === "" ? `additive-${next.id}-text` : "additive-text");
  for (const side of next ? ["height", "start", "front"] : []) entries.set(`nextPlate.plate.${side}Mm`, `${side}-${next?.id}`);
  return {
    body: {
      id: "page",
      sorbent: sheet.sorbent,
      weak: sheet.weak,
      strong: sheet.strong,
      ...added(sheet.additive),
      spots: sheet.spots.map((spot) => ({ name: spot.name, ...saidOf(spot) })),
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

/** What a compound is, as the server takes it; nothing where it was not said. @param {import("./sheet/sheet.js").Spot} spot */
export function saidOf(spot) {
  const { by, smiles, groups, class: kind } = whatOf(spot);
  if (by === "smiles") return smiles.trim() ? { smiles: smiles.trim() } : {};
  if (by === "class") return kind ? { class: kind } : {};
  const counts = Object.entries(groups).filter(([, count]) => count.trim() !== "" && decimal(count) !== 0);
  return counts.length ? { groups: Object.fromEntries(counts.map(([id, count]) => [id, number(count)])) } : {};
}

/** @param {import("./sheet/sheet.js").Spot} spot @param {string} place @param {Map<string, string>} entries */
function enterWhat(spot, place, entries) {
  for (const way of ["smiles", "groups", "class"]) entries.set(`${place}.${way}`, `${way}-${spot.id}`);
  for (const id of Object.keys(whatOf(spot).groups)) entries.set(`${place}.groups.${id}`, `count-${spot.id}-${id}`);
}

/** @param {import("./sheet/sheet.js").Additive} additive */
function added(additive) {
  const words = additiveWords(additive);
  return words === undefined ? {} : { additive: words };
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
  entries.set(`${place}.additive`, `additive-${plate.id}-text`);
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
        for (const told of ["sizeMm", "errorMm", "shape"]) entries.set(`${at}.${told}`, `${reading.by}-${reading.id}`);
        entries.set(`${at}.spot`, `which-${reading.id}`);
        places.set(`${i}.${spots.length}`, reading.id);
        spots.push({
          ...(id === undefined ? {} : { spot: nameOf(sheet, id) }),
          lane: index + 1,
          [reading.by === "mm" ? "centreMm" : "rf"]: number(reading.typed),
          ...(typeof reading.sizeMm === "number" ? { sizeMm: reading.sizeMm } : {}),
          ...((reading.errorMm ?? "") === "" ? {} : { errorMm: reading.errorMm }),
          ...(SHAPES.includes(reading.shape ?? "") ? { shape: reading.shape } : {}),
        });
      }
    }
  });
  return {
    weak: plate.weak,
    strong: plate.strong,
    percentStrong: orAsTyped(percentStrong(plate.eluent), plate.eluent),
    ...added(plate.additive),
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
