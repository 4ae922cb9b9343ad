// @ts-check
/** One spot measured where a person pointed. */

import { blobsOf } from "./blobs.js";
import { frontAt, startAt } from "./field.js";
import { middleAt, shareUp } from "./lanes.js";
import { clamp } from "./numbers.js";
import { outlinesOf } from "./outlines.js";
import { reliefFor, sorted } from "./plate.js";
import { cutOf, signalOf } from "./profile.js";
import { spotOf } from "./spots.js";

/** @typedef {import("./plate.js").Plate} Plate @typedef {import("./lanes.js").Lane} Lane @typedef {import("./spots.js").Spot} Spot */

/** How far the spot may lie from where a person pointed [mm], and how well a person points [mm]. */
const NEAR = 1.5;
const BY_HAND = 0.5;

/**
 * The spot near a place: of what stands out within 1.5 mm the clearest; else the place itself.
 * @param {Plate} plate @param {{lane: number, xMm?: number, mm: number, start: number[], front: number[], lanes: Lane[], light?: import("./light.js").Light}} asked
 * @returns {Spot}
 */
export function pointedAt(plate, { lane: index, xMm, mm, start, front, lanes, light = plate.light }) {
  const lines = { start, front };
  const lane = lanes[index];
  const { widthMm } = plate.field;
  const relief = reliefFor(plate, light, front);
  const middle = middleAt(lane, shareUp(lines, widthMm, { xMm: xMm ?? lane.startXMm, mm }));
  const at = clamp(xMm ?? middle, 0, widthMm);
  const own = { startXMm: lane.startXMm + at - middle, frontXMm: lane.frontXMm + at - middle, widthMm: lane.widthMm };
  const blobs = xMm === undefined ? sorted(blobsOf(relief, lines), lanes, lines, widthMm)[index] : [];
  const cut = cutOf(relief, own, lines, blobs);
  const near = relief.seen
    .flatMap((plane) => outlinesOf(signalOf(cut, plane, relief), cut, relief, 0.5))
    .filter((outline) => Math.abs(outline.mm - mm) <= NEAR)
    .sort((p, q) => q.clear - p.clear)[0];
  const found = near && spotOf(relief, near, { index, lane: own, cut, lines }, true);
  if (found) return found;
  const share = clamp(at / widthMm, 0, 1);
  const rf = (mm - startAt(start, share)) / (frontAt(front, share) - startAt(start, share));
  return { lane: index, xMm: at, mm, rf, errorMm: BY_HAND, sizeMm: 2, widthMm: 2, shape: "compact", contrast: 0 };
}
