// @ts-check
/** How far the two nearest spots lie apart, against the share of the stronger solvent, and where spots merge. */

import { shareText } from "../answer/shares.js";
import { draw } from "../dom.js";
import { say } from "../texts.js";
import { alike, highest, merges } from "./facts.js";
import { axes, frameOf } from "./frame.js";
import { dot, line } from "./line.js";
import { label } from "./upright.js";

/** @typedef {import("./data.js").ChartData} ChartData @typedef {import("./frame.js").Frame} Frame @typedef {import("../answer/outcome.js").Outcome} Outcome */

/** Height of a line of labels, and how many are written; the others are told under the chart. */
const LINE = 13;
const ROWS = 5;

/** Resolution where the server sends it, else the distance in Rf. @param {ChartData} data */
const resolved = ({ curves }) => curves.smallestResolution?.length > 0;

/** @param {ChartData} data @returns {number[]} */
const values = (data) => (resolved(data) ? data.curves.smallestResolution : data.curves.smallestGap);

/** @param {ChartData} data @param {string} beginning of a text that has an end for each of the two */
const either = (data, beginning, told = {}) => say(`${beginning}${resolved(data) ? "resolution" : "gap"}`, told);

export const apartChart = {
  id: "apart",
  file: "smallest-separation",
  title: (/** @type {ChartData} */ data) => either(data, "page.chart-"),
  about: (/** @type {ChartData} */ data) => (resolved(data) ? "resolution-curve" : "gap-curve"),

  /** @param {ChartData} data */
  has: (data) => data.compounds.length > 1 && (values(data)?.length ?? 0) > 0,

  /** @param {ChartData} data @returns {Frame} */
  frame(data) {
    const most = 1.1 * highest(data.shares, values(data)).value;
    return frameOf(data.shares, most > 0 ? most : 1, 0);
  },

  /** @param {ChartData} data @param {Frame} frame @param {string} across */
  drawn: (data, frame, across) => [
    ...axes(frame, across, either(data, "page.chart-axis-")),
    ...line(data, frame, values(data), "chart-first"),
    ...merges(data.shares, data.compounds).map((merge, i) => crossing(data, frame, merge, i)),
  ],

  /** @param {ChartData} data @param {Frame} frame @param {Outcome} at */
  dots: (data, frame, at) => [dot(frame, at.percent, (resolved(data) ? at.resolution : at.gap) ?? 0)],

  /** @param {ChartData} data @param {Outcome} at @returns {string[]} */
  read: (data, at) => [
    ...(resolved(data) ? [say("page.chart-at-resolution", { resolution: at.resolution ?? 0 })] : []),
    ...(at.gap === undefined ? [] : [say("page.chart-at-gap", { gap: at.gap })]),
  ],

  /** @param {ChartData} data @returns {string[]} */
  summary(data) {
    const best = highest(data.shares, values(data));
    const crossed = merges(data.shares, data.compounds).map(({ one, other, percent }) =>
      say("page.chart-merge", { one, other, percent: shareText(percent) }),
    );
    const same = alike(data.compounds);
    return [
      either(data, "page.chart-best-", { percent: shareText(best.percent), best: best.value }),
      ...(same.length ? [say("page.chart-alike", { spots: same.join(", ") })] : []),
      ...(crossed.length || same.length ? crossed : [say("page.chart-no-merge")]),
      either(data, "page.chart-how-"),
    ];
  },

  /** @param {ChartData} data */
  columns: (data) => [
    ...(resolved(data) ? [{ head: say("page.chart-column-resolution"), values: values(data), decimals: 2 }] : []),
    ...(data.curves.smallestGap?.length ? [{ head: say("page.chart-column-gap"), values: data.curves.smallestGap, decimals: 2 }] : []),
  ],
};

/** Two curves that cross, named in a row of its own where there is room for one. @param {ChartData} data @param {Frame} frame @param {import("./facts.js").Merge} merge @param {number} i */
function crossing({ compounds }, frame, { one, other, percent }, i) {
  const { x, area } = frame;
  const short = (/** @type {string} */ name) => compounds.find((each) => each.name === name)?.short ?? name;
  const text = say("page.chart-merge-mark", { one: short(one), other: short(other), percent: shareText(percent) });
  return draw(
    "g",
    { class: "chart-merge" },
    draw("line", { x1: x(percent), x2: x(percent), y1: area.top, y2: area.bottom }),
    i < ROWS && label(frame, x(percent), area.top + 12 + LINE * i, text, "chart-merge-name"),
  );
}
