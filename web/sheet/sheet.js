// @ts-check
import { freshId } from "../study/ids.js";

/**
 * What stands on the sheet: the sample, the plates that were run, and what is wanted of the next. Everything typed is kept as
 * it was typed, so that nothing is lost and the server can say what is wrong with it.
 */

/**
 * @typedef {object} Identity what a compound is, as far as somebody said it; each way keeps what was entered, one counts
 * @property {"smiles" | "groups" | "class"} by the way that counts
 * @property {string} smiles the line
 * @property {Record<string, string>} groups how many of each, by the id of the group
 * @property {string} class id of a compound class
 *
 * @typedef {{id: string, name: string, what?: Identity}} Spot a compound of the sample
 *
 * @typedef {object} Reading a spot seen in a lane
 * @property {string} id
 * @property {string[]} spots ids of the compounds in it: none where it is not known which, two where it hides two
 * @property {"mm" | "rf"} by how it was given: height of its centre above the lower edge, or Rf
 * @property {string} typed the number
 * @property {number | string} [sizeMm] its size along the lane; the page has no entry for it, nor for its shape and how it was seen
 * @property {number | string} [errorMm] standard error of its height where a picture told it; gone once the spot is placed by hand
 * @property {string} [shape]
 * @property {string} [seen]
 *
 * @typedef {{id: string, readings: Reading[]}} Lane
 *
 * @typedef {{kind: string, text: string}} Additive "none", one by its id, or "own", which the text says
 *
 * @typedef {object} Plate heights from the lower edge in mm
 * @property {string} id
 * @property {string} heightMm
 * @property {string} widthMm
 * @property {string} startMm
 * @property {string} frontMm
 * @property {string} weak id of the solvent
 * @property {string} strong id of the solvent
 * @property {string} eluent the ratio, or the share of the stronger solvent
 * @property {Additive} additive what was added to it
 * @property {Lane[]} lanes
 * @property {string[]} notSeen ids of compounds that were looked for and not seen
 * @property {object} [conditions] how it was run; the page has no entry for it
 * @property {{sha256: string, light: string}} [photo] the picture that was kept of it
 *
 * @typedef {object} GivenAdvice an advice as it was given
 * @property {string} given when
 * @property {string} program version of the program
 * @property {string[]} after ids of the plates that it rested on
 * @property {string} weak id of the solvent
 * @property {string} strong id of the solvent
 * @property {number} percentStrong
 * @property {string} additive in words
 * @property {number[]} window Rf from, to
 * @property {string[]} apart
 * @property {{spot: string, rf: number, low: number, high: number}[]} spots where each was foretold, by the id of its compound
 * @property {number} probability
 * @property {string} basis
 *
 * @typedef {object} Sheet
 * @property {string} id of the study that it shows
 * @property {string} title
 * @property {string} notes
 * @property {string} created when it was begun
 * @property {boolean} archived
 * @property {GivenAdvice[]} advices in the order they were given; undoing leaves them as they are
 * @property {string} sorbent
 * @property {string} setting
 * @property {string[]} shelf ids of the solvents at hand
 * @property {string} weak of the next plate
 * @property {string} strong of the next plate
 * @property {Additive} additive in the next jar
 * @property {[string, string]} window Rf from, to
 * @property {"usual" | "column" | "own"} windowKind how it was chosen
 * @property {string[]} apart ids of two compounds to keep apart, or none
 * @property {string} amount of eluent in ml
 * @property {string} jar inner diameter in mm
 * @property {Spot[]} spots
 * @property {Plate[]} plates
 * @property {import("../column/sheet.js").Column} [column] what is to be done on a column, and what was; none where nobody thought of one
 * @property {import("../checks/sheet.js").Checks} [checks] what is asked of plates besides: same, pure, done; none where nobody did
 * @property {"yes" | "changed" | "no"} example whether it is the invented example, or was begun from it
 */

export const SETTINGS = ["bench", "class", "automated"];

/** Where every spot should lie; for a column to follow: common practice, no source. @type {Record<string, [string, string]>} */
export const WINDOWS = { usual: ["0.2", "0.8"], column: ["0.2", "0.35"] };

/** Colours in use; after the last the first comes again, and the letter tells. */
export const COLOURS = 6;

/** A name that the page gave; a name of a person's own may belong to any spot. */
const LETTER = /^([A-Z]|S\d+)$/;

/** Whether a compound has only the name that the page gave it. @param {Spot} spot */
export const isLettered = ({ name }) => LETTER.test(name);

/** A plate as many are cut, in mm; common practice, no source. */
export const USUAL_PLATE = { heightMm: "70", widthMm: "40", startMm: "10", frontMm: "62" };

