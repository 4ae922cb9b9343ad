// @ts-check
/** The course of a reaction over time: what was graded by eye as marks, and the band in which a grade is to be expected. */

import { shortened, spread } from "../charts/frame.js";
import { d3 } from "../d3.js";
import { draw } from "../dom.js";
import { COLOURS } from "../sheet/sheet.js";
import { marked, say } from "../texts.js";
import { gradeWords } from "./reaction-plate.js";
import { minutesOf } from "./reaction-sheet.js";

/** @typedef {import("./reaction-sheet.js").Reaction} Reaction @typedef {{name: string, i: number, grade: (number | null)[], expected: {minutes: number[], value: number[], low: number[], high: number[]}}} Course */

const HEIGHT = 270;
const LEFT = 48;
const TOP = 26;
const BOTTOM = HEIGHT - 46;
const NAMES = 70;
const NAME_LINE = 14;
const STRONGEST = 4;

/** A drawing for a phone has fewer units across, so that its letters stay readable. */
export const narrow = window.matchMedia("(max-width: 700px)");

/** Marks of different compounds differ by their shape, too; about (0, 0). */
const SHAPES = ["M-4.5,0A4.5,4.5 0 1 0 4.5,0A4.5,4.5 0 1 0 -4.5,0Z", "M-4,-4H4V4H-4Z", "M0,-5.2L5,4H-5Z", "M0,-5.5L5.5,0L0,5.5L-5.5,0Z", "M0,5.2L5,-4H-5Z", "M-4.5,-1.6H-1.6V-4.5H1.6V-1.6H4.5V1.6H1.6V4.5H-1.6V1.6H-4.5Z"];

/** @param {string} id of the drawing @param {Reaction} reaction @param {any} answer @param {{width?: number}} [paper] */
export function courseView(id, reaction, answer, paper = {}) {
  const { curve, lookAgain } = answer;
  const courses = coursesOf(reaction, curve);
  const width = paper.width ?? (narrow.matches ? 360 : 620);
  const right = width - NAMES;
  const last = Math.max(1, ...curve.minutes, lookAgain?.atMinutes ?? 0, ...courses.flatMap(({ expected }) => expected.minutes));
  const x = d3.scaleLinear([0, last], [LEFT, right]);
  const y = d3.scaleLinear([0, STRONGEST], [BOTTOM, TOP]).clamp(true);
  return draw(
    "svg",
    { id, class: "course-drawing chart-drawing", viewBox: `0 0 ${width} ${HEIGHT}`, role: "img", "aria-label": courseWords(reaction, courses, answer) },
    draw("rect", { class: "chart-paper", x: 0, y: 0, width, height: HEIGHT }),
    ...axes(x, y, right),
    ...again(lookAgain, x),
    ...courses.flatMap((course) => band(course, x, y)),
    ...courses.flatMap((course) => marks(course, curve.minutes, x, y)),
    ...names(courses, y, right),
  );
}

/** @param {Reaction} reaction @param {any} curve @returns {Course[]} */
function coursesOf({ species }, curve) {
  return species.flatMap(({ name }, i) => {
    const found = curve.species[name.trim()];
    if (!found) return [];
    return [{ name: name.trim(), i, grade: found.grade, expected: found.expected ?? { minutes: [], value: [], low: [], high: [] } }];
  });
}

/** @param {any} x @param {any} y @param {number} right */
function axes(x, y, right) {
  const bottom = draw("g", { class: "chart-axis", transform: `translate(0,${BOTTOM})` });
  const side = draw("g", { class: "chart-axis", transform: `translate(${LEFT},0)` });
  d3.select(bottom).call(d3.axisBottom(x).ticks(Math.floor((right - LEFT) / 55)).tickFormat((/** @type {number} */ minutes) => marked(String(minutes))).tickSizeOuter(0).offset(0));
  d3.select(side).call(d3.axisLeft(y).tickValues([0, 1, 2, 3, 4]).tickFormat(String).tickSizeOuter(0).offset(0));
  return [
    ...[1, 2, 3, 4].map((grade) => draw("line", { class: "course-rule", x1: LEFT, x2: right, y1: y(grade), y2: y(grade) })),
    bottom,
    side,
    draw("text", { class: "chart-axis-title", x: (LEFT + right) / 2, y: HEIGHT - 10, "text-anchor": "middle" }, say("later.checks-reaction-time-axis")),
    draw("text", { class: "chart-axis-title", x: 0, y: 0, transform: `translate(14,${(TOP + BOTTOM) / 2}) rotate(-90)`, "text-anchor": "middle" }, say("later.checks-reaction-grade-axis")),
  ];
}

