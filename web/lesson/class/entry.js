// @ts-check
/** Where a class enters what it read: a table that grows, a field to paste into, and an invented class. */

import { make } from "../../dom.js";
import { button, choice, tick, typedField } from "../../entry.js";
import { Refused, post } from "../../server.js";
import { say } from "../../texts.js";
import { sampleAsked } from "../state.js";
import { tableOf } from "./paste.js";
import { MOST_ROWS, MOST_SPOTS, cellId, columnsOf, editClass, emptyRow, isFilled, isShareEmpty, replaceClass, shareOf } from "./table.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./table.js").ClassPart} ClassPart @typedef {import("./table.js").Row} Row */

/** As many as the seed of a code goes to. */
const SEEDS = 2 ** 20;

/** @param {State} state with the faults at their entries @param {Act} act @param {ClassPart} mine @param {Element[]} refused what to say below the table */
export function entryView(state, act, mine, refused) {
  const full = mine.rows.length >= MOST_ROWS;
  return make(
    "div",
    { id: "class-entry", class: "class-entry" },
    make("h3", { id: "class-entry-title" }, say("later.lesson-class-entry")),
    make("div", { id: "class-choices", class: "class-choices" }, ...choices(state, act, mine)),
    make("div", { id: "class-rows", class: columnsOf(state, mine).length + (hasLines(mine) ? 2 : 0) > 5 ? "class-rows many" : "class-rows", role: "group", "aria-labelledby": "class-entry-title" }, head(state, mine), ...mine.rows.map((row, i) => rowView(state, act, mine, row, i))),
    make("div", { id: "class-refused", class: "class-refused" }, ...refused),
    make(
      "div",
      { id: "class-presses", class: "class-presses" },
      button({ id: "class-add", label: say("later.lesson-class-add"), disabled: full, press: () => addRow(act) }),
      button({ id: "class-clear", label: say("later.lesson-class-clear"), disabled: !mine.rows.some(isFilled), press: () => replaceClass(act, (own) => { own.rows = [emptyRow()]; }) }),
      mine.before && button({ id: "class-undo", label: say("later.lesson-class-undo"), press: () => undo(act) }),
    ),
    ...sources(state, act, mine),
  );
}

/** @param {State} state @param {Act} act @param {ClassPart} mine */
function choices(state, act, mine) {
  const names = new Map(state.published.library.solvents.map((/** @type {any} */ each) => [each.id, each.name]));
  const { weak, strong } = state.lesson;
  return [
    typedField(state, { id: "class-percent", label: say("later.lesson-class-percent", { strong: names.get(strong) ?? strong, weak: names.get(weak) ?? weak }), value: state.lesson.percent, mode: "decimal", typed: (value) => act.edit((lesson) => { lesson.percent = value; }) }),
    choice(state, {
      id: "class-cells",
      label: say("later.lesson-class-cells"),
      value: mine.cells,
      options: [{ value: "rf", text: say("later.lesson-class-cells-rf") }, { value: "mm", text: say("later.lesson-class-cells-mm") }],
      chosen: (value) => editClass(act, (own) => { own.cells = value === "mm" ? "mm" : "rf"; }),
    }),
    mine.cells === "rf" && tick({ id: "class-lines", label: say("later.lesson-class-lines"), ticked: mine.lines === "shown", changed: (ticked) => editClass(act, (own) => { own.lines = ticked ? "shown" : "hidden"; }) }),
  ].filter((each) => each !== false);
}

/** @param {ClassPart} mine */
const hasLines = (mine) => mine.cells === "mm" || mine.lines === "shown";

/** @param {State} state @param {ClassPart} mine */
function head(state, mine) {
  const lines = hasLines(mine) ? [say("later.lesson-class-start"), say("later.lesson-class-front")] : [];
  const names = [say("later.lesson-class-row"), say("later.lesson-class-pair"), say("later.lesson-class-plate"), ...lines, ...columnsOf(state, mine).map(({ name }) => name), ""];
  return make("div", { id: "class-head", class: "class-row class-head", "aria-hidden": "true" }, ...names.map((name) => make("span", {}, name)));
}

