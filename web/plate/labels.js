// @ts-check
/** Puts the letters beside their spots so that none lies on another letter, or on another spot where there is room. */

/**
 * @typedef {{x: number, y: number, r: number, letters: string}} Labelled a spot with what stands beside it
 * @typedef {{left: number, right: number, top: number, bottom: number}} Box
 * @typedef {{dx: number, dy: number, anchor: "start" | "end", far: boolean}} Place of the near edge of the letters, from the middle of the spot; far letters need a line to it
 */

/** How wide a letter is taken to be, in sizes of a letter. */
const LETTER_WIDTH = 0.68;
/** Steps sideways that are tried before letters may lie on each other. */
const STEPS = 7;
/** Steps up and down at each of them, in sizes of a letter. */
const UP = [0, -0.55, 0.55, -1.1, 1.1, -1.7, 1.7];

/**
 * @param {Labelled[]} spots
 * @param {{width: number, size: number}} room the plate's width, and the size of the letters, in the same unit
 * @returns {Place[]} one for each spot
 */
export function labelPlaces(spots, { width, size }) {
  /** @type {Box[]} */
  const taken = [];
  return spots.map((spot) => {
    const long = LETTER_WIDTH * size * [...spot.letters].length;
    const all = [...around(spot, long, size)].map((place) => ({ place, box: boxAt(spot, place, long, size) }));
    const inside = all.filter(({ box }) => box.left >= 0 && box.right <= width);
    const free = inside.filter(({ box }) => !taken.some((other) => overlap(box, other)));
    const clear = free.find(({ box }) => !spots.some((other) => other !== spot && overlap(box, bodyOf(other))));
    const chosen = clear ?? free[0] ?? all[0];
    taken.push(chosen.box);
    return chosen.place;
  });
}

/** Places from near to far, right before left. @param {Labelled} spot @param {number} long @param {number} size @returns {Generator<Place>} */
function* around(spot, long, size) {
  for (let step = 0; step < STEPS; step++) {
    const away = spot.r + 0.25 * size + step * (long + 0.2 * size);
    for (const anchor of /** @type {const} */ (["start", "end"])) {
      for (const up of UP) yield { dx: anchor === "start" ? away : -away, dy: up * size, anchor, far: step > 0 || Math.abs(up) > 1 };
    }
  }
}

/** @param {Labelled} spot @param {Place} place @param {number} long @param {number} size @returns {Box} */
function boxAt(spot, { dx, dy, anchor }, long, size) {
  const [edge, y] = [spot.x + dx, spot.y + dy];
  const left = anchor === "start" ? edge : edge - long;
  return { left, right: left + long, top: y - 0.45 * size, bottom: y + 0.45 * size };
}

/** A spot without its outermost edge. @param {Labelled} spot @returns {Box} */
const bodyOf = ({ x, y, r }) => ({ left: x - 0.9 * r, right: x + 0.9 * r, top: y - 0.7 * r, bottom: y + 0.7 * r });

/** @param {Box} one @param {Box} other */
const overlap = (one, other) =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
