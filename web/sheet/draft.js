// @ts-check
/** Keeps the sheet and its history in this browser, so that a reload loses nothing and two windows show one sheet. */

import { History } from "./history.js";
import { SETTINGS, inventedExample } from "./sheet.js";

/** @typedef {import("./sheet.js").Sheet} Sheet */

const KEY = "midplate-sheet";

/** Steps kept over a reload. */
const KEPT_STEPS = 30;

/** As it was left; the invented example on a first visit, and where what was left cannot be read. */
export function left() {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "null");
    if (isSheet(found?.sheet) && Array.isArray(found.before)) return new History(found.sheet, found.before.filter(isSheet));
  } catch {
    // what cannot be read is passed over
  }
  return new History(inventedExample());
}

/** Keeps each change, and takes over what another window changed, as a step that can be taken back. @param {History} history */
export function keep(history) {
  history.onChange(() => {
    const text = JSON.stringify({ sheet: history.sheet, before: history.before.slice(-KEPT_STEPS) });
    try {
      if (localStorage.getItem(KEY) !== text) localStorage.setItem(KEY, text);
    } catch {
      // a browser that keeps nothing still works until the page is closed
    }
  });
  window.addEventListener("storage", (event) => {
    if (event.key !== KEY || !event.newValue) return;
    const found = JSON.parse(event.newValue);
    if (isSheet(found?.sheet) && JSON.stringify(found.sheet) !== JSON.stringify(history.sheet)) {
      history.replace(found.sheet);
    }
  });
}

const text = (/** @type {unknown} */ value) => typeof value === "string";
const texts = (/** @type {unknown} */ value) => Array.isArray(value) && value.every(text);
const all = (/** @type {unknown} */ list, /** @type {(each: any) => boolean} */ check) => Array.isArray(list) && list.every(check);

/** @param {any} sheet @returns {sheet is Sheet} */
function isSheet(sheet) {
  return (
    [sheet?.sorbent, sheet?.weak, sheet?.strong, sheet?.amount, sheet?.jar, sheet?.example].every(text) &&
    SETTINGS.includes(sheet.setting) &&
    texts(sheet.shelf) &&
    texts(sheet.apart) &&
    texts(sheet.window) &&
    sheet.window.length === 2 &&
    sheet.spots?.length > 0 &&
    all(sheet.spots, (spot) => text(spot?.id) && text(spot.name)) &&
    all(sheet.plates, isPlate)
  );
}

/** @param {any} plate */
function isPlate(plate) {
  const fields = ["id", "heightMm", "widthMm", "startMm", "frontMm", "weak", "strong", "eluent"];
  return fields.every((field) => text(plate?.[field])) && texts(plate.notSeen) && all(plate.lanes, isLane);
}

/** @param {any} lane */
const isLane = (lane) =>
  text(lane?.id) &&
  all(lane.readings, (each) => text(each?.id) && texts(each.spots) && ["mm", "rf"].includes(each.by) && text(each.typed));