/** @param {State} state @param {Act} act @param {ClassPart} mine @param {Row} row @param {number} i */
function rowView(state, act, mine, row, i) {
  const number = i + 1;
  const columns = columnsOf(state, mine);
  const at = (/** @type {Row[]} */ rows) => rows.find(({ id }) => id === row.id);
  const plain = (/** @type {"pair" | "plate" | "start" | "front"} */ name, /** @type {string} */ label, /** @type {"text" | "decimal"} */ mode) =>
    typedField(state, { id: `${name}-class-${row.id}`, label, value: row[name], mode, longest: 60, typed: (value) => editClass(act, (own) => { const mineRow = at(own.rows); if (mineRow) mineRow[name] = value; }) });
  return make(
    "div",
    { id: `class-row-${row.id}`, class: "class-row", role: "group", "aria-label": `${say("later.lesson-class-row")} ${number}` },
    make("span", { class: "class-number", "aria-hidden": "true" }, String(number)),
    plain("pair", say("later.lesson-class-pair"), "text"),
    plain("plate", say("later.lesson-class-plate"), "text"),
    hasLines(mine) && plain("start", say("later.lesson-class-start"), "decimal"),
    hasLines(mine) && plain("front", say("later.lesson-class-front"), "decimal"),
    ...columns.map((column) =>
      typedField(state, {
        id: cellId(row, column.id),
        label: column.name,
        value: row.cells[column.id] ?? "",
        mode: "decimal",
        longest: 60,
        typed: (value) => editClass(act, (own) => { const mineRow = at(own.rows); if (mineRow) mineRow.cells[column.id] = value; }),
        entered: () => below(act, mine, i, column.id),
      }),
    ),
    make("span", { class: "class-remove" }, button({ id: `class-remove-${row.id}`, label: "×", name: say("later.lesson-class-remove", { row: number }), disabled: mine.rows.length < 2, press: () => remove(act, mine, i) })),
  );
}

/** @param {Act} act @param {ClassPart} mine @param {number} i */
function remove(act, mine, i) {
  const near = mine.rows[i + 1] ?? mine.rows[i - 1];
  const gone = mine.rows[i].id;
  const drop = (/** @type {ClassPart} */ own) => { own.rows = own.rows.filter(({ id }) => id !== gone); };
  if (isFilled(mine.rows[i])) editClass(act, (own) => { const { before, ...stood } = structuredClone(own); drop(own); own.before = stood; });
  else editClass(act, drop);
  act.focus(`pair-class-${near.id}`);
}

/** @param {Act} act */
function addRow(act) {
  const row = emptyRow();
  editClass(act, (own) => { own.rows.push(row); });
  act.focus(`pair-class-${row.id}`);
}

/** The cell below, in a new row after the last. @param {Act} act @param {ClassPart} mine @param {number} i @param {string} column */
function below(act, mine, i, column) {
  const next = mine.rows[i + 1] ?? emptyRow();
  if (!mine.rows[i + 1]) {
    if (mine.rows.length >= MOST_ROWS) return;
    editClass(act, (own) => { own.rows.push(next); });
  }
  act.focus(cellId(next, column));
}

/** @param {Act} act */
function undo(act) {
  act.edit((lesson) => {
    const { before } = lesson.parts.class;
    lesson.parts = { ...lesson.parts, class: before };
  });
  act.focus("class-add");
}

