// @ts-check
/** Draws the jar with the plate in it, and the table of what its lines and spots read now. */

import { draw, make } from "../../dom.js";
import { laneTicks, layer, pencilLine } from "../../plate/layer.js";
import { say } from "../../texts.js";
import { along } from "../along.js";
import { sizeFor } from "../plate.js";

/** @typedef {import("./clock.js").Moment} Moment */

/** Between the plate and the jar's wall, and above the plate [mm]. */
const ROOM = 7;
const WALL = 1.2;
const PIXELS = 300;

/** What stands where at a moment; on a scale of √t fronts and centres are straight. @param {any} answer @param {Moment} moment */
function at(answer, { minutes }) {
  const read = (/** @type {number[]} */ values) => along(answer.minutes, values, minutes, Math.sqrt);
  const start = answer.plate.startMm;
  const front = read(answer.frontMm);
  const spots = answer.compounds.map((/** @type {any} */ each) => ({ centre: read(each.centreMm), long: read(each.alongMm), broad: read(each.acrossMm) }));
  return { front, run: front - start, spots: spots.map((/** @type {any} */ spot) => ({ ...spot, way: spot.centre - start })) };
}

/** How wide the plate is [mm]. @param {any} answer */
const widthOf = (answer) => sizeFor(answer.compounds.length).width;

/** @param {any} answer */
const laneOf = (answer) => (/** @type {number} */ i) => (widthOf(answer) * (i + 0.5)) / answer.compounds.length;

/** @param {number} value @param {number} decimals */
const digits = (value, decimals) => say(decimals === 2 ? "later.lesson-climb-rf-value" : "later.lesson-climb-mm", { value });

/** @param {any} answer @param {Moment} moment */
export function jar(answer, moment) {
  const { heightMm: height, startMm: start, stopMm: stop, levelMm: level } = answer.plate;
  const width = widthOf(answer);
  const pixel = height / PIXELS;
  const now = at(answer, moment);
  const lane = laneOf(answer);
  const y = (/** @type {number} */ mm) => height - mm;
  const line = (/** @type {number} */ mm) => draw("g", { transform: `translate(0 ${y(mm)})` }, ...pencilLine(width, pixel));
  const [left, right, top, floor] = [-ROOM, width + ROOM, -ROOM, height];
  return draw(
    "svg",
    { id: "climb-drawing", viewBox: `${left - 3} ${top - 4} ${right - left + 6} ${floor - top + 7}`, role: "img", "aria-label": say("later.lesson-climb-picture") },
    layer("climb-plate", { height, width, start, front: stop, run: stop - start }, pixel, ["", ""]),
    draw("rect", { id: "climb-wet", class: "climb-wet", x: 0.6, width: width - 1.2, y: y(now.front), height: now.front }),
    draw("g", { transform: `translate(0 ${y(start)})` }, laneTicks(answer.compounds.map((/** @type {any} */ _, /** @type {number} */ i) => lane(i)), pixel)),
    line(start),
    draw("path", { class: "climb-stop", d: `M0 ${y(stop)}h3M${width} ${y(stop)}h-3`, "stroke-width": 1.3 * pixel }),
    draw("path", { id: "climb-front", class: "climb-front", d: `M0.6 ${y(now.front)}H${width - 0.6}`, "stroke-width": 1.6 * pixel }),
    ...answer.compounds.map((/** @type {any} */ each, /** @type {number} */ i) =>
      draw(
        "g",
        { id: `climb-spot-${i}`, class: `lesson-spot seen colour-${i}` },
        draw("ellipse", { class: "lesson-body", cx: lane(i), cy: y(now.spots[i].centre), rx: now.spots[i].broad / 2, ry: now.spots[i].long / 2, "stroke-width": pixel }),
        draw("text", { class: "letter", x: lane(i), y: y(start) + 5.4, "text-anchor": "middle", "font-size": 14 * pixel, "stroke-width": 3 * pixel }, each.name.slice(0, 3)),
      ),
    ),
    draw("rect", { class: "climb-eluent", x: left, width: right - left, y: y(level), height: level }),
    draw("path", { class: "climb-surface", d: `M${left} ${y(level)}H${right}`, "stroke-width": pixel }),
    draw("path", { class: "climb-glass", d: `M${left} ${top}V${floor}H${right}V${top}`, "stroke-width": WALL }),
    draw("path", { class: "climb-glass", d: `M${left - 2} ${top}H${right + 2}`, "stroke-width": WALL }),
  );
}

/** @param {any} answer @param {Moment} moment */
export function rows(answer, moment) {
  const now = at(answer, moment);
  return make(
    "table",
    { id: "climb-rows" },
    make("caption", {}, say("later.lesson-climb-caption")),
    make("thead", {}, make("tr", {}, ...["spot", "way", "front-way", "rf"].map((column) => make("th", { scope: "col" }, say(`later.lesson-climb-column-${column}`))))),
    make(
      "tbody",
      {},
      ...answer.compounds.map((/** @type {any} */ each, /** @type {number} */ i) =>
        make("tr", { id: `climb-row-${i}` }, make("th", { scope: "row" }, each.name), ...cells(now, i).map((text) => make("td", {}, text))),
      ),
    ),
  );
}

/** What is measured of a spot now; as long as the front has not passed it there is no Rf. @param {any} now @param {number} i */
function cells({ run, spots }, i) {
  const none = say("later.lesson-climb-not-yet");
  return run > 1e-6 ? [digits(spots[i].way, 1), digits(run, 1), digits(spots[i].way / run, 2)] : [digits(0, 1), none, none];
}

/** Moves what has moved. @param {any} answer @param {Moment} moment */
export function moveJar(answer, moment) {
  const now = at(answer, moment);
  const y = (/** @type {number} */ mm) => answer.plate.heightMm - mm;
  const wet = document.getElementById("climb-wet");
  wet?.setAttribute("y", String(y(now.front)));
  wet?.setAttribute("height", String(now.front));
  document.getElementById("climb-front")?.setAttribute("d", `M0.6 ${y(now.front)}H${widthOf(answer) - 0.6}`);
  now.spots.forEach((/** @type {any} */ spot, /** @type {number} */ i) => {
    const body = document.querySelector(`#climb-spot-${i} ellipse`);
    body?.setAttribute("cy", String(y(spot.centre)));
    body?.setAttribute("rx", String(spot.broad / 2));
    body?.setAttribute("ry", String(spot.long / 2));
    const said = cells(now, i);
    document.querySelectorAll(`#climb-row-${i} td`).forEach((cell, column) => {
      if (cell.textContent !== said[column]) cell.textContent = said[column];
    });
  });
}
