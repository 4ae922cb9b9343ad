// @ts-check
/** Where things lie on a plate: millimetres above its lower edge, and Rf between its lines. */

import { decimal, plain } from "../numbers.js";

/** @typedef {import("./sheet.js").Plate} Plate @typedef {import("./sheet.js").Reading} Reading */

/** How finely a ruler is read, and a spot placed, in mm. */
export const RULER_MM = 0.5;

/** Sizes taken where what was typed cannot be drawn, in mm. */
const FALLBACK = { height: 70, width: 40, start: 10, front: 62 };

/** A metre: nothing longer is a plate. */
const LONGEST_MM = 1000;

/**
 * The plate's lengths as numbers that can be drawn, whatever was typed: 0 ≤ start < front ≤ height.
 * @param {Pick<Plate, "heightMm" | "widthMm" | "startMm" | "frontMm">} plate
 */
export function lines(plate) {
  const height = length(plate.heightMm, 10, LONGEST_MM) ?? FALLBACK.height;
  const width = length(plate.widthMm, 5, LONGEST_MM) ?? FALLBACK.width;
  const start = length(plate.startMm, 0, height) ?? Math.min(FALLBACK.start, height / 5);
  const front = length(plate.frontMm, 0, height) ?? 0.9 * height;
  const drawn = front > start ? { start, front } : { start: Math.min(front, 0.8 * height), front: Math.min(height, Math.max(start, front + 1)) };
  return { height, width, ...drawn, run: drawn.front - drawn.start };
}

/** @param {string} typed @param {number} least @param {number} most */
function length(typed, least, most) {
  const mm = decimal(typed);
  return mm !== undefined && mm >= least && mm <= most ? mm : undefined;
}

/** Whether the lines are numbers as typed, and the front is above the start line: else no Rf means a height. @param {Plate} plate */
function measurable(plate) {
  const [start, front] = [decimal(plate.startMm), decimal(plate.frontMm)];
  return start !== undefined && front !== undefined && front > start;
}

/** The Rf of a reading, undefined where no number was typed or the lines are none. @param {Plate} plate @param {Reading} reading */
export function rfOf(plate, reading) {
  const number = decimal(reading.typed);
  if (number === undefined) return undefined;
  const { start, run } = lines(plate);
  if (reading.by === "rf") return number;
  return measurable(plate) ? (number - start) / run : undefined;
}

/** The height of a reading's centre in mm, undefined where no number was typed or the lines are none. @param {Plate} plate @param {Reading} reading */
export function mmOf(plate, reading) {
  const number = decimal(reading.typed);
  if (number === undefined) return undefined;
  const { start, run } = lines(plate);
  if (reading.by === "mm") return number;
  return measurable(plate) ? start + number * run : undefined;
}

/** A line is read, or marked on a photo, with this standard error [mm], as the server takes it. */
const LINE_MM = 0.5;

/** Standard error of an Rf: √(σ² + ½²·((1 − Rf)² + Rf²)) / L with σ the error of the spot's centre, ½ mm that of each line, and L the run. @param {number} errorMm @param {number} rf @param {number} run [mm] */
export const errorOfRf = (errorMm, rf, run) => Math.sqrt(errorMm ** 2 + LINE_MM ** 2 * ((1 - rf) ** 2 + rf ** 2)) / run;

/** Where a reading can be drawn: held on the plate; midway where no number was typed. @param {Plate} plate @param {Reading} reading */
export function drawnMm(plate, reading) {
  const { height, start, run } = lines(plate);
  return Math.min(height, Math.max(0, mmOf(plate, reading) ?? start + run / 2));
}

/** A height as it is typed: to the tenth of a millimetre. @param {number} mm */
export const typedMm = (mm) => plain(mm, 1);

/** An Rf as it is typed: two decimals. @param {number} rf */
export const typedRf = (rf) => plain(rf, 2);

/** A height moved by some mm, held between the lines as it is drawn. @param {Plate} plate @param {number} mm */
export function betweenLines(plate, mm) {
  const { start, front } = lines(plate);
  return Math.min(front, Math.max(start, mm));
}

/** To the next mark of the ruler. @param {number} mm */
export const onRuler = (mm) => Math.round(mm / RULER_MM) * RULER_MM;

/** How far apart start line and front are held when one of them is dragged, in mm. */
const LEAST_RUN_MM = 1;

/** The height of a line moved to some mm: on the plate, and the front above the start line. @param {Plate} plate @param {"start" | "front"} line @param {number} mm */
export function besideOther(plate, line, mm) {
  const { height, start, front } = lines(plate);
  return line === "start" ? Math.max(0, Math.min(front - LEAST_RUN_MM, mm)) : Math.min(height, Math.max(start + LEAST_RUN_MM, mm));
}

/** How far a lane is from the left edge, in mm: lanes are spread evenly. @param {Plate} plate @param {number} index */
export const laneX = (plate, index) => (lines(plate).width * (index + 0.5)) / plate.lanes.length;

/** The lane nearest to a place, by its distance from the left edge in mm. @param {Plate} plate @param {number} x @returns {number} its index */
export function nearestLane(plate, x) {
  const last = plate.lanes.length - 1;
  return Math.max(0, Math.min(last, Math.floor((x / lines(plate).width) * plate.lanes.length)));
}
