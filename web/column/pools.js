// @ts-check
/** What the tubes make: pools with the reason, weighed flasks, the balance, and what the run tells the next plan. */

import { list, make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { faultAt } from "../faults.js";
import { marked, say, sayWith } from "../texts.js";
import { askable } from "../where/origin.js";
import { askRun, isLookedAt, isPooled } from "./ask.js";
import { isCounted, judgedOf } from "./judge.js";
import { rounded, targetOf } from "./plan.js";
import { editRun, freeId, isWeighed } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Run} Run @typedef {import("./sheet.js").Flask} Flask */

const MOST_FLASKS = 100;

/** @param {State} state @param {Act} act @param {Run} run */
export function poolsView(state, act, run) {
  const asked = state.looking.pooled?.[run.id];
  const told = asked?.answer;
  const current = isPooled(state, run);
  return make(
    "div",
    { id: `pools-${run.id}`, class: current || !told ? "pools" : "pools old" },
    make("h4", { id: `pools-title-${run.id}` }, say("later.fractions-pools")),
    make("div", { id: `pools-standing-${run.id}`, role: "status" }, ...standing(state, act, run, current)),
    told && isLookedAt(run) && poolList({ ...state, sheet: asked?.sheet ?? state.sheet }, run, told),
    told && isLookedAt(run) && make("div", { id: `pools-told-${run.id}` }, ...[...told.warnings, ...told.notes].map((each) => make("p", { class: "decisive" }, each.text))),
    flasks(state, act, run, current ? told : undefined),
    told?.balance && current && balance(state, run, told.balance),
    told && current && observed(state, run, told),
  );
}

/** @param {State} state @param {Act} act @param {Run} run @param {boolean} current */
function standing(state, act, run, current) {
  const asked = state.looking.pooled?.[run.id];
  if (current) return [];
  if (!isLookedAt(run)) return [make("p", { class: "aside" }, say("later.fractions-none-yet"))];
  if (asked?.standing === "refused") {
    const elsewhere = [...asked.faults].flatMap(([entry, sentences]) => (entry === "" || !document.getElementById(entry) ? sentences : []));
    return [make("p", { class: "decisive" }, say("page.faults")), ...elsewhere.map((sentence) => make("p", { class: "fault" }, sentence))];
  }
  if (asked?.standing === "unreachable") return [make("p", { class: "decisive" }, say("page.out-of-reach")), button({ id: `pools-again-${run.id}`, label: say("later.elution-again"), press: () => askRun(state, act, run) })];
  return asked?.answer ? [] : [make("p", { class: "aside" }, say("page.counting"))];
}

/** @param {any} pool */
const tubesOf = ({ fromTube, toTube }) => (fromTube === toTube ? say("later.fractions-tubes-one", { number: fromTube }) : say("later.fractions-tubes", { from: fromTube, to: toTube }));

/** @param {State} state @param {Run} run @param {any} told */
function poolList(state, run, { pools }) {
  const target = targetOf(state);
  return make(
    "ol",
    { id: `pool-list-${run.id}`, class: "pool-list" },
    ...pools.map((/** @type {any} */ pool) => {
      const kind = pool.kind === "pure" || pool.kind === "mixed" ? say(`later.fractions-pool-${pool.kind}`, { spots: pool.spots.join(", ") }) : say(`later.fractions-pool-${pool.kind}`);
      const wanted = pool.kind === "pure" && pool.spots[0] === target;
      return make(
        "li",
        { class: `pool pool-${pool.kind}${wanted ? " wanted" : ""}` },
        make("b", {}, tubesOf(pool), ":"),
        " ",
        make("span", { class: "pool-kind" }, kind),
        ", ",
        ...sayWith("later.fractions-volume", { ml: rounded(pool.volumeMl) }, { ml: (shown) => askable("fractions-volume", shown) }),
        pool.massMg !== undefined && ", ",
        ...(pool.massMg !== undefined ? sayWith("later.fractions-mass", { mg: tenths(pool.massMg) }, { mg: (shown) => askable("fractions-mass", shown) }) : []),
        make("span", { class: "pool-reason" }, pool.reason.text),
      );
    }),
  );
}

/** A mass as a balance tells it. @param {number} mg */
const tenths = (mg) => Number(mg.toFixed(1));

