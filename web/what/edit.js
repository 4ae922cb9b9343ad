// @ts-check
/** Changes what was said of a compound. */

import { whatOf } from "../sheet/sheet.js";

/** @param {import("../state.js").Act} act @param {import("../sheet/sheet.js").Spot} spot @param {(what: import("../sheet/sheet.js").Identity) => void} change @param {string} [together] */
export function editWhat(act, spot, change, together) {
  act.edit((sheet) => {
    const mine = sheet.spots.find((each) => each.id === spot.id);
    if (!mine) return;
    mine.what = structuredClone(whatOf(mine));
    change(mine.what);
  }, together);
}
