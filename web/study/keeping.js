// @ts-check
/**
 * Keeps the study that is shown: at once in this browser, after a short pause in the folder. All windows of this browser are one
 * editor; where somebody else changed the same study meanwhile, both versions are kept.
 */

import { isUntouched } from "../sheet/sheet.js";
import { titleFrom } from "../line.js";
import { canSpeak, say } from "../texts.js";
import { bothKept, draftIds, draftOf, hearOtherWindows, isSaved, keptOf, prune, setBothKept, setDraft, setKept, setLastShown } from "./drafts.js";
import { freshId } from "./ids.js";
import { saveDraft, studyThere } from "./saving.js";
import { contentsOf, sheetOf, studyOf } from "./study.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("./saving.js").There} There @typedef {import("./drafts.js").Draft} Draft */

/** How long after a change it is saved [ms], and how long after one in another window, which saves it itself. */
const PAUSE = 800;
const OTHERS_PAUSE = 5000;
/** How soon again where the server does not answer, and where the folder cannot be written [ms]. */
const AGAIN = 2000;
const FULL_AGAIN = 15_000;
const NO_ROOM = 507;

/** @typedef {{kind: "gone" | "refused" | "elsewhere", status?: number, text?: string, version: string}} Trouble of a version of a draft */

/** @typedef {{kind: "untouched" | "saving" | "saved" | "browser" | "nowhere" | Trouble["kind"], at?: string, text?: string}} Standing */

export class Keeper {
  #history;
  #told;
  #timer = 0;
  /** @type {Promise<void> | undefined} */
  #saving;
  #again = false;
  /** Whether this browser keeps the latest change. */
  #browserKeeps = true;
  /** Whether the latest change was made in this window. */
  #own = true;
  /** Whether what is shown was taken over from another window. */
  #takenOver = false;
  /** What the history does is not to be written: it was read. */
  #reading = false;
  /** @type {string} */
  #shown;
  /** @type {Map<string, Trouble>} */
  #troubles = new Map();

  /** @param {import("../sheet/history.js").History} history @param {() => void} told after what is to be shown */
  constructor(history, told) {
    this.#history = history;
    this.#told = told;
    this.#shown = history.sheet.id;
    history.onChange(() => this.#changed());
    history.onAmend(() => this.#changed());
    hearOtherWindows({ draft: (id, draft) => this.#heard(id, draft), kept: told, both: () => this.#heardBoth() });
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") this.save();
    });
    window.addEventListener("pagehide", () => this.#part());
    prune(this.#shown);
    this.#soon(PAUSE);
  }

  /** How the study shown stands. @returns {Standing} */
  get standing() {
    const { sheet } = this.#history;
    const { tag, at } = keptOf(sheet.id);
    if (!tag && isUntouched(sheet)) return { kind: "untouched" };
    const trouble = this.#troubles.get(sheet.id);
    if (trouble) return trouble.kind !== "elsewhere" && !this.#browserKeeps ? { kind: "nowhere" } : trouble.status === 404 ? { kind: "browser" } : trouble;
    return isSaved(sheet.id) ? { kind: "saved", at } : { kind: "saving" };
  }

  /** Whether the sheet as it stands here is the newest and of this window: what another window changed it writes down itself. */
  get isOwn() {
    const { sheet } = this.#history;
    const draft = draftOf(sheet.id);
    return this.#own && (!draft || JSON.stringify(draft.sheet) === JSON.stringify(sheet));
  }

  /** Whether another window changed what is shown, and nothing was done here since. */
  get isTakenOver() {
    return this.#takenOver;
  }

  #changed() {
    const { sheet, before } = this.#history;
    if (this.#reading) return;
    this.#own = true;
    this.#takenOver = false;
    if (sheet.id !== this.#shown) {
      this.#shown = sheet.id;
      const draft = draftOf(sheet.id); // an undo led back to a study that may have gone on since
      if (draft) this.#history.renew(draft.sheet);
    }
    this.#browserKeeps = setDraft(this.#history.sheet, before);
    setLastShown(sheet.id);
    this.#soon(PAUSE);
  }

  /** Does something to the history that is written already. @param {() => void} something */
  #read(something) {
    this.#reading = true;
    something();
    this.#reading = false;
    if (this.#shown !== this.#history.sheet.id) this.#takenOver = false;
    this.#shown = this.#history.sheet.id;
    setLastShown(this.#shown);
  }

  /** What another window changed is a step that can be taken back. @param {string} id @param {Draft} draft */
  #heard(id, draft) {
    this.#soon(OTHERS_PAUSE);
    const { sheet } = this.#history;
    if (id !== sheet.id || JSON.stringify(draft.sheet) === JSON.stringify(sheet)) return;
    const { advices, archived } = draft.sheet;
    const only = JSON.stringify({ ...sheet, advices, archived }) === JSON.stringify(draft.sheet);
    this.#own = false;
    this.#takenOver ||= !only;
    this.#read(() => (only ? this.#history.amend({ advices, archived }) : this.#history.replace(draft.sheet, "another window")));
  }

  /** @param {number} pause */
  #soon(pause) {
    clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => this.save(), pause);
  }

  /** Saves all that is not saved. @returns {Promise<void>} */
  save() {
    clearTimeout(this.#timer);
    this.#again = this.#saving !== undefined;
    this.#saving ??= this.#saveAll().finally(() => {
      this.#saving = undefined;
      if (this.#again) this.save();
    });
    return this.#saving;
  }

  /** Once all is saved as it stands now, as far as it can be. */
  async allSaved() {
    await this.#saving; // which may have begun before the latest change
    await this.save();
  }

  /** Saves the study shown whatever stood in the way. */
  async insist() {
    this.#troubles.clear();
    const { id } = this.#history.sheet;
    if (isSaved(id)) setKept(id, { tag: keptOf(id).tag });
    this.#told();
    await this.save();
  }

  async #saveAll() {
    if (!canSpeak()) return this.#soon(PAUSE); // what would have to be told has no words yet
    const { id } = this.#history.sheet;
    for (const each of [id, ...draftIds().filter((other) => other !== id)]) {
      if (this.#isDue(each)) await locked(each, () => this.#saveOne(each));
    }
  }

  /** @param {string} id */
  #isDue(id) {
    const draft = draftOf(id);
    if (!draft || isSaved(id) || (!keptOf(id).tag && isUntouched(draft.sheet))) return false;
    const trouble = this.#troubles.get(id);
    return trouble?.kind !== "refused" || trouble.status === NO_ROOM || trouble.version !== draft.version;
  }

  /** @param {string} id */
  async #saveOne(id) {
    const version = draftOf(id)?.version;
    if (version === undefined || isSaved(id)) return; // another window was first
    const outcome = await saveDraft(id);
    this.#troubles.delete(id);
    if (outcome.kind === "both") this.#keepBoth(id, outcome.there);
    else if (outcome.kind !== "saved") {
      this.#troubles.set(id, { ...outcome, version });
      if (outcome.kind === "gone") this.#soon(AGAIN);
      else if (outcome.status === NO_ROOM) this.#soon(FULL_AGAIN);
    }
    this.#told();
  }

