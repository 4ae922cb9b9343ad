// @ts-check
/** One curve of values over the shares. */

import { d3 } from "../d3.js";
import { draw } from "../dom.js";
import { CHARACTER, pieces, valueAt } from "./frame.js";

/** @typedef {import("./data.js").ChartData} ChartData @typedef {import("./frame.js").Frame} Frame */

/** Height of an entry of the key. */
const ROW = 15;

/** @param {ChartData} data @param {Frame} frame @param {number[]} values @param {string} look */
export function line({ shares, trusted }, frame, values, look) {
  const at = (/** @type {number} */ percent, /** @type {number} */ i) => [frame.x(percent), frame.y(valueAt(values, i))];
  return pieces(shares, at, trusted).map(({ beyond, points }) =>
    draw("path", { class: `chart-curve ${look}${beyond ? " chart-beyond" : ""}`, d: d3.line()(points) }),
  );
}

/** Which curve is which, in the upper corner the chances leave free. @param {ChartData} data @param {Frame} frame @param {[string, string][]} entries look and name */
export function key({ shares, curves }, { x, area }, entries) {
  const middle = (area.left + area.right) / 2;
  const most = (/** @type {(share: number) => boolean} */ side) =>
    Math.max(...curves.chance.filter((/** @type {number} */ _, /** @type {number} */ i) => side(shares[i])));
  const width = 28 + CHARACTER * Math.max(...entries.map(([, name]) => name.length));
  const left = most((share) => x(share) < area.left + width) <= most((share) => x(share) > middle) ? area.left + 8 : area.right - width;
  return entries.flatMap(([look, name], i) => [
    draw("path", { class: `chart-curve ${look}`, d: `M${left},${area.top + 10 + ROW * i}h16` }),
    draw("text", { class: "chart-name", x: left + 22, y: area.top + 14 + ROW * i }, name),
  ]);
}

/** @param {Frame} frame @param {number} percent @param {number} value */
export const dot = ({ x, y }, percent, value) => draw("circle", { class: "chart-dot chart-first", cx: x(percent), cy: y(value), r: 4 });
