// @ts-check
/** The address carries the study, so that a bookmark opens it. */

import { History } from "../sheet/history.js";
import { inventedExample, isUntouched } from "../sheet/sheet.js";
import { draftOf, formerDraft, keptOf, lastShown } from "./drafts.js";
import { isStudyId } from "./ids.js";

/** @typedef {import("./keeping.js").Keeper} Keeper */

/** The study that the address names. @returns {string | undefined} */
function named() {
  const id = location.hash.slice(1);
  return isStudyId(id) ? id : undefined;
}

/** As it was left: the study of the address, the one shown last, or the invented example on a first visit. @returns {History} */
export function left() {
  const last = lastShown();
  const draft = (named() && draftOf(/** @type {string} */ (named()))) || formerDraft() || (last && isStudyId(last) ? draftOf(last) : undefined);
  return draft ? new History(draft.sheet, draft.before) : new History(inventedExample());
}

/**
 * Keeps the address in line with the study shown, and shows what an address names that somebody goes to.
 * @param {History} history @param {Keeper} keeper @param {(id: string, outcome: "shown" | "unknown" | "gone") => void} opened
 */
export async function followAddress(history, keeper, opened) {
  const go = async () => {
    const id = named();
    if (id) opened(id, await keeper.open(id));
    show("replaceState");
  };
  const show = (/** @type {"pushState" | "replaceState"} */ how) => {
    const { sheet } = history;
    const wanted = keptOf(sheet.id).tag || !isUntouched(sheet) ? `#${sheet.id}` : "";
    if (location.hash !== wanted) window.history[how](null, "", location.pathname + location.search + wanted);
  };
  let shown = history.sheet.id;
  history.onChange(() => {
    const other = history.sheet.id !== shown;
    shown = history.sheet.id;
    show(other ? "pushState" : "replaceState");
  });
  window.addEventListener("hashchange", go);
  await go();
}
