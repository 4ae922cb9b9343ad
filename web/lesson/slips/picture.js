// @ts-check
/** The two plates side by side, with the lengths drawn as the pair measures them. */

import { draw, make } from "../../dom.js";
import { say } from "../../texts.js";
import { USUAL, lessonPlate } from "../plate.js";
import { strongName } from "./told.js";

/** @param {import("../state.js").State} state @param {any} answer */
export function plates(state, answer) {
  return make(
    "div",
    { id: "lesson-slips-plates", class: "slips-plates" },
    figure(state, "right", answer.right, answer.careful, answer),
    figure(state, "seen", answer.seen, answer.noted[0], answer),
  );
}

/** @param {import("../state.js").State} state @param {"right" | "seen"} which @param {any} plate @param {any} noted @param {any} answer */
function figure(state, which, plate, noted, answer) {
  const size = { ...USUAL, start: plate.startMm, front: plate.frontMm };
  const pixel = size.height / 300;
  const lanes = plate.spots.length;
  const shown = plate.spots.map((/** @type {any} */ spot, /** @type {number} */ place) => ({ spot, place })).filter((/** @type {any} */ each) => each.spot.look !== "lost" || plate.smear);
  const spots = shown.map((/** @type {any} */ { spot, place }) => ({
    id: `lesson-slips-${which}-${place}`,
    lane: (spot.leftMm * lanes) / size.width - 0.5,
    mm: spot.mm,
    across: spot.acrossMm,
    along: spot.alongMm,
    colour: `colour-${place}`,
    letters: spot.name.slice(0, 3),
    kind: spot.look === "faint" ? "computed" : "seen",
  }));
  const label = say(`later.lesson-slips-label-${which}`, { spots: plate.spots.map((/** @type {any} */ spot) => say(`later.lesson-slips-look-${spot.look}`, spot)).join(", ") });
  const over = [
    ...(plate.smear ? [smear(size, plate.smear)] : []),
    ...(plate.originMm !== plate.startMm || (answer.kind === "size" && which === "seen") ? origins(size, plate, pixel) : []),
    ...(answer.kind === "exact" ? lengths(size, plate, noted, pixel) : []),
  ];
  return make(
    "figure",
    { id: `lesson-slips-figure-${which}`, class: "slips-figure" },
    make("figcaption", {}, make("b", {}, say(`later.lesson-slips-${which}`)), make("span", { class: "aside" }, say("later.lesson-slips-eluent", { percent: plate.percentStrong, strong: strongName(state) }))),
    lessonPlate({ id: `lesson-slips-plate-${which}`, size, lanes, spots, label, pixel, wet: plate.surfaceMm, over, further: { "data-kind": answer.kind } }),
  );
}

/** @param {{height: number, width: number}} size @param {[number, number]} from */
const smear = ({ height, width }, [low, high]) => draw("rect", { class: "slips-smear", "aria-hidden": "true", x: 1, width: width - 2, y: height - high, height: high - low });

/** Dots where the sample was put, when that is not on the line or not in the lane. @param {{height: number}} size @param {any} plate @param {number} pixel */
const origins = ({ height }, plate, pixel) =>
  plate.spots.map((/** @type {any} */ spot) => draw("circle", { class: "slips-origin", "aria-hidden": "true", cx: spot.leftMm, cy: height - plate.originMm, r: 2.5 * pixel }));

/** Each spot's height and that of the front, from where they are measured. @param {{height: number, width: number}} size @param {any} plate @param {any} noted @param {number} pixel */
function lengths({ height, width }, plate, noted, pixel) {
  const from = height - noted.startMm;
  const foot = 3.5 * pixel;
  const upright = (/** @type {number} */ x, /** @type {number} */ mm) =>
    draw("path", { class: "slips-length", "stroke-width": 1.2 * pixel, d: `M${x - foot} ${from}h${2 * foot}M${x} ${from}V${height - mm}M${x - foot} ${height - mm}h${2 * foot}` });
  const letter = 12 * pixel;
  const text = (/** @type {{x: number, mm: number, spot?: any}} */ { x, mm, spot }) => {
    const middle = (noted.startMm + mm) / 2;
    const before = spot && spot.mm - spot.alongMm / 2 < middle + letter / 2; // the spot lies where the number would
    const at = { x: x + (before ? -2.5 : 2.5) * pixel, y: height - middle + 0.35 * letter, "text-anchor": before ? "end" : "start" };
    return draw("text", { class: "slips-mm", ...at, "font-size": letter, "stroke-width": 3 * pixel }, (mm - noted.startMm).toFixed(0));
  };
  const beside = (/** @type {number} */ place) => plate.spots[place].leftMm - plate.spots[place].acrossMm / 2 - 4 * pixel; // letters stand on the right
  const measured = noted.spots.flatMap((/** @type {any} */ spot, /** @type {number} */ place) => (spot.centreMm === undefined ? [] : [{ x: beside(place), mm: spot.centreMm, spot: plate.spots[place] }]));
  const all = [...measured, { x: width + 8 * pixel, mm: noted.frontMm }];
  return [draw("g", { class: "slips-lengths", "aria-hidden": "true" }, ...all.map(({ x, mm }) => upright(x, mm)), ...all.map(text))];
}
