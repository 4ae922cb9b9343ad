// @ts-check
/** What the charts show, gathered from the answer, its sheet and the library. */

import { hasCurves, trustedOf } from "../answer/outcome.js";
import { decimal, percentStrong } from "../numbers.js";
import { rfOf } from "../sheet/geometry.js";
import { shortened } from "./frame.js";
import { COLOURS } from "../sheet/sheet.js";
import { measuredPair } from "../where/facts.js";

/**
 * @typedef {object} Point a reading from a plate
 * @property {number} percent
 * @property {number} rf
 * @property {"labelled" | "taken"} by whether somebody said which compound it is, or the answer takes it for one
 *
 * @typedef {object} Compound
 * @property {string} name
 * @property {string} short the name as it fits into the drawing
 * @property {number} colour of 0 to 5
 * @property {number[]} rf to be expected at each share
 * @property {number[]} low end of the 90 % band
 * @property {number[]} high end of the 90 % band
 * @property {Point[]} points
 *
 * @typedef {object} ChartData
 * @property {any} advice
 * @property {any} curves as the server sent them
 * @property {number[]} shares of the stronger solvent, % v/v
 * @property {Compound[]} compounds
 * @property {[number, number] | undefined} window of Rf
 * @property {{from: number, to: number, partly: boolean}} trusted shares
 */

/** @param {import("../state.js").State} state @returns {ChartData | undefined} */
export function chartData(state) {
  const { answer, sheet } = state.answered ?? {};
  if (!hasCurves(answer) || !sheet) return undefined;
  const { advice, curves } = answer;
  const shares = curves.percentStrong;
  const names = sheet.spots.map((spot) => spot.name.trim());
  const [low, high] = sheet.window.map(decimal);
  return {
    advice,
    curves,
    shares,
    compounds: Object.entries(/** @type {Record<string, any>} */ (curves.spots)).map(([name, curve], i) => {
      const at = names.indexOf(name);
      const place = at < 0 ? i : at;
      const short = shortened(name, names.length > 1 ? place + 1 : undefined);
      return { name, short, colour: place % COLOURS, ...curve, points: pointsOf(state, sheet.spots[at]?.id, name) };
    }),
    window: low !== undefined && high !== undefined ? [low, high] : undefined,
    trusted: trustedOf(measuredPair(advice, state.published.library), shares[0], shares.at(-1)),
  };
}

/**
 * The readings of a compound on plates run in the pair the advice is for. A reading nobody labelled counts for the compound the
 * server takes it for.
 * @param {import("../state.js").State} state @param {string | undefined} id @param {string} name
 */
function pointsOf(state, id, name) {
  const { answer, sheet, places } = /** @type {import("../state.js").Answered} */ (state.answered);
  const taken = new Set(
    (answer.whichIsWhich ?? [])
      .filter((/** @type {any} */ each) => each.guess?.includes(name))
      .map((/** @type {any} */ each) => places.get(`${each.run}.${each.index}`)),
  );
  /** @type {Point[]} */
  const points = [];
  for (const plate of sheet.plates) {
    const percent = percentStrong(plate.eluent);
    if (percent === undefined || plate.weak !== answer.advice.weak.id || plate.strong !== answer.advice.strong.id) continue;
    for (const reading of plate.lanes.flatMap((lane) => lane.readings)) {
      const rf = rfOf(plate, reading);
      const by = reading.spots.length ? "labelled" : "taken";
      const its = by === "labelled" ? reading.spots.includes(id ?? "") : taken.has(reading.id);
      if (its && rf !== undefined && rf >= 0 && rf <= 1) points.push({ percent, rf, by });
    }
  }
  return points;
}
