// @ts-check
/** Where each spot was foretold and where it was read, on a strip from the start line to the front. */

import { draw, make } from "../dom.js";
import { colourOf, fullName, shortName } from "../plate/names.js";
import { marked, say } from "../texts.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("../sheet/sheet.js").GivenAdvice} GivenAdvice */

/** Measures of the drawing. */
const WIDTH = 320;
const LEFT = 34;
const RIGHT = 312;
const LINE = 22;
const TOP = 4;
const SCALE = 18;
/** A cloud is drawn in layers, each narrower by this share. */
const LAYERS = [1, 0.75, 0.5, 0.25];

/** @param {number} rf */
const x = (rf) => LEFT + Math.min(1, Math.max(0, rf)) * (RIGHT - LEFT);

/** @param {Sheet} sheet @param {GivenAdvice} advice @param {any} outcome what was read, where it is known */
export function strip(sheet, advice, outcome) {
  const read = new Map((outcome?.spots ?? []).map((/** @type {any} */ each) => [each.spot, each.read]));
  const known = advice.spots.filter(({ spot }) => sheet.spots.some((each) => each.id === spot));
  const bottom = TOP + LINE * known.length;
  const height = bottom + SCALE;
  const [low, high] = advice.window;
  return make(
    "div",
    { class: "advised-strip" },
    draw(
      "svg",
      { viewBox: `0 0 ${WIDTH} ${height}`, role: "img", "aria-label": [...known.map((each) => words(sheet, each, read.get(each.spot))), say("later.strip-window", { low: marked(String(low)), high: marked(String(high)) })].join(" ") },
      draw("rect", { class: "strip-layer", x: LEFT, y: TOP, width: RIGHT - LEFT, height: bottom - TOP }),
      draw("rect", { class: "strip-window", x: x(low), y: TOP, width: x(high) - x(low), height: bottom - TOP }),
      ...[low, high].map((edge) => draw("line", { class: "strip-edge", x1: x(edge), x2: x(edge), y1: TOP, y2: bottom })),
      ...known.flatMap((each, i) => line(sheet, each, read.get(each.spot), TOP + LINE * (i + 0.5))),
      ...[0, 0.2, 0.4, 0.6, 0.8, 1].map((rf) => draw("text", { class: "strip-scale", x: x(rf), y: height - 4, "text-anchor": "middle" }, marked(String(rf)))),
    ),
  );
}

/** @param {Sheet} sheet @param {GivenAdvice["spots"][number]} spot @param {number | undefined} read */
function words(sheet, { spot, rf, low, high }, read) {
  const two = (/** @type {number} */ value) => marked(value.toFixed(2));
  const told = { spot: fullName(sheet, spot), rf: two(rf), low: two(low), high: two(high) };
  return read === undefined ? say("later.strip-foretold", told) : say("later.strip-both", { ...told, read: two(read) });
}

/** @param {Sheet} sheet @param {GivenAdvice["spots"][number]} spot @param {number | undefined} read @param {number} y */
function line(sheet, { spot, rf, low, high }, read, y) {
  const clouds = LAYERS.map((part) => {
    const [from, to] = [rf - (rf - low) * part, rf + (high - rf) * part];
    return draw("ellipse", { class: "strip-cloud", cx: (x(from) + x(to)) / 2, cy: y, rx: Math.max(2, (x(to) - x(from)) / 2), ry: 4 + 4 * part });
  });
  return [
    draw("text", { class: "strip-name", x: LEFT - 8, y: y + 4, "text-anchor": "end" }, shortName(sheet, spot)),
    ...clouds,
    ...(read === undefined ? [] : [draw("circle", { class: `strip-read ${colourOf(sheet, spot)}`, cx: x(read), cy: y, r: 5.5 })]),
  ];
}
