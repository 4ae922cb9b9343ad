// @ts-check
/** What is pointed at, or has the focus, marks the same compound on every plate. */

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * Handlers of what stands for some compounds.
 * @param {State} state @param {Act} act @param {string[]} spots ids
 */
export function fellowHandlers(state, act, spots) {
  // the focus may move in the midst of a drawing, so that what is marked changes only after it
  const mark = (/** @type {() => string[]} */ of) => queueMicrotask(() => show(state, act, of()));
  return {
    "data-fellows": spots.join(" "),
    onpointerenter: () => mark(() => spots),
    onpointerleave: () => mark(withFocus),
    onfocusin: () => mark(() => spots),
    onfocusout: () => mark(withFocus),
  };
}

/** The compounds that what has the focus stands for. @returns {string[]} */
function withFocus() {
  const holder = document.activeElement?.closest("[data-fellows]");
  return holder?.getAttribute("data-fellows")?.split(" ").filter(Boolean) ?? [];
}

/** @param {State} state @param {Act} act @param {string[]} spots */
function show(state, act, spots) {
  if (spots.join(" ") !== (state.looking.fellow ?? []).join(" ")) act.look({ fellow: spots });
}

/** Whether any of some compounds is pointed at. @param {string[] | undefined} fellow @param {string[]} spots */
export const isFellow = (fellow, spots) => spots.some((id) => fellow?.includes(id));