/** @param {State} state @param {Act} act @param {ClassPart} mine */
function sources(state, act, mine) {
  const fault = state.looking.classExample;
  return [
    make(
      "details",
      { id: "class-paste-fold" },
      make("summary", { id: "class-paste-summary" }, say("later.lesson-class-paste")),
      make("label", { for: "class-paste" }, say("later.lesson-class-paste-how")),
      make("textarea", { id: "class-paste", rows: 6, spellcheck: "false", oninput: (event) => { const { value } = event.target; editClass(act, (own) => { own.pasted = value; }); } }, mine.pasted),
      button({ id: "class-paste-take", label: say("later.lesson-class-paste-take"), disabled: mine.pasted.trim() === "", press: () => take(state, act, mine) }),
      mine.left && make("p", { class: "fault", id: "class-left" }, say("later.lesson-class-too-much", { most: MOST_ROWS, columns: MOST_SPOTS })),
    ),
    make(
      "div",
      { id: "class-examples", class: "class-presses" },
      button({ id: "class-example", label: say("later.lesson-class-example"), press: () => example(state, act, mine) }),
      typedField(state, { id: "class-code", label: say("later.lesson-class-code"), value: mine.code, longest: 20, typed: (value) => editClass(act, (own) => { own.code = value; }), entered: () => example(state, act, mine) }),
      fault && make("p", { class: "fault", id: "class-example-fault" }, fault),
    ),
  ];
}

/** @param {State} state @param {Act} act @param {ClassPart} mine */
function take(state, act, mine) {
  const sample = state.lesson.compounds;
  const table = tableOf(mine.pasted, sample.length);
  const further = /** @type {{id: string, name: string}[]} */ ([]);
  const free = sample.map(({ id }) => id);
  const byName = (/** @type {string | undefined} */ name) => name && sample.find((each) => each.name.toLowerCase() === name.toLowerCase())?.id;
  const columns = table.names.map((name) => {
    const known = byName(name);
    const id = known && free.includes(known) ? free.splice(free.indexOf(known), 1)[0] : name ? undefined : free.shift();
    if (id) return id;
    further.push({ id: `x${further.length + 1}`, name: name && !byName(name) && !further.some((each) => each.name === name) ? name : `${name ?? ""}+${further.length + 1}` });
    return further[further.length - 1].id;
  });
  const tooMuch = table.rows.length > MOST_ROWS || sample.length + further.length > MOST_SPOTS;
  replaceClass(act, (own) => {
    own.further = further.slice(0, Math.max(0, MOST_SPOTS - sample.length));
    own.rows = table.rows.slice(0, MOST_ROWS).map(({ spots, ...row }) => ({ ...emptyRow(), ...row, cells: Object.fromEntries(spots.map((typed, i) => [columns[i], typed])) }));
    if (own.rows.length === 0) own.rows = [emptyRow()];
    if (own.rows.some(({ start, front }) => start || front)) own.lines = "shown";
    own.pasted = tooMuch ? own.pasted : "";
    if (tooMuch) own.left = "yes";
  });
  act.speak(say("later.lesson-class-took", { rows: Math.min(MOST_ROWS, table.rows.length) }));
}

/** @param {State} state @param {Act} act @param {ClassPart} mine */
async function example(state, act, mine) {
  const typed = mine.code.trim();
  if (isShareEmpty(state)) return act.focus("class-percent");
  const drawn = typed ? { code: typed } : { seed: Math.floor(Math.random() * SEEDS) };
  try {
    const { code, rows } = await post("/api/lesson/class/example", { ...sampleAsked(state.lesson), percentStrong: shareOf(state), ...drawn });
    replaceClass(act, (own) => {
      own.cells = "rf";
      own.lines = "shown";
      own.further = [];
      own.invented = code;
      own.rows = rows.map((/** @type {any} */ row) => ({ ...emptyRow(), pair: row.pair, start: String(row.startMm), front: String(row.frontMm), cells: Object.fromEntries(state.lesson.compounds.map(({ id }, i) => [id, row.rf[i].toFixed(2)])) }));
    });
    act.look({ classExample: undefined });
  } catch (failure) {
    act.look({ classExample: failure instanceof Refused ? [...new Set(failure.faults.map(({ message, todo }) => `${message} ${todo}`))].join(" ") : say("later.lesson-class-unreachable") });
  }
}
