// @ts-check
/** What is marked on the straightened plate, computed: heights of its lines, Rf and its error, and how proposals join what a hand marked. */

import { errorOfRf } from "../sheet/geometry.js";
import { frontAt as frontAcross, startAt as startAcross } from "./reading/field.js";

/**
 * @typedef {import("./store.js").Marks} Marks @typedef {import("./store.js").Lane} Lane @typedef {import("./store.js").Spot} Spot
 * @typedef {{width: number, height: number}} Size of the plate [mm]
 */

/** The error of a spot that a hand placed [mm]. */
const HAND_MM = 0.5;
/** A spot proposed this near to one that a hand placed, or took away, is the same [mm]. */
const SAME_MM = 1.5;
/** A lane is never moved off the plate further than this from its edge, and lines are held so far apart [mm]. */
const EDGE_MM = 0.5;
const LEAST_RUN_MM = 5;
/** What an added spot is taken to be, until somebody looks [mm]. */
const USUAL_MM = 3;
/** A new lane is as wide as its fellows, or as this [mm]. */
const USUAL_LANE_MM = 5;

/** Height of the start line at a place across. @param {Marks} marks @param {Size} size @param {number} x [mm] */
export const startAt = ({ start }, { width }, x) => startAcross(start, x / width);

/** Height of the front at a place across. @param {Marks} marks @param {Size} size @param {number} x [mm] */
export const frontAt = ({ front }, { width }, x) => frontAcross(front, x / width);

/** Middle of a lane at a height: straight from the start line to the front. @param {Marks} marks @param {Size} size @param {Lane} lane @param {number} mm */
export function laneXAt(marks, size, lane, mm) {
  const [from, to] = [startAt(marks, size, lane.startXMm), frontAt(marks, size, lane.frontXMm)];
  const share = to > from ? Math.min(1.1, Math.max(-0.1, (mm - from) / (to - from))) : 0;
  return lane.startXMm + share * (lane.frontXMm - lane.startXMm);
}

/** The lane of a spot. @param {Marks} marks @param {Spot} spot @returns {Lane} */
export function laneOf(marks, spot) {
  const found = marks.lanes.find(({ id }) => id === spot.lane);
  if (!found) throw new Error(`No lane "${spot.lane}" on the photo.`);
  return found;
}

/**
 * A spot between the lines where it lies: Rf = (h − s) / (f − s), held from 0 to 1, with its error and the run f − s [mm].
 * @param {Marks} marks @param {Size} size @param {Spot} spot
 */
export function between(marks, size, spot) {
  const x = laneXAt(marks, size, laneOf(marks, spot), spot.mm);
  const start = startAt(marks, size, x);
  const run = Math.max(1e-6, frontAt(marks, size, x) - start);
  const rf = Math.min(1, Math.max(0, (spot.mm - start) / run));
  return { x, run, rf, error: errorOfRf(spot.errorMm, rf, run) };
}

/** Lanes from left to right. @param {Marks} marks @returns {Lane[]} */
export const inOrder = ({ lanes }) => [...lanes].sort((one, other) => one.startXMm - other.startXMm);

/** Number of a lane from the left. @param {Marks} marks @param {string} id */
export const numberOf = (marks, id) => inOrder(marks).findIndex((lane) => lane.id === id) + 1;

/** Spots of a lane from below. @param {Marks} marks @param {string} lane @returns {Spot[]} */
export const spotsIn = ({ spots }, lane) => spots.filter((spot) => spot.lane === lane).sort((one, other) => one.mm - other.mm);

/** Heights of the lines of a plate whose lines are straight: their means over the width. @param {Marks} marks */
export const meanLines = ({ start, front }) => ({ start: (start[0] + start[1]) / 2, front: (front[0] + 4 * front[1] + front[2]) / 6 });

/** @param {Marks} marks @param {Size} size @param {"start" | "front"} line @param {number} at which of its handles @param {number} mm @returns {Marks} */
export function lineMoved(marks, size, line, at, mm) {
  const places = line === "start" ? [0, size.width] : [0, size.width / 2, size.width];
  const other = line === "start" ? frontAt(marks, size, places[at]) - LEAST_RUN_MM : startAt(marks, size, places[at]) + LEAST_RUN_MM;
  const held = line === "start" ? Math.max(0, Math.min(other, mm)) : Math.min(size.height, Math.max(other, mm));
  const heights = /** @type {any} */ (marks[line].map((each, i) => (i === at ? held : each)));
  return { ...marks, [line]: heights };
}

/** Moves a lane, or only its upper end. @param {Marks} marks @param {Size} size @param {string} id @param {"start" | "front"} end @param {number} x [mm] @returns {Marks} */
export function laneMoved(marks, size, id, end, x) {
  const held = Math.min(size.width - EDGE_MM, Math.max(EDGE_MM, x));
  const moved = (/** @type {Lane} */ lane) => {
    if (end === "front") return { ...lane, frontXMm: held, profile: undefined };
    const upper = Math.min(size.width - EDGE_MM, Math.max(EDGE_MM, lane.frontXMm + held - lane.startXMm));
    return { ...lane, startXMm: held, frontXMm: upper, profile: undefined };
  };
  return { ...marks, lanes: marks.lanes.map((lane) => (lane.id === id ? moved(lane) : lane)) };
}

