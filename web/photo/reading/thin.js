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

/** Every place within a distance of one that is set. @param {Uint8Array} mask @param {number} width @param {number} height @param {number} half */
export function widened(mask, width, height, half) {
  if (half < 1) return mask;
  return Uint8Array.from(extreme(Float32Array.from(mask), width, height, half, half, -1));
}
