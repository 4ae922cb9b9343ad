// @ts-check
/** The chance against the share of the stronger solvent. */

import { plates } from "../answer/outcome.js";
import { shareText } from "../answer/shares.js";
import { say } from "../texts.js";
import { highest, inside } from "./facts.js";
import { axes, frameOf } from "./frame.js";
import { dot, key, line } from "./line.js";

/** @typedef {import("./data.js").ChartData} ChartData @typedef {import("./frame.js").Frame} Frame @typedef {import("../answer/outcome.js").Outcome} Outcome */

/** A chance this near to the best is as good, in plates of a hundred. */
const AS_GOOD = 5;

/** In plates of a hundred. @param {number[]} chances */
const ofHundred = (chances) => chances.map((chance) => 100 * chance);

/** What is asked for: the goal where more is asked than the window. @param {ChartData} data */
const wanted = ({ curves }) => ofHundred(curves.goal?.length ? curves.goal : curves.chance);

export const chanceChart = {
  id: "chance",
  file: "chance",
  title: (/** @type {ChartData} */ _) => say("page.chart-chance"),
  about: (/** @type {ChartData} */ _) => "chance-curve",

  /** @param {ChartData} data */
  has: (data) => data.curves.chance.length > 0,

  /** @param {ChartData} data @returns {Frame} */
  frame: ({ shares }) => frameOf(shares, 100, 0),

  /** @param {ChartData} data @param {Frame} frame @param {string} across */
  drawn(data, frame, across) {
    const { curves } = data;
    const both = curves.goal?.length > 0;
    return [
      ...axes(frame, across, say("page.chart-chance-axis")),
      ...(both ? line(data, frame, ofHundred(curves.chance), "chart-second") : []),
      ...line(data, frame, wanted(data), "chart-first"),
      ...(both ? key(data, frame, [["chart-second", say("page.chart-in-window")], ["chart-first", say("page.chart-goal")]]) : []),
    ];
  },

  /** @param {ChartData} data @param {Frame} frame @param {Outcome} at */
  dots: (data, frame, at) => [dot(frame, at.percent, 100 * at.chance)],

  /** @param {ChartData} data @param {Outcome} at @returns {string[]} */
  read: ({ curves }, at) =>
    curves.goal?.length
      ? [say("page.chart-window-at", { count: plates(at.inWindow) }), say("page.chart-goal-at", { count: plates(at.chance) })]
      : [say("page.chart-chance-at", { count: plates(at.chance) })],

  /** @param {ChartData} data @returns {string[]} */
  summary(data) {
    const best = highest(data.shares, wanted(data));
    const range = inside(data.shares, wanted(data), Math.max(0, best.value - AS_GOOD), 100);
    const values = { percent: shareText(best.percent), count: plates(best.value / 100), near: AS_GOOD };
    return [
      say(data.curves.goal?.length ? "page.chart-goal-best" : "page.chart-chance-best", values),
      ...(range && best.value > AS_GOOD ? [say("page.chart-chance-near", { ...values, from: shareText(range.from), to: shareText(range.to) })] : []),
    ];
  },

  /** @param {ChartData} data */
  columns: ({ curves }) => [
    { head: say("page.chart-chance-column"), values: ofHundred(curves.chance), decimals: 0 },
    ...(curves.goal?.length ? [{ head: say("page.chart-goal-column"), values: ofHundred(curves.goal), decimals: 0 }] : []),
  ],
};
