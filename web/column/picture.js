// @ts-check
/** The forecast over the fractions: how much of each compound is in each, and under it when each band starts, peaks and ends. */

import { shortened } from "../charts/frame.js";
import { d3 } from "../d3.js";
import { draw, make } from "../dom.js";
import { COLOURS } from "../sheet/sheet.js";
import { marked, say } from "../texts.js";
import { barsOf, barsHeight } from "./bars.js";
import { hatches } from "./hatches.js";
import { rounded, stepRatio } from "./plan.js";

/**
 * @typedef {import("../state.js").State} State
 * @typedef {{name: string, short: string, colour: number, band: any, shares: number[]}} Leaving a compound with its forecast
 * @typedef {{x: (ml: number) => number, left: number, right: number, width: number}} Across
 */

const LEFT = 66;
const STEPS_AT = 12;
const KEEP_AT = 30;
const TOP = 78;
const BOTTOM = 216;
/** Room under the fractions for their numbers and what they are. */
const AXIS = 40;
const NAME_LINE = 13;
const CHARACTER = 6.8;

/** A drawing for a phone has fewer units across, so that its letters stay readable. */
export const narrow = window.matchMedia("(max-width: 700px)");

/** @param {State} state @param {any} plan */
export function pictureView(state, plan) {
  const all = leaving(state, plan);
  const width = narrow.matches ? 360 : 760;
  const right = width - 16;
  const scale = d3.scaleLinear([0, plan.fractions * plan.fractionMl], [LEFT, right]);
  /** @type {Across} */
  const across = { x: scale, left: LEFT, right, width };
  const most = Math.max(0.05, ...all.flatMap(({ shares }) => shares));
  const y = d3.scaleLinear([0, most], [BOTTOM, TOP]);
  const floor = BOTTOM + AXIS + barsHeight(all.length);
  return make(
    "div",
    { id: "column-picture", class: "column-picture" },
    draw(
      "svg",
      { id: "column-drawing", class: "column-drawing chart-drawing", viewBox: `0 0 ${width} ${floor + 40}`, role: "img", "aria-label": told(state, plan, all) },
      draw("rect", { class: "chart-paper", x: 0, y: 0, width, height: floor + 40 }),
      hatches(),
      ...cutOf(plan, across, floor),
      ...upright(y, BOTTOM),
      ...all.flatMap((each) => leavingOf(each, plan, across, y)),
      ...names(all, plan, across, y),
      ...fractionAxis(plan, across),
      ...barsOf(all, across, BOTTOM + AXIS),
      ...millilitres(scale, across, floor),
      ...steps(state, plan, across, floor),
    ),
  );
}

/** @param {State} state @param {any} plan @returns {Leaving[]} in the order of the sample */
export function leaving({ sheet }, plan) {
  const names = sheet.spots.map(({ name }) => name.trim());
  return plan.spots.map((/** @type {any} */ band, /** @type {number} */ i) => {
    const at = names.indexOf(band.spot);
    const place = at < 0 ? i : at;
    return { name: band.spot, short: shortened(band.spot, plan.spots.length > 1 ? place + 1 : undefined), colour: place % COLOURS, band, shares: plan.shares[band.spot] ?? [] };
  });
}

/** What the drawing shows, for whoever does not see it. @param {State} state @param {any} plan @param {Leaving[]} all */
function told(state, plan, all) {
  const bands = all.map(({ name, band }) => say("later.elution-band-told", { spot: name, start: rounded(band.startMl.value), middle: rounded(band.middleMl.value), end: rounded(band.endMl.value) }));
  return [say("later.elution-picture-told", { count: plan.fractions, ml: plan.fractionMl }), ...bands].join(" ");
}

