// @ts-check
/** An exercise as a file: its code, its title and a note of the teacher, and no answer. */

import { say } from "../../texts.js";

export const FORMAT = "midplate-exercise";
export const VERSION = 1;
const MOST_BYTES = 100_000;
export const LONGEST = { code: 40, title: 200, note: 2000 };

/** @typedef {{code: string, title: string, note: string}} HandedOut */

/** @param {HandedOut} exercise */
export function save({ code, title, note }) {
  const text = `${JSON.stringify({ format: FORMAT, version: VERSION, code, title, note }, null, 2)}\n`;
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `exercise-${code}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** What a file holds, or why it is none. @param {File} file @returns {Promise<HandedOut | string>} */
export async function readFile(file) {
  if (file.size > MOST_BYTES) return say("later.lesson-exercise-file-large");
  return read(await file.text());
}

/** @param {string} text @returns {HandedOut | string} */
export function read(text) {
  /** @type {any} */
  let came;
  try {
    came = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return say("later.lesson-exercise-file-none");
  }
  if (came?.format !== FORMAT) return say("later.lesson-exercise-file-other");
  if (Number.isInteger(came.version) && came.version > VERSION) return say("later.lesson-exercise-file-newer", { version: came.version });
  const { code, title = "", note = "" } = came;
  const fits = came.version === VERSION && Object.entries({ code, title, note }).every(([name, value]) => typeof value === "string" && value.length <= LONGEST[/** @type {keyof typeof LONGEST} */ (name)]);
  return fits && code.trim() ? { code, title, note } : say("later.lesson-exercise-file-broken");
}
