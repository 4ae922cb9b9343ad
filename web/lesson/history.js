// @ts-check
/** What was entered, with the steps that lead back to it: over a reload, too. */

import { keep } from "./state.js";

/** @typedef {import("./state.js").Lesson} Lesson */

const KEY = "midplate-lesson-steps";
const MOST_STEPS = 30;
/** The most that is kept of them over a reload [signs]: what was entered needs its room first. */
const MOST_KEPT = 1_000_000;
/** How long after a change the steps are kept, which takes longer than to keep what was entered [ms]. */
const PAUSE = 300;

export class LessonHistory {
  /** @type {string[]} */ #before = [];
  /** @type {string[]} */ #after = [];
  /** What the changes of the last step have in common; the next of the same kind belongs to it. @type {string | undefined} */ #together;
  /** @type {number | undefined} */ #timer;

  /** @param {Lesson} lesson as it was kept */
  constructor(lesson) {
    this.lesson = lesson;
    try {
      const { now, before, after } = JSON.parse(localStorage.getItem(KEY) ?? "{}");
      if (now === contentsOf(lesson)) [this.#before, this.#after] = [before, after];
    } catch {
      // then nothing is taken back beyond a reload
    }
    document.addEventListener("focusout", () => { this.#together = undefined; });
    window.addEventListener("pagehide", () => this.#keepSteps());
  }

  get canUndo() {
    return this.#before.length > 0;
  }

  get canRedo() {
    return this.#after.length > 0;
  }

  /** @param {(lesson: Lesson) => void} change @param {string} [together] */
  edit(change, together = entryAt()) {
    const before = JSON.stringify(this.lesson);
    const contents = contentsOf(this.lesson);
    change(this.lesson);
    if (contentsOf(this.lesson) !== contents) {
      if (together === undefined || together !== this.#together) this.#before = [...this.#before, before].slice(-MOST_STEPS);
      this.#together = together;
      this.#after = [];
      this.#keepSoon();
    }
    keep(this.lesson);
  }

  undo() {
    this.#move(this.#before, this.#after);
  }

  redo() {
    this.#move(this.#after, this.#before);
  }

  /** @param {string[]} from @param {string[]} to */
  #move(from, to) {
    const step = from.pop();
    if (step === undefined) return;
    to.push(JSON.stringify(this.lesson));
    this.lesson = JSON.parse(step);
    this.#together = undefined;
    keep(this.lesson);
    this.#keepSoon();
  }

  #keepSoon() {
    window.clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => this.#keepSteps(), PAUSE);
  }

  #keepSteps() {
    try {
      localStorage.setItem(KEY, JSON.stringify({ now: contentsOf(this.lesson), before: latest(this.#before), after: latest(this.#after) }));
    } catch {
      // a browser that keeps nothing still leads back as long as the page is open
    }
  }
}

/** The latest steps for which there is room. @param {string[]} steps */
function latest(steps) {
  let room = MOST_KEPT / 2;
  let first = steps.length;
  while (first > 0 && (room -= steps[first - 1].length) >= 0) first--;
  return steps.slice(first);
}

/** What counts as a change; to look at another part is none. @param {Lesson} lesson */
const contentsOf = ({ part, ...contents }) => JSON.stringify(contents);

/** The entry that is typed or pulled at. */
function entryAt() {
  const at = document.activeElement;
  const typed = at instanceof HTMLTextAreaElement || (at instanceof HTMLInputElement && !["checkbox", "radio", "file"].includes(at.type));
  return typed ? at.id || undefined : undefined;
}
