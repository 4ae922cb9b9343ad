// @ts-check
/** The parts of the lesson, in their order; each is fetched when it is first shown. */

/**
 * @typedef {object} Part
 * @property {string} id its title is the text later.lesson-part-ID
 * @property {boolean} sample whether it is about the compounds of the lesson
 * @property {() => Promise<{view: (state: import("./state.js").State, act: import("./state.js").Act) => Element[]}>} fetch
 */

/** @type {Part[]} */
export const PARTS = [
  { id: "series", sample: true, fetch: () => import("./series/series.js") },
  { id: "climb", sample: true, fetch: () => import("./climb/climb.js") },
  { id: "slips", sample: true, fetch: () => import("./slips/slips.js") },
  { id: "why", sample: true, fetch: () => import("./why/why.js") },
  { id: "exercise", sample: false, fetch: () => import("./exercise/exercise.js") },
  { id: "class", sample: true, fetch: () => import("./class/class.js") },
  { id: "worksheet", sample: false, fetch: () => import("./worksheet/worksheet.js") },
];

/** The part that is shown. @param {import("./state.js").Lesson} lesson */
export const partOf = (lesson) => PARTS.find(({ id }) => id === lesson.part) ?? PARTS[0];
