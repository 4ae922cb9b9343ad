// @ts-check
/** Draws a plate of a lesson: computed spots as soft clouds, read or placed ones with an edge, lines in pencil, the window between its ticks. */

import { draw } from "../dom.js";
import { laneTicks, layer, pencilLine } from "../plate/layer.js";

/**
 * @typedef {{height: number, width: number, start: number, front: number}} Size of a plate, heights from its lower edge [mm]
 *
 * @typedef {object} Spot
 * @property {string} id
 * @property {number} lane counted from 0
 * @property {number} mm height of the centre
 * @property {number} across @property {number} along its size [mm]
 * @property {string} colour "colour-0" to "colour-5"
 * @property {string} letters
 * @property {"computed" | "seen" | "placed"} kind soft, with an edge, or a ring
 * @property {[number, number]} [band] from where to where it may lie [mm]
 * @property {number[]} [cloud] heights at which plausible plates have it [mm]
 */

/** The plate that lessons begin with. @type {Size} */
export const USUAL = { height: 70, width: 40, start: 10, front: 62 };

/** @param {Size} size @param {number} rf */
export const mmOf = ({ start, front }, rf) => start + rf * (front - start);

/** @param {Size} size @param {number} lane @param {number} lanes */
export const laneX = ({ width }, lane, lanes) => (width * (lane + 0.5)) / lanes;

/**
 * @param {object} plate
 * @param {string} plate.id
 * @param {Size} plate.size
 * @param {number} plate.lanes
 * @param {Spot[]} plate.spots
 * @param {string} plate.label what it shows, in words
 * @param {number} [plate.pixel] mm that a pixel shows at most: strokes and letters keep their size
 * @param {[string, string]} [plate.window] Rf from, to; none where it is not shown
 * @param {number} [plate.wet] how far the layer is wet [mm]; all of it up to the front where it is left out
 * @param {import("../dom.js").Attributes} [plate.further]
 * @param {SVGElement[]} [plate.over] what is drawn over it
 */
export function lessonPlate({ id, size, lanes, spots, label, pixel = size.height / 300, window = ["0.2", "0.8"], wet, further = {}, over = [] }) {
  const run = size.front - size.start;
  const y = (/** @type {number} */ mm) => size.height - mm;
  const line = (/** @type {number} */ mm) => draw("g", { transform: `translate(0 ${y(mm).toFixed(3)})`, "aria-hidden": "true" }, ...pencilLine(size.width, pixel));
  const ticks = Array.from({ length: lanes }, (_, lane) => laneX(size, lane, lanes));
  return draw(
    "svg",
    { id, class: "plate lesson-plate", viewBox: `0 0 ${size.width} ${size.height}`, role: "img", "aria-label": label, ...further },
    layer(id, { ...size, run }, pixel, window),
    wet !== undefined && draw("rect", { class: "wet", x: 0, y: y(wet), width: size.width, height: wet }),
    draw("g", { "aria-hidden": "true", transform: `translate(0 ${y(size.start)})` }, laneTicks(ticks, pixel)),
    line(size.start),
    line(size.front),
    ...spots.map((spot) => drawnSpot(spot, laneX(size, spot.lane, lanes), y, pixel)),
    ...over,
  );
}

/** @param {Spot} spot @param {number} x @param {(mm: number) => number} y @param {number} pixel */
function drawnSpot({ id, mm, across, along, colour, letters, kind, band, cloud }, x, y, pixel) {
  return draw(
    "g",
    { id, class: `lesson-spot ${kind} ${colour}` },
    band && draw("rect", { class: "lesson-band", x: x - across / 2, y: y(band[1]), width: across, height: Math.max(0, band[1] - band[0]), rx: across / 2 }),
    ...(cloud ?? []).map((each) => draw("ellipse", { class: "lesson-cloud", cx: x, cy: y(each).toFixed(3), rx: across / 2, ry: along / 2 })),
    draw("ellipse", { class: "lesson-body", cx: x, cy: y(mm).toFixed(3), rx: across / 2, ry: along / 2, "stroke-width": 1.4 * pixel }),
    draw("text", { class: "letter", x, y: (y(mm) + 4.5 * pixel).toFixed(3), "text-anchor": "middle", "font-size": 13 * pixel, "stroke-width": 3 * pixel, "aria-hidden": "true" }, letters),
  );
}
