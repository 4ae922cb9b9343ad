// @ts-check
/** A plate of a worksheet in true millimetres, to be measured with a ruler: black on white, each spot an outline with its letter beside it. */

import { draw } from "../../dom.js";
import { say } from "../../texts.js";

/**
 * @typedef {object} Plate lengths in mm, heights from its lower edge
 * @property {number} widthMm @property {number} heightMm @property {number} startMm @property {number} frontMm
 * @property {string[]} lanes
 * @property {{lane: number, letter: string, centreMm: number, acrossMm: number, alongMm: number}[]} spots
 */

/** Room around the plate, and beside it for the names of its lines [mm]. */
const EDGE = 0.5;
const WORDS = 14;
const LETTER_MM = 3;
const TICK_MM = 1.2;
/** The line by which the print is checked [mm]. */
const CHECK = 50;

/** @param {string} id @param {Plate} plate */
export function plateInMm(id, { widthMm, heightMm, startMm, frontMm, lanes, spots }) {
  const [width, height] = [widthMm + EDGE + WORDS, heightMm + 2 * EDGE];
  const y = (/** @type {number} */ mm) => EDGE + heightMm - mm;
  const x = (/** @type {number} */ lane) => EDGE + (widthMm * (lane + 0.5)) / lanes.length;
  return draw(
    "svg",
    { id, viewBox: `0 0 ${width} ${height}`, width: `${width}mm`, height: `${height}mm`, role: "img", "aria-label": say("later.lesson-worksheet-plate", { width: widthMm, height: heightMm }), class: "worksheet-plate" },
    draw("rect", { class: "edge", x: EDGE, y: EDGE, width: widthMm, height: heightMm }),
    line(EDGE, y(startMm), EDGE + widthMm, y(startMm)),
    line(EDGE, y(frontMm), EDGE + widthMm, y(frontMm)),
    words(EDGE + widthMm + 1.5, y(startMm) + 1, say("later.lesson-worksheet-start")),
    words(EDGE + widthMm + 1.5, y(frontMm) + 1, say("later.lesson-worksheet-front")),
    ...lanes.flatMap((lane, i) => [
      line(x(i), y(startMm) - TICK_MM, x(i), y(startMm) + TICK_MM),
      draw("text", { class: "words", x: x(i), y: y(startMm) + 5, "font-size": LETTER_MM, "text-anchor": "middle" }, lane),
    ]),
    ...spots.flatMap(({ lane, letter, centreMm, acrossMm, alongMm }) => [
      draw("ellipse", { class: "spot", cx: x(lane), cy: y(centreMm), rx: acrossMm / 2, ry: alongMm / 2 }),
      words(x(lane) + acrossMm / 2 + 0.8, y(centreMm) + 1, letter),
    ]),
  );
}

/** The line to measure, with an end mark at either end. @param {string} id */
export function checkLine(id) {
  const [width, height] = [CHECK + 2, 4];
  return draw(
    "svg",
    { id, viewBox: `0 0 ${width} ${height}`, width: `${width}mm`, height: `${height}mm`, "aria-hidden": "true", class: "worksheet-check" },
    line(1, 2, 1 + CHECK, 2),
    line(1, 0.5, 1, 3.5),
    line(1 + CHECK, 0.5, 1 + CHECK, 3.5),
  );
}

/** @param {number} x1 @param {number} y1 @param {number} x2 @param {number} y2 */
const line = (x1, y1, x2, y2) => draw("line", { x1, y1, x2, y2, class: "line" });

/** @param {number} x @param {number} y @param {string} text */
const words = (x, y, text) => draw("text", { class: "words", x, y, "font-size": LETTER_MM }, text);
