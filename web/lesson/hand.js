// @ts-check
/** Hands the compounds of the sheet over to the lesson, and goes there. */

import { saidOf } from "../request.js";
import { whatOf } from "../sheet/sheet.js";

/** What is handed over, read once by the lesson. */
const HANDED = "midplate-lesson-handed";
/** More are not told apart on a plate. */
const MOST = 6;

/** @param {import("../state.js").State["sheet"]} sheet */
export function handOver({ spots, weak, strong, setting }) {
  const known = spots.filter((spot) => Object.keys(saidOf(spot)).length > 0).slice(0, MOST);
  const compounds = known.map((spot, i) => ({ id: `c${i + 1}`, name: spot.name, ...whatOf(spot) }));
  try {
    sessionStorage.setItem(HANDED, JSON.stringify({ compounds, weak, strong, setting }));
  } catch {
    // a browser that keeps nothing shows the lesson with its own sample
  }
  location.assign("lesson.html");
}
