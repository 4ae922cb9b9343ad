// @ts-check
/** Ways on from the answer: another solvent, with what speaks for looking, and the column. The views themselves are fetched when they are opened. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { fetchLater } from "../later.js";
import { say } from "../texts.js";
import { hasCurves, outcomeAt } from "./outcome.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

export const SWAP = "swap";
export const fetchSwap = () => import("../swap/swap.js");
export const COLUMN = "column";
export const fetchColumn = () => import("../column/column.js");

/** Spots expected nearer than this [Rf] may touch. */
const TOUCHING = 0.1;

/** What to say of looking, by the beginning of the key of what the answer says: where two spots touch, are perhaps one, or these two solvents cannot do it. */
const HINTS = [
  ["advice.why-touching", "page.swap-touching"],
  ["advice.may-be-one", "page.swap-alike"],
  ["advice.no-ratio", "page.swap-stuck"],
  ["advice.too-polar", "page.swap-stuck"],
  ["advice.runs-in-weak", "page.swap-stuck"],
];

/** @param {State} state @param {Act} act */
export function anotherView(state, act) {
  const hint = hintOf(/** @type {any} */ (state.answered).answer);
  return make(
    "div",
    { id: "another", class: hint ? "hinted" : undefined },
    hint && make("p", { id: "another-hint" }, hint),
    make(
      "div",
      { class: "buttons" },
      button({ id: "swap-open", label: say("page.swap-open"), press: () => open(act, SWAP, fetchSwap) }),
      button({ id: "column-open", label: say("page.column-open"), press: () => open(act, COLUMN, fetchColumn) }),
    ),
  );
}

/** @param {any} answer */
function hintOf(answer) {
  const keys = [...answer.advice.why, ...answer.notes].map(({ key }) => key);
  const hint = HINTS.find(([beginning]) => keys.some((key) => key.startsWith(beginning)));
  if (hint) return say(hint[1]);
  const { gap } = hasCurves(answer) ? outcomeAt(answer, undefined) : { gap: undefined };
  return gap !== undefined && gap < TOUCHING ? say("page.swap-touching") : undefined;
}

/** Opens one and goes there. @param {Act} act @param {"swap" | "column"} id @param {() => Promise<any>} fetch */
async function open(act, id, fetch) {
  const view = await fetchLater(id, fetch, act);
  act.look({ [id]: "open" });
  act.focus(view?.beginAt?.() ?? `${id}-title`);
  document.getElementById(id)?.scrollIntoView({ block: "start" });
}

/** A study that holds something of a column shows it, until somebody closes it. @param {State} state */
export const isColumnOpen = ({ looking, sheet }) => (looking.column ?? (sheet.column && "open")) === "open";