/** @param {State} state @param {Act} act @param {Run} run @param {any} told */
function flasks(state, act, run, told) {
  const field = (/** @type {Flask} */ flask, /** @type {number} */ i, /** @type {"first" | "last" | "tare" | "gross"} */ side, /** @type {"fromTube" | "toTube" | "tareGrams" | "grossGrams"} */ name) =>
    typedField(state, {
      id: `${side}-${flask.id}`,
      label: say(`later.fractions-flask-${side}`),
      value: flask[name],
      mode: "decimal",
      typed: (typed) => editRun(act, run.id, (mine) => Object.assign(mine.flasks[i], { [name]: typed }), `${side}-${flask.id}`),
      left: act.rest,
    });
  const { told: wrong } = faultAt(state, `flasks-${run.id}`);
  const counted = run.flasks.every(isWeighed) && !(told && state.faults.size > 0);
  return make(
    "div",
    { id: `flasks-${run.id}`, class: "flasks" },
    ...run.flasks.map((flask, i) =>
      make(
        "div",
        { class: "flask", id: `flask-${flask.id}`, role: "group", "aria-label": say("later.fractions-flask", { number: i + 1 }) },
        field(flask, i, "first", "fromTube"),
        field(flask, i, "last", "toTube"),
        field(flask, i, "tare", "tareGrams"),
        field(flask, i, "gross", "grossGrams"),
        button({ id: `unflask-${flask.id}`, label: "\u00d7", name: say("later.fractions-flask-remove", { number: i + 1 }), kind: "small", press: () => removeFlask(act, run, i) }),
      ),
    ),
    run.flasks.length < MOST_FLASKS && button({ id: `add-flask-${run.id}`, label: say("later.fractions-flask-add"), press: () => addFlask(state, act, run, told) }),
    run.flasks.length > 0 && !counted && make("p", { class: "aside", id: `flasks-open-${run.id}` }, say("later.fractions-flask-open")),
    wrong,
  );
}

/** The focus goes on to what is left. @param {Act} act @param {Run} run @param {number} i */
function removeFlask(act, run, i) {
  editRun(act, run.id, (mine) => mine.flasks.splice(i, 1));
  act.focus(`add-flask-${run.id}`);
}

/** The next flask holds the pure pool of the target, then any other pool that no flask holds yet. @param {State} state @param {Act} act @param {Run} run @param {any} told */
function addFlask(state, act, run, told) {
  const taken = new Set(run.flasks.map(({ fromTube }) => fromTube.trim()));
  const left = (told?.pools ?? []).filter((/** @type {any} */ pool) => ["pure", "mixed"].includes(pool.kind) && !taken.has(String(pool.fromTube)));
  const pool = left.find((/** @type {any} */ each) => each.kind === "pure" && each.spots[0] === targetOf(state)) ?? left[0];
  let id = "";
  editRun(act, run.id, (mine, column) => {
    id = freeId(column, "f");
    mine.flasks.push({ id, fromTube: pool ? String(pool.fromTube) : "", toTube: pool ? String(pool.toTube) : "", tareGrams: "", grossGrams: "" });
  });
  act.focus(`${pool ? "tare" : "first"}-${id}`);
}

/** What was weighed, in all and of the target. @param {State} state @param {Run} run @param {any} balance */
function balance(state, run, { targetPureMg, text }) {
  const ask = (/** @type {string} */ shown) => askable("fractions-balance", shown);
  return make(
    "div",
    { id: `balance-${run.id}`, class: "balance" },
    targetPureMg !== undefined && make("p", { class: "balance-pure" }, ...sayWith("later.fractions-balance-pure", { mg: tenths(targetPureMg), target: targetOf(state) }, { mg: ask })),
    make("p", {}, text.text),
  );
}

/** What was seen beside what was foretold, and that it counts. @param {State} state @param {Run} run @param {any} told */
function observed(state, run, { observed: bands }) {
  if (bands.length === 0) return undefined;
  const counts = isCounted(state, run);
  const plans = judgedOf(state, run);
  const judged = (/** @type {any} */ { spot, startMl, endMl }) => {
    const [expected, now] = [plans?.before, plans?.now].map((plan) => plan?.spots.find((/** @type {any} */ each) => each.spot === spot)?.middleMl.value);
    return expected === undefined || now === undefined ? [] : [say("later.fractions-judged", { expected: rounded(expected), seen: rounded((startMl + endMl) / 2), now: rounded(now) })];
  };
  return make(
    "div",
    { id: `observed-${run.id}`, class: "observed" },
    list(
      bands.map((/** @type {any} */ band) =>
        [say("later.fractions-observed", { spot: band.spot, start: rounded(band.startMl), end: rounded(band.endMl), error: marked(String(rounded(band.errorMl))) }), ...judged(band)].join(" "),
      ),
    ),
    make("p", { class: "decisive" }, say(counts ? "later.fractions-counts" : "later.fractions-counts-not")),
  );
}
