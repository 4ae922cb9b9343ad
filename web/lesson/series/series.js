// @ts-check

/** @param {import("../state.js").State} state @param {import("../state.js").Act} act @returns {Element[]} */
export const view = (state, act) => [];
