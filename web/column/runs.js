// @ts-check
/** The columns that were run: how, what was seen in their tubes, and what that makes of the fractions. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { say } from "../texts.js";
import { bedEntry, chips, plannedSteps, stepEntries } from "./entries.js";
import { poolsView } from "./pools.js";
import { MOST_RUNS, addRun, columnOf, editColumn, editRun } from "./sheet.js";
import { stripView } from "./strip.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Run} Run */

/** @param {State} state @param {Act} act @param {boolean} current whether the plan is one for the sheet as it is */
export function runsView(state, act, current) {
  const { runs } = columnOf(state.sheet);
  const plan = state.looking.planned?.answer?.plan;
  return make(
    "div",
    { id: "column-runs", class: "only-screen" },
    ...runs.map((run, i) => runView(state, act, run, i)),
    (plan || runs.length > 0) &&
      make(
        "div",
        { class: "buttons", id: "run-buttons" },
        button({ id: "column-run", label: say(runs.length > 0 ? "later.fractions-another" : "later.fractions-run"), kind: runs.length > 0 ? undefined : "main", disabled: !current || runs.length >= MOST_RUNS, press: () => begin(state, act, plan) }),
      ),
  );
}

/** Begins with what was planned. @param {State} state @param {Act} act @param {any} plan */
function begin(state, act, plan) {
  const { weak, strong, additive } = state.sheet;
  const { bed } = plan;
  const number = (/** @type {number} */ value) => String(Number(value.toPrecision(6)));
  let id = "";
  let first = "";
  editColumn(act, (column) => {
    const run = addRun(
      column,
      {
        weak,
        strong,
        additive: { ...additive },
        bed: bed.cartridgeGrams === undefined ? { kind: "glass", diameterMm: number(bed.diameterMm), bedMm: number(bed.bedMm) } : { kind: "cartridge", grams: number(bed.cartridgeGrams) },
        steps: plannedSteps(plan),
        loading: column.loading,
        massMg: column.massMg,
        fractionMl: number(plan.fractionMl),
        collectedFromMl: "0",
      },
      plan.fractions,
    );
    id = run.id;
    first = run.tubes[0].id;
  });
  act.look({ tube: { run: id, at: 0, from: 0 } });
  act.focus(`tube-${id}-${first}`);
  document.getElementById(`run-${id}`)?.scrollIntoView({ block: "start" });
}

/** @param {State} state @param {Act} act @param {Run} run @param {number} i */
function runView(state, act, run, i) {
  const wrong = { ...state, faults: state.looking.pooled?.[run.id]?.faults ?? new Map() };
  const other = run.weak !== state.sheet.weak || run.strong !== state.sheet.strong;
  const name = (/** @type {string} */ id) => state.published.library?.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  return make(
    "section",
    { id: `run-${run.id}`, class: "run", "aria-labelledby": `run-title-${run.id}` },
    make(
      "div",
      { class: "column-head", id: `run-head-${run.id}` },
      make("h3", { id: `run-title-${run.id}` }, say("later.fractions-title", { number: i + 1, weak: name(run.weak), strong: name(run.strong) })),
      button({
        id: `run-remove-${run.id}`,
        label: say("later.fractions-remove"),
        name: say("later.fractions-remove-run", { number: i + 1 }),
        kind: "small",
        press: () => {
          editColumn(act, (column) => (column.runs = column.runs.filter((each) => each.id !== run.id)));
          act.focus("column-run");
        },
      }),
    ),
    other && make("p", { class: "aside", id: `run-other-${run.id}` }, say("later.fractions-other-pair")),
    stripView(wrong, act, run),
    poolsView(wrong, act, run),
    how(wrong, act, run),
  );
}

/** How it was run, where it was not as planned. @param {State} state @param {Act} act @param {Run} run */
function how(state, act, run) {
  const edit = (/** @type {(run: Run) => void} */ change, /** @type {string} */ together) => editRun(act, run.id, change, together);
  const field = (/** @type {"mass" | "fraction" | "from"} */ side, /** @type {"massMg" | "fractionMl" | "collectedFromMl"} */ name) =>
    typedField(state, {
      id: `${side}-${run.id}`,
      label: say(`later.fractions-how-${side}`),
      value: run[name],
      mode: "decimal",
      typed: (typed) => edit((mine) => Object.assign(mine, { [name]: typed }), `${side}-${run.id}`),
      left: act.rest,
    });
  return make(
    "details",
    { id: `run-how-${run.id}` },
    make("summary", {}, say("later.fractions-how")),
    make("div", { class: "two", id: `run-numbers-${run.id}` }, field("fraction", "fractionMl"), field("from", "collectedFromMl"), field("mass", "massMg")),
    bedEntry(state, run.id, run.bed, (change, together) => editRun(act, run.id, (mine) => (mine.bed = change(mine.bed)), together), act, false),
    chips(`loading-${run.id}`, say("later.elution-loading"), /** @type {const} */ (["wet", "dry"]), run.loading, (loading) => editRun(act, run.id, (mine) => Object.assign(mine, { loading })), state),
    choice(state, { id: `pair-${run.id}`, label: say("later.fractions-how-pair"), value: `${run.weak} ${run.strong}`, options: pairs(state, run), chosen: (pair) => editRun(act, run.id, (mine) => ([mine.weak, mine.strong] = pair.split(" "))) }),
    stepEntries(state, act, run.id, run.steps, (change, together) => editRun(act, run.id, (mine) => change(mine.steps), together)),
  );
}

/** The pair it was run with, those of the plates, and that of the sheet. @param {State} state @param {Run} run */
function pairs({ sheet, published }, run) {
  const name = (/** @type {string} */ id) => published.library?.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  const all = new Set([run, sheet, ...sheet.plates].map(({ weak, strong }) => `${weak} ${strong}`));
  return [...all].map((value) => {
    const [weak, strong] = value.split(" ");
    return { value, text: say("page.pair-option", { weak: name(weak), strong: name(strong) }) };
  });
}
