// @ts-check
/**
 * Makes elements from data, and brings what is shown in line with what was made. Text is always text, never markup.
 *
 * A view makes its elements anew after every change; `patch` keeps those that are already there, so that focus, caret,
 * scrolling and a finger on a spot outlive the change.
 */

const SVG = "http://www.w3.org/2000/svg";

/** @typedef {string | number | boolean | undefined | ((event: any) => void)} Value */
/** @typedef {Record<string, Value>} Attributes a function under "onclick" and the like handles that event */
/** @typedef {Node | string | undefined | false | (Node | string | undefined | false)[]} Child */

/** The handlers of each element by event; they move on to the element that is kept. @type {WeakMap<Element, Map<string, (event: any) => void>>} */
const handlers = new WeakMap();

/** @param {Event} event */
function handle(event) {
  const element = /** @type {Element} */ (event.currentTarget);
  handlers.get(element)?.get(event.type)?.(event);
}

/** @param {Element} element @param {Attributes} attributes @param {Child[]} children */
function dressed(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") {
      const mine = handlers.get(element) ?? new Map();
      handlers.set(element, mine.set(name.slice(2), value));
      element.addEventListener(name.slice(2), handle);
    } else if (value !== false && value !== undefined) {
      element.setAttribute(name, value === true ? "" : String(value));
    }
  }
  element.append(.../** @type {(Node | string)[]} */ (children.flat().filter((child) => child !== undefined && child !== false)));
  return element;
}

/**
 * An HTML element.
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Attributes} [attributes]
 * @param {...Child} children
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
 * @param {...Child} children
 * @returns {SVGElement}
 */
export function draw(tag, attributes = {}, ...children) {
  return /** @type {SVGElement} */ (dressed(document.createElementNS(SVG, tag), attributes, children));
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

/**
 * Makes the children of an element those given, keeping each that has the same id, or stands in the same place without
 * one, and the same tag.
 * @param {Element} parent
 * @param {...Child} wanted
 */
export function patch(parent, ...wanted) {
  const next = /** @type {(Node | string)[]} */ (wanted.flat().filter((child) => child !== undefined && child !== false));
  const named = new Map([...parent.children].filter((child) => child.id).map((child) => [child.id, child]));
  const staying = new Set(next.flatMap((child) => (child instanceof Element && child.id ? [child.id] : [])));
  /** @type {ChildNode | null} */
  let at = parent.firstChild;
  for (const child of next) {
    const node = typeof child === "string" ? document.createTextNode(child) : child;
    at = withoutGone(at, (element) => element.id !== "" && !staying.has(element.id));
    const kept = match(node, at, named);
    // what stands between is taken away, not what is kept moved: moved elements lose the focus
    if (kept) at = withoutGone(at, (element) => element !== kept && !staying.has(element.id));
    if (kept) {
      if (kept === at) at = kept.nextSibling;
      else parent.insertBefore(kept, at);
      align(kept, node);
    } else {
      parent.insertBefore(node, at);
    }
  }
  while (at) {
    const gone = at;
    at = at.nextSibling;
    gone.remove();
  }
}

/** Removes elements as long as they are to go, and gives what then stands there. @param {ChildNode | null} at @param {(element: Element) => boolean} isGone */
function withoutGone(at, isGone) {
  let here = at;
  while (here instanceof Element && isGone(here)) {
    const gone = here;
    here = here.nextSibling;
    gone.remove();
  }
  return here;
}

/** @param {Node} node @param {ChildNode | null} at @param {Map<string, Element>} named @returns {ChildNode | undefined} */
function match(node, at, named) {
  if (!(node instanceof Element)) return at?.nodeType === Node.TEXT_NODE && node.nodeType === Node.TEXT_NODE ? at : undefined;
  const candidate = node.id ? named.get(node.id) : at;
  if (!(candidate instanceof Element) || candidate.tagName !== node.tagName) return undefined;
  return node.id || !candidate.id ? candidate : undefined;
}

/** @param {Node} kept @param {Node} node */
function align(kept, node) {
  if (!(kept instanceof Element) || !(node instanceof Element)) {
    if (kept.nodeValue !== node.nodeValue) kept.nodeValue = node.nodeValue;
    return;
  }
  const open = kept instanceof HTMLDetailsElement; // whether it is open is for the person to say
  for (const { name } of [...kept.attributes]) {
    if (!node.hasAttribute(name) && !(open && name === "open")) kept.removeAttribute(name);
  }
  for (const { name, value } of [...node.attributes]) {
    if (kept.getAttribute(name) !== value && !(open && name === "open")) kept.setAttribute(name, value);
  }
  const wanted = handlers.get(node) ?? new Map();
  for (const type of wanted.keys()) kept.addEventListener(type, handle);
  handlers.set(kept, wanted);
  patch(kept, ...node.childNodes);
  alignValue(kept, node);
}

/** What a person sees in an entry, which its attributes no longer say once something was typed. @param {Element} kept @param {Element} node */
function alignValue(kept, node) {
  if (kept instanceof HTMLInputElement && node instanceof HTMLInputElement) {
    if (kept.type === "checkbox" || kept.type === "radio") kept.checked = node.checked;
    else if (kept.value !== node.value) kept.value = node.value;
  } else if (kept instanceof HTMLSelectElement && node instanceof HTMLSelectElement) {
    if (kept.value !== node.value) kept.value = node.value;
  } else if (kept instanceof HTMLTextAreaElement && node instanceof HTMLTextAreaElement) {
    if (kept.value !== node.value) kept.value = node.value;
  }
}
