// @ts-check
/** The parts of the lesson, in their order; each is fetched when it is first shown. */

/**
 * @typedef {object} Part
 * @property {string} id its title is the text later.lesson-part-ID
 * @property {boolean} sample whether it is about the compounds of the lesson
 * @property {"shown" | "folded"} [cautions] how what to mind stands below it, where an experiment is set or may be tried
 * @property {() => Promise<PartModule>} fetch
 *
 * @typedef {object} PartModule
 * @property {(state: import("./state.js").State, act: import("./state.js").Act) => Element[]} view
 * @property {(state: import("./state.js").State) => {weak: string, strong: string} | undefined} [pairOf] ids of the solvents it is run in, where they are not
 *     those of the lesson
 */

/** @type {Part[]} */
export const PARTS = [
  { id: "series", sample: true, cautions: "folded", fetch: () => import("./series/series.js") },
  { id: "climb", sample: true, fetch: () => import("./climb/climb.js") },
  { id: "slips", sample: true, fetch: () => import("./slips/slips.js") },
  { id: "why", sample: true, fetch: () => import("./why/why.js") },
  { id: "exercise", cautions: "shown", sample: false, fetch: () => import("./exercise/exercise.js") },
  { id: "class", cautions: "shown", sample: true, fetch: () => import("./class/class.js") },
  { id: "worksheet", cautions: "shown", sample: false, fetch: () => import("./worksheet/worksheet.js") },
];

/** The part that is shown. @param {import("./state.js").Lesson} lesson */
export const partOf = (lesson) => PARTS.find(({ id }) => id === lesson.part) ?? PARTS[0];
