// @ts-check
/** What a lesson is about, kept in this browser over a reload, and what is looked at. */

/**
 * @typedef {{id: string, name: string, compound?: string, smiles?: string, groups?: Record<string, number>, class?: string}} Compound one of a lesson: of the
 *     table of lessons, or by what it is made of
 *
 * @typedef {object} Lesson what was entered; each number as it was typed
 * @property {Compound[]} compounds one to six
 * @property {string} weak @property {string} strong ids of the solvents
 * @property {"silica" | "alumina"} sorbent
 * @property {"automated" | "bench" | "class"} setting how much plates scatter
 * @property {string} percent share of the strong solvent that is pulled along [% v/v]
 * @property {string} part which part is shown
 * @property {Record<string, any>} parts what was entered in each part, by its id
 *
 * @typedef {object} State
 * @property {Lesson} lesson
 * @property {{library: any, sources: any, tables: any, groups: any}} published
 * @property {Record<string, import("./ask.js").Asked>} asked what came of each question, by its name
 * @property {Map<string, string[]>} faults of the part that is drawn, by the id of the entry
 * @property {Record<string, any>} looking what is looked at; gone after a reload
 *
 * @typedef {object} Act
 * @property {(change: (lesson: Lesson) => void) => void} edit changes what was entered, keeps it, and draws
 * @property {(looking: Record<string, any>) => void} look changes what is looked at, and draws
 * @property {(id: string) => void} focus
 * @property {(words: string) => void} speak says something to whoever does not see the page
 */

const KEY = "midplate-lesson";
const FORM = 1;

/** The lesson one begins with: an invented sample of three classes that part widely. @returns {Lesson} */
export const emptyLesson = () => ({
  compounds: [
    { id: "c1", name: "A", compound: "biphenyl" },
    { id: "c2", name: "B", compound: "benzophenone" },
    { id: "c3", name: "C", compound: "benzhydrol" },
  ],
  weak: "hexane",
  strong: "ethyl-acetate",
  sorbent: "silica",
  setting: "class",
  percent: "20",
  part: "series",
  parts: {},
});

/** The lesson kept in this browser, or the one to begin with. */
export function keptLesson() {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? "null");
    if (kept?.form === FORM) return { ...emptyLesson(), ...kept.lesson };
  } catch {
    // what cannot be read is as good as nothing
  }
  return emptyLesson();
}

/** @param {Lesson} lesson */
export function keep(lesson) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ form: FORM, lesson }));
  } catch {
    // a browser that keeps nothing shows it all the same
  }
}

/** The fields of a request that say what runs in what. @param {Lesson} lesson */
export const sampleAsked = ({ compounds, weak, strong, sorbent, setting }) => ({
  compounds: compounds.map(({ id, ...asked }) => asked),
  weak,
  strong,
  sorbent,
  setting,
});
