// @ts-check
/** What a lesson is about, kept in this browser over a reload, and what is looked at. */

import { decimal, orAsTyped } from "../numbers.js";

/**
 * @typedef {"table" | "smiles" | "class" | "groups"} Way how it is said what a compound is
 *
 * @typedef {object} Compound one of a lesson; each way of saying what it is keeps what was entered, one counts
 * @property {string} id
 * @property {string} name beside its spot
 * @property {Way} [by] the way that counts; without it the one that was filled in
 * @property {string} [compound] of the table of lessons
 * @property {string} [smiles]
 * @property {string} [class] id of a class
 * @property {Record<string, string | number>} [groups] how many of each, by the id of the group
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
 * @property {(change: (lesson: Lesson) => void, together?: string) => void} edit changes what was entered, keeps it, and draws; changes with the same word
 *     in a row, and those of one entry while it has the focus, are one step of undo
 * @property {(looking: Record<string, any>) => void} look changes what is looked at, and draws
 * @property {(id: string) => void} focus
 * @property {(words: string) => void} speak says something to whoever does not see the page
 */

const KEY = "midplate-lesson";
const FORM = 1;
/** Where what cannot be read is put, so that it is not lost. */
const ASIDE = "midplate-lesson-unread";
/** What the bench hands over, read once. */
const HANDED = "midplate-lesson-handed";

export const MOST_COMPOUNDS = 6;

/** The lesson one begins with: an invented sample of three classes that part widely. @returns {Lesson} */
export const emptyLesson = () => ({
  compounds: [
    { id: "c1", name: "A", compound: "methyl-benzoate" },
    { id: "c2", name: "B", compound: "acetophenone" },
    { id: "c3", name: "C", compound: "benzyl-alcohol" },
  ],
  weak: "hexane",
  strong: "ethyl-acetate",
  sorbent: "silica",
  setting: "class",
  percent: "20",
  part: "series",
  parts: {},
});

/** The lesson kept in this browser, or the one to begin with; and whether what was kept could be read. @returns {{lesson: Lesson, read: "yes" | "no"}} */
export function keptLesson() {
  let kept = null;
  try {
    kept = localStorage.getItem(KEY);
    if (kept === null) return { lesson: emptyLesson(), read: "yes" };
    const { form, lesson } = JSON.parse(kept);
    const whole = { ...emptyLesson(), ...lesson };
    if (form === FORM && isLesson(whole)) return { lesson: whole, read: "yes" };
  } catch {
    // what cannot be read is put aside
  }
  if (kept !== null) putAside(kept);
  return { lesson: emptyLesson(), read: kept === null ? "yes" : "no" };
}

/** Keeps what cannot be read where it is not lost. @param {string} unread */
export function putAside(unread) {
  try {
    localStorage.setItem(ASIDE, unread);
  } catch {
    // there is no room for it
  }
}

/** @param {any} one */
const isLesson = ({ compounds, parts, percent, weak, strong }) =>
  Array.isArray(compounds) &&
  compounds.length >= 1 &&
  compounds.length <= MOST_COMPOUNDS &&
  compounds.every((each) => typeof each?.id === "string" && typeof each.name === "string") &&
  [percent, weak, strong].every((each) => typeof each === "string") &&
  typeof parts === "object" &&
  parts !== null;

/** @param {Lesson} lesson */
export function keep(lesson) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ form: FORM, lesson }));
  } catch {
    // a browser that keeps nothing shows it all the same
  }
}

/** What the bench handed over, once; undefined where it did not. @returns {Partial<Lesson> | undefined} */
export function handedOver() {
  try {
    const handed = JSON.parse(sessionStorage.getItem(HANDED) ?? "null");
    sessionStorage.removeItem(HANDED);
    if (handed && isLesson({ ...emptyLesson(), ...handed })) return handed;
  } catch {
    // what cannot be read is as good as nothing
  }
  return undefined;
}

/** The way that counts. @param {Compound} compound @returns {Way} */
export function wayOf({ by, compound, smiles, class: kind, groups }) {
  if (by) return by;
  if (compound !== undefined) return "table";
  if (smiles !== undefined) return "smiles";
  return kind !== undefined ? "class" : groups !== undefined ? "groups" : "table";
}

/** The fields of a request that say what runs in what. @param {Lesson} lesson */
export const sampleAsked = ({ compounds, weak, strong, sorbent, setting }) => ({
  compounds: compounds.map((each) => ({ name: each.name.trim(), ...saidOf(each) })),
  weak,
  strong,
  sorbent,
  setting,
});

/** @param {Compound} compound */
function saidOf(compound) {
  const way = wayOf(compound);
  if (way === "table") return compound.compound ? { compound: compound.compound } : {};
  if (way === "smiles") return compound.smiles?.trim() ? { smiles: compound.smiles.trim() } : {};
  if (way === "class") return compound.class ? { class: compound.class } : {};
  const counts = Object.entries(compound.groups ?? {}).filter(([, count]) => String(count).trim() !== "");
  return counts.length ? { groups: Object.fromEntries(counts.map(([id, count]) => [id, number(String(count))])) } : {};
}

const number = (/** @type {string} */ typed) => orAsTyped(decimal(typed), typed);

/** The entry that is empty where a compound is not said, by the way that counts. @type {Record<Way, string>} */
const SAYS = { table: "what", smiles: "smiles", class: "class", groups: "group" };

/** The entries of the sample by the field of a request that each stands for. @param {Lesson} lesson @returns {Map<string, string>} */
export function sampleEntries({ compounds }) {
  const entries = new Map([["compounds", "add-compound"], ["weak", "lesson-weak"], ["strong", "lesson-strong"], ["setting", "lesson-setting"]]);
  compounds.forEach((compound, i) => {
    const { id, groups } = compound;
    const place = `compounds[${i}]`;
    for (const [field, entry] of [["", SAYS[wayOf(compound)]], [".name", "name"], [".compound", "what"], [".smiles", "smiles"], [".class", "class"], [".groups", "group"]]) {
      entries.set(`${place}${field}`, `lesson-${entry}-${id}`);
    }
    for (const group of Object.keys(groups ?? {})) entries.set(`${place}.groups.${group}`, `count-${id}-${group}`);
  });
  return entries;
}

/** What was refused of the sample as it stands, by the id of the entry. @param {State} state @returns {Map<string, string[]>} */
export function sampleFaults({ lesson, asked }) {
  const { compounds, weak, strong } = sampleAsked(lesson);
  const said = [`"compounds":${JSON.stringify(compounds)}`, `"weak":"${weak}"`, `"strong":"${strong}"`];
  const own = new Set(sampleEntries(lesson).values());
  const told = Object.values(asked).filter(({ standing, question }) => standing === "refused" && said.every((each) => question.includes(each)));
  return new Map(told.flatMap(({ faults }) => [...faults].filter(([id]) => own.has(id))));
}
