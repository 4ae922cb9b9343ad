// @ts-check
/** Numbers the works in the order they are referred to, and lists them in full. */

import { make } from "./dom.js";
import { say } from "./texts.js";

/** @param {any} sources of /api/sources */
export function citations(sources) {
  /** @type {string[]} */
  const keys = [];
  return {
    /** The reference to a work: its number in brackets. @param {string} key */
    number: (key) => {
      if (!keys.includes(key)) keys.push(key);
      return `[${keys.indexOf(key) + 1}]`;
    },
    /** The heading and the list; call it last. */
    works: () => [
      make("h4", {}, say("page.works")),
      make("ol", { class: "works" }, ...keys.map((key) => make("li", {}, ...work(sources, key)))),
    ],
  };
}

/** @param {any} sources @param {string} key */
function work(sources, key) {
  const found = sources.sources.find((/** @type {any} */ one) => one.key === key);
  if (!found) return [key];
  const address = found.address;
  return [make("span", { lang: "en" }, found.citation), ...(address ? [" ", make("span", { class: "address" }, address)] : [])];
}
