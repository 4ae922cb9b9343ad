// @ts-check
/** Asks for the plan and about the fractions of each run, again whenever the sheet has changed; what the runs showed goes into the plan. */

import { faultsOf } from "../faults.js";
import { decimal, orAsTyped, percentStrong } from "../numbers.js";
import { requestOf } from "../request.js";
import { Refused, post } from "../server.js";
import { language, say } from "../texts.js";
import { columnOf, isFilled, isFilledRun, isWeighed } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Run} Run @typedef {import("./sheet.js").Bed} Bed @typedef {import("./sheet.js").Step} Step */

/**
 * @typedef {object} Asked
 * @property {string} question what was asked last
 * @property {"counting" | "told" | "refused" | "unreachable"} standing
 * @property {any} [answer] the latest, perhaps to a question before
 * @property {State["sheet"]} [sheet] the one that the answer is to
 * @property {Map<string, string[]>} faults sentences by the id of the entry they are about
 */

/** How long after a change it is asked [ms]: longer while somebody types, for half a number is a fault to nobody. */
const PAUSE = 200;
const TYPING_PAUSE = 700;

let timer = 0;

const number = (/** @type {string} */ typed) => orAsTyped(decimal(typed), typed);

/** @param {string} name @param {string} typed nothing where nothing was entered */
const where = (name, typed) => (typed.trim() === "" ? {} : { [name]: number(typed) });

/** @param {State["sheet"]} sheet @param {string} id */
const nameOf = (sheet, id) => sheet.spots.find((spot) => spot.id === id)?.name.trim();

/** @param {Bed} bed */
function askedBed(bed) {
  if (bed.kind === "advised") return {};
  return { bed: bed.kind === "cartridge" ? { cartridgeGrams: number(bed.grams) } : { diameterMm: number(bed.diameterMm), ...where("bedMm", bed.bedMm) } };
}

/** @param {Step[]} steps */
const askedSteps = (steps) => steps.map(({ eluent, volumeMl }) => ({ percentStrong: orAsTyped(percentStrong(eluent), eluent), volumeMl: number(volumeMl) }));

/** Whether there is enough to ask about. @param {State} state */
export function isAskable({ sheet }) {
  const { target, massMg, elution, steps } = columnOf(sheet);
  return massMg.trim() !== "" && sheet.spots.some((spot) => spot.id === target) && (elution !== "own" || (steps.length > 0 && steps.every(isFilled)));
}

/** @param {State} state */
export function planBody(state) {
  const { sheet } = state;
  const column = columnOf(sheet);
  const own = column.elution === "own";
  return {
    ...requestOf(sheet).body,
    curves: false,
    column: {
      target: nameOf(sheet, column.target),
      massMg: number(column.massMg),
      ...askedBed(column.bed),
      loading: column.loading,
      ...(column.loading === "wet" ? where("loadMl", column.loadMl) : {}),
      ...where("flowMlMin", column.flowMlMin),
      ...where("fractionMl", column.fractionMl),
      ...(own ? { steps: askedSteps(column.steps) } : { elution: column.elution }),
      ...(earlier(state).length ? { earlier: earlier(state) } : {}),
    },
  };
}

/** What runs with the same two solvents showed. @param {State} state @param {Run[]} [runs] @returns {any[]} */
export function earlier({ sheet, looking }, runs = columnOf(sheet).runs) {
  return runs
    .filter((run) => run.weak === sheet.weak && run.strong === sheet.strong && isLookedAt(run))
    .flatMap((run) => {
      const { standing, answer } = looking.pooled?.[run.id] ?? {};
      const { bed, steps } = /** @type {any} */ ({ ...askedBed(run.bed), steps: askedSteps(run.steps) });
      if (standing !== "told" || !bed || steps.length === 0) return [];
      return answer.observed.map((/** @type {any} */ { spot, startMl, endMl, errorMl, ...rest }) => ({ spot, bed: rest.bed ?? bed, steps: rest.steps ?? steps, startMl, endMl, errorMl }));
    });
}

/** The name of what is wanted. @param {State["sheet"]} sheet */
export const targetName = (sheet) => nameOf(sheet, columnOf(sheet).target) ?? sheet.spots[0].name.trim();

