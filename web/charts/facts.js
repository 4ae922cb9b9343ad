// @ts-check
/** What a person reads off a curve: where it is highest, where it lies inside limits, where two curves cross. */

/** A difference in Rf smaller than this tells nothing: the server's curves are rounded to 0.0001, spots read to about 0.01. */
const TELLING = 0.003;

/** The share half way, or another part of the way, on the scale of the charts. @param {number} from @param {number} to @param {number} part */
const along = (from, to, part) => Math.expm1(Math.log1p(from) + part * (Math.log1p(to) - Math.log1p(from)));

/** Where a curve is highest. @param {number[]} shares @param {number[]} values */
export function highest(shares, values) {
  const at = values.reduce((best, value, i) => (value > values[best] ? i : best), 0);
  return { percent: shares[at], value: values[at] };
}

/**
 * The shares from the first to the last at which a curve lies from low to high; undefined where it nowhere does.
 * @param {number[]} shares @param {number[]} values @param {number} low @param {number} high
 */
export function inside(shares, values, low, high) {
  const within = (/** @type {number} */ value) => value >= low && value <= high;
  const first = values.findIndex(within);
  if (first < 0) return undefined;
  let last = values.length - 1;
  while (!within(values[last])) last--;
  const edge = (/** @type {number} */ out, /** @type {number} */ into) => {
    if (out < 0 || out >= values.length) return shares[into];
    const limit = values[out] < low ? low : high;
    return along(shares[out], shares[into], (limit - values[out]) / (values[into] - values[out]));
  };
  return { from: edge(first - 1, first), to: edge(last + 1, last) };
}

/** @typedef {{one: string, other: string, percent: number}} Merge */

/**
 * Where the expected curves of two compounds cross, so that their spots merge.
 * @param {number[]} shares @param {import("./data.js").Compound[]} compounds
 * @returns {Merge[]}
 */
export function merges(shares, compounds) {
  const found = [];
  for (let i = 0; i < compounds.length; i++) {
    for (let j = i + 1; j < compounds.length; j++) {
      const apart = shares.map((_, k) => compounds[i].rf[k] - compounds[j].rf[k]);
      for (const percent of crossings(shares, apart)) found.push({ one: compounds[i].name, other: compounds[j].name, percent });
    }
  }
  return found.sort((a, b) => a.percent - b.percent);
}

/** Those of the compounds whose curves lie on another's, as they do before any reading. @param {import("./data.js").Compound[]} compounds */
export function alike(compounds) {
  const same = (/** @type {number[]} */ one, /** @type {number[]} */ other) => one.every((rf, k) => Math.abs(rf - other[k]) < TELLING);
  return compounds.filter((one) => compounds.some((other) => other !== one && same(one.rf, other.rf))).map(({ name }) => name);
}

/** Where differences change their sign, both sides being large enough to tell. @param {number[]} shares @param {number[]} apart */
function crossings(shares, apart) {
  const found = [];
  let sign = 0;
  let last = 0;
  for (let k = 0; k < apart.length; k++) {
    if (Math.abs(apart[k]) < TELLING) continue;
    if (sign !== 0 && Math.sign(apart[k]) !== sign) found.push(zeroBetween(shares, apart, last, k));
    sign = Math.sign(apart[k]);
    last = k;
  }
  return found;
}

/** @param {number[]} shares @param {number[]} apart @param {number} from @param {number} to */
function zeroBetween(shares, apart, from, to) {
  let k = from;
  while (k < to - 1 && Math.sign(apart[k + 1]) === Math.sign(apart[from])) k++;
  return along(shares[k], shares[k + 1], apart[k] / (apart[k] - apart[k + 1]));
}
