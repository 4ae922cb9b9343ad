// @ts-check
/** The library that draws the charts, which index.html loads as one classic script, handed on to the modules. */

/** @type {any} */
export const d3 = /** @type {any} */ (globalThis).d3;
