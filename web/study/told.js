// @ts-check
/** What is told of the study that is shown: how it is kept, what is in the folder, and what somebody else did. */

import { get } from "../server.js";
import { bothKept, draftOf, setBothKept, setTroublesSeen, troublesSeen } from "./drafts.js";
import { isUntouched } from "../sheet/sheet.js";

/** @typedef {import("./keeping.js").Keeper} Keeper @typedef {import("./keeping.js").Standing} Standing */

/**
 * @typedef {object} StudyTold
 * @property {Standing} standing
 * @property {string} [folder] in which studies are kept
 * @property {number} total how many are in it and at hand
 * @property {string} troubles what in it has to be told, as one text that changes when it does; empty where nothing has, or it was put aside
 * @property {import("./drafts.js").Both} [both] two versions that were kept because two people changed one study
 * @property {{id: string, title: string, how: "unknown" | "gone"}} [unknown] the study that somebody wanted and that was not to be had
 * @property {{id: string, title: string}} [before] the study that stood here before a new one was begun
 * @property {boolean} changed whether it was changed elsewhere since it was last shown here
 * @property {boolean} takenOver whether it was changed in another window of this browser, and nothing was done here since
 * @property {string[]} notices what the folder tells of it
 */

/** Two looks at the folder are at least so far apart, when somebody comes back to the window [ms]. */
const REST = 1000;

/** @param {Keeper} keeper @param {import("../sheet/history.js").History} history @param {() => void} changed what to do after each change */
export function studyTold(keeper, history, changed) {
  /** @type {StudyTold} */
  const now = { standing: keeper.standing, total: 0, troubles: "", changed: false, takenOver: false, notices: [] };
  let of = history.sheet.id;
  /** Studies that are known to be in the folder. @type {Set<string>} */
  const there = new Set();

  /** Looks at how it stands now. */
  function look() {
    if (of !== history.sheet.id) {
      of = history.sheet.id;
      Object.assign(now, { changed: false, notices: [] });
    }
    now.standing = keeper.standing;
    now.both = bothKept();
    now.takenOver = keeper.isTakenOver;
    if (now.standing.kind !== "saved" || there.has(of)) return;
    there.add(of);
    folder();
  }

  /** What is in the folder. */
  async function folder() {
    try {
      const { folder: path, total, troubles } = await get("/api/studies?which=at-hand");
      Object.assign(now, { folder: path, total, troubles: untold(troubles) });
      changed();
    } catch {
      // it is asked again after the next save
    }
  }

  /** Whether somebody else changed it meanwhile, and what the folder tells of it. */
  async function compare() {
    const { sheet } = history;
    const found = await keeper.compare();
    if (found) Object.assign(now, { changed: history.sheet !== sheet, notices: found.notices });
    changed();
  }

  /** @param {string} id @param {"shown" | "unknown" | "gone"} outcome @param {string} [title] of it, where it is known */
  function opened(id, outcome, title = draftOf(id)?.sheet.title) {
    now.unknown = outcome === "shown" ? undefined : { id, title: title || id, how: outcome };
    if (outcome === "shown") compare();
    else changed();
  }

  let lookedAt = 0;

  /** Somebody comes back to this window: it may be old by now. */
  function back() {
    if (document.visibilityState !== "visible" || Date.now() - lookedAt < REST) return;
    lookedAt = Date.now();
    folder();
    compare();
  }
  document.addEventListener("visibilitychange", back);
  window.addEventListener("focus", back);

  return {
    now,
    look,
    folder,
    opened,
    begin: () => {
      folder();
      if (!isUntouched(history.sheet)) compare();
    },
    open: async (/** @type {string} */ id, /** @type {string | undefined} */ title) => {
      const outcome = await keeper.open(id);
      opened(id, outcome, title);
      return outcome;
    },
    /** Another is begun after a study, which is kept. */
    begun: (/** @type {import("../sheet/sheet.js").Sheet} */ before) => {
      if (!isUntouched(before)) now.before = { id: before.id, title: before.title };
    },
    seen: (/** @type {"both" | "unknown" | "troubles"} */ what) => {
      if (what === "both") setBothKept(undefined);
      if (what === "unknown") now.unknown = undefined;
      if (what === "troubles") {
        setTroublesSeen(now.troubles);
        now.troubles = "";
      }
      changed();
    },
  };
}

/** What nobody has put aside yet. @param {{file: string, kind: string}[]} troubles */
function untold(troubles) {
  const all = troubles.map(({ file, kind }) => `${kind} ${file}`).sort().join("\n");
  return all === troublesSeen() ? "" : all;
}