/** When to look again. @param {any} lookAgain @param {any} x */
function again(lookAgain, x) {
  if (!lookAgain) return [];
  const at = x(lookAgain.atMinutes);
  return [
    draw("line", { class: "course-again", x1: at, x2: at, y1: TOP - 8, y2: BOTTOM }),
    draw("text", { class: "course-again-words", x: at, y: TOP - 12, "text-anchor": "end" }, say("later.checks-reaction-again", { minutes: Math.round(lookAgain.atMinutes) })),
  ];
}

/** @param {Course} course @param {any} x @param {any} y */
function band({ i, expected }, x, y) {
  const { minutes, value, low, high } = expected;
  if (minutes.length === 0) return [];
  const along = (/** @type {number[]} */ values) => minutes.map((at, k) => `${x(at).toFixed(1)},${y(values[k]).toFixed(1)}`);
  const colour = i % COLOURS;
  return [
    draw("path", { class: `chart-band chart-colour-${colour}`, d: `M${[...along(low), ...along(high).reverse()].join("L")}Z` }),
    ...[low, high].map((edge) => draw("path", { class: `chart-band-edge chart-colour-${colour}`, d: `M${along(edge).join("L")}` })),
    draw("path", { class: `chart-curve course-curve-${colour} chart-colour-${colour}`, d: `M${along(value).join("L")}` }),
  ];
}

/** What was seen; compounds of the same grade stand beside each other. @param {Course} course @param {number[]} minutes @param {any} x @param {any} y */
function marks({ i, grade }, minutes, x, y) {
  return grade.flatMap((one, k) =>
    one === null || one === undefined ? [] : [draw("path", { class: `course-mark chart-colour-${i % COLOURS}`, d: SHAPES[i % SHAPES.length], transform: `translate(${(x(minutes[k]) + 4 * (i % 3) - 2).toFixed(1)},${y(one).toFixed(1)})` })],
  );
}

/** Each name at the end of its curve, with its mark. @param {Course[]} courses @param {any} y @param {number} right */
function names(courses, y, right) {
  const ends = courses.map(({ expected, grade }) => expected.value.at(-1) ?? grade.findLast((one) => one !== null) ?? 0);
  const heights = spread(ends.map((end) => y(end)), NAME_LINE, TOP, BOTTOM);
  return courses.flatMap(({ name, i }, k) => [
    draw("path", { class: `course-mark chart-colour-${i % COLOURS}`, d: SHAPES[i % SHAPES.length], transform: `translate(${right + 10},${heights[k]})` }),
    draw("text", { class: "course-name", x: right + 18, y: heights[k] + 4 }, shortened(name, i + 1).slice(0, 7)),
  ]);
}

/** The course in words. @param {Reaction} reaction @param {Course[]} courses @param {any} answer */
function courseWords({ plates }, courses, { curve, lookAgain }) {
  const times = plates.map(({ minutes }) => minutesOf(minutes)).filter((each) => each !== undefined);
  const seen = courses.map(({ name, grade }) =>
    curve.minutes.map((/** @type {number} */ at, /** @type {number} */ k) => say("later.checks-reaction-cell", { words: gradeWords(name, grade[k] ?? undefined), minutes: say("later.checks-reaction-minutes", { minutes: at }) })).join("; "),
  );
  const next = lookAgain ? ` ${say("later.checks-reaction-again", { minutes: Math.round(lookAgain.atMinutes) })}.` : "";
  return `${say("later.checks-reaction-course-words", { count: times.length })} ${seen.join(". ")}.${next}`;
}
