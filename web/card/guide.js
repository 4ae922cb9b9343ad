// @ts-check
/** A drawing of the plate in its true size, to lay the plate on: lines, lanes, window, and a line of 50 mm to check the print by. */

import { draw, make } from "../dom.js";
import { decimal } from "../numbers.js";
import { lines } from "../sheet/geometry.js";
import { say } from "../texts.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet */

/** The line by which the print is checked, in mm. */
const CHECK = 50;
/** The largest plate whose drawing fits on A4 as on Letter, margins and words beside it counted, in mm. */
const LARGEST = { width: 160, height: 220 };
/** Room for the words beside the plate, in mm. */
const SIDE = { left: 3, right: 21 };
/** Room above the plate, and below it for the line to check, in mm. */
const ABOVE = 3;
const BELOW = 9;
const WORDS_MM = 2.9;
const LEAST_LANES = 2;

/** What to measure, and how. @param {Sheet} sheet */
export function guideView(sheet) {
  const plate = sheet.plates.at(-1);
  if (!plate) return undefined;
  const size = lines(plate);
  const named = { width: size.width, height: size.height };
  if (size.width > LARGEST.width || size.height > LARGEST.height) {
    return make("p", { id: "guide", class: "decisive" }, say("page.guide-too-large", { ...named, widest: LARGEST.width, highest: LARGEST.height }));
  }
  return make(
    "figure",
    { id: "guide", class: "guide" },
    drawing(size, Math.max(LEAST_LANES, plate.lanes.length), sheet.window.map((edge) => decimal(edge) ?? NaN), say("page.guide-shown", named)),
    make("figcaption", {}, make("p", { class: "only-screen" }, say("page.guide-screen")), make("p", {}, say("page.guide-check", { length: CHECK }))),
  );
}

/**
 * @param {ReturnType<typeof lines>} size
 * @param {number} lanes
 * @param {number[]} window Rf from, to
 * @param {string} label
 */
function drawing(size, lanes, window, label) {
  const width = Math.max(SIDE.left + size.width + SIDE.right, CHECK + 4);
  const height = ABOVE + size.height + BELOW;
  const up = (/** @type {number} */ mm) => ABOVE + size.height - mm;
  const [left, right] = [SIDE.left, SIDE.left + size.width];
  return draw(
    "svg",
    { viewBox: `0 0 ${width} ${height}`, width: `${width}mm`, height: `${height}mm`, role: "img", "aria-label": label, class: "true-size" },
    draw("rect", { x: left, y: ABOVE, width: size.width, height: size.height, class: "outline" }),
    ...edges(window, size, { left, right, up }),
    line(left, up(size.start), right, up(size.start), "pencil-line"),
    words(right + 1.5, up(size.start) + 1, say("page.guide-start", { mm: size.start })),
    ...Array.from({ length: lanes }, (_, i) => {
      const x = left + (size.width * (i + 0.5)) / lanes;
      return [
        line(x, up(size.start) - 1.5, x, up(size.start) + 1.5, "pencil-line"),
        draw("text", { x, y: up(size.start) + 5, "font-size": WORDS_MM, "text-anchor": "middle", class: "words" }, String(i + 1)),
      ];
    }).flat(),
    line(left, up(size.front), right, up(size.front), "pencil-line dashed"),
    words(right + 1.5, up(size.front) + 1, say("page.guide-stop", { mm: size.front })),
    ...check(height),
  );
}

/** Faint marks across the plate's sides where the window ends, to be seen beside a plate laid on. @param {number[]} window @param {ReturnType<typeof lines>} size @param {{left: number, right: number, up: (mm: number) => number}} at */
function edges(window, size, { left, right, up }) {
  return window
    .filter((rf) => rf >= 0 && rf <= 1)
    .flatMap((rf, i) => {
      const y = up(size.start + rf * size.run);
      return [
        line(left - 1.5, y, left + 2, y, "faint-line"),
        line(right - 2, y, right + 1.5, y, "faint-line"),
        words(left + 3, y + (i === 0 ? 2.4 : 0.4), say("page.guide-rf", { rf })),
      ];
    });
}

/** The line to measure, with an end mark at either end. @param {number} height of the drawing */
function check(height) {
  const y = height - 2.5;
  return [
    line(2, y, 2 + CHECK, y, "check-line"),
    line(2, y - 2, 2, y + 2, "check-line"),
    line(2 + CHECK, y - 2, 2 + CHECK, y + 2, "check-line"),
  ];
}

/** @param {number} x1 @param {number} y1 @param {number} x2 @param {number} y2 @param {string} kind */
const line = (x1, y1, x2, y2, kind) => draw("line", { x1, y1, x2, y2, class: kind });

/** @param {number} x @param {number} y @param {string} text */
const words = (x, y, text) => draw("text", { x, y, "font-size": WORDS_MM, class: "words" }, text);
