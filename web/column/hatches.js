// @ts-check
/** Hatching that tells compounds apart without colour: strokes of another direction for each, or dots. */

import { draw } from "../dom.js";

const STROKES = ["M0,6L6,0", "M0,0L6,6", "M0,3H6", "M3,0V6", "M3,2.2V3.8", "M0,0L6,6M0,6L6,0"];

/** All of them, to be filled with by their number. */
export const hatches = () =>
  draw(
    "defs",
    {},
    ...STROKES.map((d, i) =>
      draw(
        "pattern",
        { id: `column-hatch-${i}`, width: 6, height: 6, patternUnits: "userSpaceOnUse" },
        draw("rect", { class: `column-hatch-ground chart-colour-${i}`, width: 6, height: 6 }),
        draw("path", { class: `column-hatch chart-colour-${i}`, d }),
      ),
    ),
  );
