// @ts-check
/** The picture of a plate that somebody wants to be kept with the study: sent to the folder, seen, taken away again. */

import { send, taken } from "../server.js";

/** Longer than this [ms] no answer is waited for. */
const PATIENCE = 20_000;

/** @param {string} studyId */
const pathOf = (studyId) => `/api/studies/${studyId}/photos`;

/**
 * Keeps a picture and says its name, which is the SHA-256 of its bytes; the server works it out, since browsers do so only at addresses that
 * they hold to be safe. The study need not be saved yet.
 * @param {string} studyId @param {Blob} blob a JPEG of at most 600 kB @returns {Promise<string>}
 */
export async function keepPicture(studyId, blob) {
  const answer = await send("POST", pathOf(studyId), undefined, {
    body: blob,
    headers: { "Content-Type": "image/jpeg" },
    signal: AbortSignal.timeout(PATIENCE),
  });
  return (await taken(answer)).sha256;
}

/** Where a kept picture is seen; 404 where this folder has none of it. @param {string} studyId @param {string} sha256 */
export const pictureAddress = (studyId, sha256) => `${pathOf(studyId)}/${sha256}`;

/** Takes a picture away for good; one that is not there is no fault. @param {string} studyId @param {string} sha256 */
export async function dropPicture(studyId, sha256) {
  const answer = await send("DELETE", pictureAddress(studyId, sha256), undefined, { signal: AbortSignal.timeout(PATIENCE) });
  if (!answer.ok && answer.status !== 404) await taken(answer);
}
