// @ts-check
/** Samples to begin with: invented, of compounds that are easy to come by. */

/** @typedef {import("./state.js").Lesson} Lesson */

/** What each is about is the text later.lesson-ready-ID. @type {{id: string, compounds: string[], weak: string, strong: string, percent: string}[]} */
export const READY = [
  { id: "classes", compounds: ["methyl-benzoate", "acetophenone", "benzyl-alcohol"], weak: "hexane", strong: "ethyl-acetate", percent: "20" },
  { id: "reduction", compounds: ["fluorenone", "fluorenol"], weak: "hexane", strong: "ethyl-acetate", percent: "20" },
  { id: "vanillin", compounds: ["eugenol", "anisaldehyde", "ethyl-vanillin", "vanillin"], weak: "hexane", strong: "ethyl-acetate", percent: "30" },
  { id: "ladder", compounds: ["stilbene", "anisole", "methyl-benzoate", "acetophenone", "benzyl-alcohol", "acetanilide"], weak: "hexane", strong: "ethyl-acetate", percent: "20" },
  { id: "unseen", compounds: ["menthone", "menthol", "thymol"], weak: "hexane", strong: "ethyl-acetate", percent: "15" },
  { id: "polar", compounds: ["caffeine", "acetanilide", "benzamide"], weak: "dichloromethane", strong: "methanol", percent: "3" },
];

export const LETTERS = "ABCDEF";

/** Makes a ready sample that of the lesson. @param {Lesson} lesson @param {(typeof READY)[number]} ready */
export function takeReady(lesson, { compounds, weak, strong, percent }) {
  Object.assign(lesson, { weak, strong, percent });
  lesson.compounds = compounds.map((compound, i) => ({ id: `c${i + 1}`, name: LETTERS[i], by: "table", compound }));
}

/** The ready sample that a lesson still has. @param {Lesson} lesson */
export const readyOf = ({ compounds, weak, strong }) =>
  READY.find((ready) => ready.weak === weak && ready.strong === strong && ready.compounds.join() === compounds.map(({ by = "table", compound }) => (by === "table" ? compound : "")).join());
