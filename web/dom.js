// @ts-check
/** Makes elements from data; text is always text, never markup. */

const SVG = "http://www.w3.org/2000/svg";

/** @typedef {Record<string, string | number | boolean | undefined>} Attributes */

/**
 * @param {Element} element
 * @param {Attributes} attributes
 * @param {(Node | string)[]} children
 */
function dressed(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === false || value === undefined) continue;
    element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children);
  return element;
}

/**
 * An HTML element.
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Attributes} [attributes]
 * @param {...(Node | string)} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  dressed(element, attributes, children);
  return element;
}

/**
 * An SVG element.
 * @param {string} tag
 * @param {Attributes} [attributes]
 * @param {...(Node | string)} children
 */
export function draw(tag, attributes = {}, ...children) {
  return dressed(document.createElementNS(SVG, tag), attributes, children);
}

/** A list of sentences. @param {string[]} sentences */
export function list(sentences) {
  return make("ul", {}, ...sentences.map((sentence) => make("li", {}, sentence)));
}

/** The element of an id that the page surely has. @param {string} id @returns {HTMLElement} */
export function byId(id) {
  const element = document.getElementById(id);
  if (!element) throw new Error(`The page has no element "${id}".`);
  return element;
}
