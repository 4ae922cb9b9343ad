// @ts-check
/** Draws one plate of a reaction, a narrow layer: starting material and co-spot faint, the reaction beside them with each spot at its Rf. */

import { shortened, spread } from "../charts/frame.js";
import { draw } from "../dom.js";
import { decimal } from "../numbers.js";
import { layer, pencilLine } from "../plate/layer.js";
import { COLOURS } from "../sheet/sheet.js";
import { marked, say } from "../texts.js";
import { namesOf } from "./reaction-question.js";
import { BASELINE, STRONGEST, rfOf, rowsOf, strengthOf } from "./reaction-sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("./reaction-sheet.js").Reaction} Reaction @typedef {import("./reaction-sheet.js").TimePlate} TimePlate */

/** Its lengths [mm]; no plate is cut so small, but as many as belong together fit side by side. */
const LINES = { width: 44, height: 56, start: 9, front: 51, run: 42 };
/** Millimetres that a pixel shows. */
const PIXEL = 0.32;
/** @type {[string, string]} */
const WINDOW = ["0.2", "0.8"];

/** The lanes from left to right: starting material alone, both, the reaction. */
const LANES = { start: 7, both: 17, reaction: 27.5 };
const NAMES_AT = 32;
const NAME_LINE = 5.2;

/** Radius of a spot by its strength [mm]. */
const RADIUS = [1.5, 1.3, 1.9, 2.6, 3.4];

/**
 * @typedef {{id: string, y: number, colour: number, name: string, known: boolean}} Place where a compound runs, from the upper edge of the drawing; known where somebody said its Rf
 */

/** @param {Reaction} reaction @param {State["sheet"]} sheet @param {TimePlate} plate @returns {Place[]} */
export function placesOf(reaction, sheet, plate) {
  const names = namesOf(reaction);
  return rowsOf(reaction).map((id, i) => {
    const rf = id === BASELINE ? 0 : decimal(rfOf(reaction, sheet, id, plate));
    const known = rf !== undefined && rf >= 0 && rf <= 1;
    const drawn = known ? rf : (i + 1) / (reaction.species.length + 1);
    return { id, y: LINES.height - LINES.start - drawn * LINES.run, colour: i % COLOURS, name: names.get(id) || say("page.unnamed"), known };
  });
}

/** The Rf at a height of the drawing, held on the plate. @param {number} y */
export const rfAt = (y) => Math.min(1, Math.max(0, (LINES.height - LINES.start - y) / LINES.run));

/** Rf in a pixel of the screen, where so many pixels show a millimetre. @param {number} pixels */
export const rfInPixel = (pixels) => 1 / (pixels * LINES.run);

/** What stands beside a spot, short. @param {string} name @param {number} i */
const short = (name, i) => ([...name].length > 4 ? shortened(name, i + 1).slice(0, 3) + "\u2026" : name);

/**
 * @param {string} id of the drawing
 * @param {State["sheet"]} sheet @param {Reaction} reaction @param {TimePlate} plate
 * @param {import("../dom.js").Attributes} [handlers]
 * @param {Record<string, number>} [assumed] strengths as on the plate before, by row
 */
