// @ts-check
/** Peaks of a profile: tops that rise enough above the valleys on both sides, and what their outlines are. */

/** @typedef {{at: number, height: number, rise: number, from: number, to: number, lowValley: number, highValley: number, lowTop: number, highTop: number}} Peak places count points; from and to: the valleys on either side; lowTop and highTop: its lowest and highest top, where it has several */

/**
 * Tops whose prominence (height above the higher of the two valleys that part it from anything higher) is enough.
 * @param {Float64Array} signal @param {(height: number) => number} least prominence
 * @returns {Peak[]} from below upwards
 */
export function peaksOf(signal, least) {
  const n = signal.length;
  /** @type {{at: number, height: number, rise: number}[]} */
  const tops = [];
  for (let k = 1; k < n - 1; k++) {
    if (!(signal[k] > signal[k - 1] && signal[k] >= signal[k + 1])) continue;
    const rise = signal[k] - Math.max(valley(signal, k, -1), valley(signal, k, 1));
    if (rise >= least(signal[k])) tops.push({ at: k, height: signal[k], rise });
  }
  return tops.map((top, i) => {
    const from = lowest(signal, i === 0 ? 0 : tops[i - 1].at, top.at);
    const to = lowest(signal, top.at, i === tops.length - 1 ? n - 1 : tops[i + 1].at);
    return { ...top, from, to, lowValley: signal[from], highValley: signal[to], lowTop: top.at, highTop: top.at };
  });
}

/** The lowest on the way to something higher, or to the end. @param {Float64Array} signal @param {number} k @param {number} way */
function valley(signal, k, way) {
  let least = signal[k];
  for (let i = k + way; i >= 0 && i < signal.length && signal[i] <= signal[k]; i += way) if (signal[i] < least) least = signal[i];
  return least;
}

/** @param {Float64Array} signal @param {number} from @param {number} to */
function lowest(signal, from, to) {
  let best = from;
  for (let k = from; k <= to; k++) if (signal[k] < signal[best]) best = k;
  return best;
}

/**
 * Neighbours that are one: a plateau with ripples, or the two rims of a ring.
 * @param {Peak[]} peaks @param {(p: Peak, q: Peak) => boolean} isOne
 */
export function joined(peaks, isOne) {
  /** @type {Peak[]} */
  const all = [];
  for (const peak of peaks) {
    const last = all[all.length - 1];
    if (!last || !isOne(last, peak)) {
      all.push(peak);
      continue;
    }
    const top = peak.height > last.height ? peak : last;
    all[all.length - 1] = { ...top, rise: Math.max(last.rise, peak.rise), from: last.from, to: peak.to, lowValley: last.lowValley, highValley: peak.highValley, lowTop: last.lowTop, highTop: peak.highTop };
  }
  return all;
}

/** The darkening 1 − I/I₀ of a density. @param {number} density */
export const darkening = (density) => 1 - Math.exp(-Math.max(0, density));

/**
 * Where, going one way from a top, the darkening falls below a level; the end where it does not.
 * @param {(k: number) => number} curve density at a point @param {number} at @param {number} way @param {number} end @param {number} level
 */
export function crossing(curve, at, way, end, level) {
  let before = darkening(curve(at));
  for (let k = at + way; way < 0 ? k >= end : k <= end; k += way) {
    const now = darkening(curve(k));
    if (now < level) return k - way + (way * (before - level)) / (before - now);
    before = now;
  }
  return end;
}
