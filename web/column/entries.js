// @ts-check
/** What is wanted of the column: few entries, the rest folded away. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { faultAt } from "../faults.js";
import { say } from "../texts.js";
import { CARTRIDGES, bedOf, columnOf, editColumn, kindOf } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Bed} Bed @typedef {import("./sheet.js").Step} Step */

const LOADINGS = /** @type {const} */ (["wet", "dry"]);
const ELUTIONS = /** @type {const} */ (["best", "isocratic", "steps", "own"]);

/** @param {State} state @param {Act} act @returns {Element[]} */
export function entriesView(state, act) {
  const wrong = { ...state, faults: state.looking.planned?.faults ?? new Map() };
  const column = columnOf(state.sheet);
  return [
    targets(wrong, act),
    typedField(wrong, {
      id: "column-mass",
      label: say("later.elution-mass"),
      value: column.massMg,
      mode: "decimal",
      typed: (massMg) => editColumn(act, (mine) => Object.assign(mine, { massMg }), "column-mass"),
      left: act.rest,
    }),
    bedEntry(wrong, "column", column.bed, (change, together) => editColumn(act, (mine) => (mine.bed = change(mine.bed)), together), act, true),
    chips("column-loading", say("later.elution-loading"), LOADINGS, column.loading, (loading) => editColumn(act, (mine) => Object.assign(mine, { loading })), wrong),
    further(wrong, act, column),
  ];
}

/** Which compound is wanted. @param {State} state @param {Act} act */
function targets(state, act) {
  const { spots } = state.sheet;
  const { target } = columnOf(state.sheet);
  const { told } = faultAt(state, "column-target");
  return make(
    "div",
    { class: "field", id: "column-target" },
    make("span", { id: "column-target-words", class: "entry-words" }, say("later.elution-target")),
    make(
      "div",
      { class: "chips", role: "group", "aria-labelledby": "column-target-words" },
      ...spots.map(({ id, name }) =>
        button({ id: `column-target-${id}`, label: name.trim() || say("page.unnamed"), pressed: id === target, press: () => editColumn(act, (mine) => Object.assign(mine, { target: id })) }),
      ),
    ),
    told,
  );
}

/**
 * One of a few, each to be pressed.
 * @template {string} T
 * @param {string} id @param {string} words @param {readonly T[]} all @param {T} chosen @param {(one: T) => void} choose @param {State} state
 */
export function chips(id, words, all, chosen, choose, state) {
  const { told } = faultAt(state, id);
  return make(
    "div",
    { class: "field", id },
    make("span", { id: `${id}-words`, class: "entry-words" }, words),
    make(
      "div",
      { class: "chips", role: "group", "aria-labelledby": `${id}-words` },
      ...all.map((each) => button({ id: `${id}-${each}`, label: say(`later.elution-loading-${each}`), pressed: each === chosen, press: () => choose(each) })),
    ),
    told,
  );
}

/**
 * What holds the silica.
 * @param {State} state @param {string} id @param {Bed} bed @param {(change: (bed: Bed) => Bed, together?: string) => void} edit @param {Act} act @param {boolean} advisable
 */
export function bedEntry(state, id, bed, edit, act, advisable) {
  const kind = kindOf(bed);
  const options = [...(advisable ? ["advised"] : []), ...new Set([...CARTRIDGES, ...(bed.kind === "cartridge" ? [kind] : [])]), "glass"];
  const length = (/** @type {"diameter" | "length"} */ side, /** @type {"diameterMm" | "bedMm"} */ name, /** @type {any} */ glass) =>
    typedField(state, {
      id: id === "column" ? `column-${side}` : `${side}-${id}`,
      label: say(`later.elution-entry-${side}`),
      value: glass[name],
      mode: "decimal",
      typed: (typed) => edit((mine) => ({ ...mine, [name]: typed }), `${side}-${id}`),
      left: act.rest,
    });
  return make(
    "div",
    { class: "bed-entry", id: `bed-entry-${id}` },
    choice(state, {
      id: id === "column" ? "column-bed" : `bed-${id}`,
      label: say("later.elution-bed"),
      value: kind,
      options: options.map((value) => ({ value, text: bedWords(value) })),
      chosen: (value) => edit(() => bedOf(value)),
    }),
    bed.kind === "glass" && make("div", { class: "two", id: `glass-${id}` }, length("diameter", "diameterMm", bed), length("length", "bedMm", bed)),
  );
}

