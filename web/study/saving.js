// @ts-check
/** Brings a draft into the folder of studies, and finds out what is there where somebody else was first. */

import { send, taken } from "../server.js";
import { draftOf, keptOf, setKept } from "./drafts.js";
import { contentsOf, studyOf } from "./study.js";

/** Longer than this [ms] no answer is waited for. */
const PATIENCE = 20_000;
/** What may be on its way while a page is left [bytes]; browsers take 64 kB. */
const PARTING = 60_000;

/** @typedef {{study: any, tag: string, notices: string[]}} There a study as the folder has it */

/**
 * @typedef {{kind: "saved"} | {kind: "gone"} | {kind: "refused", status: number, text: string} | {kind: "both", there: There}} Outcome
 *     gone: the server does not answer; both: the folder has what somebody else wrote
 */

/** @param {string} id */
const pathOf = (id) => `/api/studies/${id}`;

/** @param {Response} answer */
const tagOf = (answer) => (answer.headers.get("ETag") ?? "").replace(/^W\/|"/g, "");

/** A study in the folder; undefined where it has none of that id. @param {string} id @returns {Promise<There | undefined>} */
export async function studyThere(id) {
  const answer = await send("GET", pathOf(id), undefined, { signal: AbortSignal.timeout(PATIENCE), cache: "no-store" });
  if (answer.status === 404) return undefined;
  const { study, notices } = await taken(answer);
  return { study, tag: tagOf(answer), notices: (notices ?? []).map((/** @type {any} */ notice) => notice.text) };
}

/** Keeps a study; one that is small enough arrives even from a page that is being left. @param {any} study @param {string | undefined} tag of what it takes the place of */
export function put(study, tag) {
  /** @type {Record<string, string>} */
  const condition = tag ? { "If-Match": `"${tag}"` } : { "If-None-Match": "*" };
  const keepalive = new Blob([JSON.stringify(study)]).size < PARTING;
  return send("PUT", pathOf(study.id), study, { signal: AbortSignal.timeout(PATIENCE), keepalive, headers: condition });
}

/** Puts a study away. @param {string} id @param {string} tag */
export const putAway = async (id, tag) => taken(await send("DELETE", pathOf(id), undefined, { headers: { "If-Match": `"${tag}"` } }));

/** Saves a draft; it is sent before this returns. @param {string} id @returns {Promise<Outcome>} */
export async function saveDraft(id) {
  const draft = draftOf(id);
  if (!draft) return { kind: "saved" };
  const study = studyOf(draft.sheet);
  const mine = contentsOf(study);
  const kept = keptOf(id);
  setKept(id, { ...kept, sent: [...(kept.sent ?? []), mine].slice(-2) });
  const saved = (/** @type {string} */ tag, /** @type {string} */ at) => {
    setKept(id, { tag, version: draft.version, at });
    return /** @type {Outcome} */ ({ kind: "saved" });
  };
  try {
    let answer = await put(study, kept.tag);
    if (answer.status === 412 || (answer.status === 404 && kept.tag)) {
      const there = await studyThere(id);
      const theirs = there && contentsOf(there.study);
      if (there && theirs === mine) return saved(there.tag, there.study.modified); // it had arrived, only the answer was lost
      if (there && !(kept.sent ?? []).includes(theirs ?? "")) return { kind: "both", there };
      answer = await put(study, there?.tag);
    }
    if (!answer.ok) return { kind: "refused", status: answer.status, text: await reasonOf(answer) };
    const { tag, modified } = await answer.json();
    return saved(tag, modified);
  } catch {
    return { kind: "gone" };
  }
}

/** @param {Response} answer */
async function reasonOf(answer) {
  const told = await answer.json().catch(() => undefined);
  const faults = /** @type {import("../server.js").Fault[]} */ (told?.errors ?? []);
  return faults.map(({ message, todo }) => `${message} ${todo ?? ""}`.trim()).join(" ") || `${answer.status} ${answer.statusText}`.trim();
}
