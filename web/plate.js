// @ts-check
/** Draws a plate as matter: a layer with a cut edge, pencil lines, measured spots with an edge, expected ones as clouds. */

import { draw } from "./dom.js";

const WIDTH = 120;
const HEIGHT = 190;
const START = 165;
const FRONT = 25;
const LANES = { from: 22, to: 98 };
const SPOT = 6;

/** Okabe and Ito's colours that stand out on cream; they only repeat the letters. */
const COLOURS = ["#0072b2", "#d55e00", "#007a59", "#a3457f", "#8a5a00", "#3d3d3d"];

let drawn = 0;

/**
 * @typedef {{name: string, rf: number, low?: number, high?: number}} DrawnSpot a spot with low and high is expected
 * @param {(DrawnSpot | undefined)[]} lanes one lane a spot, empty where nothing is known
 * @param {string} label what it shows, in words
 * @param {"measured" | "expected"} kind
 */
export function drawPlate(lanes, label, kind) {
  const id = `plate-${++drawn}`;
  const svg = draw("svg", {
    class: `plate ${kind}`,
    viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
    role: "img",
    "aria-label": label,
  });
  svg.append(...layer(id));
  lanes.forEach((spot, i) => {
    const x = laneX(i, lanes.length);
    svg.append(draw("path", { class: "tick", d: `M${x} ${START - 3}v6` }));
    if (spot) svg.append(...(spot.low === undefined ? measured(spot, x, i) : expected(spot, x, i, id)));
  });
  return svg;
}

/** @param {number} i @param {number} count */
const laneX = (i, count) => LANES.from + ((LANES.to - LANES.from) * (i + 0.5)) / count;

/** @param {number} rf */
const y = (rf) => START - (START - FRONT) * Math.min(1, Math.max(0, rf));

/** The layer with its grain, the window, start line and front. @param {string} id */
function layer(id) {
  const cut = `M8 ${HEIGHT - 5}L8.4 5.5L50 5L90 5.6L${WIDTH - 8} 5.2L${WIDTH - 8.3} ${HEIGHT - 5.4}L70 ${HEIGHT - 5}Z`;
  const grain = draw(
    "pattern",
    { id: `${id}-grain`, width: 9, height: 7, patternUnits: "userSpaceOnUse" },
    draw("circle", { class: "grain", cx: 2, cy: 2, r: 0.4 }),
    draw("circle", { class: "grain", cx: 6.5, cy: 4.6, r: 0.35 }),
  );
  return [
    draw("defs", {}, grain),
    draw("path", { class: "layer", d: cut }),
    draw("path", { d: cut, fill: `url(#${id}-grain)` }),
    draw("rect", { class: "window", x: 9, y: y(0.8), width: WIDTH - 18, height: y(0.2) - y(0.8) }),
    draw("path", { class: "pencil", d: `M12 ${START}L60 ${START - 0.4}L108 ${START + 0.2}` }),
    draw("path", { class: "pencil", d: `M12 ${FRONT + 0.3}L64 ${FRONT}L108 ${FRONT + 0.4}` }),
    draw("path", { class: "pencil faint", d: `M8.5 ${y(0.2)}h7M8.5 ${y(0.8)}h7` }),
  ];
}

/** @param {DrawnSpot} spot @param {number} x @param {number} i */
function measured(spot, x, i) {
  return [
    draw("ellipse", { class: "spot", cx: x, cy: y(spot.rf), rx: SPOT, ry: SPOT * 0.8, fill: COLOURS[i % COLOURS.length] }),
    letter(spot.name, x, y(spot.rf), SPOT),
  ];
}

/** A cloud as high as the Rf that 9 of 10 plates show. @param {DrawnSpot} spot @param {number} x @param {number} i @param {string} id */
function expected(spot, x, i, id) {
  const colour = COLOURS[i % COLOURS.length];
  const top = y(spot.high ?? spot.rf);
  const bottom = y(spot.low ?? spot.rf);
  const half = Math.max(SPOT, (bottom - top) / 2);
  const cloud = draw(
    "radialGradient",
    { id: `${id}-cloud-${i}` },
    draw("stop", { offset: 0, "stop-color": colour, "stop-opacity": 0.75 }),
    draw("stop", { offset: 0.55, "stop-color": colour, "stop-opacity": 0.35 }),
    draw("stop", { offset: 1, "stop-color": colour, "stop-opacity": 0 }),
  );
  return [
    draw("defs", {}, cloud),
    draw("ellipse", { cx: x, cy: (top + bottom) / 2, rx: SPOT * 1.6, ry: half, fill: `url(#${id}-cloud-${i})` }),
    letter(spot.name, x, y(spot.rf), SPOT * 1.4),
  ];
}

/** @param {string} name @param {number} x @param {number} height @param {number} away */
function letter(name, x, height, away) {
  const short = name.length > 3 ? `${name.slice(0, 2)}…` : name;
  return draw("text", { class: "letter", x: x + away + 1.5, y: height + 3 }, short);
}