/** The share of one compound in each fraction, as steps. @param {Leaving} each @param {any} plan @param {Across} across @param {(share: number) => number} y */
function leavingOf({ shares, colour }, { fractionMl }, { x }, y) {
  const line = shares.map((share, i) => `${i === 0 ? "M" : "L"}${x(i * fractionMl)},${y(share)}L${x((i + 1) * fractionMl)},${y(share)}`).join("");
  if (!line) return [];
  const look = `chart-colour-${colour}`;
  return [
    draw("path", { class: `column-fill ${look}`, d: `${line}L${x(shares.length * fractionMl)},${BOTTOM}L${x(0)},${BOTTOM}Z`, fill: `url(#column-hatch-${colour})` }),
    draw("path", { class: `column-line column-line-${colour} ${look}`, d: line }),
  ];
}

/** Each name over its peak; where two are near, one stands higher. @param {Leaving[]} all @param {any} plan @param {Across} across @param {(share: number) => number} y */
function names(all, { fractionMl }, { x, left, right }, y) {
  /** @type {{from: number, to: number, at: number}[]} */
  const placed = [];
  return all.flatMap(({ short, shares, colour }) => {
    const most = Math.max(...shares);
    if (!(most > 0)) return [];
    const peak = shares.indexOf(most);
    const half = (short.length * CHARACTER) / 2;
    const middle = Math.min(right - half, Math.max(left + half, x((peak + 0.5) * fractionMl)));
    let at = y(most) - 6;
    for (const other of [...placed].sort((a, b) => b.at - a.at)) if (other.from < middle + half + 4 && other.to > middle - half - 4 && Math.abs(other.at - at) < NAME_LINE) at = other.at - NAME_LINE;
    at = Math.max(KEEP_AT + 14, at);
    placed.push({ from: middle - half, to: middle + half, at });
    return [
      at < y(most) - 8 && draw("line", { class: `chart-lead chart-colour-${colour}`, x1: middle, x2: middle, y1: at + 2, y2: y(most) }),
      draw("text", { class: "chart-name column-name", x: middle, y: at, "text-anchor": "middle" }, short),
    ].filter((each) => each !== false);
  });
}

/** The share of a compound in one fraction, in per cent. @param {any} y @param {number} bottom */
function upright(y, bottom) {
  const side = draw("g", { class: "chart-axis", transform: `translate(${LEFT},0)` });
  d3.select(side).call(d3.axisLeft(y).ticks(4).tickFormat((/** @type {number} */ share) => marked(String(Number((100 * share).toFixed(1))))).tickSizeOuter(0).offset(0));
  const middle = (TOP + bottom) / 2;
  return [side, draw("text", { class: "chart-axis-title", x: 0, y: 0, transform: `translate(16,${middle}) rotate(-90)`, "text-anchor": "middle" }, say("later.elution-share-axis"))];
}

/** @param {any} plan @param {Across} across */
function fractionAxis({ fractions, fractionMl }, { x, left, right }) {
  const wanted = Math.max(1, Math.floor((right - left) / 34));
  const every = [1, 2, 5, 10, 20, 50, 100].find((each) => fractions / each <= wanted) ?? 200;
  const numbered = Array.from({ length: fractions }, (_, i) => i + 1).filter((n) => n % every === 0 || (n === 1 && every > 2));
  const edges = fractions <= 120 ? Array.from({ length: fractions + 1 }, (_, i) => i) : [];
  return [
    draw("line", { class: "column-rule", x1: left, x2: right, y1: BOTTOM, y2: BOTTOM }),
    ...edges.map((i) => draw("line", { class: "column-rule", x1: x(i * fractionMl), x2: x(i * fractionMl), y1: BOTTOM, y2: BOTTOM + 4 })),
    ...numbered.map((n) => draw("text", { class: "chart-aside column-tick", x: x((n - 0.5) * fractionMl), y: BOTTOM + 16, "text-anchor": "middle" }, String(n))),
    draw("text", { class: "chart-axis-title", x: (left + right) / 2, y: BOTTOM + 31, "text-anchor": "middle" }, say("later.elution-fraction-axis", { ml: fractionMl })),
  ];
}

