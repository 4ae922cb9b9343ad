// @ts-check
/** Keeps the sheet and its history in this browser, so that a reload loses nothing and two windows show one sheet. */

import { History } from "./history.js";
import { ADDITIVES, AGAINST_STREAKS } from "./additive.js";
import { SETTINGS, WAYS, inventedExample } from "./sheet.js";

/** @typedef {import("./sheet.js").Sheet} Sheet */

const KEY = "midplate-sheet";

/** Steps kept over a reload. */
const KEPT_STEPS = 30;

/** As it was left; the invented example on a first visit, and where what was left cannot be read. */
export function left() {
  let written = null;
  try {
    written = localStorage.getItem(KEY);
  } catch {
    // a browser that keeps nothing shows the example each time
  }
  const found = read(written);
  return found ? new History(found.sheet, found.before) : new History(inventedExample());
}

/**
 * Keeps each change, and takes over what another window changed, as a step that can be taken back.
 * @param {History} history
 * @returns {() => boolean} whether the latest change could be kept
 */
export function keep(history) {
  let kept = true;
  let taken = "";
  history.onChange(() => {
    const now = JSON.stringify(history.sheet);
    const echo = now === taken;
    taken = "";
    if (echo) return; // written back it would overtake what is typed in the other window meanwhile
    try {
      localStorage.setItem(KEY, JSON.stringify({ sheet: history.sheet, before: history.before.slice(-KEPT_STEPS) }));
      kept = true;
    } catch {
      kept = false;
    }
  });
  window.addEventListener("storage", (event) => {
    const sheet = event.key === KEY ? read(event.newValue)?.sheet : undefined;
    if (!sheet || JSON.stringify(sheet) === JSON.stringify(history.sheet)) return;
    taken = JSON.stringify(sheet);
    history.replace(sheet, "another window");
  });
  return () => kept;
}

/** What was written, where it can be read. @param {string | null} written @returns {{sheet: Sheet, before: Sheet[]} | undefined} */
function read(written) {
  try {
    const found = JSON.parse(written ?? "null");
    if (!Array.isArray(found?.before)) return undefined;
    for (const sheet of [found.sheet, ...found.before]) bring(sheet);
    if (isSheet(found.sheet)) return { sheet: found.sheet, before: found.before.filter(isSheet) };
  } catch {
    // what cannot be read is passed over
  }
  return undefined;
}

/** A sheet kept before there were additives had none in any jar, and none on its shelf to choose. @param {any} sheet */
function bring(sheet) {
  if (!sheet || sheet.additive !== undefined) return;
  sheet.additive = { kind: "none", text: "" };
  for (const plate of sheet.plates ?? []) plate.additive = { kind: "none", text: "" };
  sheet.shelf = [...new Set([...(sheet.shelf ?? []), ...AGAINST_STREAKS])];
}

const isAdditive = (/** @type {any} */ additive) => ADDITIVES.includes(additive?.kind) && text(additive.text);

const text = (/** @type {unknown} */ value) => typeof value === "string";
const texts = (/** @type {unknown} */ value) => Array.isArray(value) && value.every(text);
const all = (/** @type {unknown} */ list, /** @type {(each: any) => boolean} */ check) => Array.isArray(list) && list.every(check);

/** @param {any} sheet @returns {sheet is Sheet} */
function isSheet(sheet) {
  return (
    [sheet?.sorbent, sheet?.weak, sheet?.strong, sheet?.amount, sheet?.jar, sheet?.example, sheet?.windowKind].every(text) &&
    SETTINGS.includes(sheet.setting) &&
    texts(sheet.shelf) &&
    isAdditive(sheet.additive) &&
    texts(sheet.apart) &&
    texts(sheet.window) &&
    sheet.window.length === 2 &&
    sheet.spots?.length > 0 &&
    all(sheet.spots, (spot) => text(spot?.id) && text(spot.name) && (spot.what === undefined || isIdentity(spot.what))) &&
    all(sheet.plates, isPlate)
  );
}

/** @param {any} what */
const isIdentity = (what) =>
  WAYS.includes(what?.by) && text(what.smiles) && text(what.class) && typeof what.groups === "object" && what.groups !== null && Object.values(what.groups).every(text);

/** @param {any} plate */
function isPlate(plate) {
  const fields = ["id", "heightMm", "widthMm", "startMm", "frontMm", "weak", "strong", "eluent"];
  return fields.every((field) => text(plate?.[field])) && isAdditive(plate.additive) && texts(plate.notSeen) && all(plate.lanes, isLane);
}

/** @param {any} lane */
const isLane = (lane) =>
  text(lane?.id) &&
  all(lane.readings, (each) => text(each?.id) && texts(each.spots) && ["mm", "rf"].includes(each.by) && text(each.typed));
