// @ts-check
/** What stands on the sheet about a column: what is wanted of it, and the runs with their tubes and flasks. Numbers are kept as typed. */

/**
 * @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("../sheet/sheet.js").Spot} Spot
 *
 * @typedef {{kind: "advised"} | {kind: "cartridge", grams: string} | {kind: "glass", diameterMm: string, bedMm: string}} Bed
 * @typedef {{eluent: string, volumeMl: string}} Step
 * @typedef {{spot: string, strength: number}} Mark a compound seen in a tube, by its id, from 1 (a trace) to 4
 * @typedef {{id: string, marks?: Mark[]}} Tube no marks where it was not looked at
 * @typedef {{id: string, fromTube: string, toTube: string, tareGrams: string, grossGrams: string}} Flask
 *
 * @typedef {object} Run a column that was run
 * @property {string} id
 * @property {string} weak id of the solvent
 * @property {string} strong id of the solvent
 * @property {import("../sheet/sheet.js").Additive} additive
 * @property {Bed} bed
 * @property {Step[]} steps
 * @property {"wet" | "dry"} loading
 * @property {string} massMg
 * @property {string} fractionMl
 * @property {string} collectedFromMl
 * @property {Tube[]} tubes the first tube first
 * @property {Flask[]} flasks
 *
 * @typedef {object} Column
 * @property {string} target id of the compound that is wanted, or ""
 * @property {string} massMg
 * @property {Bed} bed
 * @property {"wet" | "dry"} loading
 * @property {string} loadMl
 * @property {string} flowMlMin
 * @property {string} fractionMl
 * @property {"best" | "isocratic" | "steps" | "own"} elution
 * @property {Step[]} steps own ones
 * @property {Run[]} runs
 *
 * @typedef {{run: string, at: number, from: number, last?: string}} Chosen tubes of a run by their places, from the one chosen first to the one chosen last, and the compound marked last
 */

/** Cartridges that can be planned for, by their silica in grams. */
export const CARTRIDGES = ["4", "8", "12", "25", "40", "80", "120"];

/** Silica in a glass column, unless somebody says another height [mm]; the height of the published table. */
const USUAL_BED_MM = "150";
const USUAL_DIAMETER_MM = "20";

/** More tubes, and more runs, than anybody collects. */
export const MOST_TUBES = 400;
export const MOST_RUNS = 20;

/** What another tap makes of each strength from 0 to 4: clear first, then strong, a trace, weak, and out again. */
const NEXT_STRENGTH = [3, 2, 0, 4, 1];

/** @param {Sheet} sheet @returns {Column} what is on it, or a column that nobody said anything of */
export const columnOf = (sheet) =>
  sheet.column ?? {
    target: sheet.spots.length === 1 ? sheet.spots[0].id : "",
    massMg: "",
    bed: { kind: "advised" },
    loading: "wet",
    loadMl: "",
    flowMlMin: "",
    fractionMl: "",
    elution: "best",
    steps: [],
    runs: [],
  };

/** @param {import("../state.js").Act} act @param {(column: Column, sheet: Sheet) => void} change @param {string} [together] */
export function editColumn(act, change, together) {
  act.edit((sheet) => {
    sheet.column ??= columnOf(sheet);
    change(sheet.column, sheet);
  }, together);
}

/** @param {import("../state.js").Act} act @param {string} id of the run @param {(run: Run, column: Column, sheet: Sheet) => void} change @param {string} [together] */
export function editRun(act, id, change, together) {
  editColumn(
    act,
    (column, sheet) => {
      const run = column.runs.find((each) => each.id === id);
      if (run) change(run, column, sheet);
    },
    together,
  );
}

/** @param {string} kind @returns {Bed} */
export function bedOf(kind) {
  if (kind === "glass") return { kind: "glass", diameterMm: USUAL_DIAMETER_MM, bedMm: USUAL_BED_MM };
  return kind === "advised" ? { kind } : { kind: "cartridge", grams: kind };
}

/** @param {Bed} bed as `bedOf` takes it */
export const kindOf = (bed) => (bed.kind === "cartridge" ? bed.grams : bed.kind);

/** An id with a letter before it that nothing of the column has yet. @param {Column} column @param {"c" | "t" | "f"} letter */
export function freeId({ runs }, letter) {
  const taken = new Set(runs.flatMap((run) => [run, ...run.tubes, ...run.flasks]).map(({ id }) => id));
  let number = 1;
  while (taken.has(`${letter}${number}`)) number++;
  return `${letter}${number}`;
}

/** Puts tubes behind the last, not looked at. @param {Column} column @param {Run} run @param {number} count */
export function addTubes(column, run, count) {
  for (let i = 0; i < count && run.tubes.length < MOST_TUBES; i++) run.tubes.push({ id: freeId(column, "t") });
}

/** @param {Column} column @param {Omit<Run, "id" | "tubes" | "flasks">} how @param {number} tubes @returns {Run} */
export function addRun(column, how, tubes) {
  /** @type {Run} */
  const run = { id: freeId(column, "c"), ...how, tubes: [], flasks: [] };
  column.runs.push(run);
  addTubes(column, run, Math.max(1, Math.min(tubes, MOST_TUBES)));
  return run;
}

/** How strong a compound is in a tube; 0 where it was not seen. @param {Tube} tube @param {string} spot */
export const strengthIn = (tube, spot) => tube.marks?.find((mark) => mark.spot === spot)?.strength ?? 0;

/** Says how strong a compound is in a tube, which is then looked at. @param {Tube} tube @param {string} spot @param {number} strength */
export function setStrength(tube, spot, strength) {
  const others = (tube.marks ?? []).filter((mark) => mark.spot !== spot);
  tube.marks = strength > 0 ? [...others, { spot, strength }] : others;
}

/** What another tap makes of a strength. @param {number} strength */
export const tapped = (strength) => NEXT_STRENGTH[strength];

/** Whether a step can be asked about: both of its entries are filled in. @param {Step} step */
export const isFilled = ({ eluent, volumeMl }) => eluent.trim() !== "" && volumeMl.trim() !== "";

/** Whether it is said of each of its eluents what it was and how much. @param {Run} run */
export const isFilledRun = ({ steps }) => steps.length > 0 && steps.every(isFilled);

/** A flask counts once all of it is filled in. @param {Flask} flask */
export const isWeighed = ({ fromTube, toTube, tareGrams, grossGrams }) => [fromTube, toTube, tareGrams, grossGrams].every((typed) => typed.trim() !== "");

/** The key that marks each compound: the first letter of its name where no other has it, else the next free one. @param {Spot[]} spots @returns {Map<string, string>} by its id */
export function keysOf(spots) {
  const keys = new Map();
  const free = [..."abcdefghijklmnopqrstuvwxyz"];
  const take = (/** @type {Spot} */ spot, /** @type {string | undefined} */ letter) => {
    if (letter === undefined || !free.includes(letter)) return;
    keys.set(spot.id, letter);
    free.splice(free.indexOf(letter), 1);
  };
  for (const spot of spots) take(spot, spot.name.trim().slice(0, 1).toLowerCase());
  for (const spot of spots) if (!keys.has(spot.id)) take(spot, free[0]);
  return keys;
}
