// @ts-check
/** The photo of each plate while it is read: it is no part of the sheet, stays when the view is closed, and goes with the study. */

import { toTurn } from "./turning.js";

/**
 * @typedef {import("../state.js").State} State
 * @typedef {{x: number, y: number}} Point in fractions of the picture's width and height, from its top left
 * @typedef {"uv-254" | "uv-366" | "daylight"} Light
 *
 * @typedef {object} Profile of a lane along the height; raw, baseline and signal in −ln(I/I₀)
 * @property {number} fromMm
 * @property {number} stepMm
 * @property {number[]} raw
 * @property {number[]} baseline
 * @property {number[]} signal
 *
 * @typedef {{id: string, startXMm: number, frontXMm: number, widthMm: number, profile?: Profile}} Lane its middle at the start line and at the front, straight between
 *
 * @typedef {object} Spot
 * @property {string} id
 * @property {string} lane id of its lane
 * @property {number} mm height of its centre
 * @property {number} errorMm standard error of the centre
 * @property {number} sizeMm along the lane
 * @property {number} widthMm across
 * @property {"compact" | "streak" | "sharp-head" | "merged"} shape
 * @property {number} contrast 0 to 1
 * @property {"photo" | "hand"} by who placed it last
 *
 * @typedef {object} Marks what is marked on the straightened plate, heights in mm from its lower edge; never changed, only replaced
 * @property {[number, number]} start at the left and the right edge
 * @property {[number, number, number]} front at the left edge, in the middle, at the right edge: a parabola
 * @property {Lane[]} lanes
 * @property {Spot[]} spots
 * @property {{lane: string, mm: number}[]} gone places of proposed spots that were taken away
 *
 * @typedef {{image: ImageBitmap, widthMm: number, heightMm: number, corners: Point[]}} Flat the straightened plate, and what it was made of
 * @typedef {{corners: Point[], turns: number}} Outline
 * @typedef {{code: string, [name: string]: number | string}} Fault
 *
 * @typedef {object} Photo
 * @property {string} study
 * @property {string} plate
 * @property {"begin" | "corners" | "marks"} stage what is looked at
 * @property {"" | "opening" | "straightening" | "reading" | "keeping"} waiting for what
 * @property {number} turn counts what was asked, so that an answer nobody waits for is passed over
 * @property {Blob | undefined} file
 * @property {string} name of the file
 * @property {ImageBitmap | undefined} shown the picture for the screen, upright
 * @property {number} turns how many quarter turns clockwise it is shown
 * @property {Point[]} corners lower left, lower right, upper right, upper left of the plate, in the picture before it is turned
 * @property {"found" | "unsure" | "none"} found whether the corners were
 * @property {Light} light
 * @property {"photo" | "hand"} lightBy
 * @property {Flat | undefined} flat
 * @property {{start: boolean, front: boolean}} lines whether they were found
 * @property {Marks | undefined} marks
 * @property {string | undefined} lane id of the lane that is looked at
 * @property {string | undefined} spot id of the spot that is looked at
 * @property {{corners: Outline[], marks: Marks[]}} steps that can be taken back
 * @property {string | undefined} together the word of the latest step
 * @property {number} next number of the next id
 * @property {{image: ImageBitmap, x: number, y: number} | undefined} loupe what is magnified: a place of the picture shown
 * @property {Map<string, Fault>} faults by the id of the entry
 * @property {boolean} keep whether the picture is to be kept with the study
 * @property {{marks: Marks, lanes: string} | undefined} taken the marks that were taken over last, and the lanes they became
 * @property {boolean} over whether a file is held over the view
 */

/** Steps that can be taken back. */
const MOST_STEPS = 100;

/** @type {Map<string, Photo>} */
const photos = new Map();

/** Draws the view anew; set by the view. */
export const drawing = { again: () => {} };

/** The photo of a plate, begun where there is none. Photos of another study are forgotten. @param {State} state @param {string} plate @returns {Photo} */
export function photoOf(state, plate) {
  forgetOthers(state);
  const known = photos.get(plate);
  if (known) return known;
  const begun = begin(state.sheet.id, plate);
  photos.set(plate, begun);
  return begun;
}

/** @param {State} state */
export function forgetOthers({ sheet }) {
  for (const [plate, photo] of photos) {
    if (photo.study === sheet.id) continue;
    photo.turn++;
    photos.delete(plate);
  }
}

/** @param {string} study @param {string} plate @returns {Photo} */
function begin(study, plate) {
  return {
    study,
    plate,
    stage: "begin",
    waiting: "",
    turn: 0,
    file: undefined,
    name: "",
    shown: undefined,
    turns: 0,
    corners: [],
    found: "none",
    light: "uv-254",
    lightBy: "photo",
    flat: undefined,
    lines: { start: false, front: false },
    marks: undefined,
    lane: undefined,
    spot: undefined,
    steps: { corners: [], marks: [] },
    together: undefined,
    next: 1,
    loupe: undefined,
    faults: new Map(),
    keep: false,
    taken: undefined,
    over: false,
  };
}

/** Moves the outline; with the same word one after another it is one step. @param {Photo} photo @param {Outline} outline @param {string} [together] */
export function changeOutline(photo, outline, together) {
  remember(photo, photo.steps.corners, { corners: photo.corners, turns: photo.turns }, together);
  Object.assign(photo, outline);
  photo.faults.delete("photo-corners");
  drawing.again();
}

/** Turns what is shown by quarter turns clockwise: its lower edge is then the side where the start line is. @param {Photo} photo @param {number} quarters */
export const turn = (photo, quarters) => changeOutline(photo, toTurn(photo, quarters));

/** Changes what is marked; with the same word one after another it is one step. @param {Photo} photo @param {(marks: Marks) => Marks} change @param {string} [together] */
export function changeMarks(photo, change, together) {
  if (!photo.marks) return;
  const changed = change(photo.marks);
  if (changed === photo.marks) return;
  remember(photo, photo.steps.marks, photo.marks, together);
  photo.marks = changed;
  photo.faults.delete("photo-lines");
  drawing.again();
}

/** @template T @param {Photo} photo @param {T[]} steps @param {T} before @param {string | undefined} together */
function remember(photo, steps, before, together) {
  if (!together || together !== photo.together) {
    steps.push(before);
    if (steps.length > MOST_STEPS) steps.shift();
  }
  photo.together = together;
}

/** The next change is a step of its own. @param {Photo} photo */
export function rest(photo) {
  photo.together = undefined;
}

/** Whether there is a step to take back at this stage. @param {Photo} photo */
export const canUndo = ({ stage, steps }) => stage !== "begin" && steps[stage].length > 0;

/** Takes the latest step back. @param {Photo} photo @returns {boolean} whether there was one */
export function undo(photo) {
  photo.together = undefined;
  photo.loupe = undefined;
  const outline = photo.stage === "corners" ? photo.steps.corners.pop() : undefined;
  const marks = photo.stage === "marks" ? photo.steps.marks.pop() : undefined;
  if (outline) Object.assign(photo, outline);
  if (marks) photo.marks = marks;
  photo.faults.delete(`photo-${photo.stage === "corners" ? "corners" : "lines"}`);
  drawing.again();
  return outline !== undefined || marks !== undefined;
}

/** An id that nothing on this photo has. @param {Photo} photo @param {"lane" | "spot"} kind */
export const freshMark = (photo, kind) => `${kind}-${photo.next++}`;