/** @returns {Sheet} */
export function emptySheet() {
  /** @type {Sheet} */
  const sheet = {
    id: freshId(),
    title: "",
    notes: "",
    created: new Date().toISOString(),
    archived: false,
    advices: [],
    sorbent: "silica",
    setting: "bench",
    shelf: ["hexane", "ethyl-acetate", "diethyl-ether", "dichloromethane", "methanol", "acetic-acid", "triethylamine"],
    weak: "hexane",
    strong: "ethyl-acetate",
    additive: { kind: "none", text: "" },
    window: [...WINDOWS.usual],
    windowKind: "usual",
    apart: [],
    amount: "10",
    jar: "50",
    spots: [{ id: "s1", name: "A" }],
    plates: [],
    example: "no",
  };
  addPlate(sheet, "");
  return sheet;
}

/** A worked example, invented: no such plate was ever run. @returns {Sheet} */
export function inventedExample() {
  const sheet = emptySheet();
  sheet.spots.push({ id: "s2", name: "B" });
  const [plate] = sheet.plates;
  plate.eluent = "9 : 1";
  plate.lanes = [
    lane("l1", [reading("r1", ["s1"], "13.5"), reading("r2", ["s2"], "17.5")]),
    lane("l2", [reading("r3", ["s1"], "13")]),
  ];
  sheet.example = "yes";
  return sheet;
}

/** Whether nobody entered anything yet: the invented example, or the empty sheet, as it comes. @param {Sheet} sheet */
export function isUntouched(sheet) {
  if (sheet.example !== "no") return sheet.example === "yes";
  const { id, created, advices } = sheet;
  return JSON.stringify(sheet) === JSON.stringify(Object.assign(emptySheet(), { id, created, advices }));
}

/** @param {string} id @param {Reading[]} readings @returns {Lane} */
const lane = (id, readings) => ({ id, readings });

/** @param {string} id @param {string[]} spots @param {string} typed @returns {Reading} */
const reading = (id, spots, typed) => ({ id, spots, by: "mm", typed });

/** An id with a letter before it that nothing on the sheet has yet, nor had when something was advised. @param {Sheet} sheet @param {"s" | "p" | "l" | "r"} letter */
export function freeId(sheet, letter) {
  const lanes = sheet.plates.flatMap((plate) => plate.lanes);
  const taken = new Set(
    [sheet.spots, sheet.plates, lanes, lanes.flatMap((each) => each.readings)].flat().map((each) => each.id),
  );
  for (const { after, spots } of sheet.advices) for (const id of [...after, ...spots.map(({ spot }) => spot)]) taken.add(id);
  let number = 1;
  while (taken.has(`${letter}${number}`)) number++;
  return `${letter}${number}`;
}

/** Adds a plate for the pair of the sheet, cut like the one before it. @param {Sheet} sheet @param {string} eluent @returns {Plate} */
export function addPlate(sheet, eluent) {
  const { heightMm, widthMm, startMm, frontMm } = sheet.plates.at(-1) ?? USUAL_PLATE;
  /** @type {Plate} */
  const plate = {
    id: freeId(sheet, "p"),
    heightMm,
    widthMm,
    startMm,
    frontMm,
    weak: sheet.weak,
    strong: sheet.strong,
    eluent,
    additive: { ...sheet.additive },
    lanes: [lane(freeId(sheet, "l"), [])],
    notSeen: [],
  };
  sheet.plates.push(plate);
  return plate;
}

/** The plate of an id that is surely on the sheet. @param {Sheet} sheet @param {string} id @returns {Plate} */
export function findPlate(sheet, id) {
  const found = sheet.plates.find((plate) => plate.id === id);
  if (!found) throw new Error(`The sheet has no plate "${id}".`);
  return found;
}

/** Takes a plate off the sheet. @param {Sheet} sheet @param {string} id */
export function removePlate(sheet, id) {
  sheet.plates = sheet.plates.filter((plate) => plate.id !== id);
}

/** Adds a compound with the next free letter. @param {Sheet} sheet @returns {Spot} */
export function addSpot(sheet) {
  const spot = { id: freeId(sheet, "s"), name: freeName(sheet) };
  sheet.spots.push(spot);
  return spot;
}

/** Ways to say what a compound is. */
export const WAYS = ["smiles", "groups", "class"];

/** What a compound is, as far as it was said. @param {Spot} spot @returns {Identity} */
export const whatOf = (spot) => spot.what ?? { by: "smiles", smiles: "", groups: {}, class: "" };