/** @param {string} kind */
function bedWords(kind) {
  if (kind === "advised" || kind === "glass") return say(`later.elution-bed-${kind}`);
  return say("later.elution-bed-cartridge", { grams: kind });
}

/** What few people want to say. @param {State} state @param {Act} act @param {import("./sheet.js").Column} column */
function further(state, act, column) {
  const field = (/** @type {string} */ id, /** @type {"loadMl" | "flowMlMin" | "fractionMl"} */ name) =>
    typedField(state, {
      id,
      label: say(`later.elution-entry-${id.slice("column-".length)}`),
      value: column[name],
      mode: "decimal",
      typed: (typed) => editColumn(act, (mine) => Object.assign(mine, { [name]: typed }), id),
      left: act.rest,
    });
  return make(
    "details",
    { id: "column-further", open: column.elution === "own" },
    make("summary", {}, say("later.elution-further")),
    make(
      "div",
      { class: "two", id: "column-volumes" },
      column.loading === "wet" && field("column-load", "loadMl"),
      field("column-flow", "flowMlMin"),
      field("column-fraction", "fractionMl"),
    ),
    make("p", { class: "aside", id: "column-blank" }, say("later.elution-blank")),
    choice(state, {
      id: "column-elution",
      label: say("later.elution-kind"),
      value: column.elution,
      options: ELUTIONS.map((value) => ({ value, text: say(`later.elution-kind-${value}`) })),
      chosen: (elution) => editColumn(act, (mine) => choose(mine, /** @type {any} */ (elution), state)),
    }),
    column.elution === "own" && stepEntries(state, act, "column", column.steps, (change, together) => editColumn(act, (mine) => change(mine.steps), together)),
  );
}

/** One's own steps begin with what was planned. @param {import("./sheet.js").Column} column @param {import("./sheet.js").Column["elution"]} elution @param {State} state */
function choose(column, elution, state) {
  column.elution = elution;
  if (elution === "own" && column.steps.length === 0) column.steps = plannedSteps(state.looking.planned?.answer?.plan);
}

/** @param {any} plan @returns {Step[]} */
export function plannedSteps(plan) {
  if (!plan) return [{ eluent: "", volumeMl: "" }];
  return plan.steps.map((/** @type {any} */ step) => ({ eluent: step.ratio.replace(":", " : "), volumeMl: String(step.volumeMl) }));
}

/**
 * Each eluent with its volume.
 * @param {State} state @param {Act} act @param {string} id @param {Step[]} steps @param {(change: (steps: Step[]) => void, together?: string) => void} edit
 */
export function stepEntries(state, act, id, steps, edit) {
  const { told } = faultAt(state, `steps-${id}`);
  const remove = (/** @type {number} */ i) => {
    edit((all) => all.splice(i, 1));
    act.focus(`add-step-${id}`); // the button pressed is gone, and with it the focus
  };
  const field = (/** @type {Step} */ step, /** @type {number} */ i, /** @type {"eluent" | "amount"} */ side) =>
    typedField(state, {
      id: `${side}-${id}-${i}`,
      label: say(`later.elution-step-${side}`, { number: i + 1 }),
      value: side === "eluent" ? step.eluent : step.volumeMl,
      mode: side === "eluent" ? "text" : "decimal",
      typed: (typed) => edit((all) => Object.assign(all[i], side === "eluent" ? { eluent: typed } : { volumeMl: typed }), `${side}-${id}-${i}`),
      left: act.rest,
    });
  return make(
    "div",
    { id: `steps-${id}`, class: "step-entries" },
    ...steps.map((step, i) =>
      make(
        "div",
        { class: "step-entry", id: `step-${id}-${i}` },
        field(step, i, "eluent"),
        field(step, i, "amount"),
        steps.length > 1 && button({ id: `unstep-${id}-${i}`, label: "\u00d7", name: say("later.elution-step-remove", { number: i + 1 }), kind: "small", press: () => remove(i) }),
      ),
    ),
    button({
      id: `add-step-${id}`,
      label: say("later.elution-step-add"),
      disabled: steps.length >= 10,
      press: () => {
        edit((all) => all.push({ eluent: "", volumeMl: "" }));
        act.focus(`eluent-${id}-${steps.length}`);
      },
    }),
    told,
  );
}