/** How a run would be planned again. @param {Run} run */
export const runProgram = (run) => ({ massMg: number(run.massMg), ...askedBed(run.bed), loading: run.loading, steps: askedSteps(run.steps) });

/** Which entry a field of the plan's request came from. @param {State} state */
function planEntries({ sheet }) {
  const entries = new Map([
    ["column.target", "column-target"],
    ["column.massMg", "column-mass"],
    ["column.bed", "column-bed"],
    ["column.bed.diameterMm", "column-diameter"],
    ["column.bed.bedMm", "column-length"],
    ["column.loading", "column-loading"],
    ["column.loadMl", "column-load"],
    ["column.flowMlMin", "column-flow"],
    ["column.fractionMl", "column-fraction"],
    ["column.elution", "column-elution"],
    ["column.steps", "column-elution"],
    ["column.earlier", "column-earlier"],
  ]);
  columnOf(sheet).steps.forEach((_, i) => enterStep(entries, `column.steps[${i}]`, `column-${i}`));
  return entries;
}

/** @param {Map<string, string>} entries @param {string} place @param {string} id */
function enterStep(entries, place, id) {
  entries.set(place, `eluent-${id}`);
  entries.set(`${place}.percentStrong`, `eluent-${id}`);
  entries.set(`${place}.volumeMl`, `amount-${id}`);
}

/** @param {State} state @param {Run} run */
function runBody({ sheet }, run) {
  return {
    spots: sheet.spots.map((spot) => spot.name.trim()),
    target: targetName(sheet),
    massMg: number(run.massMg),
    fractionMl: number(run.fractionMl),
    collectedFromMl: run.collectedFromMl.trim() === "" ? 0 : number(run.collectedFromMl),
    ...askedBed(run.bed),
    ...(isFilledRun(run) ? { steps: askedSteps(run.steps) } : {}),
    tubes: run.tubes.map(({ marks }) => ({ marks: marks ? marks.map(({ spot, strength }) => ({ spot: nameOf(sheet, spot), strength })) : null })),
    flasks: run.flasks.filter(isWeighed).map(({ id, ...weighed }) => Object.fromEntries(Object.entries(weighed).map(([name, typed]) => [name, number(typed)]))),
  };
}

/** @param {Run} run */
function runEntries(run) {
  const entries = new Map([
    ["massMg", `mass-${run.id}`],
    ["fractionMl", `fraction-${run.id}`],
    ["collectedFromMl", `from-${run.id}`],
    ["bed", `bed-${run.id}`],
    ["bed.diameterMm", `diameter-${run.id}`],
    ["bed.bedMm", `length-${run.id}`],
    ["steps", `steps-${run.id}`],
    ["tubes", `strip-${run.id}`],
    ["flasks", `flasks-${run.id}`],
  ]);
  run.steps.forEach((_, i) => enterStep(entries, `steps[${i}]`, `${run.id}-${i}`));
  run.flasks.filter(isWeighed).forEach(({ id }, i) => {
    entries.set(`flasks[${i}]`, `gross-${id}`);
    for (const [name, entry] of [["fromTube", "first"], ["toTube", "last"], ["tareGrams", "tare"], ["grossGrams", "gross"]]) entries.set(`flasks[${i}].${name}`, `${entry}-${id}`);
  });
  return entries;
}

/** Whether there is anything to pool. @param {Run} run */
export const isLookedAt = (run) => run.tubes.some(({ marks }) => marks !== undefined) || run.flasks.some(isWeighed);

/** @param {object} body */
export const questionOf = (body) => `${language()} ${JSON.stringify(body)}`;

/** Whether the plan shown answers the sheet as it is. @param {State} state */
export const isPlanCurrent = (state) => state.looking.planned?.standing === "told" && isAskable(state) && state.looking.planned.question === questionOf(planBody(state));

/** Whether the pools shown answer the run as it is. @param {State} state @param {Run} run */
export const isPooled = (state, run) => state.looking.pooled?.[run.id]?.standing === "told" && state.looking.pooled[run.id].question === questionOf(runBody(state, run));

/** Asks soon what is not asked yet; a sheet that is refused as it is, or being answered, waits. @param {State} state @param {Act} act */
export function askWhereNeeded(state, act) {
  if (state.standing !== "current" || !isAnythingOpen(state)) return;
  clearTimeout(timer);
  const soon = state.looking.planned || state.looking.pooled ? PAUSE : 0;
  timer = window.setTimeout(() => askAll(state, act), isTyping() ? TYPING_PAUSE : soon);
}

