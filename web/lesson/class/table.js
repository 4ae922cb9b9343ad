// @ts-check
/** The table of what pairs read: its rows as they were typed, and the question that they make. */

import { decimal, orAsTyped, percentStrong } from "../../numbers.js";
import { say } from "../../texts.js";
import { sampleAsked } from "../state.js";

/**
 * @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act
 *
 * @typedef {object} Row a plate of a pair, each entry as it was typed
 * @property {string} id
 * @property {string} pair @property {string} plate @property {string} start @property {string} front
 * @property {Record<string, string>} cells by the id of the column
 *
 * @typedef {object} ClassPart
 * @property {Row[]} rows
 * @property {{id: string, name: string}[]} further columns beside those of the sample
 * @property {"rf" | "mm"} cells what they hold
 * @property {"shown" | "hidden"} lines heights of start line and front
 * @property {"entered" | "shift"} order
 * @property {string} pasted what waits in the field for tables
 * @property {string} code typed
 * @property {string} [invented] the code from which the rows were drawn
 * @property {string} [left] what of a table was not taken
 * @property {ClassPart} [before] the table that this one took the place of
 */

/** Forty pairs of four plates each. */
export const MOST_ROWS = 160;
export const MOST_SPOTS = 6;

let made = 0;

/** @returns {Row} */
export const emptyRow = () => ({ id: `r${Date.now().toString(36)}${(made++).toString(36)}`, pair: "", plate: "", start: "", front: "", cells: {} });

/** The part as it stands, or the one to begin with. @param {import("../state.js").Lesson} lesson @returns {ClassPart} */
export function classOf(lesson) {
  return { rows: [{ ...emptyRow(), id: "r1" }, { ...emptyRow(), id: "r2" }], further: [], cells: "rf", lines: "hidden", order: "entered", pasted: "", code: "", ...lesson.parts.class };
}

/** Changes the part. @param {Act} act @param {(mine: ClassPart) => void} change */
export function editClass(act, change) {
  act.edit((lesson) => {
    const mine = structuredClone(classOf(lesson));
    change(mine);
    lesson.parts = { ...lesson.parts, class: mine };
  });
}

/** Puts other rows in place of those that stand, which can be had back. @param {Act} act @param {(mine: ClassPart) => void} change */
export function replaceClass(act, change) {
  editClass(act, (mine) => {
    const { before, ...stood } = structuredClone(mine);
    delete mine.invented;
    delete mine.left;
    change(mine);
    if (stood.rows.some(isFilled)) mine.before = stood;
    else mine.before = before;
  });
}

/** @param {Row} row */
export const isFilled = (row) => [row.pair, row.plate, row.start, row.front, ...Object.values(row.cells)].some((typed) => typed.trim() !== "");

/** The columns of spots: those of the sample, then others. @param {State} state @param {ClassPart} mine */
export const columnsOf = (state, mine) => [...state.lesson.compounds.map(({ id, name }, colour) => ({ id, name, colour })), ...mine.further.map((each, i) => ({ ...each, colour: state.lesson.compounds.length + i }))].slice(0, MOST_SPOTS);

/** What is wrong with a cell, if anything: it is left out until it is mended. @param {ClassPart} mine @param {string} typed */
export function isBad({ cells }, typed) {
  if (typed.trim() === "") return false;
  const value = decimal(typed);
  return value === undefined || value < 0 || value > (cells === "rf" ? 1 : 1000);
}

/** The cells that are left out, in words, by the id of their entry. @param {State} state @param {ClassPart} mine @returns {Map<string, string[]>} */
export function badCells(state, mine) {
  const told = new Map();
  mine.rows.forEach((row, i) => {
    for (const { id, name } of columnsOf(state, mine)) {
      const typed = row.cells[id] ?? "";
      if (isBad(mine, typed)) told.set(cellId(row, id), [say(mine.cells === "rf" ? "later.lesson-class-bad" : "later.lesson-class-bad-mm", { row: i + 1, column: name, came: typed.trim() })]);
    }
  });
  return told;
}

/** @param {Row} row @param {string} column */
export const cellId = (row, column) => `rf-class-${row.id}-${column}`;

/** What is asked of the readings. @param {State} state @param {ClassPart} mine @returns {import("../ask.js").Question} */
export function classQuestion(state, mine) {
  const entries = new Map([["percentStrong", "class-percent"]]);
  const readings = /** @type {object[]} */ ([]);
  const plates = /** @type {Map<string, number>} */ (new Map());
  const lanes = /** @type {Map<string, number>} */ (new Map());
  mine.rows.forEach((row, i) => {
    const pair = row.pair.trim() || String(i + 1);
    const plate = plateOf(row, pair, plates);
    for (const { id, name } of columnsOf(state, mine)) {
      const typed = row.cells[id] ?? "";
      if (typed.trim() === "" || isBad(mine, typed)) continue;
      const key = JSON.stringify([pair, plate, id]);
      lanes.set(key, (lanes.get(key) ?? 0) + 1);
      const at = `readings[${readings.length}]`;
      entries.set(at, cellId(row, id));
      for (const field of ["pair", "plate"]) entries.set(`${at}.${field}`, `${field}-class-${row.id}`);
      for (const field of ["start", "front"]) entries.set(`${at}.${field}Mm`, `${field}-class-${row.id}`);
      readings.push({ pair, plate, lane: lanes.get(key), spot: name, [mine.cells === "rf" ? "rf" : "centreMm"]: decimal(typed), ...linesOf(mine, row) });
    }
  });
  const body = readings.length === 0 || isShareEmpty(state) ? undefined : { ...sampleAsked(state.lesson), percentStrong: shareOf(state), readings };
  return { name: "class", path: "/api/lesson/class", body, entries };
}

/** @param {State} state */
export const isShareEmpty = ({ lesson }) => lesson.percent.trim() === "";

/** @param {State} state */
export const strongName = ({ lesson, published }) => published.library.solvents.find((/** @type {any} */ each) => each.id === lesson.strong)?.name ?? lesson.strong;

/** @param {State} state */
export const shareOf = ({ lesson }) => orAsTyped(percentStrong(lesson.percent), lesson.percent);

/** A number is the pair's own plate, a name one of the class; a pair that comes again without either has another one. @param {Row} row @param {string} pair @param {Map<string, number>} plates */
function plateOf(row, pair, plates) {
  const typed = row.plate.trim();
  if (typed !== "") return /^\d+$/.test(typed) ? Number(typed) : typed;
  plates.set(pair, (plates.get(pair) ?? 0) + 1);
  return plates.get(pair);
}

/** @param {ClassPart} mine @param {Row} row */
function linesOf(mine, row) {
  if (mine.lines === "hidden" && mine.cells === "rf") return {};
  const [start, front] = [row.start, row.front].map((typed) => typed.trim());
  return { ...(start ? { startMm: orAsTyped(decimal(start), start) } : {}), ...(front ? { frontMm: orAsTyped(decimal(front), front) } : {}) };
}
