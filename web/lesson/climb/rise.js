// @ts-check
/** Two small charts: the height of the front over the time bends, its square is a straight line. */

import { d3 } from "../../d3.js";
import { draw, make } from "../../dom.js";
import { say } from "../../texts.js";
import { along } from "../along.js";

/** @typedef {import("./clock.js").Moment} Moment */

const [WIDTH, HEIGHT, LEFT, BELOW, ABOVE] = [220, 120, 38, 22, 20];

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
  return { x: d3.scaleLinear([0, end], [LEFT, WIDTH - 8]), y: d3.scaleLinear([0, most], [HEIGHT - BELOW, ABOVE]), end, most };
}

/** @param {any} answer @param {Moment} moment */
export const rise = (answer, moment) => make("div", { class: "climb-plots" }, ...PLOTS.map((plot) => chart(answer, moment, plot)));

/** @param {any} answer @param {Moment} moment @param {Plot} plot */
function chart(answer, { minutes }, plot) {
  const { x, y, end, most } = scales(answer, plot);
  const points = Array.from({ length: 61 }, (_, i) => (end * i) / 60);
  const path = d3.line((/** @type {number} */ t) => x(t), (/** @type {number} */ t) => y(plot.of(heightAt(answer, t))))(points);
  return draw(
    "svg",
    { id: `climb-plot-${plot.id}`, class: "climb-plot", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": say(`later.lesson-climb-plot-${plot.id}`) },
    draw("path", { class: "climb-axis", d: `M${LEFT} ${ABOVE}V${HEIGHT - BELOW}H${WIDTH - 8}` }),
    draw("text", { x: 2, y: 12, "font-size": 12 }, say(`later.lesson-climb-axis-${plot.id}`)),
    draw("text", { x: WIDTH - 8, y: HEIGHT - 6, "font-size": 12, "text-anchor": "end" }, say("later.lesson-climb-axis-time", { end })),
    draw("text", { x: LEFT - 4, y: ABOVE + 9, "font-size": 12, "text-anchor": "end" }, String(Math.round(most))),
    draw("text", { x: LEFT - 4, y: HEIGHT - BELOW + 4, "font-size": 12, "text-anchor": "end" }, "0"),
    draw("path", { class: "climb-curve", d: path ?? "" }),
    draw("circle", { id: `climb-dot-${plot.id}`, class: "climb-dot", cx: x(minutes), cy: y(plot.of(heightAt(answer, minutes))), r: 5 }),
  );
}

/** @param {any} answer @param {Moment} moment */
export function moveRise(answer, { minutes }) {
  for (const plot of PLOTS) {
    const dot = document.getElementById(`climb-dot-${plot.id}`);
    const { x, y } = scales(answer, plot);
    dot?.setAttribute("cx", String(x(minutes)));
    dot?.setAttribute("cy", String(y(plot.of(heightAt(answer, minutes)))));
  }
}