/** @param {State} state */
const runsToAsk = (state) => columnOf(state.sheet).runs.filter((run) => isLookedAt(run) && state.looking.pooled?.[run.id]?.question !== questionOf(runBody(state, run)));

/** @param {State} state */
const isPlanToAsk = (state) => isAskable(state) && state.looking.planned?.question !== questionOf(planBody(state));

/** @param {State} state */
const isAnythingOpen = (state) => isPlanToAsk(state) || runsToAsk(state).length > 0;

/** First the runs, for the plan rests on them. @param {State} state @param {Act} act */
async function askAll(state, act) {
  if (state.standing !== "current") return;
  await Promise.all(runsToAsk(state).map((run) => askRun(state, act, run)));
  const counting = columnOf(state.sheet).runs.some((run) => state.looking.pooled?.[run.id]?.standing === "counting");
  if (!counting && state.standing === "current" && isPlanToAsk(state)) await askPlan(state, act);
}

/** @param {State} state @param {Act} act */
export const askPlan = (state, act) =>
  outcome("/api/column/plan", planBody(state), planEntries(state), state.sheet, () => state.looking.planned, (planned) => act.look({ planned }));

/** @param {State} state @param {Act} act @param {Run} run */
export const askRun = (state, act, run) =>
  outcome("/api/column/fractions", runBody(state, run), runEntries(run), state.sheet, () => state.looking.pooled?.[run.id], (asked) => act.look({ pooled: { ...state.looking.pooled, [run.id]: asked } }), withoutFaultyFlasks);

const FLASK = /^flasks\[(\d+)\]/;

/** The same tubes without the flasks that something is wrong with, for a weighing says nothing of what was seen. @param {any} body @param {import("../server.js").Fault[]} faults */
function withoutFaultyFlasks(body, faults) {
  const wrong = faults.map(({ field }) => FLASK.exec(field)?.[1]);
  if (wrong.includes(undefined)) return [];
  return [{ ...body, flasks: body.flasks.filter((/** @type {any} */ _, /** @type {number} */ i) => !wrong.includes(String(i))) }, { ...body, flasks: [] }];
}

/**
 * @param {string} path @param {object} body @param {Map<string, string>} entries @param {State["sheet"]} sheet @param {() => Asked | undefined} now @param {(asked: Asked) => void} tell
 * @param {(body: object, faults: import("../server.js").Fault[]) => object[]} [instead] what can be asked without what was refused, the fullest first
 */
async function outcome(path, body, entries, sheet, now, tell, instead = () => []) {
  const question = questionOf(body);
  const before = { answer: now()?.answer, sheet: now()?.sheet };
  tell({ question, standing: "counting", ...before, faults: new Map() });
  /** @type {Asked} */
  let told;
  try {
    told = { question, standing: "told", answer: await post(path, body), sheet, faults: new Map() };
  } catch (failure) {
    const refused = failure instanceof Refused;
    const faults = refused ? faultsOf(failure.faults.map(plainly), entries) : new Map();
    let answer;
    for (const less of refused ? instead(body, failure.faults) : []) answer ??= await post(path, less).catch(() => undefined);
    told = answer ? { question, standing: "told", answer, sheet, faults } : { question, standing: refused ? "refused" : "unreachable", ...before, faults };
  }
  const latest = now();
  if (latest?.question !== question || latest.standing !== "counting") return;
  tell(told);
  if (told.faults.size > 0) unfold();
}

/** Of a text where a number belongs it is said what came, of a mass how it is written. @param {import("../server.js").Fault} fault */
function plainly(fault) {
  if (fault.code !== "wrong-type") return fault;
  const todo = /massMg$/.test(fault.field) ? say("later.elution-unread-mass") : fault.todo;
  return { ...fault, message: say("later.elution-unread", { came: fault.came }), todo };
}

/** Opens what a fault is folded away in. */
function unfold() {
  for (const fold of document.querySelectorAll("#column details:not([open])")) fold.toggleAttribute("open", fold.querySelector(".fault") !== null);
}

function isTyping() {
  const at = document.activeElement;
  return at instanceof HTMLInputElement && at.type === "text";
}
