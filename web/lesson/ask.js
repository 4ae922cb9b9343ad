// @ts-check
/** Asks what a part of the lesson needs, again whenever it has changed; the answer before stands there, marked, until the next comes. */

import { faultsOf } from "../faults.js";
import { Refused, post } from "../server.js";
import { language } from "../texts.js";
import { sampleEntries } from "./state.js";

/**
 * @typedef {import("./state.js").State} State @typedef {import("./state.js").Act} Act
 *
 * @typedef {object} Question
 * @property {string} name of the question; what came stands under it in the state
 * @property {string} path such as "/api/lesson/series"
 * @property {object | undefined} body none where there is too little to ask
 * @property {Map<string, string>} entries from field to the id of its entry
 *
 * @typedef {object} Asked
 * @property {string} question what was asked last
 * @property {"counting" | "told" | "refused" | "unreachable"} standing
 * @property {any} [answer] the latest, perhaps to a question before
 * @property {Map<string, string[]>} faults sentences by the id of the entry they are about
 */

/** How long after a change it is asked [ms]: longer while somebody types. */
const PAUSE = 80;
const TYPING_PAUSE = 600;
/** How soon again where the server does not answer [ms]. */
const AGAIN = 2000;

/** @type {Map<string, number>} */
const timers = new Map();
/** Those by which it is asked again where nobody answered; no redraw puts them off. @type {Map<string, number>} */
const retries = new Map();
/** @type {Map<string, string>} */
const waiting = new Map();

/** @param {object} body */
const wordsOf = (body) => `${language()} ${JSON.stringify(body)}`;

/** The latest answer, and whether it answers what stands there now. @param {State} state @param {Question} question */
export function told(state, { name, body }) {
  const asked = state.asked[name];
  return { answer: asked?.answer, current: body !== undefined && asked?.standing === "told" && asked.question === wordsOf(body), standing: asked?.standing };
}

/** The state with the faults of one question at their entries. @param {State} state @param {Question} question @returns {State} */
export function withFaults(state, { name, body }) {
  const asked = state.asked[name];
  return { ...state, faults: body !== undefined && asked?.question === wordsOf(body) ? asked.faults : new Map() };
}

/** Whether anything is being asked, or will be soon. @param {State} state */
export const isAsking = ({ asked }) => waiting.size > 0 || Object.values(asked).some(({ standing }) => standing === "counting");

/** Asks soon what is not asked yet; made anew whenever the part is drawn. @param {State} state @param {Act} act @param {Question} question */
export function askSoon(state, act, question) {
  const { name, body } = question;
  const words = body && wordsOf(body);
  if (words !== undefined && waiting.get(name) === words) return;
  clearTimeout(timers.get(name));
  waiting.delete(name);
  if (words !== undefined && state.asked[name]?.question === words) return;
  clearTimeout(retries.get(name));
  if (words === undefined) return;
  waiting.set(name, words);
  timers.set(name, window.setTimeout(() => ask(state, act, question), isTyping() ? TYPING_PAUSE : PAUSE));
}

/** @param {State} state @param {Act} act @param {Question} asking @param {"again"} [how] asked again it stays unreachable until an answer comes */
async function ask(state, act, asking, how) {
  const { name, path, body, entries } = asking;
  const question = wordsOf(/** @type {object} */ (body));
  waiting.delete(name);
  const tell = (/** @type {Asked} */ asked) => {
    state.asked[name] = asked;
    act.look({});
  };
  const before = state.asked[name]?.answer;
  const allEntries = "compounds" in /** @type {object} */ (body) ? new Map([...sampleEntries(state.lesson), ...entries]) : entries;
  if (how !== "again") tell({ question, standing: "counting", answer: before, faults: new Map() });
  /** @type {Asked} */
  let came;
  try {
    came = { question, standing: "told", answer: await post(path, /** @type {object} */ (body)), faults: new Map() };
  } catch (failure) {
    const refused = failure instanceof Refused && failure.faults;
    came = { question, standing: refused ? "refused" : "unreachable", answer: before, faults: refused ? faultsOf(refused, allEntries) : new Map() };
  }
  const latest = state.asked[name];
  if (latest?.question !== question || ["told", "refused"].includes(latest.standing)) return; // nobody waits for it any more
  if (latest.standing !== came.standing) tell(came);
  if (came.standing === "unreachable") retries.set(name, window.setTimeout(() => ask(state, act, asking, "again"), AGAIN));
}

function isTyping() {
  const at = document.activeElement;
  return at instanceof HTMLInputElement && at.type === "text";
}
