// @ts-check
/** What a run says of the forecast: for the same column and eluents, what was foretold before it and what is foretold now. */

import { requestOf } from "../request.js";
import { post } from "../server.js";
import { earlier, isPlanCurrent, isPooled, questionOf, runProgram, targetName } from "./ask.js";
import { columnOf, isFilledRun } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Run} Run */

/**
 * @typedef {object} Judged
 * @property {string} question what was asked
 * @property {{before: any, now: any}} [plans] nothing until both are there
 */

/** Whether a run counts in the plan. @param {State} state @param {Run} run */
export const isCounted = ({ sheet }, run) => run.weak === sheet.weak && run.strong === sheet.strong && run.steps.length > 0;

/** The two questions: without this run and those after it, and with all. @param {State} state @param {Run} run */
function bodies(state, run) {
  const { sheet } = state;
  const { runs } = columnOf(sheet);
  const body = (/** @type {Run[]} */ known) => {
    const shown = earlier(state, known);
    return { ...requestOf(sheet).body, curves: false, column: { target: targetName(sheet), ...runProgram(run), ...(shown.length ? { earlier: shown } : {}) } };
  };
  return { before: body(runs.slice(0, runs.indexOf(run))), now: body(runs) };
}

/** Where each band was and is expected, once that is known of the run as it is. @param {State} state @param {Run} run */
export function judgedOf(state, run) {
  const judged = state.looking.judged?.[run.id];
  return judged?.plans && judged.question === questionOf(bodies(state, run)) ? judged.plans : undefined;
}

/** Asks what is not asked yet, once the plan is there, which people wait for. @param {State} state @param {Act} act */
export function judgeWhereNeeded(state, act) {
  if (state.standing !== "current" || !isPlanCurrent(state)) return;
  for (const run of columnOf(state.sheet).runs) {
    if (!isCounted(state, run) || !isFilledRun(run) || !isPooled(state, run) || state.looking.pooled?.[run.id].answer.observed.length === 0) continue;
    const both = bodies(state, run);
    const question = questionOf(both);
    if (state.looking.judged?.[run.id]?.question !== question) judge(state, act, run, both, question);
  }
}

/** Where it is refused nothing is said: the plan itself tells why. @param {State} state @param {Act} act @param {Run} run @param {{before: object, now: object}} both @param {string} question */
async function judge(state, act, run, both, question) {
  const tell = (/** @type {Judged["plans"]} */ plans) => act.look({ judged: { ...state.looking.judged, [run.id]: { question, plans } } });
  tell(undefined);
  const asked = await Promise.all([both.before, both.now].map((body) => post("/api/column/plan", body).catch(() => undefined)));
  const [before, now] = asked.map((answer) => answer?.plan);
  if (before && now && state.looking.judged?.[run.id]?.question === question) tell({ before, now });
}
