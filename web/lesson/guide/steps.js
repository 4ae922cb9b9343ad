// @ts-check
/** The steps of the lesson of five minutes: what each sets in the parts it leads through. */

/** @typedef {import("../state.js").Lesson} Lesson */

/**
 * @typedef {object} Step its texts are later.lesson-guide-do-ID, …-ask-ID and …-note-ID
 * @property {string} id
 * @property {string} [part] the part it shows; none while one is to think before anything is seen
 * @property {(lesson: Lesson) => void} [set] what it sets there
 */

/** Sets some of what was entered in a part and leaves the rest. @param {Lesson} lesson @param {string} part @param {object} fields */
const setIn = (lesson, part, fields) => {
  lesson.parts[part] = { ...lesson.parts[part], ...fields };
};

/** @type {Step[]} */
export const STEPS = [
  { id: "expect" },
  {
    id: "weak",
    part: "series",
    set: (lesson) => {
      lesson.percent = "0";
      setIn(lesson, "series", { shows: "ends" });
    },
  },
  {
    id: "strong",
    part: "series",
    set: (lesson) => {
      lesson.percent = "100";
      setIn(lesson, "series", { shows: "ends" });
    },
  },
  {
    id: "between",
    part: "series",
    set: (lesson) => {
      lesson.percent = "2";
      setIn(lesson, "series", { shows: "series" });
    },
  },
  { id: "climb", part: "climb" },
  { id: "why", part: "why" },
  { id: "slip", part: "slips", set: (lesson) => setIn(lesson, "slips", { slip: "from-edge" }) },
  { id: "yours", part: "exercise" },
];
