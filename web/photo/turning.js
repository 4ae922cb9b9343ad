// @ts-check
/** Corners of the plate in a picture that is shown by quarter turns. */

/** @typedef {import("./store.js").Point} Point @typedef {import("./store.js").Outline} Outline */

/** How much of the picture an outline takes that nobody found. */
const SHARE = 0.72;

/** Where a place of the picture is shown. @param {Point} point @param {number} turns quarter turns clockwise @returns {Point} */
export function shownAt({ x, y }, turns) {
  const [c, s] = [
    [x, y],
    [1 - y, x],
    [1 - x, 1 - y],
    [y, 1 - x],
  ][turns % 4];
  return { x: c, y: s };
}

/** The place of the picture that is shown somewhere. @param {Point} point @param {number} turns */
export const pictureAt = (point, turns) => shownAt(point, (4 - (turns % 4)) % 4);

/** The outline after further quarter turns: what then lies lower left comes first. @param {Outline} outline @param {number} quarters @returns {Outline} */
export function toTurn({ corners, turns }, quarters) {
  const by = ((quarters % 4) + 4) % 4;
  return { corners: corners.map((_, i) => corners[(i + by) % 4]), turns: (turns + by) % 4 };
}

/** An outline in the middle of a picture, of the plate's proportions. @param {{width: number, height: number}} picture [px] @param {{width: number, height: number}} plate [mm] @returns {Point[]} */
export function middleOutline(picture, plate) {
  const scale = SHARE * Math.min(picture.width / plate.width, picture.height / plate.height);
  const half = { x: (scale * plate.width) / picture.width / 2, y: (scale * plate.height) / picture.height / 2 };
  const [left, right, top, bottom] = [0.5 - half.x, 0.5 + half.x, 0.5 - half.y, 0.5 + half.y];
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

/** Held inside the picture. @param {Point} point @returns {Point} */
export const inside = ({ x, y }) => ({ x: Math.min(1, Math.max(0, x)), y: Math.min(1, Math.max(0, y)) });

/** Whether the outline crosses itself or is bent inwards: its corners do not all turn the same way. @param {Point[]} corners */
export function isCrossed(corners) {
  const turnsOf = corners.map((at, i) => {
    const [next, after] = [corners[(i + 1) % 4], corners[(i + 2) % 4]];
    return Math.sign((next.x - at.x) * (after.y - next.y) - (next.y - at.y) * (after.x - next.x));
  });
  return new Set(turnsOf).size > 1;
}
