// @ts-check
/** What is told of the study that is shown: how it is kept, what is in the folder, and what somebody else did. */

import { get } from "../server.js";
import { bothKept, setBothKept } from "./drafts.js";
import { isUntouched } from "../sheet/sheet.js";

/** @typedef {import("./keeping.js").Keeper} Keeper @typedef {import("./keeping.js").Standing} Standing */

/**
 * @typedef {object} StudyTold
 * @property {Standing} standing
 * @property {string} [folder] in which studies are kept
 * @property {number} total how many are in it and at hand
 * @property {boolean} troubles whether something in it has to be told
 * @property {import("./drafts.js").Both} [both] two versions that were kept because two people changed one study
 * @property {{id: string, how: "unknown" | "gone"}} [unknown] the study that somebody wanted and that was not to be had
 * @property {boolean} changed whether it was changed elsewhere since it was last shown here
 * @property {string[]} notices what the folder tells of it
 */

/** @param {Keeper} keeper @param {import("../sheet/history.js").History} history @param {() => void} changed what to do after each change */
export function studyTold(keeper, history, changed) {
  /** @type {StudyTold} */
  const now = { standing: keeper.standing, total: 0, troubles: false, changed: false, notices: [] };
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
    if (now.standing.kind !== "saved" || there.has(of)) return;
    there.add(of);
    folder();
  }

  /** What is in the folder. */
  async function folder() {
    try {
      const { folder: path, total, troubles } = await get("/api/studies?which=at-hand");
      Object.assign(now, { folder: path, total, troubles: troubles.length > 0 });
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

  /** @param {string} id @param {"shown" | "unknown" | "gone"} outcome */
  function opened(id, outcome) {
    now.unknown = outcome === "shown" ? undefined : { id, how: outcome };
    if (outcome === "shown") compare();
    else changed();
  }

  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") compare();
  });

  return {
    now,
    look,
    folder,
    opened,
    begin: () => {
      folder();
      if (!isUntouched(history.sheet)) compare();
    },
    open: async (/** @type {string} */ id) => opened(id, await keeper.open(id)),
    seen: () => {
      setBothKept(undefined);
      now.unknown = undefined;
      changed();
    },
  };
}
