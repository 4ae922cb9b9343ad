// @ts-check
/** What is done to the tubes that are chosen. */

import { editRun, setStrength, strengthIn, tapped } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Run} Run @typedef {import("./sheet.js").Tube} Tube @typedef {import("./sheet.js").Chosen} Chosen */

/** What is chosen of a run, as far as there are so many tubes. @param {State} state @param {Run} run @returns {Chosen | undefined} */
export function chosenIn({ looking }, run) {
  const { tube } = looking;
  if (tube?.run !== run.id) return undefined;
  const last = run.tubes.length - 1;
  return { ...tube, at: Math.min(tube.at, last), from: Math.min(tube.from, last) };
}

/** @param {State} state @param {Act} act @param {Run} run @param {number} at @param {"anew" | "on"} how on: from the one chosen first up to this */
export function choose(state, act, run, at, how) {
  const before = chosenIn(state, run);
  const from = how === "on" && before ? before.from : at;
  if (before?.at !== at || before.from !== from) act.look({ tube: { run: run.id, at, from, last: before?.last ?? state.looking.tube?.last } });
  act.focus(`tube-${run.id}-${run.tubes[at].id}`);
}

/** Changes each chosen tube, in one step. @param {State} state @param {Act} act @param {Run} run @param {(tube: Tube, all: Tube[], first: number) => void} change */
function each(state, act, run, change) {
  const chosen = chosenIn(state, run);
  if (!chosen) return;
  const [first, last] = [Math.min(chosen.at, chosen.from), Math.max(chosen.at, chosen.from)];
  editRun(act, run.id, (mine) => mine.tubes.slice(first, last + 1).forEach((tube) => change(tube, mine.tubes, first)));
}

/** The tube after those chosen; the last one stays. @param {State} state @param {Act} act @param {Run} run */
function next(state, act, run) {
  const chosen = chosenIn(state, run);
  if (chosen) choose(state, act, run, Math.min(run.tubes.length - 1, Math.max(chosen.at, chosen.from) + 1), "anew");
}

/** Puts a compound into the chosen tubes, or makes it stronger, weaker, gone. @param {State} state @param {Act} act @param {Run} run @param {string} spot */
export function tap(state, act, run, spot) {
  const chosen = chosenIn(state, run);
  if (!chosen) return;
  const strength = tapped(strengthIn(run.tubes[chosen.at], spot));
  act.look({ tube: { ...chosen, last: spot } });
  each(state, act, run, (tube) => setStrength(tube, spot, strength));
}

/** Says how strong the compound marked last is; 0 is nothing at all where none was. @param {State} state @param {Act} act @param {Run} run @param {number} strength */
export function put(state, act, run, strength) {
  const chosen = chosenIn(state, run);
  if (!chosen) return;
  const { spots } = state.sheet;
  const here = run.tubes[chosen.at].marks ?? [];
  const spot = here.some((mark) => mark.spot === chosen.last) || here.length === 0 ? (spots.find(({ id }) => id === chosen.last) ?? spots[0]).id : here[here.length - 1].spot;
  each(state, act, run, (tube) => setStrength(tube, spot, strength));
}

/** Looked at, and nothing in it. @param {State} state @param {Act} act @param {Run} run */
export const markEmpty = (state, act, run) => each(state, act, run, (tube) => (tube.marks = []));

/** Not looked at. @param {State} state @param {Act} act @param {Run} run */
export const forget = (state, act, run) => each(state, act, run, (tube) => delete tube.marks);

/** As the tube before them, and on to the next. @param {State} state @param {Act} act @param {Run} run */
export function copyBefore(state, act, run) {
  const chosen = chosenIn(state, run);
  if (!chosen || Math.min(chosen.at, chosen.from) === 0) return;
  each(state, act, run, (tube, all, first) => {
    const before = all[first - 1].marks;
    if (before) tube.marks = structuredClone(before);
    else delete tube.marks;
  });
  next(state, act, run);
}

/** On to the next; one that nothing was put into was looked at all the same. @param {State} state @param {Act} act @param {Run} run */
export function doneWith(state, act, run) {
  each(state, act, run, (tube) => (tube.marks ??= []));
  next(state, act, run);
}

/** All that were not looked at, in one step. @param {Act} act @param {Run} run */
export const othersEmpty = (act, run) => editRun(act, run.id, (mine) => mine.tubes.forEach((tube) => (tube.marks ??= [])));
