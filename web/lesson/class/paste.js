// @ts-check
/** Reads a table out of a spreadsheet: cells apart by tabs, semicolons or commas. Whatever stands in a cell stays as it was typed. */

import { decimal } from "../../numbers.js";

/** What the first row may call the columns that are no spots. @type {Record<string, string[]>} */
const HEADS = {
  pair: ["pair", "pairs", "group", "team", "student", "students", "name", "paar", "gruppe"],
  plate: ["plate", "plates", "platte"],
  start: ["start", "start line", "start mm", "start, mm", "start (mm)", "startlinie"],
  front: ["front", "front mm", "front, mm", "front (mm)", "solvent front"],
};

/** @typedef {{pair: string, plate: string, start: string, front: string, spots: string[]}} Pasted @typedef {{names: (string | undefined)[], rows: Pasted[]}} Table */

/** What parts the cells: tabs where there is any, else semicolons, else commas. @param {string} text */
export const delimiterOf = (text) => (text.includes("\t") ? "\t" : text.includes(";") ? ";" : ",");

/** The cells of each line that is not empty; a cell in quotes may hold what parts cells and lines. @param {string} text @returns {string[][]} */
export function cellsOf(text) {
  const delimiter = delimiterOf(text);
  const rows = [];
  let cells = [];
  let cell = "";
  let quoted = false;
  for (let i = 0; i <= text.length; i++) {
    const sign = text[i];
    if (quoted && sign !== undefined) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') cell += text[++i];
      else quoted = false;
    } else if (sign === '"' && cell.trim() === "") {
      quoted = true;
      cell = "";
    } else if (sign === delimiter) {
      cells.push(cell.trim());
      cell = "";
    } else if (sign === undefined || sign === "\n" || sign === "\r") {
      cells.push(cell.trim());
      if (cells.some((each) => each !== "")) rows.push(cells);
      cells = [];
      cell = "";
    } else cell += sign;
  }
  return rows;
}

/**
 * The table. A first row counts as names where no cell but perhaps its first is a number and another row follows, or where it names one of the columns known.
 * Without names the last columns are spots: as many as there are expected, and before them the pair and the plate.
 * @param {string} text @param {number} expected how many spots the sample has
 * @returns {Table} a name for each column of spots, none where the table names none
 */
export function tableOf(text, expected) {
  const rows = cellsOf(text);
  if (rows.length === 0) return { names: [], rows: [] };
  const width = Math.max(...rows.map((row) => row.length));
  const first = rows[0];
  const known = first.map(kindOf);
  const named = known.some((kind) => kind !== "spot") || (rows.length > 1 && first.slice(1).some((cell) => cell !== "") && first.slice(1).every((cell) => decimal(cell) === undefined) && rows[1].slice(1).some((cell) => decimal(cell) !== undefined));
  const kinds = named ? withPair(known, width) : bareKinds(width, expected);
  const spots = kinds.flatMap((kind, i) => (kind === "spot" ? [i] : []));
  const cell = (/** @type {string[]} */ row, /** @type {string} */ kind) => row[kinds.indexOf(kind)] ?? "";
  return {
    names: spots.map((at) => (named ? first[at] || undefined : undefined)),
    rows: rows.slice(named ? 1 : 0).map((row) => ({ pair: cell(row, "pair"), plate: cell(row, "plate"), start: cell(row, "start"), front: cell(row, "front"), spots: spots.map((at) => row[at] ?? "") })),
  };
}

/** @param {string} name */
const kindOf = (name) => Object.keys(HEADS).find((kind) => HEADS[kind].includes(name.toLowerCase())) ?? "spot";

/** Kinds by their names; a first column without any name is that of the pairs. @param {string[]} kinds @param {number} width */
function withPair(kinds, width) {
  const each = Array.from({ length: width }, (_, i) => {
    const kind = kinds[i] ?? "spot";
    return kinds.indexOf(kind) === i || kind === "spot" ? kind : "spot"; // the same name twice is a spot the second time
  });
  if (!each.includes("pair") && each[0] === "spot") each[0] = "pair";
  return each;
}

/** @param {number} width @param {number} expected */
function bareKinds(width, expected) {
  const before = width <= expected ? 0 : width === expected + 2 ? 2 : 1;
  return Array.from({ length: width }, (_, i) => (i >= before ? "spot" : i === 0 ? "pair" : "plate"));
}
