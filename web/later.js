// @ts-check
/** What is fetched only when somebody first asks for it, so that a first visit carries none of it. */

/** @typedef {import("./state.js").Act} Act */

/** What is on its way, and what has come. @type {Map<string, Promise<any>>} */
const fetched = new Map();
/** @type {Map<string, any>} */
const come = new Map();

/**
 * Fetches a module, once; all is drawn anew when it has come. Where the server does not answer it is asked again next time.
 * @template T
 * @param {string} name
 * @param {() => Promise<T>} fetch
 * @param {Act} act
 * @returns {Promise<T | undefined>}
 */
export function fetchLater(name, fetch, act) {
  const known = fetched.get(name);
  if (known) return known;
  const coming = fetch().then(
    (module) => {
      come.set(name, module);
      act.look({ came: name });
      return module;
    },
    () => {
      fetched.delete(name);
      return undefined;
    },
  );
  fetched.set(name, coming);
  return coming;
}

/**
 * A module if it is there already; else it is sent for.
 * @template T
 * @param {string} name @param {() => Promise<T>} fetch @param {Act} act
 * @returns {T | undefined}
 */
export function later(name, fetch, act) {
  if (!come.has(name)) fetchLater(name, fetch, act);
  return come.get(name);
}

/** Adds a style sheet, and waits until it is there. @param {string | URL} address */
export function styled(address) {
  return new Promise((done) => {
    const link = document.createElement("link");
    link.rel = "stylesheet";
    link.href = String(address);
    link.onload = link.onerror = done;
    document.head.append(link);
  });
}
