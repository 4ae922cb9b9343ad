// @ts-check
/** Asks the server what it recognises, a while after the last change, and keeps each answer: the same question has the same answer. */

import { Refused, get, post } from "../server.js";
import { language } from "../texts.js";

/** @typedef {import("../state.js").Act} Act @typedef {{answer: any} | "refused"} Told */

/** How long after a change it is asked, in ms; and how soon again where the server does not answer. */
const PAUSE = 250;
const AGAIN = 2000;

/** By question and language. @type {Map<string, Told>} */
const known = new Map();
/** Questions under way. @type {Map<string, Promise<void>>} */
const asked = new Map();
let latest = "";
let timer = 0;

/** @param {object} question */
const keyOf = (question) => `${language()} ${JSON.stringify(question)}`;

/**
 * What was recognised; undefined as long as it is not known.
 * @param {Act} act @param {object} question of /api/structure
 * @returns {Told | undefined}
 */
export function recognised(act, question) {
  const key = keyOf(question);
  if (known.has(key) || asked.has(key) || latest === key) return known.get(key);
  latest = key;
  clearTimeout(timer);
  timer = window.setTimeout(() => {
    latest = "";
    ask(act, key, () => post("/api/structure", question));
  }, PAUSE);
  return undefined;
}

/** Whether the server can read what a question says; false, too, where it does not answer. @param {Act} act @param {object} question of /api/structure */
export async function isRead(act, question) {
  const key = keyOf(question);
  const told = recognised(act, question);
  if (told === undefined) {
    clearTimeout(timer);
    latest = "";
    await (asked.get(key) ?? ask(act, key, () => post("/api/structure", question)));
  }
  const outcome = known.get(key);
  return outcome !== undefined && outcome !== "refused";
}

/** Every group and class there is, with what was measured of it. @param {Act} act @returns {{groups: any[], classes: any[]} | undefined} */
export function groupsKnown(act) {
  const key = language();
  if (!known.has(key) && !asked.has(key)) ask(act, key, () => get("/api/groups"));
  const told = known.get(key);
  return told && told !== "refused" ? told.answer : undefined;
}

/** @param {Act} act @param {string} key @param {() => Promise<any>} question */
function ask(act, key, question) {
  const under = hear(act, key, question);
  asked.set(key, under);
  return under;
}

/** @param {Act} act @param {string} key @param {() => Promise<any>} question */
async function hear(act, key, question) {
  try {
    known.set(key, { answer: await question() });
  } catch (failure) {
    if (failure instanceof Refused) known.set(key, "refused");
    else await new Promise((done) => setTimeout(done, AGAIN));
  }
  asked.delete(key);
  act.look({ came: key });
}
