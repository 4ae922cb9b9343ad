// @ts-check
/** A file as a picture: refused by its first bytes where it is none or too large, else decoded as the browser shows it and made small enough to work with. */

import { headerOf } from "./header.js";
import { quantile } from "./numbers.js";

/** @typedef {import("./small.js").Picture} Picture @typedef {{code: string, [number: string]: string | number}} Fault */

/** Longest side of the picture worked with, most megapixels that are decoded, least pixels on a side, and how much of the file its header may take. */
export const LONGEST_SIDE_PX = 2000;
const MOST_MEGAPIXELS = 50;
const LEAST = 200;
const HEAD_BYTES = 1 << 19;

/** Numbers (of 255) below or above which a picture is all black or all white. */
const BLACK = 14;
const WHITE = 250;

/** What is wrong with a file by its first bytes. @param {Uint8Array} bytes @returns {Fault | null} */
export function headerFault(bytes) {
  const { width, height } = headerOf(bytes);
  const megapixels = (width * height) / 1e6;
  if (megapixels > MOST_MEGAPIXELS) return { code: "too-large", megapixels: Math.round(megapixels) };
  return width > 0 && height > 0 ? sizeFault(width, height) : null;
}

/** @param {number} width @param {number} height @returns {Fault | null} */
const sizeFault = (width, height) => (Math.min(width, height) < LEAST ? { code: "too-small", width, height } : null);

/** @param {Blob} file @returns {Promise<{fault: Fault} | {picture: Picture, width: number, height: number}>} */
export async function decoded(file) {
  const bytes = new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer());
  const fault = headerFault(bytes);
  if (fault) return { fault };
  /** @type {ImageBitmap} */
  let bitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: "from-image", colorSpaceConversion: "default" });
  } catch {
    return { fault: { code: headerOf(bytes).kind === "heic" ? "heic" : "not-a-picture" } };
  }
  const { width, height } = bitmap;
  const late = (width * height) / 1e6 > MOST_MEGAPIXELS ? { code: "too-large", megapixels: Math.round((width * height) / 1e6) } : sizeFault(width, height);
  if (late) {
    bitmap.close();
    return { fault: late };
  }
  const picture = pixelsOf(bitmap);
  bitmap.close();
  const empty = emptyFault(picture);
  return empty ? { fault: empty } : { picture, width, height };
}

/** @param {ImageBitmap} bitmap @returns {Picture} */
function pixelsOf(bitmap) {
  const share = Math.min(1, LONGEST_SIDE_PX / Math.max(bitmap.width, bitmap.height));
  const [width, height] = [Math.round(bitmap.width * share), Math.round(bitmap.height * share)];
  const context = new OffscreenCanvas(width, height).getContext("2d", { willReadFrequently: true, alpha: false });
  if (!context) throw new Error("The browser gives no place to draw on.");
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, width, height);
  return { width, height, data: context.getImageData(0, 0, width, height).data };
}

/** Black or white all over, but for a few places. @param {Picture} picture @returns {Fault | null} */
export function emptyFault({ width, height, data }) {
  const [lightest, darkest] = [/** @type {number[]} */ ([]), /** @type {number[]} */ ([])];
  const step = Math.max(1, Math.floor((width * height) / 20000));
  for (let i = 0; i < width * height; i += step) {
    const [red, green, blue] = [data[4 * i], data[4 * i + 1], data[4 * i + 2]];
    lightest.push(Math.max(red, green, blue));
    darkest.push(Math.min(red, green, blue));
  }
  if (quantile(lightest, 0.995) < BLACK) return { code: "all-black" };
  return quantile(darkest, 0.005) > WHITE ? { code: "all-white" } : null;
}
