// @ts-check
/** The sheet with everything it was before and, after an undo, everything it may become again. */

/** @typedef {import("./sheet.js").Sheet} Sheet */

/** Steps that can be taken back. */
const MOST_STEPS = 100;

export class History {
  /** @type {Sheet[]} */
  #before = [];
  /** @type {Sheet[]} */
  #after = [];
  /** @type {Sheet} */
  #now;
  /** @type {string | undefined} */
  #together;
  /** @type {(() => void)[]} */
  #listeners = [];
  /** @type {(() => void)[]} */
  #amendListeners = [];

  /** @param {Sheet} sheet @param {Sheet[]} [before] what can be taken back, the latest last */
  constructor(sheet, before = []) {
    this.#now = sheet;
    this.#before = before;
  }

  /** As it is now; change it by `edit` only. */
  get sheet() {
    return this.#now;
  }

  get before() {
    return this.#before;
  }

  get canUndo() {
    return this.#before.length > 0;
  }

  get canRedo() {
    return this.#after.length > 0;
  }

  /** @param {() => void} listener told after each change */
  onChange(listener) {
    this.#listeners.push(listener);
  }

  /** @param {() => void} listener told after what is no step */
  onAmend(listener) {
    this.#amendListeners.push(listener);
  }

  /** Changes what is no step, and stays whatever is undone: what was advised, whether it is put away. @param {Partial<Pick<Sheet, "advices" | "archived">>} kept */
  amend(kept) {
    Object.assign(this.#now, kept);
    for (const listener of this.#amendListeners) listener();
  }

  /** Shows another study, with its own steps. @param {Sheet} sheet @param {Sheet[]} before */
  open(sheet, before) {
    this.#before = before;
    this.#after = [];
    this.#now = sheet;
    this.#together = undefined;
    this.#tell();
  }

  /** Takes the newest of a study that an undo has led back to; no step. @param {Sheet} sheet */
  renew(sheet) {
    this.#now = sheet;
  }

  /** Makes all steps of a study those of another, which it goes on as. @param {string} id @param {{id: string, title: string}} other */
  continueAs(id, other) {
    for (const sheet of [this.#now, ...this.#before, ...this.#after]) if (sheet.id === id) Object.assign(sheet, other);
    this.#tell();
  }

  /**
   * Changes the sheet. Edits with the same word one after another are one step: the letters of a name, the way of a drag.
   * @param {(sheet: Sheet) => void} change
   * @param {string} [together]
   */
  edit(change, together) {
    const next = structuredClone(this.#now);
    change(next);
    if (JSON.stringify(next) === JSON.stringify(this.#now)) return;
    if (next.example === "yes") next.example = "changed";
    this.replace(next, together);
  }

  /** Puts another sheet in place of this one, which can be taken back. @param {Sheet} sheet @param {string} [together] as in `edit` */
  replace(sheet, together) {
    this.#step(together);
    this.#after = [];
    this.#now = sheet;
    this.#tell();
  }

  /** Remembers the sheet as it is, unless the step before goes on. @param {string | undefined} together */
  #step(together) {
    if (!together || together !== this.#together) {
      this.#before.push(this.#now);
      if (this.#before.length > MOST_STEPS) this.#before.shift();
    }
    this.#together = together;
  }

  /** The next edit is a step of its own, whatever its word. */
  rest() {
    this.#together = undefined;
  }

  undo() {
    this.#move(this.#before, this.#after);
  }

  redo() {
    this.#move(this.#after, this.#before);
  }

  /** @param {Sheet[]} from @param {Sheet[]} to */
  #move(from, to) {
    const sheet = from.pop();
    if (!sheet) return;
    to.push(this.#now);
    const { id, advices, archived } = this.#now;
    this.#now = sheet.id === id ? Object.assign(sheet, { advices, archived }) : sheet;
    this.#together = undefined;
    this.#tell();
  }

  #tell() {
    for (const listener of this.#listeners) listener();
  }
}
