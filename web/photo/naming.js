// @ts-check
/** Which compounds the spots of a photo are: alike in Rf is alike over the lanes, and what nobody can know stays open. */

import { addSpot, isLettered } from "../sheet/sheet.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("../sheet/sheet.js").Plate} Plate */
/** @typedef {{lane: string, rf: number}} Place of a spot: the id of its lane on the photo, and its Rf */

/** The same compound in two lanes of a plate lies no further apart [Rf]; common practice, no source: the server tells what does. */
const ALIKE = 0.04;

/**
 * The compounds of each spot. On the first plate of compounds that have only letters each Rf is a compound of its own, added where there are too
 * few; where the compounds are known already, nobody knows which spot is which: only the one spot of the one compound is named.
 * Where a lane shows more spots than there are compounds, some are added.
 * @param {Sheet} sheet @param {Plate} plate without readings yet @param {Place[]} places of its spots, lanes from the left, each from below
 * @returns {string[][]} ids of compounds, in the order of the places
 */
export function namesOfPlaces(sheet, plate, places) {
  const heights = alikeInRf(places);
  const groups = Math.max(-1, ...heights) + 1;
  const first = !sheet.plates.some((other) => other.id !== plate.id && other.lanes.some(({ readings }) => readings.length > 0));
  const most = Math.max(0, ...places.map(({ lane }) => places.filter((other) => other.lane === lane).length));
  const wanted = first && sheet.spots.every(isLettered) ? groups : most;
  while (sheet.spots.length < wanted) addSpot(sheet);
  const named = (first && sheet.spots.every(isLettered)) || (groups === 1 && sheet.spots.length === 1);
  return heights.map((group) => (named ? [sheet.spots[group].id] : []));
}

/** Numbers of the groups of spots that lie at one Rf, at most one of a lane in each, by their first spot. @param {Place[]} places */
function alikeInRf(places) {
  /** @type {{rf: number, lanes: Set<string>}[]} */
  const groups = [];
  return places.map(({ lane, rf }) => {
    const near = groups.filter((group) => !group.lanes.has(lane) && Math.abs(group.rf - rf) <= ALIKE);
    near.sort((one, other) => Math.abs(one.rf - rf) - Math.abs(other.rf - rf));
    const group = near[0] ?? { rf, lanes: new Set() };
    if (near.length === 0) groups.push(group);
    group.lanes.add(lane);
    return groups.indexOf(group);
  });
}
