// @ts-check
/** A picture made small, its three channels apart, for looking for the plate. */

/** @typedef {{width: number, height: number, data: Uint8ClampedArray | Uint8Array}} Picture four bytes a pixel: red, green, blue, opacity */
/** @typedef {{width: number, height: number, scale: number, planes: Float32Array[]}} Small scale: pixels of the picture to one of these */

/** Means of squares of pixels. @param {Picture} picture @param {number} longest side of the small one, in pixels @returns {Small} */
export function smallOf({ width, height, data }, longest) {
  const scale = Math.max(1, Math.ceil(Math.max(width, height) / longest));
  const [columns, rows] = [Math.floor(width / scale), Math.floor(height / scale)];
  const planes = [0, 1, 2].map(() => new Float32Array(columns * rows));
  const share = 1 / (scale * scale);
  for (let row = 0; row < rows; row++) {
    for (let y = row * scale; y < (row + 1) * scale; y++) {
      for (let column = 0, at = 4 * y * width; column < columns; column++) {
        let red = 0;
        let green = 0;
        let blue = 0;
        for (let k = 0; k < scale; k++, at += 4) {
          red += data[at];
          green += data[at + 1];
          blue += data[at + 2];
        }
        const to = row * columns + column;
        planes[0][to] += red * share;
        planes[1][to] += green * share;
        planes[2][to] += blue * share;
      }
    }
  }
  return { width: columns, height: rows, scale, planes: planes.map((plane) => blurred(plane, columns, rows, 1)) };
}

/**
 * Smoothed by a normal curve; at the rim by what there is of it.
 * @param {Float32Array} plane @param {number} width @param {number} height @param {number} sigma in pixels @param {number} [sigmaDown] the same downwards
 */
export function blurred(plane, width, height, sigma, sigmaDown = sigma) {
  const across = sigma > 0 ? new Float32Array(plane.length) : plane;
  if (sigma > 0) blurRows(plane, across, width, height, bell(sigma));
  if (!(sigmaDown > 0)) return across;
  const out = new Float32Array(plane.length);
  const kernel = bell(sigmaDown);
  for (let y = 0; y < height; y++) {
    const end = Math.min(kernel.length - 1, height - 1 - y);
    let total = 0;
    for (let k = Math.max(1 - kernel.length, -y); k <= end; k++) total += kernel[k < 0 ? -k : k];
    for (let k = Math.max(1 - kernel.length, -y); k <= end; k++) {
      const weight = kernel[k < 0 ? -k : k] / total;
      const shift = k * width;
      for (let to = y * width, last = to + width; to < last; to++) out[to] += weight * across[to + shift];
    }
  }
  return out;
}

/** @param {Float32Array} plane @param {Float32Array} out @param {number} width @param {number} height @param {Float32Array} kernel */
function blurRows(plane, out, width, height, kernel) {
  const reach = Math.min(kernel.length - 1, width - 1);
  const totals = new Float32Array(width);
  for (let x = 0; x < width; x++) for (let k = -reach; k <= reach; k++) if (x + k >= 0 && x + k < width) totals[x] += kernel[k < 0 ? -k : k];
  const sums = new Float32Array(width);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) sums[x] = kernel[0] * plane[row + x];
    for (let k = 1; k <= reach; k++) {
      const weight = kernel[k];
      const middle = width - k;
      for (let x = 0; x < middle; x++) sums[x] += weight * plane[row + x + k];
      for (let x = k; x < width; x++) sums[x] += weight * plane[row + x - k];
    }
    for (let x = 0; x < width; x++) out[row + x] = sums[x] / totals[x];
  }
}

/** Half a normal curve, from its middle. @param {number} sigma */
function bell(sigma) {
  const reach = Math.max(1, Math.ceil(2.7 * sigma));
  return Float32Array.from({ length: reach + 1 }, (_, k) => (k === 0 ? 1 : Math.exp((-k * k) / (2 * sigma * sigma))));
}
