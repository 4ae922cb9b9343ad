// @ts-check
/** The origin of the numbers of same, pure and done, as data. */

/** @typedef {import("./origins.js").Described} Described @typedef {import("./origins.js").Cited} Cited */

/** @type {Cited} */
const OWN = { basis: "own" };
/** @type {Cited} */
const ASSUMED = { basis: "assumed" };
/** @type {Cited} */
const PRACTICE = { basis: "practice" };
/** @type {Cited} */
const ENTERED = { basis: "entered" };
/** @type {Cited} */
const FIT = { basis: "own", gives: "later.gives-fit" };

/** @type {Record<string, Described>} */
export const CHECK_ORIGINS = {
  "check-gap": { title: "later.checks-origin-gap", texts: ["later.checks-origin-gap-what"], formula: "later.checks-origin-gap-formula", sources: [ENTERED, ASSUMED, OWN], sure: "later.checks-origin-gap-sure" },
  "check-candidates": { title: "later.checks-candidates-told", texts: ["later.checks-origin-candidates-what"], sources: [ENTERED, ASSUMED, OWN], sure: "later.checks-origin-candidates-sure" },
  "check-hrf": { title: "later.checks-hrf", texts: ["later.checks-origin-hrf-what"], sources: [{ source: "ClarkesAnalysis", basis: "read" }, { source: "DeZeeuw1992", basis: "memory" }, OWN], sure: "later.checks-origin-hrf-sure" },
  "check-hidden": { title: "later.checks-pure-hide", texts: ["later.checks-origin-hidden-what"], sources: [FIT, PRACTICE], sure: "later.checks-origin-hidden-sure" },
  "check-amounts": { title: "later.checks-pure-amounts", texts: ["later.checks-origin-amounts-what"], sources: [ENTERED, PRACTICE, OWN], sure: "later.checks-origin-amounts-sure" },
  "check-course": { title: "later.checks-reaction-chances", texts: ["later.checks-reaction-origin-what"], formula: "later.checks-reaction-origin-formula", sources: [ENTERED, ASSUMED, OWN], sure: "later.checks-reaction-origin-sure" },
};
