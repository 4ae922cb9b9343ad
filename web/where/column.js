// @ts-check
/** The origin of the numbers of a column and of its fractions, as data. */

/** @typedef {import("./origins.js").Described} Described @typedef {import("./origins.js").Cited} Cited */

/** @type {Cited} */
const FIT = { basis: "own", gives: "later.gives-column-fit" };
/** @type {Cited} */
const TABLE = { source: "Still1978", table: 1, basis: "memory", gives: "later.gives-column-table" };
/** @type {Cited} */
const PRACTICE = { basis: "practice" };
/** @type {Cited} */
const ARITHMETIC = { basis: "own" };
/** @type {Cited} */
const ENTERED = { basis: "entered" };

/** What every forecast of a band rests on. @type {Pick<Described, "formula" | "sources" | "sure">} */
const FORECAST = { formula: "later.origin-column-formula", sources: [FIT, TABLE], sure: "later.origin-column-sure" };

/** @type {Pick<Described, "sources" | "sure">} */
const USUAL = { sources: [TABLE, PRACTICE, ENTERED], sure: "later.origin-column-practice-sure" };

/** @type {Pick<Described, "sources" | "sure">} */
const WEIGHED = { sources: [ENTERED, ARITHMETIC], sure: "later.origin-fractions-sure" };

/** @type {Record<string, Described>} */
export const COLUMN_ORIGINS = {
  "column-ratio": { ...FORECAST, title: "later.origin-column-ratio", texts: ["later.origin-column-ratio-what"] },
  "column-pour": { title: "later.origin-column-pour", texts: ["later.origin-column-pour-what"], sources: [ARITHMETIC, PRACTICE], sure: "later.origin-column-pour-sure" },
  "column-cut": { ...FORECAST, title: "later.origin-column-cut", texts: ["later.origin-column-cut-what"] },
  "column-chance": { ...FORECAST, title: "later.origin-column-chance", texts: ["later.origin-column-chance-what"] },
  "column-picture": { ...FORECAST, title: "later.origin-column-picture", texts: ["later.origin-column-picture-what"] },
  "column-bed": { ...USUAL, title: "later.origin-column-bed", texts: ["later.origin-column-bed-what"] },
  "column-load": { ...USUAL, title: "later.origin-column-load", texts: ["later.origin-column-load-what"] },
  "column-most": { ...USUAL, title: "later.origin-column-most", texts: ["later.origin-column-most-what"] },
  "column-fraction": { ...USUAL, title: "later.origin-column-fraction", texts: ["later.origin-column-fraction-what"] },
  "column-minutes": { ...USUAL, title: "later.origin-column-minutes", texts: ["later.origin-column-minutes-what"] },
  "column-solvent": { ...FORECAST, title: "later.origin-column-solvent", texts: ["later.origin-column-solvent-what"], formula: undefined },
  "fractions-volume": { ...WEIGHED, title: "later.origin-fractions-volume", texts: ["later.origin-fractions-volume-what"] },
  "fractions-mass": { ...WEIGHED, title: "later.origin-fractions-mass", texts: ["later.origin-fractions-mass-what"] },
  "fractions-balance": { ...WEIGHED, title: "later.origin-fractions-balance", texts: ["later.origin-fractions-balance-what"] },
};
