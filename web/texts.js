// @ts-check
/** The texts of the page, from the file of each language that server and page share. */

import { get } from "./server.js";

/** @type {Record<string, string>} */
let texts = {};

/** Those on their way or here that are not for everybody. @type {Promise<Record<string, string>> | undefined} */
let further;

const KEY = "midplate-language";
const LANGUAGES = ["en", "de"];

/** The language shown. */
export const language = () => document.documentElement.lang;

/** The language chosen before, or the browser's, or English. */
export function firstLanguage() {
  let kept = null;
  try {
    kept = localStorage.getItem(KEY);
  } catch {
    // nothing was kept
  }
  const wanted = [kept, ...navigator.languages.map((each) => each.slice(0, 2))];
  return wanted.find((each) => each !== null && LANGUAGES.includes(each)) ?? "en";
}

/** Speaks a language from here on. @param {string} chosen @param {Record<string, string>} its of /api/texts in that language */
export function speakIn(chosen, its) {
  texts = its;
  document.documentElement.lang = chosen;
  try {
    localStorage.setItem(KEY, chosen);
  } catch {
    // a browser that keeps nothing asks for its own language again
  }
}

/** A place for a value: {name} or {name:2}. */
const PLACE = /\{([a-z][A-Za-z0-9]*)(?::([0-9]))?\}/g;

/**
 * The text of a key with its values in their places: {name} plainly, {name:2} a number with two decimals. Numbers take the
 * decimal mark of the language; words, such as the ratio "9 : 1", stay as they are.
 * @param {string} key
 * @param {Values} [values]
 */
export function say(key, values = {}) {
  return template(key).replace(PLACE, (_, name, decimals) => valueText(key, values, name, decimals));
}

/**
 * The same in pieces, some of its values made into elements.
 * @param {string} key
 * @param {Values} values
 * @param {Record<string, (text: string) => Node | string>} made by the name of the value, what to make of its text
 * @returns {(Node | string)[]}
 */
export function sayWith(key, values, made) {
  const text = template(key);
  /** @type {(Node | string)[]} */
  const pieces = [];
  let from = 0;
  for (const { 0: place, 1: name, 2: decimals, index } of text.matchAll(PLACE)) {
    const shown = valueText(key, values, name, decimals);
    pieces.push(text.slice(from, index), made[name] ? made[name](shown) : shown);
    from = index + place.length;
  }
  pieces.push(text.slice(from));
  return pieces.filter((piece) => piece !== "");
}

/** Whether there are words already. */
export const canSpeak = () => Object.keys(texts).length > 0;

/** @param {string} key */
function template(key) {
  const text = texts[key];
  if (text === undefined) throw new Error(`There is no text "${key}".`);
  return text;
}

/** @param {string} key @param {Values} values @param {string} name @param {string} [decimals] */
function valueText(key, values, name, decimals) {
  const value = values[name];
  if (value === undefined) throw new Error(`The text "${key}" lacks {${name}}.`);
  if (decimals !== undefined) return marked(Number(value).toFixed(Number(decimals)));
  return typeof value === "number" ? marked(String(value)) : value;
}

/** A number written with a point, with the decimal mark of the language instead. @param {string} written */
export function marked(written) {
  return written.replace(/(\d)\.(?=\d)/g, `$1${say("number.decimal-mark")}`);
}

/** Fetches the texts of what is shown only when somebody asks for it; once here, they come along in each language. */
export async function furtherTexts() {
  further ??= fetchFurther(language());
  try {
    let its;
    do Object.assign(texts, await (its = further));
    while (its !== further); // the language changed meanwhile
  } catch (failure) {
    further = undefined;
    throw failure;
  }
}

/** The texts of a language: all that were asked for so far. @param {string} chosen */
export async function fetchTexts(chosen) {
  const wanted = further ? fetchFurther(chosen) : undefined;
  const [first, others] = await Promise.all([get("/api/texts", chosen), wanted]);
  const its = { ...first, ...others };
  if (wanted) further = wanted;
  return its;
}

/** @param {string} chosen */
const fetchFurther = (chosen) => get("/api/texts?of=later", chosen);

/** Fills every element that names its text. @param {ParentNode} root */
export function fillTexts(root) {
  for (const element of root.querySelectorAll("[data-text]")) {
    element.textContent = say(element.getAttribute("data-text") ?? "");
  }
}
