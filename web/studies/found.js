// @ts-check
/** What was found in the folder, and what is done with one study of it. */

import { titleFrom } from "../line.js";
import { get } from "../server.js";
import { draftIds, draftOf, dropDraft, isSaved, keptOf, setDraft } from "../study/drafts.js";
import { freshId } from "../study/ids.js";
import { put, putAway, studyThere } from "../study/saving.js";
import { sheetOf, studyOf } from "../study/study.js";
import { isUntouched } from "../sheet/sheet.js";
import { taken } from "../server.js";
import { say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */
/** @typedef {{id: string, title: string, modified: string, archived: boolean, origin: string, plates: number, spots: string[], tag: string, notices: {text: string}[]}} Found */

/** While somebody types it is not searched yet [ms]. */
const PAUSE = 200;
/** How soon again where the server does not answer [ms]. */
const AGAIN = 3000;
/** As long after something was done the focus is given a new place if what had it goes [ms]. */
const DOING = 3000;

/** What is looked for, and what was found. */
export const search = {
  find: "",
  /** @type {"at-hand" | "archived"} */
  which: "at-hand",
  /** @type {Found[]} */
  studies: [],
  total: 0,
  folder: "",
  /** @type {{file: string, kind: string, text: string}[]} */
  troubles: [],
  /** @type {"new" | "asked" | "found" | "gone"} */
  standing: "new",
  /** When it was found. @type {string | undefined} */
  at: undefined,
  /** What is said once something was done. */
  said: "",
  /** Where the focus goes if the row that has it goes, and until when. */
  next: { id: "", until: 0 },
  /** Id of the study being renamed. */
  renaming: "",
};

let timer = 0;
let asked = 0;

/** Searches anew, after a short pause where somebody types. @param {Act} act @param {number} [pause] */
export function searchSoon(act, pause = PAUSE) {
  clearTimeout(timer);
  timer = window.setTimeout(() => ask(act, 0), pause);
}

/** Those after the ones shown. @param {Act} act */
export const searchFurther = (act) => ask(act, search.studies.length);

/** @param {Act} act @param {number} from */
async function ask(act, from) {
  const mine = ++asked;
  if (search.standing === "new") search.standing = "asked";
  try {
    const query = new URLSearchParams({ find: search.find, which: search.which, from: String(from) });
    const found = await get(`/api/studies?${query}`);
    if (mine !== asked) return;
    const before = search.studies.slice(0, from);
    Object.assign(search, { standing: "found", at: new Date().toISOString(), total: found.total, folder: found.folder, troubles: found.troubles, studies: [...before, ...found.studies] });
  } catch {
    if (mine === asked) search.standing = "gone";
  }
  if (mine !== asked) return;
  act.look({ came: "studies" });
  giveFocus(act);
  if (search.standing === "gone" && isShown()) searchSoon(act, AGAIN);
}

const isShown = () => document.getElementById("studies-inside") !== null && !document.getElementById("studies")?.hidden;

/** Where the focus shall go if what has it goes with the row. @param {string} id */
export function focusNext(id) {
  search.next = { id, until: Date.now() + DOING };
}

/** Gives the focus a place where what had it is gone; somebody who went on elsewhere is left there. @param {Act} act */
function giveFocus(act) {
  if (document.activeElement !== document.body || Date.now() > search.next.until) return;
  act.focus(document.getElementById(search.next.id) ? search.next.id : "studies-find");
}

/** Studies that only this browser has yet, but for the one shown. @param {State} state */
export function onlyHere({ sheet }) {
  return draftIds()
    .filter((id) => id !== sheet.id && !isSaved(id))
    .flatMap((id) => draftOf(id)?.sheet ?? [])
    .filter((each) => keptOf(each.id).tag || !isUntouched(each));
}

/** Does something with a study, and says what came of it. @param {Act} act @param {() => Promise<string>} something */
export async function done(act, something) {
  try {
    search.said = await something();
  } catch (failure) {
    search.said = failure instanceof Error && failure.name !== "TypeError" ? failure.message : say("later.studies-gone");
  }
  await ask(act, 0);
}

/** A study as it is now, saved or not. @param {State} state @param {string} id */
export async function studyNow({ sheet }, id) {
  if (sheet.id === id) return studyOf(sheet);
  const draft = isSaved(id) ? undefined : draftOf(id);
  if (draft) return studyOf(draft.sheet);
  const there = await studyThere(id);
  if (!there) throw new Error(say("later.study-not-there"));
  return there.study;
}

/** Changes a study: on the sheet if it is shown, else in the folder. @param {State} state @param {Act} act @param {string} id @param {{title?: string, archived?: boolean}} change */
export async function change(state, act, id, change) {
  if (state.sheet.id === id) {
    if (change.title !== undefined) act.edit((sheet) => { sheet.title = change.title ?? ""; });
    if (change.archived !== undefined) act.archive(change.archived);
    await act.saved();
    return;
  }
  const draft = isSaved(id) ? undefined : draftOf(id);
  if (draft) {
    setDraft({ ...draft.sheet, ...change }, draft.before);
    await act.saved();
    return;
  }
  const there = await studyThere(id);
  if (!there) throw new Error(say("later.study-not-there"));
  if (change.archived) await putAway(id, there.tag);
  else await taken(await put({ ...there.study, ...change }, there.tag));
  dropDraft(id); // it is fetched anew when it is opened
}

/** A copy with a name of its own. @param {any} study */
export async function copyOf(study) {
  const copy = { ...study, id: freshId(), title: titleFrom(study.title || say("page.untitled"), (title) => say("later.copy-of", { title })), archived: false };
  const sheet = sheetOf(copy);
  await taken(await put(studyOf({ ...sheet, created: new Date().toISOString() }), undefined));
  return copy;
}
