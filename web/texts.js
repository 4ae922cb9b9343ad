// @ts-check
/** The texts of the page, from the one file that server and page share. */

/** @type {Record<string, string>} */
let texts = {};

/** Fetches the texts once, before anything is shown. */
export async function loadTexts() {
  const answer = await fetch("/api/texts");
  texts = await answer.json();
}

/**
 * The text of a key with its values in their places: {name} plainly, {name:2} a number with two decimals.
 * @param {string} key
 * @param {Record<string, string | number>} [values]
 */
export function say(key, values = {}) {
  const text = texts[key];
  if (text === undefined) throw new Error(`There is no text "${key}".`);
  return text.replace(/\{([a-z][A-Za-z0-9]*)(?::([0-9]))?\}/g, (_, name, decimals) => {
    const value = values[name];
    if (value === undefined) throw new Error(`The text "${key}" lacks {${name}}.`);
    return decimals === undefined ? String(value) : Number(value).toFixed(Number(decimals));
  });
}

/** Fills every element that names its text. @param {ParentNode} root */
export function fillTexts(root) {
  for (const element of root.querySelectorAll("[data-text]")) {
    element.textContent = say(element.getAttribute("data-text") ?? "");
  }
}
