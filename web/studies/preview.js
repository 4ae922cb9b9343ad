// @ts-check
/** What is in a file that was brought, before anything of it is kept. */

import { make } from "../dom.js";
import { choice } from "../entry.js";
import { plateOnSheet } from "../study/study.js";
import { timeOf } from "../study/head.js";
import { marked, say } from "../texts.js";
import { ranIn } from "./eluent.js";

/** @typedef {import("../state.js").State} State */

/** What a column may hold. */
const MEANINGS = [
  "plate", "weak", "strong", "percent_strong", "eluent", "additive", "height_mm", "width_mm", "start_mm", "front_mm",
  "lane", "spot", "centre_mm", "distance_mm", "front_distance_mm", "rf", "size_mm", "error_mm", "shape", "seen", "not_seen",
];

/** Rows shown before the rest is folded away. */
const ROWS = 8;

/** @param {string} file */
const title = (file) => make("h4", { id: "preview-title", tabindex: -1 }, say("later.preview", { file }));

/** @param {number} plates */
function count(plates) {
  if (plates === 0) return say("later.runs-none");
  return plates === 1 ? say("later.runs-one") : say("later.runs-count", { count: plates });
}

/** @param {any[]} notes */
const told = (notes) => (notes.length ? [make("ul", { class: "aside" }, ...notes.map(({ text }) => make("li", {}, text)))] : []);

/** @param {State} state @param {any} answer @param {string} file */
export function studyPreview(state, { study, notes }, file) {
  const facts = [
    say("later.preview-title", { title: study.title || say("page.untitled") }),
    say("later.preview-when", { when: timeOf(study.modified) }),
    say("later.preview-spots", { spots: study.spots.map((/** @type {any} */ spot) => spot.name || say("page.unnamed")).join(", ") }),
    ...study.plates.map((/** @type {any} */ plate, /** @type {number} */ i) => plateWords(state, plate, i)),
  ];
  return [title(file), make("ul", { id: "preview-study" }, ...facts.map((fact) => make("li", {}, fact))), ...told(notes)];
}

/** @param {State} state @param {any} plate @param {number} i @param {string} [said] what the file says of its eluent */
function plateWords(state, plate, i, said) {
  const readings = plate.lanes.flatMap((/** @type {any} */ lane) => lane.readings).length;
  return say(readings === 1 ? "later.preview-plate-one" : "later.preview-plate", { number: i + 1, eluent: ranIn(state, plate, said), readings });
}

/**
 * @param {State} state @param {any} answer @param {string} file
 * @param {(change: {columns?: Record<string, number>, decimal?: string}) => void} correct
 */
export function runsPreview(state, answer, file, correct) {
  return [
    title(file),
    ...told(answer.notes),
    make("p", { class: "aside" }, say("later.columns-what")),
    make(
      "div",
      { class: "bring-columns", id: "bring-columns" },
      ...answer.columns.map((/** @type {any} */ column) => oneColumn(state, answer.columns, column, correct)),
      choice(state, {
        id: "bring-decimal",
        label: say("later.decimal"),
        value: answer.decimal ?? "point",
        options: ["point", "comma"].map((value) => ({ value, text: say(`later.decimal-${value}`) })),
        chosen: (decimal) => correct({ decimal }),
      }),
    ),
    answer.plates.length + answer.rejected.length > 0 && rejected(answer.rejected, answer.rejectedInAll),
    make("p", { id: "bring-count" }, count(answer.plates.length)),
    make("ul", { id: "preview-runs" }, ...answer.plates.map((/** @type {any} */ plate, /** @type {number} */ i) => make("li", {}, runWords(state, answer, plate, i)))),
  ];
}

/** @param {State} state @param {any[]} columns @param {any} column @param {(change: {columns: Record<string, number>}) => void} correct */
function oneColumn(state, columns, column, correct) {
  const { index, header, meaning, examples } = column;
  const chosen = (/** @type {string} */ value) => {
    const others = columns.filter((each) => each.meaning && each.index !== index && each.meaning !== value);
    const now = others.map((each) => [each.meaning, each.index]);
    correct({ columns: Object.fromEntries(value ? [...now, [value, index]] : now) });
  };
  const entry = choice(state, {
    id: `column-${index}`,
    label: say("later.column", { header: header || say("later.column-number", { number: index + 1 }) }),
    value: meaning ?? "",
    options: [{ value: "", text: say("later.column-none") }, ...MEANINGS.map((value) => ({ value, text: say(`later.column-${value.replaceAll("_", "-")}`) })), ...unheardOf(meaning)],
    chosen,
  });
  entry.append(make("p", { class: "aside examples" }, examples.join(" \u00b7 ")));
  return entry;
}

/** A meaning that a newer program knows stands as it is. @param {string | null} meaning */
const unheardOf = (meaning) => (meaning && !MEANINGS.includes(meaning) ? [{ value: meaning, text: meaning }] : []);

/** @param {any[]} rows the first of them @param {number} count of all */
function rejected(rows, count) {
  if (rows.length === 0) return make("p", { id: "bring-rejected", class: "aside" }, say("later.none-rejected"));
  const line = (/** @type {any} */ { line: number, row, message }) =>
    make("li", {}, say("later.rejected-row", { line: number }), " ", message, " ", make("code", {}, row));
  const [shown, rest] = [rows.slice(0, ROWS), rows.slice(ROWS)];
  return make(
    "div",
    { id: "bring-rejected" },
    make("p", { class: "fault" }, say(count === 1 ? "later.rejected-one" : "later.rejected", { count })),
    make("ul", {}, ...shown.map(line)),
    rest.length > 0 && make("details", { id: "rejected-further" }, make("summary", {}, say("later.rejected-further", { count: count - shown.length })), make("ul", {}, ...rest.map(line))),
  );
}

/** @param {State} state @param {any} answer @param {any} plate @param {number} i */
function runWords(state, answer, plate, i) {
  const names = new Map(answer.spots.map((/** @type {any} */ spot) => [spot.id, spot.name || say("page.unnamed")]));
  const seen = plateOnSheet(plate).lanes.flatMap((lane) => lane.readings).map(({ spots, by, typed }) => {
    const spot = spots.map((id) => names.get(id) ?? id).join(" + ") || say("later.no-name");
    return say(by === "rf" ? "later.read-rf" : "later.read-mm", { spot, value: marked(typed) });
  });
  const jar = answer.jars?.find((/** @type {any} */ each) => each.plate === plate.id);
  return `${plateWords(state, plate, i, jar?.said)} ${seen.join("; ")}`;
}
