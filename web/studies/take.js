// @ts-check
/** Takes a study out as a file: all of it as JSON, or its runs as a table. */

import { send, taken } from "../server.js";
import { say } from "../texts.js";

/** @typedef {import("../state.js").Act} Act */

/** A study as text, two blanks deep, so that people can read it. @param {any} study */
export function takeStudy(study) {
  download(new Blob([`${JSON.stringify(study, null, 2)}\n`], { type: "application/json" }), `${study.id}.json`);
  return say("later.taken-json", { title: study.title || say("page.untitled") });
}

/** The runs of a study that the folder has. @param {Act} act @param {string} id @param {string} title */
export async function takeRuns(act, id, title) {
  await act.saved();
  const answer = await send("GET", `/api/studies/${id}/runs.csv`);
  if (!answer.ok) await taken(answer);
  download(await answer.blob(), `${id}-runs.csv`);
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
