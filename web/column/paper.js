// @ts-check
/** Empty lanes to be filled with a pen, one for each tube; on paper only. */

import { draw, make } from "../dom.js";
import { say } from "../texts.js";

/** Lanes in a row, broad ones for few and narrow ones for many, and rows, that fit beside the rest on one page. */
const BROAD_ROW = 25;
const NARROW_ROW = 40;
const MOST_ROWS = 3;
const WIDTH = 760;
const LANE_HEIGHT = 62;
const LOW_LANE = 48;
const NUMBER = 14;

/** @param {any} plan */
export function emptyTubes({ fractions, cut }) {
  const rows = Math.min(MOST_ROWS, Math.ceil(fractions / (fractions <= 2 * BROAD_ROW ? BROAD_ROW : NARROW_ROW)));
  const inRow = Math.ceil(fractions / rows);
  const width = WIDTH / Math.max(inRow, BROAD_ROW / 1.5);
  const tall = rows > 1 ? LOW_LANE : LANE_HEIGHT;
  const height = rows * (tall + NUMBER + 6);
  const lanes = Array.from({ length: fractions }, (_, i) => {
    const [x, y] = [(i % inRow) * width, Math.floor(i / inRow) * (tall + NUMBER + 6)];
    const kept = cut && i + 1 >= cut.fromFraction && i + 1 <= cut.toFraction;
    return [
      draw("rect", { class: "paper-lane", x: x + 1, y: y + 1, width: width - 2, height: tall }),
      draw("line", { class: "paper-start", x1: x + 3, x2: x + width - 3, y1: y + tall - 9, y2: y + tall - 9 }),
      draw("text", { class: kept ? "paper-number kept" : "paper-number", x: x + width / 2, y: y + tall + NUMBER - 1, "text-anchor": "middle" }, String(i + 1)),
    ];
  });
  return make(
    "figure",
    { id: "plan-tubes", class: "plan-tubes only-paper" },
    make("figcaption", {}, say("later.elution-by-hand")),
    draw("svg", { viewBox: `0 0 ${WIDTH} ${height}`, role: "img", "aria-label": say("later.elution-by-hand") }, ...lanes.flat()),
  );
}
