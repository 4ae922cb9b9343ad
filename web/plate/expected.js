// @ts-check
/** The plate to expect: a ghost of the last one, with clouds as high as 9 of 10 plates would show each spot. */

import { draw } from "../dom.js";
import { lines } from "../sheet/geometry.js";
import { USUAL_PLATE } from "../sheet/sheet.js";
import { labelPlaces } from "./labels.js";
import { laneTicks, layer, pencilLine, pixelMm } from "./layer.js";
import { colourOf, shortName } from "./names.js";

/**
 * @typedef {import("../sheet/sheet.js").Sheet} Sheet
 * @typedef {{spot: string, rf: number, low: number, high: number}} Expected
 */

/** The least size of the ghost on the page, in px, and of what is on it. */
const BOX = { across: 128, high: 224 };
const CLOUD_PX = 11;
const LETTER_PX = 13;

/**
 * @param {Sheet} sheet
 * @param {Expected[]} spots
 * @param {string} label what it shows, in words
 * @param {string[]} fellow the compounds that are pointed at
 */
export function expectedPlate(sheet, spots, label, fellow) {
  const id = "ghost";
  const at = lines(sheet.plates.at(-1) ?? USUAL_PLATE);
  const pixel = pixelMm(at, BOX);
  const known = spots.flatMap((each) => {
    const spot = sheet.spots.find((one) => one.name.trim() === each.spot);
    return spot ? [{ ...each, id: spot.id, letters: shortName(sheet, spot.id), colour: colourOf(sheet, spot.id) }] : [];
  });
  const lanes = known.map((_, i) => (at.width * (i + 0.5)) / known.length);
  const r = Math.max(0.45 * CLOUD_PX * pixel, Math.min(CLOUD_PX * pixel, (0.45 * at.width) / Math.max(1, known.length)));
  const middles = known.map((each, i) => ({ x: lanes[i], y: yOf(at, each.rf), r: 0.8 * r, letters: each.letters }));
  const places = labelPlaces(middles, { width: at.width, size: LETTER_PX * pixel });
  return draw(
    "svg",
    { id, class: "plate expected", viewBox: `0 0 ${at.width} ${at.height}`, role: "img", "aria-label": label },
    draw("defs", {}, ...[...new Set(known.map((each) => each.colour))].map((colour) => cloudFill(id, colour))),
    layer(id, at, pixel, sheet.window),
    draw("g", { transform: `translate(0 ${at.height - at.start})` }, laneTicks(lanes, pixel), ...pencilLine(at.width, pixel)),
    draw("g", { transform: `translate(0 ${at.height - at.front})` }, ...pencilLine(at.width, pixel)),
    ...known.map((each, i) => cloud(id, at, each, middles[i], { r, pixel, fellow: fellow.includes(each.id) })),
    ...known.map((each, i) => letter(id, each, middles[i], places[i], pixel)),
  );
}

/** @param {import("./layer.js").Lines} at @param {number} rf */
const yOf = (at, rf) => at.height - at.start - Math.min(1, Math.max(0, rf)) * at.run;

/** @param {string} id @param {string} colour */
function cloudFill(id, colour) {
  const stop = (/** @type {number} */ offset, /** @type {number} */ opacity) => draw("stop", { class: colour, offset, "stop-opacity": opacity });
  return draw("radialGradient", { id: `${id}-${colour}` }, stop(0, 0.85), stop(0.35, 0.6), stop(0.7, 0.25), stop(1, 0));
}

/**
 * @param {string} id @param {import("./layer.js").Lines} at @param {Expected & {id: string, colour: string}} each @param {{x: number}} middle
 * @param {{r: number, pixel: number, fellow: boolean}} as
 */
function cloud(id, at, each, { x }, { r, pixel, fellow }) {
  const [top, bottom] = [yOf(at, each.high), yOf(at, each.low)];
  return draw("ellipse", {
    id: `${id}-cloud-${each.id}`,
    class: fellow ? "cloud fellow" : "cloud",
    cx: x,
    cy: (top + bottom) / 2,
    rx: 1.25 * r,
    ry: Math.max(2 * pixel, (bottom - top) / 2),
    fill: `url(#${id}-${each.colour})`,
    "stroke-width": 1.5 * pixel,
  });
}

/** @param {string} id @param {{id: string, letters: string}} each @param {{x: number, y: number}} middle @param {import("./labels.js").Place} place @param {number} pixel */
function letter(id, each, { x, y }, place, pixel) {
  return draw(
    "g",
    { id: `${id}-letter-${each.id}`, class: "slides", transform: `translate(${x.toFixed(3)} ${y.toFixed(3)})` },
    place.far && draw("path", { class: "leader", d: `M0 0L${place.dx} ${place.dy}`, "stroke-width": 0.6 * pixel }),
    draw(
      "text",
      { class: "letter", x: place.dx.toFixed(3), y: (place.dy + 0.35 * LETTER_PX * pixel).toFixed(3), "text-anchor": place.anchor, "font-size": LETTER_PX * pixel, "stroke-width": 3 * pixel },
      each.letters,
    ),
  );
}
