// @ts-check
/** Under the forecast, for each compound: from start to end a bar, its middle a stroke, each with its 90 % band as a line between two ends; an arrow where it goes on beyond the axis. */

import { draw } from "../dom.js";

/** @typedef {import("./picture.js").Leaving} Leaving @typedef {import("./picture.js").Across} Across */

/** Height of a row: less where there are many. */
const rowHeight = (/** @type {number} */ count) => (count > 3 ? 33 : 38);
const THICK = 9;
/** How far the bands of start, middle and end lie from the bar: no two on one line, for they may overlap. */
const OFFSETS = { startMl: -9, middleMl: 10, endMl: 15 };

/** @param {number} count of compounds */
export const barsHeight = (count) => rowHeight(count) * count + 6;

/** @param {Leaving[]} all @param {Across} across @param {number} from @returns {Element[]} */
export function barsOf(all, across, from) {
  return all.flatMap((each, i) => row(each, across, from + rowHeight(all.length) * (i + 0.45)));
}

/** @param {Leaving} each @param {Across} across @param {number} y */
function row({ short, colour, band }, { x, left, right }, y) {
  const edge = right;
  const held = (/** @type {number} */ ml) => Math.min(edge, Math.max(left, x(ml)));
  const look = `chart-colour-${colour}`;
  const [start, middle, end] = [band.startMl, band.middleMl, band.endMl].map(({ value }) => held(value));
  const ideal = x(band.idealMl);
  return [
    draw("text", { class: "chart-name", x: left - 6, y: y + 4, "text-anchor": "end" }, short),
    draw("line", { class: "column-row", x1: left, x2: right, y1: y, y2: y }),
    ...(x(band.startMl.value) < edge ? [draw("rect", { class: `column-bar ${look}`, x: start, y: y - THICK / 2, width: Math.max(1, end - start), height: THICK, fill: `url(#column-hatch-${colour})` })] : []),
    ...(x(band.middleMl.value) <= edge ? [draw("line", { class: `column-middle ${look}`, x1: middle, x2: middle, y1: y - THICK / 2 - 2, y2: y + THICK / 2 + 2 })] : []),
    ...(x(band.endMl.value) > edge ? [draw("path", { class: `column-beyond ${look}`, d: `M${edge + 3},${y - THICK / 2}L${edge + 10},${y}L${edge + 3},${y + THICK / 2}Z` })] : []),
    ...Object.entries(OFFSETS).flatMap(([name, offset]) => whisker(held(band[name].low), held(band[name].high), edge, y + offset, look)),
    ...(ideal <= edge ? [draw("circle", { class: "column-ideal", cx: ideal, cy: y, r: 3.6 })] : []),
  ];
}

/** A line between two ends; an arrow where it goes on beyond the drawing, and nothing where all of it lies there. @param {number} low @param {number} high @param {number} edge @param {number} y @param {string} look */
function whisker(low, high, edge, y, look) {
  if (low >= edge) return [];
  const end = high < edge ? `M${high},${y - 2.5}V${y + 2.5}` : `M${edge - 4},${y - 3}L${edge},${y}L${edge - 4},${y + 3}`;
  return [draw("path", { class: `column-band ${look}`, d: `M${low},${y - 2.5}V${y + 2.5}M${low},${y}H${high}${end}` })];
}