/** Takes a compound off the sheet; its readings stay, unlabelled. @param {Sheet} sheet @param {string} id */
export function removeSpot(sheet, id) {
  sheet.spots = sheet.spots.filter((spot) => spot.id !== id);
  sheet.apart = sheet.apart.includes(id) ? [] : sheet.apart;
  if (sheet.column?.target === id) sheet.column.target = "";
  for (const one of [sheet.checks?.purity, ...(sheet.checks?.reaction?.species ?? [])]) if (one?.spot === id) delete one.spot;
  for (const tube of sheet.column?.runs.flatMap((run) => run.tubes) ?? []) tube.marks = tube.marks?.filter((mark) => mark.spot !== id);
  for (const plate of sheet.plates) {
    plate.notSeen = plate.notSeen.filter((each) => each !== id);
    for (const one of plate.lanes.flatMap((each) => each.readings)) one.spots = one.spots.filter((each) => each !== id);
  }
}

/** Adds a lane. @param {Sheet} sheet @param {Plate} plate @returns {Lane} */
export function addLane(sheet, plate) {
  const added = lane(freeId(sheet, "l"), []);
  plate.lanes.push(added);
  return added;
}

/** Takes a lane away that nothing was seen in, unless it is the only one. @param {Plate} plate @param {string} id */
export function removeLane(plate, id) {
  const left = plate.lanes.filter((each) => each.id !== id || each.readings.length > 0);
  if (left.length > 0) plate.lanes = left;
}

/**
 * Adds a spot that was seen in a lane. In the first lane that has spots each gets the next letter. Later, or where the compounds
 * have names of their own, nobody knows which is which: it stays unlabelled unless only one compound is left for it.
 * @param {Sheet} sheet @param {Plate} plate @param {Lane} into @param {"mm" | "rf"} by @param {string} typed
 * @returns {Reading}
 */
export function addReading(sheet, plate, into, by, typed) {
  const added = { id: freeId(sheet, "r"), spots: labelOf(sheet, into), by, typed };
  into.readings.push(added);
  seen(plate, added.spots);
  return added;
}

/** Places a spot by hand: its place is no longer the one that a picture told. @param {Reading} reading @param {"mm" | "rf"} by @param {string} typed */
export function placeReading(reading, by, typed) {
  reading.by = by;
  reading.typed = typed;
  delete reading.errorMm;
}

/** Says which compounds a reading shows. @param {Sheet} sheet @param {string} id of the reading @param {string[]} spots */
export function labelReading(sheet, id, spots) {
  const found = findReading(sheet, id);
  if (!found) return;
  found.reading.spots = spots;
  seen(found.plate, spots);
}

/** What was seen can no longer count as looked for in vain. @param {Plate} plate @param {string[]} spots */
function seen(plate, spots) {
  plate.notSeen = plate.notSeen.filter((id) => !spots.includes(id));
}

/** @param {Sheet} sheet @param {Lane} into @returns {string[]} */
function labelOf(sheet, into) {
  const here = new Set(into.readings.flatMap((each) => each.spots));
  const left = sheet.spots.filter((spot) => !here.has(spot.id));
  const elsewhere = sheet.plates.some((plate) => plate.lanes.some((lane) => lane.id !== into.id && lane.readings.length > 0));
  const allNamed = into.readings.every((each) => each.spots.length > 0);
  if (allNamed && left.length === 0) return [addSpot(sheet).id];
  if (allNamed && left.length === 1) return [left[0].id];
  if (allNamed && !elsewhere && left.every(isLettered)) return [left[0].id];
  if (into.readings.length >= sheet.spots.length) addSpot(sheet);
  return [];
}

/** All that was seen on a plate. @param {Plate} plate */
export const readingsOf = (plate) => plate.lanes.flatMap((each) => each.readings);

/** What was seen on a plate and has a place by now. @param {Plate} plate */
export const givenOn = (plate) => readingsOf(plate).filter(isGiven);

/** A spot that was added and has no place yet counts for nothing. @param {Reading} reading */
export const isGiven = (reading) => reading.typed.trim() !== "";

/** The reading of an id, with where it stands. @param {Sheet} sheet @param {string} id */
export function findReading(sheet, id) {
  for (const plate of sheet.plates) {
    for (const into of plate.lanes) {
      const found = into.readings.find((each) => each.id === id);
      if (found) return { plate, lane: into, reading: found };
    }
  }
  return undefined;
}

/** Takes a reading away. @param {Sheet} sheet @param {string} id */
export function removeReading(sheet, id) {
  const found = findReading(sheet, id);
  if (found) found.lane.readings = found.lane.readings.filter((each) => each.id !== id);
}

/** A name that no spot has yet: the next letter. @param {Sheet} sheet */
function freeName(sheet) {
  const taken = new Set(sheet.spots.map((spot) => spot.name));
  for (let i = 0; i < 26; i++) {
    const letter = String.fromCharCode(65 + i);
    if (!taken.has(letter)) return letter;
  }
  let number = sheet.spots.length + 1;
  while (taken.has(`S${number}`)) number++;
  return `S${number}`;
}
