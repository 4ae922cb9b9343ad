// @ts-check
/** Asks about each check, again whenever what it is about has changed; an answer to a question before stands there, marked, until the next comes. */

import { faultsOf } from "../faults.js";
import { decimal, orAsTyped, percentStrong } from "../numbers.js";
import { Refused, post } from "../server.js";
import { additiveWords } from "../sheet/additive.js";
import { language } from "../texts.js";

/**
 * @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act
 *
 * @typedef {object} Question
 * @property {"identity" | "hrf" | "purity" | "reaction" | "seeing"} check the last part of its address, too
 * @property {object | undefined} body none where there is too little to ask
 * @property {Map<string, string>} entries from field to the id of its entry
 *
 * @typedef {object} Asked
 * @property {string} question what was asked last
 * @property {"counting" | "told" | "refused" | "unreachable"} standing
 * @property {any} [answer] the latest, perhaps to a question before
 * @property {Map<string, string[]>} faults sentences by the id of the entry they are about
 */

/** How long after a change it is asked [ms]: longer while somebody types, for half a number is a fault to nobody. */
const PAUSE = 150;
const TYPING_PAUSE = 700;
/** How soon again where the server does not answer [ms]. */
const AGAIN = 2000;

/** @type {Map<string, number>} */
const timers = new Map();
/** What is going to be asked: whatever is drawn meanwhile does not put it off. @type {Map<string, string>} */
const waiting = new Map();

export const number = (/** @type {string} */ typed) => orAsTyped(decimal(typed), typed);

/** A number under its name; nothing where nothing was entered. @param {string} name @param {string | undefined} typed */
export const where = (name, typed) => ((typed ?? "").trim() === "" ? {} : { [name]: number(typed ?? "") });

/** An eluent as the server takes it; none where nobody wrote it. @param {State["sheet"]} sheet @param {import("./sheet.js").Eluent} eluent */
export function askedEluent(sheet, { weak, strong, eluent, additive }) {
  if (eluent.trim() === "") return {};
  const added = additiveWords(additive);
  const { sorbent, setting, shelf } = sheet;
  return { eluent: { sorbent, weak, strong, percentStrong: orAsTyped(percentStrong(eluent), eluent), ...(added ? { additive: added } : {}), setting, shelf } };
}

/** @param {object} body */
const wordsOf = (body) => `${language()} ${JSON.stringify(body)}`;

/** What came of a question last. @param {State} state @param {Question} question @returns {Asked | undefined} */
export const askedOf = (state, { check }) => state.looking.checked?.[check];

/** Whether what is shown answers the sheet as it is. @param {State} state @param {Question} question */
export function isTold(state, question) {
  const asked = askedOf(state, question);
  return asked?.standing === "told" && question.body !== undefined && asked.question === wordsOf(question.body);
}

/** The state with the faults of one question at their entries. @param {State} state @param {Question} question @returns {State} */
export function withFaults(state, question) {
  const asked = askedOf(state, question);
  const current = question.body !== undefined && asked?.question === wordsOf(question.body);
  return { ...state, faults: (current && asked?.faults) || new Map() };
}

/** Asks soon what is not asked yet. @param {State} state @param {Act} act @param {Question} question made anew whenever the part is drawn */
export function askSoon(state, act, question) {
  const { check, body } = question;
  const words = body && wordsOf(body);
  if (words !== undefined && waiting.get(check) === words) return;
  clearTimeout(timers.get(check));
  waiting.delete(check);
  if (words === undefined || state.looking.checked?.[check]?.question === words) return;
  waiting.set(check, words);
  timers.set(check, window.setTimeout(() => ask(state, act, question), isTyping() ? TYPING_PAUSE : PAUSE));
}

/** @param {State} state @param {Act} act @param {Question} question */
async function ask(state, act, { check, body, entries }) {
  const question = wordsOf(/** @type {object} */ (body));
  waiting.delete(check);
  const now = () => state.looking.checked?.[check];
  const tell = (/** @type {Asked} */ asked) => act.look({ checked: { ...state.looking.checked, [check]: asked } });
  const before = now()?.answer;
  tell({ question, standing: "counting", answer: before, faults: new Map() });
  /** @type {Asked} */
  let told;
  try {
    told = { question, standing: "told", answer: await post(`/api/checks/${check}`, /** @type {object} */ (body)), faults: new Map() };
  } catch (failure) {
    const refused = failure instanceof Refused && failure.faults;
    told = { question, standing: refused ? "refused" : "unreachable", answer: before, faults: refused ? faultsOf(refused, entries) : new Map() };
  }
  const latest = now();
  if (latest?.question !== question || latest.standing !== "counting") return; // nobody waits for it any more
  tell(told);
  if (told.standing === "refused") unfold();
  if (told.standing === "unreachable") timers.set(check, window.setTimeout(() => ask(state, act, { check, body, entries }), AGAIN));
}

/** Opens what a fault is folded away in. */
function unfold() {
  for (const fold of document.querySelectorAll("#checks details:not([open])")) fold.toggleAttribute("open", fold.querySelector(".fault") !== null);
}

function isTyping() {
  const at = document.activeElement;
  return at instanceof HTMLInputElement && at.type === "text";
}