/** @param {any} scale @param {Across} across @param {number} at */
function millilitres(scale, { left, right }, at) {
  const bottom = draw("g", { class: "chart-axis", transform: `translate(0,${at})` });
  d3.select(bottom).call(d3.axisBottom(scale).ticks(Math.floor((right - left) / 60)).tickFormat((/** @type {number} */ ml) => marked(String(ml))).tickSizeOuter(0).offset(0));
  return [bottom, draw("text", { class: "chart-axis-title", x: (left + right) / 2, y: at + 34, "text-anchor": "middle" }, say("later.elution-ml-axis"))];
}

/** What is to be kept, through all of it. @param {any} plan @param {Across} across @param {number} floor */
function cutOf({ cut, fractionMl }, { x, left, right }, floor) {
  if (!cut) return [];
  const [from, to] = [x((cut.fromFraction - 1) * fractionMl), x(cut.toFraction * fractionMl)];
  const words = cut.fromFraction === cut.toFraction ? say("later.elution-keep-one", { number: cut.fromFraction }) : say("later.elution-keep-span", { from: cut.fromFraction, to: cut.toFraction });
  const half = (words.length * CHARACTER) / 2;
  return [
    draw("rect", { class: "column-cut", x: from, y: KEEP_AT + 5, width: to - from, height: floor - KEEP_AT - 5 }),
    ...[from, to].map((edge) => draw("line", { class: "column-cut-edge", x1: edge, x2: edge, y1: KEEP_AT + 5, y2: floor })),
    draw("text", { class: "column-keep", x: Math.min(right - half, Math.max(left + half, (from + to) / 2)), y: KEEP_AT, "text-anchor": "middle" }, words),
  ];
}

/** Where each eluent goes on. @param {State} state @param {any} plan @param {Across} across @param {number} floor */
function steps(state, plan, { x, left, right }, floor) {
  let poured = 0;
  let free = left;
  return plan.steps.flatMap((/** @type {any} */ step, /** @type {number} */ i) => {
    const at = x(poured);
    poured += step.volumeMl;
    if (at > right + 1) return [];
    const words = stepRatio(state, step);
    const fits = at + words.length * CHARACTER <= right + 10 && at >= free - 2;
    if (fits) free = at + words.length * CHARACTER + 8;
    return [
      i > 0 && draw("line", { class: "column-step", x1: at, x2: at, y1: STEPS_AT + 4, y2: floor }),
      fits && draw("text", { class: "chart-aside column-step-words", x: i > 0 ? at - 4 : at, y: STEPS_AT }, words),
    ].filter((each) => each !== false);
  });
}

/** The same in numbers. @param {State} state @param {any} plan */
export function bandsTable(state, plan) {
  const cell = (/** @type {any} */ { value, low, high }) => make("td", {}, make("b", {}, marked(String(rounded(value)))), " ", make("span", {}, `${marked(String(rounded(low)))}\u2013${marked(String(rounded(high)))}`));
  return make(
    "div",
    { id: "plan-bands", class: "chart-table", tabindex: 0, role: "region", "aria-label": say("later.elution-bands") },
    make(
      "table",
      {},
      make("caption", {}, say("later.elution-bands")),
      make("thead", {}, make("tr", {}, ...["spot", "rf", "start", "middle", "end", "ideal"].map((head) => make("th", { scope: "col" }, say(`later.elution-bands-${head}`))))),
      make(
        "tbody",
        {},
        ...leaving(state, plan).map(({ name, band }) =>
          make("tr", {}, make("th", { scope: "row" }, name), make("td", {}, marked(band.rf.value.toFixed(2))), cell(band.startMl), cell(band.middleMl), cell(band.endMl), make("td", {}, marked(String(rounded(band.idealMl))))),
        ),
      ),
    ),
  );
}
