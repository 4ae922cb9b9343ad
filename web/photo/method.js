// @ts-check
/** How a photo is read, step by step: what is done, after which paper, with which numbers and why those. */

import { make } from "../dom.js";
import { say } from "../texts.js";
import { LONGEST_SIDE_PX } from "./reading/decode.js";
import { BROAD_MM, GROUND_DEGREE, GROUND_WIDTH_MM } from "./reading/ground.js";
import { RISE } from "./reading/outlines.js";
import { ASYMMETRY, BASELINE_WIDTH_MM, SMOOTH_HALF_MM } from "./reading/profile.js";
import { DOT, THIN_HALF_MM } from "./reading/relief.js";
import { LONG, TAIL } from "./reading/shapes.js";
import { SHORTEST_MM } from "./reading/spots.js";

/** The steps in their order, each with the numbers that its sentence names. @type {[string, Record<string, number>][]} */
const STEPS = [
  ["straight", { longest: LONGEST_SIDE_PX }],
  ["density", { degree: GROUND_DEGREE, width: GROUND_WIDTH_MM, broad: BROAD_MM }],
  ["thin", { width: 2 * THIN_HALF_MM, dot: DOT.least }],
  ["profile", { smooth: 2 * SMOOTH_HALF_MM, width: BASELINE_WIDTH_MM, asymmetry: ASYMMETRY }],
  ["peaks", { noises: RISE.noises, least: 100 * RISE.least, flank: 100 * RISE.onFlank, share: 100 * RISE.share, shortest: SHORTEST_MM }],
  ["centre", {}],
  ["shape", { mm: LONG.mm, share: 100 * LONG.share, tail: TAIL }],
  ["error", {}],
];

/** @returns {Element} */
export function methodView() {
  return make(
    "details",
    { id: "photo-method" },
    make("summary", {}, say("later.photo-method")),
    make("ol", {}, ...STEPS.map(([step, numbers]) => make("li", {}, say(`later.photo-method-${step}`, numbers)))),
    make("p", { class: "aside" }, say("later.photo-method-sources")),
  );
}
