// @ts-check
/** Rf against the share of the stronger solvent: each compound's curve with its band, the window, the readings. */

import { shareText } from "../answer/shares.js";
import { d3 } from "../d3.js";
import { draw } from "../dom.js";
import { say } from "../texts.js";
import { inside } from "./facts.js";
import { CHARACTER, axes, frameOf, pieces, spread, valueAt } from "./frame.js";

/** @typedef {import("./data.js").ChartData} ChartData @typedef {import("./data.js").Compound} Compound @typedef {import("./frame.js").Frame} Frame */

/** Height of a line of labels. */
const LINE = 13;

const SYMBOLS = [d3.symbolCircle, d3.symbolSquare, d3.symbolTriangle, d3.symbolDiamond, d3.symbolCross, d3.symbolStar];

export const rfChart = {
  id: "rf",
  file: "rf",
  title: (/** @type {ChartData} */ _) => say("page.chart-rf"),
  about: (/** @type {ChartData} */ _) => "rf-curve",

  /** @param {ChartData} data */
  has: (data) => data.compounds.length > 0,

  /** @param {ChartData} data @returns {Frame} */
  frame: ({ shares, compounds }) => frameOf(shares, 1, 24 + CHARACTER * Math.max(...compounds.map((each) => each.short.length))),

  /** @param {ChartData} data @param {Frame} frame @param {string} across */
  drawn(data, frame, across) {
    return [
      ...(data.window ? windowBand(frame, data.window) : []),
      ...axes(frame, across, say("page.chart-rf-axis")),
      ...data.compounds.flatMap((each) => band(data, frame, each)),
      ...data.compounds.flatMap((each) => curve(data, frame, each)),
      ...data.compounds.flatMap((each) => readings(frame, each)),
      ...ends(frame, data.compounds),
    ];
  },

  /** Marks on the curves at a share. @param {ChartData} data @param {Frame} frame @param {import("../answer/outcome.js").Outcome} at */
  dots: (data, frame, at) =>
    data.compounds.map(({ name, colour }) =>
      draw("circle", { class: `chart-dot chart-colour-${colour}`, cx: frame.x(at.percent), cy: frame.y(at.spots[name].rf), r: 4 }),
    ),

  /** @param {ChartData} data @param {import("../answer/outcome.js").Outcome} at @returns {string[]} */
  read: (data, at) => data.compounds.map(({ name }) => say("page.chart-rf-at", { spot: name, ...at.spots[name] })),

  /** @param {ChartData} data @returns {string[]} */
  summary(data) {
    const [low, high] = data.window ?? [0, 1];
    const told = data.compounds.map(({ name, rf }) => {
      const range = inside(data.shares, rf, low, high);
      if (!range) return say("page.chart-rf-never", { spot: name, low, high });
      return say("page.chart-rf-inside", { spot: name, low, high, from: shareText(range.from), to: shareText(range.to) });
    });
    const taken = data.compounds.some(({ points }) => points.some(({ by }) => by === "taken"));
    return [say("page.chart-rf-how"), ...(taken ? [say("page.chart-rf-taken")] : []), ...told];
  },

  /** @param {ChartData} data */
  columns: ({ compounds }) =>
    compounds.flatMap(({ name, rf, low, high }) => [
      { head: say("page.chart-rf-column", { spot: name }), values: rf, decimals: 2 },
      { head: say("page.chart-low-column", { spot: name }), values: low, decimals: 2 },
      { head: say("page.chart-high-column", { spot: name }), values: high, decimals: 2 },
    ]),
};

/** @param {Frame} frame @param {[number, number]} window */
function windowBand({ area, y }, [low, high]) {
  const width = area.right - area.left;
  return [
    draw("rect", { class: "chart-window", x: area.left, y: y(high), width, height: Math.max(0, y(low) - y(high)) }),
    ...[low, high].map((edge) => draw("line", { class: "chart-window-edge", x1: area.left, x2: area.right, y1: y(edge), y2: y(edge) })),
    draw("text", { class: "chart-aside", x: area.left + 5, y: y(high) + 12 }, say("page.chart-window")),
  ];
}

/** @param {ChartData} data @param {Frame} frame @param {Compound} compound */
function band({ shares, trusted }, frame, { low, high, colour }) {
  const at = (/** @type {number} */ percent, /** @type {number} */ i) => [frame.x(percent), frame.y(valueAt(low, i)), frame.y(valueAt(high, i))];
  return pieces(shares, at, trusted).flatMap(({ beyond, points }) => {
    const edge = (/** @type {1 | 2} */ side) => points.map((point) => [point[0], point[side]]);
    const look = `chart-colour-${colour}${beyond ? " chart-beyond" : ""}`;
    return [
      draw("path", { class: `chart-band ${look}`, d: `${d3.line()([...edge(1), ...edge(2).reverse()])}Z` }),
      ...(beyond ? [edge(1), edge(2)].map((side) => draw("path", { class: `chart-band-edge ${look}`, d: d3.line()(side) })) : []),
    ];
  });
}

/** @param {ChartData} data @param {Frame} frame @param {Compound} compound */
function curve({ shares, trusted }, frame, { rf, colour }) {
  const at = (/** @type {number} */ percent, /** @type {number} */ i) => [frame.x(percent), frame.y(valueAt(rf, i))];
  return pieces(shares, at, trusted).map(({ beyond, points }) =>
    draw("path", { class: `chart-curve chart-colour-${colour}${beyond ? " chart-beyond" : ""}`, d: d3.line()(points) }),
  );
}

/** @param {Frame} frame @param {Compound} compound */
function readings(frame, { points, colour }) {
  return points.map(({ percent, rf, by }) =>
    draw("path", {
      class: `chart-point chart-colour-${colour}${by === "taken" ? " chart-taken" : ""}`,
      transform: `translate(${frame.x(percent)},${frame.y(rf)})`,
      d: d3.symbol(SYMBOLS[colour], 52)(),
    }),
  );
}

/** Each compound's name at the end of its curve, with the sign of its readings. @param {Frame} frame @param {Compound[]} compounds */
function ends(frame, compounds) {
  const { area, y } = frame;
  const heights = compounds.map(({ rf }) => y(rf[rf.length - 1]));
  const placed = spread(heights, LINE, area.top + 4, area.bottom - 4);
  return compounds.flatMap((compound, i) => [
    draw("path", { class: `chart-lead chart-colour-${compound.colour}`, d: `M${area.right},${heights[i]}L${area.right + 7},${placed[i]}` }),
    draw("path", {
      class: `chart-sign chart-colour-${compound.colour}`,
      transform: `translate(${area.right + 11},${placed[i]})`,
      d: d3.symbol(SYMBOLS[compound.colour], 36)(),
    }),
    draw("text", { class: "chart-name", x: area.right + 18, y: placed[i] + 4 }, compound.short),
  ]);
}
