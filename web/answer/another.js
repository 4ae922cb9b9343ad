// @ts-check
/** Another solvent: the line under the answer that leads there, and what speaks for looking. The view itself is fetched when it is opened. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { fetchLater } from "../later.js";
import { say } from "../texts.js";
import { hasCurves, outcomeAt } from "./outcome.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

export const SWAP = "swap";
export const fetchSwap = () => import("../swap/swap.js");

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
    button({ id: "swap-open", label: say("page.swap-open"), press: () => openSwap(act) }),
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

/** Opens it and goes there. @param {Act} act */
async function openSwap(act) {
  await fetchLater(SWAP, fetchSwap, act);
  act.look({ swap: "open" });
  act.focus("swap-title");
  document.getElementById("swap")?.scrollIntoView({ block: "start" });
}
