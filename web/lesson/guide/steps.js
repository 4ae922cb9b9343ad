// @ts-check
/** The steps of the lesson of five minutes: what each sets in the parts it leads through. */

/** @typedef {import("../state.js").Lesson} Lesson */

/**
 * @typedef {object} Step its texts are later.lesson-guide-do-ID, …-ask-ID and …-note-ID
 * @property {string} id
 * @property {string} [part] the part it shows; none while one is to think before anything is seen
 * @property {(lesson: Lesson) => void} [set] what it sets there
 * @property {"pulled"} [only] where one plate is to be seen and none that would answer a later step
 * @property {"window"} [ratio] where it needs a ratio that has spots between the marks
 */

/** Sets some of what was entered in a part and leaves the rest. @param {Lesson} lesson @param {string} part @param {object} fields */
const setIn = (lesson, part, fields) => {
  lesson.parts[part] = { ...lesson.parts[part], ...fields };
};

/** Where one begins to pull: nearly the weak solvent alone [% v/v]. */
const BEGINS = "2";
/** The ratios that the steps before leave, where nobody pulled one. */
export const LEFT = ["0", BEGINS, "100"];

/** One plate and nothing besides it, or all of the series again. @param {Lesson} lesson @param {"pulled" | undefined} only */
export const showOnly = (lesson, only) => {
  if (only !== lesson.parts.series?.only) setIn(lesson, "series", { only });
};

/** @type {Step[]} */
export const STEPS = [
  { id: "expect" },
  {
    id: "weak",
    part: "series",
    only: "pulled",
    set: (lesson) => {
      lesson.percent = "0";
      setIn(lesson, "series", { shows: "series" });
    },
  },
  {
    id: "strong",
    part: "series",
    only: "pulled",
    set: (lesson) => {
      lesson.percent = "100";
      setIn(lesson, "series", { shows: "series" });
    },
  },
  {
    id: "between",
    part: "series",
    set: (lesson) => {
      lesson.percent = BEGINS;
      setIn(lesson, "series", { shows: "series" });
    },
  },
  { id: "climb", part: "climb", ratio: "window" },
  { id: "why", part: "why", ratio: "window" },
  { id: "slip", part: "slips", ratio: "window", set: (lesson) => setIn(lesson, "slips", { slip: "from-edge" }) },
  { id: "yours", part: "exercise" },
];
