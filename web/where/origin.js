// @ts-check
/** Where a number comes from: each can be pressed, and one window tells what it is, its source, and how sure it is. */

import { byId, make } from "../dom.js";
import { button } from "../entry.js";
import { fetchLater, later } from "../later.js";
import { say, sayWith } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * A number that can be asked for its origin.
 * @param {string} about a key of ORIGINS
 * @param {string} shown the number as it stands there
 * @param {Record<string, string>} [values] which of them, where there are several: its spot, its solvent, its code
 * @returns {HTMLButtonElement}
 */
export function askable(about, shown, values = {}) {
  return make(
    "button",
    { type: "button", class: "asked", "data-asked": askedOf(about, values), "aria-haspopup": "dialog", title: say("page.ask-origin") },
    shown,
  );
}

/**
 * What to press instead of a number drawn in a picture: a small sign beside its heading.
 * @param {string} about
 * @param {string} name of what is asked about, for screen readers
 */
export function askSign(about, name) {
  return make(
    "button",
    { type: "button", class: "asked sign", "data-asked": askedOf(about, {}), "aria-haspopup": "dialog", "aria-label": say("page.ask-origin-of", { name }) },
    say("page.ask-origin"),
  );
}

/** Where numbers stand in fields: a line that asks for each by its name. @param {string[]} abouts */
export function askLine(abouts) {
  const names = abouts.flatMap((about) => [" ", askable(about, say(`page.name-${about}`))]);
  return make("p", { class: "aside ask-line" }, say("page.ask-origin"), ...names);
}

/** @param {string} about @param {Record<string, string>} values */
function askedOf(about, values) {
  const query = new URLSearchParams(values).toString();
  return query ? `${about}?${query}` : about;
}

/**
 * A sentence of the server with some of its numbers askable; whole where its pieces do not give the same sentence.
 * @param {{key: string, args: Record<string, any>, text: string}} message
 * @returns {(Node | string)[]}
 */
export function askableMessage({ key, args, text }) {
  const made = Object.fromEntries(
    Object.entries(ABOUT).map(([name, about]) => [name, (/** @type {string} */ shown) => askable(about, shown, valuesOf(about, args))]),
  );
  try {
    const pieces = sayWith(key, args, made);
    const joined = pieces.map((piece) => (typeof piece === "string" ? piece : piece.textContent)).join("");
    return joined === text ? pieces : [text];
  } catch {
    return [text]; // a key or value that the page does not know
  }
}

/** What the numbers of the server's sentences are about. @type {Record<string, string>} */
const ABOUT = { rf: "rf", gap: "gap", factor: "factor", edge: "window", times: "share", best: "chance-curve", cost: "ratio", count: "chance", low: "window", high: "window" };

/** @param {string} about @param {Record<string, any>} args @returns {Record<string, string>} */
const valuesOf = (about, args) => (about === "rf" && args.spot ? { spot: String(args.spot) } : {});

/** What each number rests on is fetched when the first is asked for. */
const ORIGINS = "origins";
const fetchOrigins = () => import("./origins.js");

/** What the window shows. @param {State} state @param {Act} act @returns {Element[]} */
export function originView(state, act) {
  if (state.looking.asked === undefined) return [];
  const told = later(ORIGINS, fetchOrigins, act);
  if (!told) return [];
  const origin = told.originOf(state, state.looking.asked);
  const close = () => act.look({ asked: undefined });
  return [
    make(
      "div",
      { id: "origin-inside" },
      make(
        "div",
        { class: "head", id: "origin-head" },
        make("h2", { id: "origin-title" }, origin.title),
        button({ id: "origin-close", label: say("page.close"), press: close }),
      ),
      ...origin.texts.map((text) => make("p", {}, text)),
      ...(origin.formula ? [make("p", { class: "formula" }, origin.formula)] : []),
      make("h3", {}, say("page.origin-source")),
      make("ul", { class: "sources" }, ...origin.sources.map((source) => make("li", {}, source))),
      make("h3", {}, say("page.origin-sure")),
      make("p", {}, origin.sure),
      origin.further !== undefined &&
        button({
          id: "origin-further",
          label: say("page.origin-further"),
          press: () => {
            close();
            openFold(origin.further ?? "");
          },
        }),
    ),
  ];
}

/** Opens a fold further down and goes there. @param {string} id */
function openFold(id) {
  const fold = byId(id);
  fold.setAttribute("open", "");
  fold.querySelector("summary")?.focus();
  fold.scrollIntoView({ block: "start" });
}

/** Closes the window where nothing is asked any more. @param {State} state */
export function closeOrigin(state) {
  const dialog = /** @type {HTMLDialogElement} */ (byId("origin"));
  if (state.looking.asked === undefined && dialog.open) dialog.close();
}

/**
 * Listens for numbers that are asked, and for the window being left. Only asking opens it: the browser closes it on Escape
 * before it tells, and what is drawn in between must not open it again.
 * @param {Act} act
 */
export function hearAsked(act) {
  const dialog = /** @type {HTMLDialogElement} */ (byId("origin"));
  document.addEventListener("click", (event) => {
    const pressed = event.target instanceof Element ? event.target.closest("[data-asked]") : null;
    if (pressed) {
      act.look({ asked: pressed.getAttribute("data-asked") ?? undefined });
      if (!dialog.open) dialog.showModal();
      fetchLater(ORIGINS, fetchOrigins, act).then((told) => {
        if (!told) act.look({ asked: undefined }); // the server does not answer
        else if (document.activeElement === dialog) act.focus("origin-close"); // there was nothing in it yet
      });
      dialog.scrollTop = 0;
    } else if (event.target === dialog) act.look({ asked: undefined }); // outside the window
  });
  dialog.addEventListener("close", () => {
    if (!dialog.open) act.look({ asked: undefined }); // it tells late, when another number may have been asked already
  });
  dialog.addEventListener("keydown", (event) => {
    if (event.key === "Tab") keepIn(dialog, event);
  });
}

/** Leads from the last button to the first, and back. @param {HTMLElement} dialog @param {KeyboardEvent} event */
function keepIn(dialog, event) {
  const buttons = [...dialog.querySelectorAll("button")];
  const [leaving, entering] = event.shiftKey ? [buttons[0], buttons.at(-1)] : [buttons.at(-1), buttons[0]];
  if (document.activeElement !== leaving && dialog.contains(document.activeElement)) return;
  event.preventDefault();
  entering?.focus();
}
