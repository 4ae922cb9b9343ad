// @ts-check
/**
 * Reads the photo of a plate off the page's own thread. Messages {id, ask, …} are answered by {id, answer} or {id, fault: {code, …}};
 * one picture at a time. Of several "read" waiting only the latest is answered, the others get the fault "overtaken".
 */

import { cornersOf } from "./corners.js";
import { decoded } from "./decode.js";
import { cornersFault, flatOf } from "./flat.js";
import { lightOf } from "./light.js";
import { linesFault, plateOf, proposed, read } from "./plate.js";
import { pointedAt } from "./pointed.js";

/** Most pixels upwards of the picture that is kept. */
const KEPT = 900;

/** @type {import("./small.js").Picture | null} */
let picture = null;
/** @type {import("./flat.js").Flat | null} */
let flat = null;
/** @type {import("./plate.js").Plate | null} */
let plate = null;

/** @typedef {{answer: any, transfer?: Transferable[]} | {fault: {code: string, [more: string]: string | number}}} Reply */

/** @type {Record<string, (asked: any) => Promise<Reply> | Reply>} */
const answers = {
  async open({ file }) {
    picture = flat = plate = null;
    const found = await decoded(file);
    if ("fault" in found) return found;
    picture = found.picture;
    const plateFound = cornersOf(picture);
    const light = lightOf(picture, plateFound ? within(plateFound.corners) : undefined);
    return { answer: { width: found.width, height: found.height, light, corners: plateFound?.corners ?? null, sure: plateFound?.sure ?? 0 } };
  },

  async straighten({ corners, widthMm, heightMm, light }) {
    if (!picture) return { fault: { code: "nothing-open" } };
    const fault = cornersFault(corners, picture);
    if (fault) return { fault: { code: fault } };
    flat = flatOf(picture, corners, widthMm, heightMm);
    if (!flat) return { fault: { code: "corners-crossed" } };
    plate = plateOf(flat, light ?? undefined);
    const image = await createImageBitmap(new ImageData(flat.data, flat.width, flat.height));
    return { answer: { image, pixelsPerMm: flat.perMm, ...proposed(plate) }, transfer: [image] };
  },

  read({ start, front, lanes, light }) {
    if (!plate) return { fault: { code: "nothing-open" } };
    const fault = linesFault({ start, front }, plate.field);
    return fault ? { fault: { code: fault } } : { answer: read(plate, { start, front, lanes, light: light ?? undefined }) };
  },

  spot(asked) {
    if (!plate) return { fault: { code: "nothing-open" } };
    const fault = linesFault(asked, plate.field);
    return fault ? { fault: { code: fault } } : { answer: pointedAt(plate, { ...asked, light: asked.light ?? undefined }) };
  },

  async picture({ quality }) {
    if (!flat) return { fault: { code: "nothing-open" } };
    const whole = await createImageBitmap(new ImageData(flat.data, flat.width, flat.height));
    const share = Math.min(1, KEPT / flat.height);
    const canvas = new OffscreenCanvas(Math.round(flat.width * share), Math.round(flat.height * share));
    const context = canvas.getContext("2d");
    if (!context) throw new Error("The browser gives no place to draw on.");
    context.imageSmoothingQuality = "high";
    context.drawImage(whole, 0, 0, canvas.width, canvas.height);
    whole.close();
    return { answer: { blob: await canvas.convertToBlob({ type: "image/jpeg", quality: quality ?? 0.8 }) } };
  },
};

/** Whether a place lies in the plate, a little in from its edges. @param {{x: number, y: number}[]} corners */
function within(corners) {
  const middle = { x: corners.reduce((sum, { x }) => sum + x / 4, 0), y: corners.reduce((sum, { y }) => sum + y / 4, 0) };
  const inner = corners.map(({ x, y }) => ({ x: middle.x + 0.9 * (x - middle.x), y: middle.y + 0.9 * (y - middle.y) }));
  return (/** @type {number} */ x, /** @type {number} */ y) => inner.every((p, i) => (inner[(i + 1) % 4].x - p.x) * (y - p.y) - (inner[(i + 1) % 4].y - p.y) * (x - p.x) <= 0);
}

/** @type {any[]} */
const waiting = [];
let busy = false;

/** Answers what waits, one after the other. */
async function work() {
  if (busy) return;
  busy = true;
  // Messages that have come meanwhile are taken in first, so that what is overtaken is not computed.
  for (await new Promise((resolve) => setTimeout(resolve)); waiting.length > 0; await new Promise((resolve) => setTimeout(resolve))) {
    const { id, ask, ...asked } = waiting.shift();
    if (ask === "read" && waiting.some((later) => later.ask === "read")) {
      postMessage({ id, fault: { code: "overtaken" } });
      continue;
    }
    const reply = await replied(ask, asked);
    if ("fault" in reply) postMessage({ id, fault: reply.fault });
    else postMessage({ id, answer: reply.answer }, { transfer: reply.transfer ?? [] });
  }
  busy = false;
}

/** @param {string} ask @param {any} asked @returns {Promise<Reply>} */
async function replied(ask, asked) {
  const answer = answers[ask];
  if (!answer) return { fault: { code: "not-known", ask } };
  try {
    return await answer(asked);
  } catch (error) {
    return { fault: { code: "broken", said: String(error) } };
  }
}

addEventListener("message", ({ data }) => {
  waiting.push(data);
  void work();
});
