// @ts-check
/** Asks for other eluents of equal strength, again whenever the sheet or the wish has changed. */

import { faultsOf } from "../faults.js";
import { orAsTyped, percentStrong } from "../numbers.js";
import { requestOf } from "../request.js";
import { Refused, post } from "../server.js";
import { language } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * @typedef {object} Wish how other eluents are wanted
 * @property {string} [rank] what comes first; undefined leaves it to the server
 * @property {string} [match] the mixture to be as strong as, as it was typed; undefined or empty for the advised one
 * @property {"shelf" | "all"} [from] whether only what stands on the shelf is looked at
 *
 * @typedef {object} Swapped
 * @property {string} question what was asked last
 * @property {"counting" | "told" | "refused" | "unreachable"} standing
 * @property {any} [answer] the latest of /api/other-eluents, perhaps to a question before
 * @property {Map<string, string[]>} faults sentences by the id of the entry they are about
 */

/** How long after a change it is asked, in ms. */
const PAUSE = 250;

let timer = 0;

/** @param {State} state */
function bodyOf({ sheet, looking }) {
  const { rank, match = "", from } = looking.swapWish ?? {};
  const { body } = requestOf(sheet);
  return {
    ...body,
    curves: false,
    shelf: from === "all" ? undefined : sheet.shelf,
    rank,
    percentStrong: match.trim() === "" ? undefined : orAsTyped(percentStrong(match), match),
  };
}

/** @param {State} state */
const questionOf = (state) => `${language()} ${JSON.stringify(bodyOf(state))}`;

/** Whether what is shown answers the sheet as it is. @param {State} state */
export const isCurrent = (state) => state.looking.swapped?.standing === "told" && state.looking.swapped.question === questionOf(state);

/** Asks soon, unless it is asked already; a sheet that is refused as it is, or being answered, waits. @param {State} state @param {Act} act */
export function askWhereNeeded(state, act) {
  if (state.standing !== "current" || state.looking.swapped?.question === questionOf(state)) return;
  clearTimeout(timer);
  timer = window.setTimeout(() => {
    if (state.standing === "current" && state.looking.swap === "open") ask(state, act);
  }, state.looking.swapped ? PAUSE : 0);
}

/** @param {State} state @param {Act} act */
export async function ask(state, act) {
  const question = questionOf(state);
  const { answer } = state.looking.swapped ?? {};
  act.look({ swapped: { question, standing: "counting", answer, faults: new Map() } });
  /** @type {Swapped} */
  let outcome;
  try {
    outcome = { question, standing: "told", answer: await post("/api/other-eluents", bodyOf(state)), faults: new Map() };
  } catch (failure) {
    const refused = failure instanceof Refused;
    const faults = refused ? faultsOf(failure.faults, new Map([["percentStrong", "swap-match"], ["shelf", "swap-all"]])) : new Map();
    outcome = { question, standing: refused ? "refused" : "unreachable", answer, faults };
  }
  const now = state.looking.swapped;
  if (now?.question === question && now.standing === "counting") act.look({ swapped: outcome });
}
