// @ts-check
/** Asks the server that served this page, and nobody else. */

/** @typedef {{field: string, code: string, came: string, allowed: string, todo: string, message: string}} Fault */

/** What the server refused, with all its faults. */
export class Refused extends Error {
  /** @param {Fault[]} faults @param {number} status */
  constructor(faults, status) {
    super(faults.map((fault) => fault.message).join(" "));
    this.faults = faults;
    this.status = status;
  }
}

/** @param {string} path @param {string} [language] that of the page, unless another is asked for */
export async function get(path, language = document.documentElement.lang) {
  return taken(await fetch(path, { headers: { "Accept-Language": language } }));
}

/** @param {string} path @param {object} body */
export const post = async (path, body) => taken(await send("POST", path, body));

/** The bare answer, whatever it says. @param {string} method @param {string} path @param {object} [body] @param {RequestInit} [further] */
export function send(method, path, body, further = {}) {
  const headers = { "Accept-Language": document.documentElement.lang, ...(body ? { "Content-Type": "application/json" } : {}), ...further.headers };
  return fetch(path, { method, ...(body ? { body: JSON.stringify(body) } : {}), ...further, headers });
}

/** What was answered; a refusal is thrown. @param {Response} response */
export async function taken(response) {
  const answer = await response.json();
  if (!response.ok) throw new Refused(answer.errors, response.status);
  return answer;
}
