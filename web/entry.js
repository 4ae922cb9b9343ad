// @ts-check
/** Labelled entries: what a person types, picks or presses. */

import { make } from "./dom.js";
import { faultAt } from "./faults.js";
import { LONGEST_LINE, oneLine } from "./line.js";
import { marked } from "./texts.js";

/** @typedef {import("./state.js").State} State */

/**
 * A field to type in, with its label before it and its fault after it.
 * @param {State} state
 * @param {{id: string, label: string, value: string, mode?: "text" | "decimal", hidden?: "label", longest?: number,
 *     typed: (value: string) => void, entered?: () => void, left?: () => void}} entry a hidden label is for screen readers only
 */
export function typedField(state, { id, label, value, mode = "text", hidden, longest = LONGEST_LINE, typed, entered, left }) {
  const { attributes, told } = faultAt(state, id);
  const input = make("input", {
    id,
    value: mode === "decimal" ? written(id, value) : value,
    type: "text",
    inputmode: mode,
    maxlength: longest,
    autocomplete: "off",
    spellcheck: "false",
    ...attributes,
    oninput: (event) => {
      if (!event.isComposing) typed(lineIn(event.target));
    },
    oncompositionend: (event) => typed(lineIn(event.target)),
    onkeydown: (event) => {
      if (event.key === "Enter" && entered) {
        event.preventDefault();
        entered();
      }
    },
    onblur: left,
  });
  return make("div", { class: "field", id: `${id}-field` }, make("label", { for: id, class: hidden ? "unseen" : undefined }, label), input, told);
}

/** What was typed or pasted, and what is then shown: a tab or a control sign is a blank; the caret stays. @param {HTMLInputElement} input */
function lineIn(input) {
  const line = oneLine(input.value);
  if (line !== input.value) {
    const at = input.selectionStart;
    input.value = line;
    input.setSelectionRange(at, at);
  }
  return line;
}

/** A number with the mark of the language; in the entry one is in, with the mark that was typed. @param {string} id @param {string} value */
function written(id, value) {
  const entry = document.activeElement;
  const same = entry instanceof HTMLInputElement && entry.id === id && entry.value.replace(",", ".") === value.replace(",", ".");
  return same ? entry.value : marked(value);
}

/**
 * A choice of one.
 * @param {State} state
 * @param {{id: string, label: string, value: string, hidden?: "label", options: {value: string, text: string}[], chosen: (value: string) => void}} entry
 */
export function choice(state, { id, label, value, hidden, options, chosen }) {
  const { attributes, told } = faultAt(state, id);
  const select = make(
    "select",
    { id, ...attributes, onchange: (event) => chosen(event.target.value) },
    ...options.map((each) => make("option", { value: each.value, selected: each.value === value }, each.text)),
  );
  return make("div", { class: "field", id: `${id}-field` }, make("label", { for: id, class: hidden ? "unseen" : undefined }, label), select, told);
}

/**
 * A box to tick.
 * @param {{id: string, label: string, ticked: boolean, changed: (ticked: boolean) => void}} entry
 */
export function tick({ id, label, ticked, changed }) {
  const box = make("input", { id, type: "checkbox", checked: ticked, onchange: (event) => changed(event.target.checked) });
  return make("div", { class: "tick", id: `${id}-field` }, box, make("label", { for: id }, label));
}

/**
 * Something to press.
 * @param {{id?: string, label: string, name?: string, kind?: string, pressed?: boolean, disabled?: boolean, press: () => void, keys?: (event: KeyboardEvent) => void}} entry a name is what
 *     screen readers say where the label alone would not be understood
 */
export function button({ id, label, name, kind, pressed, disabled, press, keys }) {
  return make(
    "button",
    { type: "button", id, class: kind, "aria-label": name, "aria-pressed": pressed === undefined ? undefined : String(pressed), disabled, onclick: press, onkeydown: keys },
    label,
  );
}
