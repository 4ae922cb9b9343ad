// @ts-check
/** Draws what a class read: how many readings lie where, and every plate in a row of its own. */

import { d3 } from "../../d3.js";
import { draw, make } from "../../dom.js";
import { marked, say } from "../../texts.js";

const WIDTH = 340;
/** Wider by the words beside a row. */
const WIDE = 412;
const LOW = 150;
const ROW = 20;
const NAMES = 92;
/** Letters of a name in the drawing, before it is cut. */
const LETTERS = 13;

/** @param {string} name */
const cut = (name) => ([...name].length > LETTERS ? `${[...name].slice(0, LETTERS - 1).join("")}\u2026` : name);

/** An axis of Rf at the lower edge. @param {any} x @param {number} y */
function axis(x, y) {
  const ticks = draw("g", { class: "class-axis", transform: `translate(0,${y})`, "aria-hidden": "true" });
  d3.select(ticks).call(d3.axisBottom(x).ticks(6).tickFormat((/** @type {number} */ tick) => marked(tick.toFixed(1))).tickSizeOuter(0).offset(0));
  ticks.append(draw("text", { class: "class-title", x: (x.range()[0] + x.range()[1]) / 2, y: 32, "text-anchor": "middle" }, say("later.lesson-class-axis")));
  return ticks;
}

/** How many readings of a spot lie where, over the band that the model expects. @param {any} spot of the answer @param {number} colour @param {string} id */
export function histogram(spot, colour, id) {
  const x = d3.scaleLinear([0, 1], [26, WIDTH - 12]);
  const { width, from, counts } = spot.histogram;
  const y = d3.scaleLinear([0, Math.max(4, ...counts)], [LOW - 40, 36]);
  const floor = LOW - 40;
  return make(
    "figure",
    { id, class: `class-histogram colour-${colour}` },
    make("figcaption", { id: `${id}-title` }, say("later.lesson-class-histogram", { spot: spot.spot })),
    draw(
      "svg",
      { id: `${id}-drawing`, viewBox: `0 0 ${WIDTH} ${LOW}`, role: "img", "aria-label": `${say("later.lesson-class-histogram", { spot: spot.spot })}. ${spot.text.text}` },
      spot.model && draw("rect", { class: "class-band", x: x(spot.model.low), y: 22, width: Math.max(0, x(spot.model.high) - x(spot.model.low)), height: floor - 22 }),
      ...counts.flatMap((/** @type {number} */ count, /** @type {number} */ i) => {
        const left = x(from + i * width);
        const across = x(from + (i + 1) * width) - left;
        return count === 0 ? [] : [
          draw("rect", { class: "class-bar", x: left + 0.5, y: y(count), width: Math.max(1, across - 1), height: floor - y(count) }),
          across >= 9 && draw("text", { class: "class-count", x: left + across / 2, y: y(count) - 3, "text-anchor": "middle", "aria-hidden": "true" }, String(count)),
        ].filter((each) => each !== false);
      }),
      draw("line", { class: "class-mean", x1: x(spot.mean), x2: x(spot.mean), y1: 14, y2: floor }),
      draw("text", { class: "class-title", x: Math.min(WIDTH - 60, Math.max(60, x(spot.mean))), y: 11, "text-anchor": "middle", "aria-hidden": "true" }, say("later.lesson-class-mean", { mean: spot.mean })),
      axis(x, floor),
    ),
    make("p", { id: `${id}-text` }, spot.text.text),
    make(
      "details",
      { id: `${id}-fold` },
      make("summary", { id: `${id}-summary` }, say("later.lesson-class-table")),
      make(
        "table",
        { class: "class-numbers" },
        make("thead", {}, make("tr", {}, make("th", { scope: "col" }, say("later.lesson-class-bin")), make("th", { scope: "col" }, say("later.lesson-class-readings")))),
        make("tbody", {}, ...counts.map((/** @type {number} */ count, /** @type {number} */ i) => make("tr", {}, make("td", {}, say("later.lesson-class-step", { from: from + i * width, to: from + (i + 1) * width })), make("td", {}, String(count))))),
      ),
    ),
  );
}

