// @ts-check
/** A straightened plate, read: lines, lanes and spots. Pure: numbers in, numbers out. */

import { blobsOf } from "./blobs.js";
import { fieldOf, frontAt, startAt } from "./field.js";
import { lanesOf, middleAt, shareUp } from "./lanes.js";
import { lightOf } from "./light.js";
import { linesOf } from "./lines.js";
import { eachOnce, outlinesOf } from "./outlines.js";
import { cutOf, signalOf } from "./profile.js";
import { cleaned, reliefOf } from "./relief.js";
import { spotOf } from "./spots.js";

/** @typedef {import("./light.js").Light} Light @typedef {import("./lanes.js").Lane} Lane @typedef {import("./relief.js").Relief} Relief @typedef {import("./blobs.js").Lines} Lines @typedef {import("./blobs.js").Blob} Blob @typedef {import("./spots.js").Spot} Spot */
/** @typedef {{field: import("./field.js").Field, light: Light, cleaned: Map<Light, import("./relief.js").Cleaned>, reliefs: Map<string, Relief>}} Plate */

/** Spots of two lanes as close as this are one [mm]. */
const SAME = { mm: 1.2, xMm: 1.7 };

/** Lines where none can be seen, as shares of the plate's height. */
const USUAL = { start: 0.12, front: 0.9 };

/** @param {import("./flat.js").Flat} flat @param {Light} [light] @returns {Plate} */
export function plateOf(flat, light) {
  const inside = (/** @type {number} */ x, /** @type {number} */ y) => x > 0.05 && x < 0.95 && y > 0.05 && y < 0.95;
  return { field: fieldOf(flat), light: light ?? lightOf(flat, inside), cleaned: new Map(), reliefs: new Map() };
}

/** @param {Plate} plate @param {Light} light @param {number[] | null} front */
export function reliefFor(plate, light, front) {
  const key = `${light} ${front ?? ""}`;
  const known = plate.reliefs.get(key);
  if (known) return known;
  const clean = plate.cleaned.get(light) ?? cleaned(plate.field, light);
  plate.cleaned.set(light, clean);
  const relief = reliefOf(clean, front);
  if (plate.reliefs.size > 3) plate.reliefs.clear();
  plate.reliefs.set(key, relief);
  return relief;
}

/** What is proposed for a plate just straightened. @param {Plate} plate */
export function proposed(plate) {
  const relief = reliefFor(plate, plate.light, null);
  const lines = linesOf(relief);
  const { heightMm, widthMm } = plate.field;
  const start = lines.start ?? [USUAL.start * heightMm, USUAL.start * heightMm];
  const front = lines.front ?? [USUAL.front * heightMm, USUAL.front * heightMm, USUAL.front * heightMm];
  const lanes = lanesOf(blobsOf(relief, { start, front }), { start, front }, widthMm);
  return { ...lines, lanes, light: plate.light };
}

/**
 * What speaks against lines: the front not above the start line everywhere, or a line off the plate.
 * @param {Lines} lines @param {{heightMm: number}} field
 * @returns {"front-below-start" | "lines-outside" | null}
 */
export function linesFault({ start, front }, { heightMm }) {
  if (start?.length !== 2 || front?.length !== 3 || [...start, ...front].some((mm) => !(mm >= 0 && mm <= heightMm))) return "lines-outside";
  return [0, 0.25, 0.5, 0.75, 1].some((share) => !(frontAt(front, share) - startAt(start, share) > 2)) ? "front-below-start" : null;
}

/** The blobs that lie in each lane. @param {Blob[]} blobs @param {Lane[]} lanes @param {Lines} lines @param {number} widthMm */
export function sorted(blobs, lanes, lines, widthMm) {
  const of = lanes.map(() => /** @type {Blob[]} */ ([]));
  for (const blob of blobs) {
    const up = shareUp(lines, widthMm, blob);
    const off = lanes.map((lane) => Math.abs(middleAt(lane, up) - blob.xMm));
    const nearest = off.indexOf(Math.min(...off));
    if (nearest >= 0 && off[nearest] < 0.65 * lanes[nearest].widthMm) of[nearest].push(blob);
  }
  return of;
}

/** @param {Plate} plate @param {{start: number[], front: number[], lanes?: Lane[] | null, light?: Light}} asked */
export function read(plate, { start, front, lanes, light = plate.light }) {
  const lines = { start, front };
  const relief = reliefFor(plate, light, front);
  const { widthMm } = plate.field;
  const blobs = blobsOf(relief, lines);
  const used = lanes ?? lanesOf(blobs, lines, widthMm);
  const inLane = sorted(blobs, used, lines, widthMm);
  const found = used.map((lane, index) => {
    const cut = cutOf(relief, lane, lines, inLane[index]);
    const signals = relief.seen.map((plane) => signalOf(cut, plane, relief));
    const outlines = eachOnce(signals.flatMap((signal) => outlinesOf(signal, cut, relief)));
    const spots = outlines.flatMap((outline) => spotOf(relief, outline, { index, lane, cut, lines }) ?? []);
    return { ...lane, profile: profileOf(cut, signals), spots };
  });
  return { lanes: found.map((lane) => ({ ...lane, spots: lane.spots.filter((spot) => isNearestTo(spot, found, lines, widthMm)) })) };
}

/** Whether no neighbouring lane holds the same spot nearer to its middle. @param {Spot} spot @param {(Lane & {spots: Spot[]})[]} lanes @param {Lines} lines @param {number} widthMm */
function isNearestTo(spot, lanes, lines, widthMm) {
  const off = (/** @type {Spot} */ each) => Math.abs(each.xMm - middleAt(lanes[each.lane], shareUp(lines, widthMm, each)));
  return lanes.every(({ spots }) => spots.every((other) => other.lane === spot.lane || Math.abs(other.mm - spot.mm) > SAME.mm || Math.abs(other.xMm - spot.xMm) > SAME.xMm || off(other) >= off(spot)));
}

/** The profile to be drawn: of the plane that shows most. @param {import("./profile.js").Cut} cut @param {import("./profile.js").Signal[]} signals */
function profileOf({ fromMm, stepMm }, signals) {
  const most = (/** @type {import("./profile.js").Signal} */ { signal, noise }) => signal.reduce((sum, value) => sum + (value / noise) ** 2, 0);
  const best = signals.reduce((p, q) => (most(q) > most(p) ? q : p));
  return { fromMm, stepMm, raw: [...best.raw], baseline: [...best.baseline], signal: [...best.signal] };
}
