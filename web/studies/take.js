// @ts-check
/** Takes a study out as a file: all of it as JSON, or its runs as a table. */

import { send, taken } from "../server.js";
import { say } from "../texts.js";

/** @typedef {import("../state.js").Act} Act */

/** A study as text, two blanks deep, so that people can read it. @param {any} study */
export function takeStudy(study) {
  download(new Blob([`${JSON.stringify(study, null, 2)}\n`], { type: "application/json" }), `${nameOf(study)}.json`);
  return say("later.taken-json", { title: study.title || say("page.untitled") });
}

/** Signs of a title that a file's name begins with. */
const NAMED = 40;

/** A name for a file: what is harmless of the title, and the id. @param {{id: string, title: string}} study */
function nameOf({ id, title }) {
  const words = title.normalize("NFC").match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
  const begin = [...words.join("-")].slice(0, NAMED).join("").replace(/-$/, "");
  return begin ? `${begin}-${id}` : id;
}

/** The runs of a study that the folder has. @param {Act} act @param {{id: string, title: string}} study */
export async function takeRuns(act, { id, title }) {
  await act.saved();
  const answer = await send("GET", `/api/studies/${id}/runs.csv`);
  if (!answer.ok) await taken(answer);
  download(await answer.blob(), `${nameOf({ id, title })}-runs.csv`);
  return say("later.taken-csv", { title: title || say("page.untitled") });
}

/** @param {Blob} blob @param {string} name */
function download(blob, name) {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000); // some browsers read it only after a question where to
}
