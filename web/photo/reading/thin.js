// @ts-check
/**
 * Thin structures apart from broad ones: pencil lines, ticks, letters. A grey opening (erosion, then dilation: Serra, Image Analysis
 * and Mathematical Morphology, 1982; the rolling ball of Sternberg, Computer 16 (1983) 22, is of the same kind; from memory) leaves
 * only what is as wide as its element both ways; what it takes away is thin.
 */

/**
 * The least (or the largest) in a window about each place of a plane, by two passes (van Herk 1992, Gil and Werman 1993, have a way
 * whose time does not grow with the window; these windows are small).
 * @param {Float32Array} plane @param {number} width @param {number} height @param {number} halfX @param {number} halfY @param {number} sign 1: least, −1: largest
 */
function extreme(plane, width, height, halfX, halfY, sign) {
  const across = new Float32Array(plane.length);
  const out = new Float32Array(plane.length);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      let best = Infinity;
      for (let k = Math.max(0, x - halfX), end = Math.min(width - 1, x + halfX); k <= end; k++) {
        const value = sign * plane[row + k];
        if (value < best) best = value;
      }
      across[row + x] = best;
    }
  }
  for (let y = 0; y < height; y++) {
    const [from, to] = [Math.max(0, y - halfY), Math.min(height - 1, y + halfY)];
    for (let x = 0, at = y * width; x < width; x++, at++) {
      let best = Infinity;
      for (let k = from * width + x, end = to * width + x; k <= end; k += width) if (across[k] < best) best = across[k];
      out[at] = sign * best;
    }
  }
  return out;
}

/** @param {Float32Array} plane @param {number} width @param {number} height @param {number} halfX half the element, in pixels @param {number} halfY */
export const opened = (plane, width, height, halfX, halfY) => extreme(extreme(plane, width, height, halfX, halfY, 1), width, height, halfX, halfY, -1);

/** @param {Float32Array} plane @param {number} width @param {number} height @param {number} halfX @param {number} halfY */
export const largest = (plane, width, height, halfX, halfY) => extreme(plane, width, height, halfX, halfY, -1);

/**
 * A mask without its dots: pieces as broad as they are high, but for a third, and mostly filled.
 * @param {Uint8Array} mask @param {number} width @param {number} height @param {{least: number, most: number}} size of a dot, in pixels
 */
export function linesOnly(mask, width, height, { least, most }) {
  const lines = Uint8Array.from(mask);
  const left = Uint8Array.from(mask);
  for (let first = 0; first < left.length; first++) {
    if (!left[first]) continue;
    const piece = pieceAt(left, width, height, first);
    const [across, high] = [0, 1].map((way) => extentOf(piece.map((at) => (way === 0 ? at % width : Math.floor(at / width)))));
    const [short, long] = [Math.min(across, high), Math.max(across, high)];
    const isDot = short >= least && long <= most && long <= 1.5 * short && piece.length > 0.55 * across * high;
    if (isDot) for (const at of piece) lines[at] = 0;
  }
  return lines;
}

/** The places that hang together with one, corners too; they are taken out of what is left. @param {Uint8Array} left @param {number} width @param {number} height @param {number} first */
function pieceAt(left, width, height, first) {
  const piece = [first];
  left[first] = 0;
  for (let i = 0; i < piece.length; i++) {
    const [x, y] = [piece[i] % width, Math.floor(piece[i] / width)];
    for (let v = Math.max(0, y - 1); v <= Math.min(height - 1, y + 1); v++) {
      for (let u = Math.max(0, x - 1); u <= Math.min(width - 1, x + 1); u++) {
        const at = v * width + u;
        if (!left[at]) continue;
        left[at] = 0;
        piece.push(at);
      }
    }
  }
  return piece;
}

/** @param {number[]} places */
const extentOf = (places) => places.reduce((most, place) => Math.max(most, place), -Infinity) - places.reduce((least, place) => Math.min(least, place), Infinity) + 1;

/** Every place within a distance of one that is set. @param {Uint8Array} mask @param {number} width @param {number} height @param {number} half */
export function widened(mask, width, height, half) {
  if (half < 1) return mask;
  return Uint8Array.from(extreme(Float32Array.from(mask), width, height, half, half, -1));
}
