// @ts-check
/** Upright marks: the advised ratio, the one tried, the one held, the one pointed at. */

import { ratioOf, shareText } from "../answer/shares.js";
import { draw } from "../dom.js";
import { say } from "../texts.js";
import { CHARACTER } from "./frame.js";

/** @typedef {import("./frame.js").Frame} Frame @typedef {{kind: "advised" | "tried" | "held", percent: number, text: string}} Mark */

/** The row of each label over the chart, so that no two lie on each other. */
const ROWS = { held: 0, tried: 1, advised: 2 };
const ROW = 13;

/** @param {any} advice @returns {Mark} */
export function advisedMark(advice) {
  const pure = advice.percentStrong <= 0 || advice.percentStrong >= 100;
  const ratio = (pure && ratioOf(advice.percentStrong, advice)) || advice.ratio.replace(":", " : ");
  return { kind: "advised", percent: advice.percentStrong, text: say("page.chart-advised", { ratio }) };
}

/** Those that follow the slider. @param {any} advice @param {import("../state.js").Looking} looking @returns {Mark[]} */
export function lookingMarks(advice, looking) {
  /** @type {Mark[]} */
  const marks = [];
  const add = (/** @type {"tried" | "held"} */ kind, /** @type {number | undefined} */ percent) => {
    if (percent === undefined) return;
    const ratio = ratioOf(percent, advice) ?? say("page.chart-percent", { percent: shareText(percent) });
    marks.push({ kind, percent, text: say(`page.chart-${kind}`, { ratio }) });
  };
  add("held", looking.locked);
  add("tried", looking.percent);
  return marks;
}

/** @param {Frame} frame @param {Mark} mark */
export const upright = (frame, mark) =>
  draw("line", {
    class: `chart-mark chart-${mark.kind}`,
    x1: frame.x(mark.percent),
    x2: frame.x(mark.percent),
    y1: heightOf(mark) + 4,
    y2: frame.area.bottom,
  });

/** The label over a mark; it lies over the lines of the others. @param {Frame} frame @param {Mark} mark */
export const uprightLabel = (frame, mark) => label(frame, frame.x(mark.percent), heightOf(mark), mark.text, `chart-${mark.kind}`);

/** @param {Mark} mark */
const heightOf = ({ kind }) => 12 + ROW * ROWS[kind];

/**
 * A label centred over a place, moved aside where it would leave the drawing, on a ground that lets nothing shine through.
 * @param {Frame} frame @param {number} x @param {number} y of its base line @param {string} text @param {string} look
 */
export function label({ area }, x, y, text, look) {
  const half = (text.length * CHARACTER) / 2;
  const centre = Math.min(area.right - half + 10, Math.max(area.left + half + 3, x));
  return draw(
    "g",
    { class: look },
    draw("rect", { class: "chart-ground", x: centre - half, y: y - 10, width: 2 * half, height: ROW }),
    draw("text", { x: centre, y, "text-anchor": "middle" }, text),
  );
}

/** The line under the pointer. @param {Frame} frame @param {number} percent */
export function pointerLine(frame, percent) {
  const x = frame.x(percent);
  return draw("line", { class: "chart-pointed", x1: x, x2: x, y1: frame.area.top, y2: frame.area.bottom });
}
