// @ts-check
/** What is added to an eluent against streaking. Each additive makes a system of its own. */

import { make } from "../dom.js";
import { choice, typedField } from "../entry.js";
import { decimal, plain } from "../numbers.js";
import { marked, say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("./sheet.js").Additive} Additive @typedef {import("./sheet.js").Sheet} Sheet */

/** Solvents that are added, not poured. */
export const AGAINST_STREAKS = ["acetic-acid", "triethylamine"];

export const ADDITIVES = ["none", ...AGAINST_STREAKS, "own"];

/** What it is called on the wire and on the card; undefined where nothing is added. @param {Additive} additive */
export function additiveWords({ kind, text }) {
  if (kind === "none") return undefined;
  return kind === "own" ? text.trim() : say(`page.additive-${kind}`);
}

/** What to pour of it into some ml of eluent; its words where they say no share; undefined where nothing is added. @param {Additive} additive @param {number} amount [ml] */
export function additivePour(additive, amount) {
  const words = additiveWords(additive);
  if (!words) return undefined;
  const share = /(\d+(?:[.,]\d+)?)\s*%/.exec(words);
  const percent = share ? decimal(share[1]) ?? NaN : NaN;
  const name = words.replace(share?.[0] ?? "", " ").replace(/\s+/g, " ").trim();
  if (!(percent > 0 && percent < 100) || name === "") return words;
  const ml = (amount * percent) / 100;
  return say("page.additive-pour", { ml: marked(plain(ml, ml < 0.1 ? 3 : 2)), additive: name, percent: marked(plain(percent, 2)) });
}

/** For a plate; the last one says it for the next jar, too. @param {Sheet} sheet @param {string} id of the plate @param {Partial<Additive>} change */
export function addToPlate(sheet, id, change) {
  for (const plate of sheet.plates) if (plate.id === id) Object.assign(plate.additive, change);
  if (sheet.plates.at(-1)?.id === id) Object.assign(sheet.additive, sheet.plates.at(-1)?.additive);
}

/** For the next jar, and for plates that nothing stands on yet. @param {Sheet} sheet @param {Partial<Additive>} change */
export function addToNext(sheet, change) {
  Object.assign(sheet.additive, change);
  for (const plate of sheet.plates) {
    const untouched = plate.eluent.trim() === "" && plate.lanes.every((lane) => lane.readings.length === 0);
    if (untouched) Object.assign(plate.additive, sheet.additive);
  }
}

/**
 * The choice of one, with an entry for another.
 * @param {State} state
 * @param {{id: string, label: string, additive: Additive, changed: (change: Partial<Additive>, together?: string) => void, left: () => void}} entry
 */
export function additiveEntry(state, { id, label, additive, changed, left }) {
  return make(
    "div",
    { class: "additive", id: `${id}-entry` },
    choice(state, {
      id,
      label,
      value: additive.kind,
      options: ADDITIVES.map((kind) => ({ value: kind, text: say(`page.additive-${kind}`) })),
      chosen: (kind) => changed({ kind }),
    }),
    additive.kind === "own" &&
      typedField(state, {
        id: `${id}-text`,
        label: say("page.additive-text"),
        value: additive.text,
        typed: (text) => changed({ text }, `${id}-text`),
        left,
      }),
  );
}