/** Adds a lane in the middle of the widest gap. @param {Marks} marks @param {Size} size @param {string} id @returns {Marks} */
export function laneAdded(marks, size, id) {
  const edges = [0, ...inOrder(marks).map((lane) => lane.startXMm), size.width];
  const gaps = edges.slice(1).map((to, i) => ({ middle: (edges[i] + to) / 2, width: (to - edges[i]) * (i === 0 || i === edges.length - 2 ? 1 : 0.75) }));
  const [{ middle }] = gaps.sort((one, other) => other.width - one.width);
  const widthMm = marks.lanes[0]?.widthMm ?? Math.min(USUAL_LANE_MM, size.width / 4);
  return { ...marks, lanes: [...marks.lanes, { id, startXMm: middle, frontXMm: middle, widthMm }] };
}

/** Takes a lane away with its spots. @param {Marks} marks @param {string} id @returns {Marks} */
export const laneRemoved = (marks, id) => ({
  ...marks,
  lanes: marks.lanes.filter((lane) => lane.id !== id),
  spots: marks.spots.filter((spot) => spot.lane !== id),
  gone: marks.gone.filter(({ lane }) => lane !== id),
});

/** @param {Marks} marks @param {Size} size @param {string} id @param {number} mm @returns {Marks} */
export function spotMoved(marks, size, id, mm) {
  const held = Math.min(size.height, Math.max(0, mm));
  const moved = (/** @type {Spot} */ spot) => ({ ...spot, mm: held, by: /** @type {const} */ ("hand"), errorMm: spot.shape === "compact" ? HAND_MM : Math.max(HAND_MM, spot.errorMm) });
  return { ...marks, spots: marks.spots.map((spot) => (spot.id === id ? moved(spot) : spot)) };
}

/** Adds a spot that a person pointed at, with what was measured there, if anything was. @param {Marks} marks @param {string} id @param {string} lane @param {number} mm @param {Partial<Spot>} [measured] @returns {Marks} */
export function spotAdded(marks, id, lane, mm, measured) {
  const usual = { mm, errorMm: HAND_MM, sizeMm: USUAL_MM, widthMm: USUAL_MM, shape: /** @type {const} */ ("compact"), contrast: 0 };
  return { ...marks, spots: [...marks.spots, { ...usual, ...measured, id, lane, by: "hand" }] };
}

/** @param {Marks} marks @param {string} id @returns {Marks} */
export function spotRemoved(marks, id) {
  const spot = marks.spots.find((each) => each.id === id);
  if (!spot) return marks;
  return { ...marks, spots: marks.spots.filter((each) => each.id !== id), gone: [...marks.gone, { lane: spot.lane, mm: spot.mm }] };
}

/**
 * Joins what is proposed to what a hand marked: its spots stay, and no spot is proposed where it put one or took one away. A spot
 * proposed again keeps its id.
 * @param {Marks} marks @param {any[]} lanes as proposed, in the order of those marked @param {() => string} fresh an id @returns {Marks}
 */
export function joined(marks, lanes, fresh) {
  const hand = marks.spots.filter(({ by }) => by === "hand");
  const before = new Set(marks.spots.filter(({ by }) => by === "photo"));
  /** @type {Spot[]} */
  const proposed = [];
  lanes.forEach((each, i) => {
    const lane = marks.lanes[i].id;
    const isNear = (/** @type {number} */ mm) => (/** @type {{lane: string, mm: number}} */ other) => other.lane === lane && Math.abs(other.mm - mm) <= SAME_MM;
    for (const { mm, errorMm, sizeMm, widthMm, shape, contrast } of each.spots) {
      if (hand.some(isNear(mm)) || marks.gone.some(isNear(mm))) continue;
      const known = [...before].find(isNear(mm));
      if (known) before.delete(known);
      proposed.push({ id: known?.id ?? fresh(), lane, mm, errorMm, sizeMm, widthMm, shape, contrast, by: "photo" });
    }
  });
  return { ...marks, lanes: marks.lanes.map((lane, i) => ({ ...lane, profile: lanes[i].profile })), spots: [...hand, ...proposed] };
}

/** The same marks on a plate of another size. @param {Marks} marks @param {number} across @param {number} upright factors @returns {Marks} */
export function scaled(marks, across, upright) {
  const up = (/** @type {number[]} */ heights) => /** @type {any} */ (heights.map((mm) => mm * upright));
  return {
    start: up(marks.start),
    front: up(marks.front),
    lanes: marks.lanes.map((lane) => ({ ...lane, startXMm: lane.startXMm * across, frontXMm: lane.frontXMm * across, widthMm: lane.widthMm * across, profile: undefined })),
    spots: marks.spots.map((spot) => ({ ...spot, mm: spot.mm * upright, errorMm: spot.errorMm * upright, sizeMm: spot.sizeMm * upright, widthMm: spot.widthMm * across })),
    gone: marks.gone.map(({ lane, mm }) => ({ lane, mm: mm * upright })),
  };
}