export function plateDrawing(id, sheet, reaction, plate, handlers = {}, assumed = {}) {
  const { width, height, start, front } = LINES;
  const places = placesOf(reaction, sheet, plate);
  const line = (/** @type {number} */ mm) => draw("g", { transform: `translate(0,${height - mm})`, "aria-hidden": "true" }, ...pencilLine(width, PIXEL));
  return draw(
    "svg",
    { id, class: "time-plate", viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": platesWords(reaction, sheet, plate, assumed), ...handlers },
    layer(id, LINES, PIXEL, WINDOW),
    line(start),
    line(front),
    ...Object.entries(LANES).map(([lane, x]) => draw("text", { class: `time-lane time-lane-${lane}`, x, y: height - start + 5.4, "text-anchor": "middle", "aria-hidden": "true" }, say(`later.checks-reaction-lane-${lane}`))),
    ...faint(reaction, plate, places),
    ...places.flatMap((place) => (assumed[place.id] > 0 ? [circle(place, LANES.reaction, assumed[place.id], "faint")] : spot(place, LANES.reaction, strengthOf(plate, place.id)))),
    ...names(places, plate),
  );
}

/** The starting material alone, and it together with the reaction. @param {Reaction} reaction @param {TimePlate} plate @param {Place[]} places */
function faint({ species }, plate, places) {
  const isStart = (/** @type {string} */ id) => species.find((one) => one.id === id)?.part === "start";
  return places.flatMap((place) => {
    const strength = strengthOf(plate, place.id) ?? 0;
    const alone = isStart(place.id) ? [circle(place, LANES.start, STRONGEST, "faint")] : [];
    const both = isStart(place.id) ? STRONGEST : strength;
    return [...alone, ...(both > 0 ? [circle(place, LANES.both, both, "faint")] : [])];
  });
}

/** @param {Place} place @param {number} x @param {number | undefined} strength */
const spot = (place, x, strength) => (strength === undefined ? [] : [circle(place, x, Math.min(STRONGEST, Math.max(0, strength)), strength > 0 ? "seen-spot" : "no-spot")]);

/** @param {Place} place @param {number} x @param {number} strength @param {string} kind */
function circle({ y, colour, known, id }, x, strength, kind) {
  const r = RADIUS[Math.round(strength)];
  return draw("ellipse", { class: `time-spot ${kind} strength-${Math.round(strength)} ${known ? "" : "unplaced"} ${id === BASELINE ? "" : `colour-${colour}`}`, cx: x, cy: y, rx: r, ry: 0.85 * r });
}

/** What each spot of the reaction is called, a line apart. @param {Place[]} places @param {TimePlate} plate */
function names(places, plate) {
  const shown = places.filter(({ id }) => id !== BASELINE && strengthOf(plate, id) !== undefined);
  const heights = spread(shown.map(({ y }) => y), NAME_LINE, 6, LINES.height - 10);
  return shown.map((place, i) =>
    draw("text", { class: strengthOf(plate, place.id) === 0 ? "time-name gone" : "time-name", x: NAMES_AT, y: heights[i] + 1.6, "aria-hidden": "true" }, short(place.name, places.indexOf(place))),
  );
}

/** A plate in words. @param {Reaction} reaction @param {State["sheet"]} sheet @param {TimePlate} plate @param {Record<string, number>} assumed */
function platesWords(reaction, sheet, plate, assumed) {
  const names = namesOf(reaction);
  const seen = rowsOf(reaction).map((id) => {
    const rf = id === BASELINE ? "" : rfOf(reaction, sheet, id, plate).trim();
    const words = gradeWords(names.get(id) || say("page.unnamed"), strengthOf(plate, id), assumed[id]);
    return rf === "" ? words : `${words}, Rf ${marked(rf)}`;
  });
  return say("later.checks-reaction-plate-words", { minutes: timeWords(plate.minutes), seen: seen.join("; ") });
}

/** A compound with its strength in words. @param {string} name @param {number | undefined} strength @param {number} [assumed] as on the plate before */
export const gradeWords = (name, strength, assumed) =>
  say("later.fractions-seen", { spot: name, strength: assumed === undefined ? strengthWords(strength) : say("later.checks-reaction-as-before", { strength: strengthWords(assumed) }) });

/** A time as typed, with its unit where it has none. @param {string} typed */
export const timeWords = (typed) => (decimal(typed) === undefined ? typed.trim() || "?" : say("later.checks-reaction-minutes", { minutes: marked(typed.trim()) }));

/** @param {number | undefined} strength */
export const strengthWords = (strength) => (strength === undefined ? say("later.checks-reaction-unlooked") : strength in RADIUS ? say(`later.checks-reaction-strength-${strength}`) : String(strength));
