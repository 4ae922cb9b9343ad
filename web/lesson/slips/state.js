// @ts-check
/** Which slips there are, and what was entered about them. */

/** What the numbers of a slip rest on, the surest first. */
export const KINDS = ["exact", "model", "size", "illustration"];

/** In the order in which they are offered, each with the field of its size. */
export const SLIPS = [
  { id: "from-edge", kind: "exact", field: "edgeMm" },
  { id: "start-line-off", kind: "exact", field: "offMm" },
  { id: "front-to-top", kind: "exact", field: "beyondMm" },
  { id: "stopped-short", kind: "exact", field: "runMm" },
  { id: "front-not-marked", kind: "exact", field: "lowerMm" },
  { id: "in-the-pool", kind: "exact", field: "surfaceMm" },
  { id: "too-weak", kind: "model", field: "timesWeaker" },
  { id: "too-strong", kind: "model", field: "timesStronger" },
  { id: "edge-too-near", kind: "size", field: "fromEdgeMm" },
  { id: "neighbours-too-near", kind: "size", field: "apartMm" },
  { id: "overload", kind: "illustration", field: "timesMore" },
  { id: "unlined-jar", kind: "illustration", field: "evaporatedPercent" },
  { id: "ink-line", kind: "illustration", field: "smearMm" },
  { id: "acid-streaking", kind: "illustration", field: "downPercent" },
];

/** @param {string} slip */
export const fieldOf = (slip) => SLIPS.find(({ id }) => id === slip)?.field ?? SLIPS[0].field;

/**
 * What was entered: the slip looked at, sizes that were moved, and whether its numbers are shown.
 * @param {import("../state.js").Lesson} lesson
 * @returns {{slip: string, sizes: Record<string, number>, shown: boolean, guess?: string}}
 */
export function slipsOf(lesson) {
  const kept = { slip: SLIPS[0].id, sizes: {}, shown: false, ...lesson.parts.slips };
  return SLIPS.some(({ id }) => id === kept.slip) ? kept : { ...kept, slip: SLIPS[0].id };
}
