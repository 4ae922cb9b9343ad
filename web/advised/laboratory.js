// @ts-check
/** Chances said against how often they came true in this laboratory: a chart like the others, from ten scored advices on. */

import { tableOfRows, takeAway } from "../charts/numbers.js";
import { HEIGHT, WIDTH } from "../charts/frame.js";
import { d3 } from "../d3.js";
import { draw, list, make } from "../dom.js";
import { say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {{said: number, cameTrue: number, of: number, low: number, high: number}} Group */

const ID = "chart-laboratory";
const AREA = { left: 57, right: WIDTH - 16, top: 16, bottom: HEIGHT - 44 };
const TICKS = [0, 0.2, 0.4, 0.6, 0.8, 1];

/** @param {State} state @param {Act} act @param {{groups: Group[]}} told */
export function laboratoryChart(state, act, { groups }) {
  const title = say("later.laboratory-title");
  const x = d3.scaleLinear([0, 1], [AREA.left, AREA.right]);
  const y = d3.scaleLinear([0, 1], [AREA.bottom, AREA.top]);
  const words = groups.map(({ said, cameTrue, of, low, high }) => say("later.laboratory-group", { said: of100(said), came: cameTrue, of, low: of100(low), high: of100(high) }));
  const numbers = {
    share: say("later.laboratory-said"),
    shares: groups.map(({ said }) => Number((100 * said).toFixed(1))),
    columns: [
      { head: say("later.laboratory-share"), values: groups.map(({ cameTrue, of }) => (100 * cameTrue) / of), decimals: 0 },
      { head: say("later.laboratory-low"), values: groups.map(({ low }) => 100 * low), decimals: 0 },
      { head: say("later.laboratory-high"), values: groups.map(({ high }) => 100 * high), decimals: 0 },
      { head: say("later.laboratory-of"), values: groups.map(({ of }) => of), decimals: 0 },
    ],
    advised: NaN,
  };
  return make(
    "figure",
    { id: ID, class: "chart" },
    make("h4", { id: `${ID}-title` }, title),
    draw(
      "svg",
      { id: `${ID}-drawing`, class: "chart-drawing", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-labelledby": `${ID}-title`, "aria-describedby": `${ID}-words` },
      draw("rect", { class: "chart-paper", x: 0, y: 0, width: WIDTH, height: HEIGHT }),
      ...axes(x, y),
      draw("line", { class: "chart-window-edge", x1: x(0), y1: y(0), x2: x(1), y2: y(1) }),
      ...groups.flatMap((group) => mark(group, x, y)),
    ),
    make("figcaption", { id: `${ID}-words` }, list([say("later.laboratory-line"), ...words])),
    tableOfRows(ID, title, say("later.laboratory-numbers"), numbers),
    takeAway(state, act, { id: ID, file: "came-true", title, words, numbers, of: say("later.laboratory-own") }),
  );
}

/** @param {number} share */
const of100 = (share) => String(Math.round(100 * share));

/** @param {any} x @param {any} y */
function axes(x, y) {
  const bottom = draw("g", { class: "chart-axis", transform: `translate(0,${AREA.bottom})` });
  const side = draw("g", { class: "chart-axis", transform: `translate(${AREA.left},0)` });
  d3.select(bottom).call(d3.axisBottom(x).tickValues(TICKS).tickFormat(of100).tickSizeOuter(0).offset(0));
  d3.select(side).call(d3.axisLeft(y).tickValues(TICKS).tickFormat(of100).tickSizeOuter(0).offset(0));
  const middle = (AREA.top + AREA.bottom) / 2;
  return [
    bottom,
    side,
    draw("text", { class: "chart-axis-title", x: (AREA.left + AREA.right) / 2, y: HEIGHT - 8, "text-anchor": "middle" }, say("later.laboratory-said")),
    draw("text", { class: "chart-axis-title", x: 0, y: 0, transform: `translate(14,${middle}) rotate(-90)`, "text-anchor": "middle" }, say("later.laboratory-share")),
  ];
}

/** @param {Group} group @param {any} x @param {any} y */
function mark({ said, cameTrue, of, low, high }, x, y) {
  return [
    draw("line", { class: "laboratory-interval", x1: x(said), x2: x(said), y1: y(low), y2: y(high) }),
    draw("circle", { class: "laboratory-share", cx: x(said), cy: y(cameTrue / of), r: 4.5 }),
    draw("text", { class: "chart-aside", x: x(said) + 7, y: y(cameTrue / of) + 4 }, String(of)),
  ];
}
