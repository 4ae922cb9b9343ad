// @ts-check
/**
 * What a file is by its first bytes, and how many pixels it has, before anything is decoded: JPEG (ITU T.81, start of frame),
 * PNG (ISO/IEC 15948), GIF89a, BMP, WebP (RFC 9649), and the brands of ISO base media files (ISO/IEC 23008-12: HEIC, HEIF, AVIF).
 */

/** @typedef {{kind: "jpeg" | "png" | "gif" | "bmp" | "webp" | "heic" | "unknown", width: number, height: number}} Header 0 × 0: not said there */

const BRANDS = ["heic", "heix", "hevc", "hevx", "heim", "heis", "hevm", "hevs", "mif1", "msf1", "avif", "avis"];

/** @param {Uint8Array} bytes the first of the file (a JPEG's size may stand behind a long preview: give some hundred kilobytes) @returns {Header} */
export function headerOf(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  /** @param {number} at @param {number} length */
  const word = (at, length) => String.fromCharCode(...bytes.subarray(at, at + length));
  if (bytes.length < 16) return { kind: "unknown", width: 0, height: 0 };
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return { kind: "jpeg", ...jpegSize(view) };
  if (word(1, 3) === "PNG" && bytes[0] === 0x89) return { kind: "png", ...(bytes.length >= 24 ? { width: view.getUint32(16), height: view.getUint32(20) } : { width: 0, height: 0 }) };
  if (word(0, 4) === "GIF8") return { kind: "gif", width: view.getUint16(6, true), height: view.getUint16(8, true) };
  if (word(0, 2) === "BM" && bytes.length >= 26) return { kind: "bmp", width: Math.abs(view.getInt32(18, true)), height: Math.abs(view.getInt32(22, true)) };
  if (word(0, 4) === "RIFF" && word(8, 4) === "WEBP") return { kind: "webp", ...webpSize(view, word(12, 4)) };
  if (word(4, 4) === "ftyp") return { kind: brands(bytes, view).some((brand) => BRANDS.includes(brand)) ? "heic" : "unknown", width: 0, height: 0 };
  return { kind: "unknown", width: 0, height: 0 };
}

/** The major brand and those it is compatible with. @param {Uint8Array} bytes @param {DataView} view */
function brands(bytes, view) {
  const end = Math.min(view.getUint32(0), bytes.length, 256);
  const found = [];
  for (let at = 8; at + 4 <= end; at += 4) if (at !== 12) found.push(String.fromCharCode(...bytes.subarray(at, at + 4)));
  return found;
}

/** @param {DataView} view */
function jpegSize(view) {
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return { width: 0, height: 0 };
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const isFrame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    if (marker === 0xda || marker === 0xd9) return { width: 0, height: 0 };
    const alone = marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);
    at += alone ? 2 : 2 + view.getUint16(at + 2);
  }
  return { width: 0, height: 0 };
}

/** @param {DataView} view @param {string} chunk */
function webpSize(view, chunk) {
  if (view.byteLength < 30) return { width: 0, height: 0 };
  /** @param {number} at */
  const three = (at) => 1 + view.getUint8(at) + 256 * view.getUint8(at + 1) + 65536 * view.getUint8(at + 2);
  if (chunk === "VP8X") return { width: three(24), height: three(27) };
  if (chunk === "VP8 ") return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  const bits = view.getUint32(21, true);
  return chunk === "VP8L" ? { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) } : { width: 0, height: 0 };
}