  /** What was changed here becomes a study of its own, beside what somebody else made of it. @param {string} id @param {There} there */
  #keepBoth(id, there) {
    const draft = draftOf(id);
    if (!draft) return;
    const other = { id: freshId(), title: titleFrom(draft.sheet.title || say("page.untitled"), (title) => say("page.second-version", { title })) };
    const second = (/** @type {Sheet} */ sheet) => (sheet.id === id ? { ...sheet, ...other } : sheet);
    setDraft(second(draft.sheet), draft.before.map(second));
    setBothKept({ was: id, mine: other.id, title: there.study.title, mineTitle: other.title });
    if (this.#history.sheet.id === id) this.#read(() => this.#history.continueAs(id, other));
    takeIn(there, []);
    this.#soon(0);
  }

  /** Another window kept both: this one goes on with the same. */
  #heardBoth() {
    const both = bothKept();
    if (both && this.#history.sheet.id === both.was && draftOf(both.mine)) {
      this.#read(() => this.#history.continueAs(both.was, { id: both.mine, title: both.mineTitle }));
    }
    this.#told();
  }

  /** Last chance of a page that is left: sent without asking other windows; what does not arrive is still in this browser. */
  #part() {
    const { id } = this.#history.sheet;
    if (this.#saving || !this.#isDue(id)) return;
    this.#saving = this.#saveOne(id).finally(() => {
      this.#saving = undefined;
    });
  }

  /** Takes over what somebody else made of the study shown, where nothing here is unsaved; one step, that can be taken back. @returns {Promise<There | undefined>} */
  async compare() {
    const { id } = this.#history.sheet;
    const { tag } = keptOf(id);
    if (!tag) return undefined;
    const there = await studyThere(id).then((found) => found ?? "nowhere", () => undefined);
    const draft = draftOf(id);
    if (!there || !draft || !isSaved(id) || keptOf(id).tag !== tag || this.#history.sheet.id !== id) return undefined;
    this.#troubles.delete(id);
    if (there === "nowhere") this.#troubles.set(id, { kind: "elsewhere", version: draft.version });
    else if (there.tag !== tag) {
      const same = contentsOf(there.study) === contentsOf(studyOf(draft.sheet));
      takeIn(there, same ? draft.before : [...draft.before, draft.sheet]);
      if (!same) this.#read(() => this.#history.replace(sheetOf(there.study)));
    }
    this.#told();
    return there === "nowhere" ? undefined : there;
  }

  /** Shows a study of this browser or of the folder. @param {string} id @returns {Promise<"shown" | "unknown" | "gone">} */
  async open(id) {
    if (this.#history.sheet.id === id) return "shown";
    const known = draftOf(id);
    const saved = isSaved(id);
    const there = known && !saved ? undefined : await studyThere(id).then((found) => found ?? "nowhere", () => undefined);
    if (there && there !== "nowhere" && (!known || keptOf(id).tag !== there.tag)) takeIn(there, known ? [...known.before, known.sheet] : []);
    const draft = draftOf(id);
    if (!draft) return there === "nowhere" ? "unknown" : "gone";
    this.#read(() => this.#history.open(draft.sheet, draft.before));
    if (there === "nowhere") this.#troubles.set(id, { kind: "elsewhere", version: draft.version });
    this.#told();
    return "shown";
  }
}

/** Keeps what the folder has as a draft that is saved. @param {There} there @param {Sheet[]} before */
export function takeIn({ study, tag }, before) {
  setDraft(sheetOf(study), before);
  setKept(study.id, { tag, version: draftOf(study.id)?.version, at: study.modified });
}

/** One window at a time. @param {string} id @param {() => Promise<void>} something */
function locked(id, something) {
  return navigator.locks ? navigator.locks.request(`midplate-save-${id}`, something) : something();
}
