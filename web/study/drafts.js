// @ts-check
/**
 * What this browser keeps of each study: the sheet with its steps, and what of it the folder has. Windows of one browser read and
 * write the same drafts, and hear of each other's.
 */

import { readSheets } from "../sheet/check.js";
import { isStudyId } from "./ids.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet */

/**
 * @typedef {{sheet: Sheet, before: Sheet[], version: string}} Draft the version names this state of it
 * @typedef {object} Kept what the folder has of a study
 * @property {string} [tag] of the file; none where the folder has none of it yet
 * @property {string} [version] of the draft that the file holds
 * @property {string} [at] when it was kept there
 * @property {string[]} [sent] contents on their way whose arrival nobody has confirmed
 */

const DRAFT = "midplate-study-";
const KEPT = "midplate-kept-";
const LAST = "midplate-last";
const BOTH = "midplate-both";
const TROUBLES = "midplate-troubles-seen";
/** Under which one sheet was kept before there were studies. */
const FORMER = "midplate-sheet";

/** Steps kept over a reload. */
const KEPT_STEPS = 30;
/** Studies whose steps are kept although the folder has all of them. */
const KEPT_STUDIES = 12;

/** What the browser does not keep lives as long as the page. @type {Map<string, string>} */
const inMemory = new Map();

/** @param {string} key */
function get(key) {
  try {
    return inMemory.get(key) ?? localStorage.getItem(key);
  } catch {
    return inMemory.get(key) ?? null;
  }
}

/** @param {string} key @param {string} text @returns {boolean} whether the browser keeps it */
function set(key, text) {
  try {
    localStorage.setItem(key, text);
    inMemory.delete(key);
    return true;
  } catch {
    inMemory.set(key, text);
    return false;
  }
}

/** @param {string} key */
function remove(key) {
  inMemory.delete(key);
  try {
    localStorage.removeItem(key);
  } catch {
    // nothing was kept
  }
}

/** Ids of all studies that there is a draft of. */
export function draftIds() {
  const keys = [...inMemory.keys()];
  try {
    for (let i = 0; i < localStorage.length; i++) keys.push(localStorage.key(i) ?? "");
  } catch {
    // nothing was kept
  }
  return [...new Set(keys.filter((key) => key.startsWith(DRAFT)).map((key) => key.slice(DRAFT.length)))].filter(isStudyId);
}

/** @param {string} id @returns {Draft | undefined} */
export const draftOf = (id) => draftIn(get(DRAFT + id));

/** @param {string | null} written @returns {Draft | undefined} */
export function draftIn(written) {
  const found = readSheets(written);
  return found && { ...found, version: JSON.parse(written ?? "{}").version };
}

/** @param {string} id @returns {Kept} */
export function keptOf(id) {
  try {
    return JSON.parse(get(KEPT + id) ?? "{}");
  } catch {
    return {};
  }
}

/** @param {string} id @param {Kept} kept */
export const setKept = (id, kept) => set(KEPT + id, JSON.stringify(kept));

/** Keeps a sheet with its steps; where the browser has no room, without them. @param {Sheet} sheet @param {Sheet[]} before @returns {boolean} whether the browser keeps it */
export function setDraft(sheet, before) {
  const version = `${Date.now()}-${crypto.getRandomValues(new Uint32Array(1))[0]}`;
  const written = (/** @type {number} */ steps) => JSON.stringify({ sheet, before: steps ? before.slice(-steps) : [], version });
  return set(DRAFT + sheet.id, written(KEPT_STEPS)) || (prune(sheet.id, 0), set(DRAFT + sheet.id, written(KEPT_STEPS))) || set(DRAFT + sheet.id, written(0));
}

/** The browser need keep no more of it. @param {string} id */
export function dropDraft(id) {
  remove(DRAFT + id);
  remove(KEPT + id);
}

/** Whether the folder has a draft as it is now. @param {string} id */
export function isSaved(id) {
  const version = draftOf(id)?.version;
  return version === undefined || version === keptOf(id).version;
}

/** Drops the oldest drafts that the folder has. @param {string} current id of the study shown @param {number} [most] how many may stay */
export function prune(current, most = KEPT_STUDIES) {
  const saved = draftIds().filter((id) => id !== current && isSaved(id));
  const age = (/** @type {string} */ id) => Number.parseInt(draftOf(id)?.version ?? "0", 10) || 0;
  for (const id of saved.sort((a, b) => age(b) - age(a)).slice(most)) dropDraft(id);
}

/** Id of the study shown last. */
export const lastShown = () => get(LAST);

/** @param {string} id */
export const setLastShown = (id) => set(LAST, id);

/** The sheet that was kept before there were studies, which becomes one. */
export function formerDraft() {
  const found = readSheets(get(FORMER));
  if (found && setDraft(found.sheet, found.before)) remove(FORMER);
  return found;
}

/** @typedef {{was: string, mine: string, title: string, mineTitle: string}} Both the study that somebody else changed, and the second version that holds what was changed here */

/** @returns {Both | undefined} */
export function bothKept() {
  try {
    const both = JSON.parse(get(BOTH) ?? "null");
    return isStudyId(both?.was) && isStudyId(both?.mine) ? both : undefined;
  } catch {
    return undefined;
  }
}

/** @param {Both | undefined} both */
export const setBothKept = (both) => (both ? set(BOTH, JSON.stringify(both)) : remove(BOTH));

/** What was told of the folder and put aside. */
export const troublesSeen = () => get(TROUBLES) ?? "";

/** @param {string} troubles */
export const setTroublesSeen = (troubles) => set(TROUBLES, troubles);

/**
 * Hears what other windows of this browser write.
 * @param {{draft: (id: string, draft: Draft) => void, kept: () => void, both: () => void}} heard
 */
export function hearOtherWindows(heard) {
  window.addEventListener("storage", ({ key, newValue }) => {
    if (key?.startsWith(DRAFT)) {
      const draft = draftIn(newValue);
      if (draft) heard.draft(key.slice(DRAFT.length), draft);
    } else if (key?.startsWith(KEPT)) heard.kept();
    else if (key === BOTH) heard.both();
  });
}
