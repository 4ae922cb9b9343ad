// @ts-check
/** Paints what markup cannot say: the picture, the flat plate, and a magnified circle beside the finger. */

import { shownAt } from "./turning.js";

/** @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Point} Point */

/** Diameter of the circle [px], how much it magnifies, and how far its middle is from the finger [px]. */
const ROUND_PX = 132;
const LARGER = 3;
const AWAY_PX = 104;

/** What each canvas shows. @type {WeakMap<HTMLCanvasElement, string>} */
const painted = new WeakMap();
/** @type {WeakMap<ImageBitmap, number>} */
const numbers = new WeakMap();
let count = 0;

/** @param {ImageBitmap} image */
function numberOf(image) {
  const number = numbers.get(image) ?? ++count;
  numbers.set(image, number);
  return number;
}

/** Size of the picture as it is turned [px]. @param {Photo} photo */
export function turnedSize({ shown, turns }) {
  const { width, height } = /** @type {ImageBitmap} */ (shown);
  return turns % 2 ? { width: height, height: width } : { width, height };
}

/** Paints what is not painted yet; after the elements are in place. @param {Photo} photo */
export function paint(photo) {
  const { shown, turns, flat } = photo;
  if (shown) paintOnce("photo-picture", `${numberOf(shown)} ${turns}`, (pen) => turned(pen, shown, turns));
  if (flat) paintOnce("photo-flat", String(numberOf(flat.image)), (pen) => pen.drawImage(flat.image, 0, 0));
  paintLoupe(photo);
}

/** @param {string} id @param {string} what @param {(pen: CanvasRenderingContext2D) => void} draw */
function paintOnce(id, what, draw) {
  const canvas = document.getElementById(id);
  if (!(canvas instanceof HTMLCanvasElement) || painted.get(canvas) === what) return;
  const pen = canvas.getContext("2d");
  if (!pen) return;
  pen.setTransform(1, 0, 0, 1, 0, 0);
  pen.clearRect(0, 0, canvas.width, canvas.height);
  draw(pen);
  painted.set(canvas, what);
}

/** @param {CanvasRenderingContext2D} pen @param {ImageBitmap} image @param {number} turns */
function turned(pen, image, turns) {
  const { width, height } = pen.canvas;
  pen.translate(width / 2, height / 2);
  pen.rotate((turns * Math.PI) / 2);
  pen.drawImage(image, -image.width / 2, -image.height / 2);
}

/** @param {Photo} photo */
function paintLoupe({ loupe, shown, turns }) {
  const canvas = document.getElementById("photo-loupe");
  const ground = canvas?.parentElement?.querySelector("canvas:not(#photo-loupe)");
  if (!loupe || !(canvas instanceof HTMLCanvasElement) || !(ground instanceof HTMLCanvasElement)) return;
  const pen = canvas.getContext("2d");
  if (!pen) return;
  const isTurned = loupe.image === shown;
  const at = isTurned ? shownAt(loupe, turns) : loupe;
  const box = ground.getBoundingClientRect();
  const place = { x: at.x * box.width, y: at.y * box.height };
  canvas.style.left = `${sideOf(place, box.width)}px`;
  canvas.style.top = `${place.y - AWAY_PX - ROUND_PX / 2 > -ROUND_PX / 2 ? place.y - AWAY_PX - ROUND_PX / 2 : place.y - ROUND_PX / 2}px`;
  const scale = canvas.width / ROUND_PX;
  pen.setTransform(1, 0, 0, 1, 0, 0);
  pen.clearRect(0, 0, canvas.width, canvas.height);
  pen.translate(canvas.width / 2, canvas.height / 2);
  pen.scale(scale * LARGER * (box.width / ground.width), scale * LARGER * (box.width / ground.width));
  pen.translate(-at.x * ground.width, -at.y * ground.height);
  pen.drawImage(ground, 0, 0);
  cross(pen);
}

/** Over the finger where there is room, else beside it. @param {Point} place @param {number} width [px] */
function sideOf({ x, y }, width) {
  if (y >= AWAY_PX) return Math.min(width - ROUND_PX / 2, Math.max(-ROUND_PX / 2, x - ROUND_PX / 2));
  return (x > width / 2 ? x - AWAY_PX : x + AWAY_PX) - ROUND_PX / 2;
}

/** @param {CanvasRenderingContext2D} pen */
function cross(pen) {
  const { width, height } = pen.canvas;
  pen.setTransform(1, 0, 0, 1, 0, 0);
  for (const [colour, line] of /** @type {const} */ ([["#ffffff", 4], ["#10202c", 1.5]])) {
    pen.strokeStyle = colour;
    pen.lineWidth = line;
    pen.beginPath();
    pen.moveTo(width / 2, 0.32 * height);
    pen.lineTo(width / 2, 0.68 * height);
    pen.moveTo(0.32 * width, height / 2);
    pen.lineTo(0.68 * width, height / 2);
    pen.stroke();
  }
}

/** Pixels of the circle's canvas. */
export const LOUPE = { width: 2 * ROUND_PX, height: 2 * ROUND_PX };