/** @param {any} one @param {any} other */
const isSamePlate = (one, other) => one.plate === other.plate && (typeof one.plate === "string" || one.pair === other.pair);

/** Every plate in a row, its spots at their Rf. @param {any} answer @param {"entered" | "shift"} order @param {Map<string, number>} colours of the spots by name */
export function platesDrawing(answer, order, colours) {
  const several = answer.plates.some(({ plate }) => plate !== 1);
  const plates = answer.plates.map((/** @type {any} */ each) => ({ ...each, pair: each.pairs[0] }));
  if (order === "shift") plates.sort((/** @type {any} */ a, /** @type {any} */ b) => b.shift - a.shift);
  const high = plates.length * ROW;
  const x = d3.scaleLinear([0, 1], [NAMES + 6, WIDE - 84]);
  const wrong = new Set(answer.slips.map(({ pair }) => pair));
  return draw(
    "svg",
    { id: "class-plates-drawing", class: "class-plates", viewBox: `0 0 ${WIDE} ${high + 46}`, role: "img", "aria-label": say("later.lesson-class-plates-label", { rows: plates.length }) },
    ...answer.spots.map((/** @type {any} */ spot) => draw("line", { class: `class-middle colour-${colours.get(spot.spot) ?? 5}`, x1: x(spot.median), x2: x(spot.median), y1: 2, y2: high + 4 })),
    ...plates.map((/** @type {any} */ plate, /** @type {number} */ i) => plateRow(answer, plate, 4 + ROW * (i + 0.5), x, { colours, several, wrong })),
    axis(x, high + 6),
  );
}

/** @param {any} answer @param {any} plate @param {number} y @param {any} x @param {{colours: Map<string, number>, several: boolean, wrong: Set<string>}} how */
function plateRow(answer, plate, y, x, { colours, several, wrong }) {
  const read = answer.readings.filter((/** @type {any} */ each) => isSamePlate(each, plate));
  const isFar = (/** @type {any} */ each) => answer.far.some((/** @type {any} */ far) => far.spot === each.spot && far.lane === each.lane && far.pair === each.pair && far.plate === each.plate);
  const name = typeof plate.plate === "string" ? plate.plate : several ? `${plate.pair} / ${plate.plate}` : plate.pair;
  const said = plate.pairs.some((/** @type {string} */ pair) => wrong.has(pair)) ? say("later.lesson-class-row-slip") : read.some(isFar) ? say("later.lesson-class-row-far") : answer.farPlates.some((/** @type {any} */ far) => isSamePlate({ ...far, pair: far.pairs[0] }, plate)) ? say("later.lesson-class-row-plate") : undefined;
  return draw(
    "g",
    { class: said ? "class-plate odd" : "class-plate" },
    draw("line", { class: "class-lane", x1: NAMES + 6, x2: WIDE - 84, y1: y, y2: y }),
    draw("text", { class: "class-name", x: NAMES, y: y + 4, "text-anchor": "end", "aria-hidden": "true" }, cut(name)),
    said && draw("text", { class: "class-name", x: WIDE - 72, y: y + 4, "aria-hidden": "true" }, said),
    ...read.flatMap((/** @type {any} */ each) => [
      draw("circle", { class: `class-dot colour-${colours.get(each.spot) ?? 5}`, cx: x(each.rf), cy: y, r: 6.5 }),
      draw("text", { class: "class-letter", x: x(each.rf), y: y + 3.2, "text-anchor": "middle", "aria-hidden": "true" }, [...each.spot][0] ?? ""),
      isFar(each) && draw("circle", { class: "class-far", cx: x(each.rf), cy: y, r: 9 }),
    ].filter((drawn) => drawn !== false)),
  );
}
