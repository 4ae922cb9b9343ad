// @ts-check
/** The charts: each drawn, told in words, readable under the pointer, in numbers, and to take away. */

import { outcomeAt } from "../answer/outcome.js";
import { readable, shareText } from "../answer/shares.js";
import { byId, draw, list, make, patch } from "../dom.js";
import { say } from "../texts.js";
import { askSign } from "../where/origin.js";
import { apartChart } from "./apart.js";
import { chanceChart } from "./chance.js";
import { chartData } from "./data.js";
import { HEIGHT, WIDTH, shareUnder } from "./frame.js";
import { numbersOf, tableOf, takeAway } from "./numbers.js";
import { rfChart } from "./rf.js";
import { advisedMark, lookingMarks, pointerLine, upright, uprightLabel } from "./upright.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./data.js").ChartData} ChartData @typedef {typeof rfChart} Chart */

const CHARTS = /** @type {Chart[]} */ (/** @type {unknown} */ ([rfChart, chanceChart, apartChart]));

/** What the pointer is at, on which chart. @type {{chart: string, percent: number} | undefined} */
let pointed;

/** @param {State} state @param {Act} act @returns {Element[]} */
export function chartsView(state, act) {
  const data = chartData(state);
  if (!data) return [];
  const charts = CHARTS.filter((chart) => chart.has(data));
  return [make("div", { id: "charts" }, ...charts.map((chart) => figure(state, act, data, chart)))];
}

/** Brings what follows the slider in line with it, and leaves the rest of each chart alone. @param {State} state */
export function followLooking(state) {
  pointed = undefined;
  const data = chartData(state);
  if (!data) return;
  for (const chart of CHARTS) {
    if (document.getElementById(`chart-${chart.id}`) && chart.has(data)) follow(state, data, chart);
  }
}

/** @param {State} state @param {ChartData} data @param {Chart} chart */
function follow(state, data, chart) {
  patch(byId(`chart-${chart.id}-looking`), ...moving(state, data, chart));
  patch(byId(`chart-${chart.id}-read`), ...read(state, data, chart));
}

/** @param {State} state @param {Act} act @param {ChartData} data @param {Chart} chart */
function figure(state, act, data, chart) {
  const { weak, strong } = data.advice;
  const id = `chart-${chart.id}`;
  const across = say("page.chart-across", { weak: weak.name, strong: strong.name });
  const frame = chart.frame(data);
  const words = [...chart.summary(data), ...(data.trusted.partly ? [beyond(data)] : [])].map(unbroken);
  const numbers = numbersOf(data, chart.columns(data));
  return make(
    "figure",
    { id, class: "chart" },
    make("h3", { id: `${id}-title` }, chart.title(data)),
    askSign(chart.about(data), chart.title(data)),
    draw(
      "svg",
      {
        id: `${id}-drawing`,
        class: "chart-drawing",
        viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
        role: "img",
        "aria-labelledby": `${id}-title`,
        "aria-describedby": `${id}-words`,
        ...pointing(state, chart, id),
      },
      draw("rect", { class: "chart-paper", x: 0, y: 0, width: WIDTH, height: HEIGHT }),
      ...chart.drawn(data, frame, across),
      draw("g", { id: `${id}-looking` }, ...moving(state, data, chart)),
    ),
    make("div", { id: `${id}-read`, class: "chart-read" }, ...read(state, data, chart)),
    make("figcaption", { id: `${id}-words` }, list(words)),
    tableOf(id, chart.title(data), numbers),
    takeAway(state, act, { id, file: chart.file, title: chart.title(data), words, numbers, data }),
  );
}

/** A number stays beside its per cent. @param {string} text */
const unbroken = (text) => text.replaceAll(" %", "\u00a0%");

/** @param {ChartData} data */
const beyond = ({ trusted }) => say("page.chart-beyond", { from: shareText(trusted.from), to: shareText(trusted.to) });

/** @param {State} state @param {ChartData} data @param {Chart} chart */
function moving(state, data, chart) {
  const frame = chart.frame(data);
  const here = pointed?.chart === chart.id ? pointed.percent : undefined;
  const marks = [advisedMark(data.advice), ...lookingMarks(data.advice, state.looking)];
  return [
    ...marks.map((mark) => upright(frame, mark)),
    ...(here === undefined ? [] : [pointerLine(frame, here)]),
    ...chart.dots(data, frame, outcome(state, here)),
    ...marks.map((mark) => uprightLabel(frame, mark)),
  ];
}

/** The values at the pointer, else at the ratio looked at. @param {State} state @param {ChartData} data @param {Chart} chart */
function read(state, data, chart) {
  const at = outcome(state, pointed?.chart === chart.id ? pointed.percent : undefined);
  return [
    make("p", { class: "chart-read-at" }, say("page.chart-at", { percent: shareText(at.percent), strong: data.advice.strong.name })),
    make("ul", {}, ...chart.read(data, at).map((each) => make("li", {}, each))),
  ];
}

/** @param {State} state @param {number | undefined} percent */
const outcome = (state, percent) => outcomeAt(state.answered?.answer, percent ?? state.looking.percent);

/** Reads the chart under the pointer; a finger leaves its reading behind. @param {State} state @param {Chart} chart @param {string} id */
function pointing(state, chart, id) {
  const show = (/** @type {number | undefined} */ percent) => {
    const data = chartData(state);
    pointed = percent === undefined ? undefined : { chart: chart.id, percent };
    if (data) follow(state, data, chart);
  };
  const move = (/** @type {PointerEvent} */ event) => {
    const data = chartData(state);
    if (!data) return;
    const box = byId(`${id}-drawing`).getBoundingClientRect();
    const x = ((event.clientX - box.left) * WIDTH) / box.width;
    const { area } = chart.frame(data);
    const share = shareUnder(chart.frame(data), Math.min(area.right, Math.max(area.left, x)));
    show(Math.min(data.shares[data.shares.length - 1], Math.max(data.shares[0], readable(share))));
  };
  return {
    onpointerdown: move,
    onpointermove: move,
    onpointerleave: (/** @type {PointerEvent} */ event) => {
      if (event.pointerType !== "touch") show(undefined);
    },
  };
}
