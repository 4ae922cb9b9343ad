// @ts-check
/** Asks the server that served this page, and nobody else. */

/** @typedef {{field: string, code: string, came: string, allowed: string, todo: string, message: string}} Fault */

/** What the server refused, with all its faults. */
export class Refused extends Error {
  /** @param {Fault[]} faults */
  constructor(faults) {
    super(faults.map((fault) => fault.message).join(" "));
    this.faults = faults;
  }
}

/** @param {string} path @param {string} [language] that of the page, unless another is asked for */
export async function get(path, language = document.documentElement.lang) {
  return taken(await fetch(path, { headers: { "Accept-Language": language } }));
}

/** @param {string} path @param {object} body */
export async function post(path, body) {
  return taken(
    await fetch(path, {
      method: "POST",
      headers: { "Accept-Language": document.documentElement.lang, "Content-Type": "application/json" },
      body: JSON.stringify(body),
    }),
  );
}

/** @param {Response} response */
async function taken(response) {
  const answer = await response.json();
  if (!response.ok) throw new Refused(answer.errors);
  return answer;
}
