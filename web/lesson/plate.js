// @ts-check
/** Draws a plate of a lesson: computed spots as soft clouds, read or placed ones with an edge, lines in pencil, the window between its ticks. */

import { draw } from "../dom.js";
import { labelPlaces } from "../plate/labels.js";
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

/** What each lane takes of the width [mm]: the outer ones stand 5 mm from the sides, and 8 mm between two are kept with ease. */
const LANE = 10;

/** The plate for so many lanes: the usual one, wider where its lanes would stand too near. @param {number} lanes @returns {Size} */
export const sizeFor = (lanes) => ({ ...USUAL, width: Math.max(USUAL.width, LANE * lanes) });

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
  const soft = [...new Set(spots.filter(({ kind, cloud }) => kind === "computed" || cloud).map(({ colour }) => colour))];
  const places = letterPlaces(spots, size, lanes, pixel);
  return draw(
    "svg",
    { id, class: "plate lesson-plate", viewBox: `0 0 ${size.width} ${size.height}`, role: "img", "aria-label": label, ...further },
    draw("defs", {}, ...soft.map((colour) => softColour(id, colour))),
    layer(id, { ...size, run }, pixel, window),
    wet !== undefined && draw("rect", { class: "wet", x: 0, y: y(wet), width: size.width, height: wet }),
    draw("g", { "aria-hidden": "true", transform: `translate(0 ${y(size.start)})` }, laneTicks(ticks, pixel)),
    line(size.start),
    line(size.front),
    ...spots.map((spot, i) => drawnSpot(spot, { id, x: laneX(size, spot.lane, lanes), y, pixel, place: places[i] })),
    ...over,
  );
}

/** A colour that fades towards the edge, so that nobody takes what is computed for what was seen. @param {string} id @param {string} colour */
const softColour = (id, colour) =>
  draw("radialGradient", { id: `${id}-soft-${colour}`, class: `lesson-soft ${colour}` }, ...FADING.map(([offset, opacity]) => draw("stop", { offset, "stop-opacity": opacity })));

/** How a cloud fades from its middle. */
const FADING = [[0, 0.85], [0.35, 0.68], [0.7, 0.3], [1, 0]];

/** How much wider than the spot its soft edge is drawn: at its half height it is as wide as the spot. */
const SOFTER = 1.35;

/** @typedef {import("../plate/labels.js").Place | undefined} LetterPlace none where the letters stand on the spot */

/**
 * Letters stand beside their spots, where none lies on another; on a spot only where it is so large that it is seen all the same.
 * @param {Spot[]} spots @param {Size} size @param {number} lanes @param {number} pixel
 * @returns {LetterPlace[]}
 */
function letterPlaces(spots, size, lanes, pixel) {
  const letter = LETTER * pixel;
  const laid = spots.map((spot) => ({ x: laneX(size, spot.lane, lanes), y: size.height - spot.mm, r: spot.across / 2, letters: spot.letters }));
  const crowded = (/** @type {Spot} */ one) => spots.some((other) => other !== one && one.lane === other.lane && Math.abs(one.mm - other.mm) < letter);
  const beside = spots.flatMap((spot, i) => (spot.across < LARGE * letter || crowded(spot) ? [i] : []));
  const found = labelPlaces(beside.map((i) => laid[i]), { width: size.width, size: letter });
  return spots.map((_, i) => (beside.includes(i) ? found[beside.indexOf(i)] : undefined));
}

/** From how many sizes of a letter on a spot is large. */
const LARGE = 2;

/** The size of the letters [px]. */
const LETTER = 13;

/** @param {Spot} spot @param {{id: string, x: number, y: (mm: number) => number, pixel: number, place: LetterPlace}} at */
function drawnSpot({ id, mm, across, along, colour, letters, kind, band, cloud }, { id: plate, x, y, pixel, place }) {
  const soft = `url(#${plate}-soft-${colour})`;
  const wider = kind === "computed" ? SOFTER : 1;
  const lead = place?.far && draw("path", { class: "lead", d: `M${x} ${y(mm).toFixed(3)}l${place.dx.toFixed(3)} ${place.dy.toFixed(3)}`, "stroke-width": 0.8 * pixel });
  return draw(
    "g",
    { id, class: `lesson-spot ${kind} ${colour}` },
    band && draw("rect", { class: "lesson-band", x: x - across / 2, y: y(band[1]), width: across, height: Math.max(0, band[1] - band[0]), rx: across / 2 }),
    ...(cloud ?? []).map((each) => draw("ellipse", { class: "lesson-cloud", fill: soft, cx: x, cy: y(each).toFixed(3), rx: (SOFTER * across) / 2, ry: (SOFTER * along) / 2 })),
    draw("ellipse", {
      class: "lesson-body",
      ...(kind === "computed" ? { fill: soft } : {}),
      cx: x,
      cy: y(mm).toFixed(3),
      rx: (wider * across) / 2,
      ry: (wider * along) / 2,
      "stroke-width": 1.4 * pixel,
    }),
    lead,
    draw(
      "text",
      {
        class: "letter",
        x: (x + (place?.dx ?? 0)).toFixed(3),
        y: (y(mm) + (place?.dy ?? 0) + 0.35 * LETTER * pixel).toFixed(3),
        "text-anchor": place?.anchor ?? "middle",
        "font-size": LETTER * pixel,
        "stroke-width": 3 * pixel,
        "aria-hidden": "true",
      },
      letters,
    ),
  );
}
