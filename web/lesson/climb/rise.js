// @ts-check
/** Two small charts: the height of the front over the time bends, its square is a straight line. */

import { d3 } from "../../d3.js";
import { draw, make } from "../../dom.js";
import { marked, say } from "../../texts.js";
import { along } from "../along.js";

/** @typedef {import("./clock.js").Moment} Moment */

/** About as many units as the drawing is wide in pixels, so that its words are as large as those beside it. */
const [WIDTH, HEIGHT, LEFT, RIGHT, BELOW, ABOVE] = [360, 190, 50, 12, 42, 28];
const WORDS = 14;
const TICK = 5;

/** @typedef {{id: string, of: (z: number) => number}} Plot */
/** @type {Plot[]} */
const PLOTS = [
  { id: "height", of: (z) => z },
  { id: "square", of: (z) => z * z },
];

/** Height above the surface at a moment. @param {any} answer @param {number} minutes */
const heightAt = (answer, minutes) => along(answer.minutes, answer.frontMm, minutes, Math.sqrt) - answer.plate.levelMm;

/** @param {any} answer @param {Plot} plot */
function scales(answer, { of }) {
  const [end, most] = [answer.minutes.at(-1), of(answer.plate.stopMm - answer.plate.levelMm)];
  return { x: d3.scaleLinear([0, end], [LEFT, WIDTH - RIGHT]), y: d3.scaleLinear([0, most], [HEIGHT - BELOW, ABOVE]), end };
}

/** @param {any} answer @param {Moment} moment */
export const rise = (answer, moment) => make("div", { class: "climb-plots" }, ...PLOTS.map((plot) => chart(answer, moment, plot)));

/** @param {any} answer @param {Moment} moment @param {Plot} plot */
function chart(answer, { minutes }, plot) {
  const { x, y, end } = scales(answer, plot);
  const points = Array.from({ length: 61 }, (_, i) => (end * i) / 60);
  const path = d3.line((/** @type {number} */ t) => x(t), (/** @type {number} */ t) => y(plot.of(heightAt(answer, t))))(points);
  return draw(
    "svg",
    { id: `climb-plot-${plot.id}`, class: "climb-plot", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": say(`later.lesson-climb-plot-${plot.id}`) },
    draw("path", { class: "climb-axis", d: `M${LEFT} ${ABOVE}V${HEIGHT - BELOW}H${WIDTH - RIGHT}` }),
    draw("text", { x: 0, y: 15, "font-size": WORDS }, say(`later.lesson-climb-axis-${plot.id}`)),
    draw("text", { x: WIDTH - RIGHT, y: HEIGHT - 4, "font-size": WORDS, "text-anchor": "end" }, say("later.lesson-climb-axis-time")),
    ...x.ticks(3).map((/** @type {number} */ tick) => tickAt(x(tick), HEIGHT - BELOW, tick, "below")),
    ...y.ticks(3).map((/** @type {number} */ tick) => tickAt(LEFT, y(tick), tick, "beside")),
    draw("path", { class: "climb-curve", d: path ?? "" }),
    draw("circle", { id: `climb-dot-${plot.id}`, class: "climb-dot", cx: x(minutes), cy: y(plot.of(heightAt(answer, minutes))), r: 5 }),
  );
}

/** A mark on an axis with its number. @param {number} x @param {number} y @param {number} value @param {"below" | "beside"} where */
function tickAt(x, y, value, where) {
  const [mark, dx, dy, anchor] = where === "below" ? [`v${TICK}`, 0, TICK + WORDS, "middle"] : [`h${-TICK}`, -TICK - 3, 5, "end"];
  return draw("g", { transform: `translate(${x} ${y})` }, draw("path", { class: "climb-axis", d: `M0 0${mark}` }), draw("text", { x: dx, y: dy, "font-size": WORDS, "text-anchor": anchor }, grouped(value)));
}

/** Thousands apart by a thin space. @param {number} value */
const grouped = (value) => marked(String(value)).replace(/\B(?=(\d{3})+$)/g, "\u202f");

/** @param {any} answer @param {Moment} moment */
export function moveRise(answer, { minutes }) {
  for (const plot of PLOTS) {
    const dot = document.getElementById(`climb-dot-${plot.id}`);
    const { x, y } = scales(answer, plot);
    dot?.setAttribute("cx", String(x(minutes)));
    dot?.setAttribute("cy", String(y(plot.of(heightAt(answer, minutes)))));
  }
}
