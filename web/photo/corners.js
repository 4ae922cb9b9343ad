// @ts-check
/** The picture with the outline of the plate: four corners to be dragged, by a finger, a mouse or keys. */

import { draw, make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { faultAt } from "../faults.js";
import { findPlate } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { lightView } from "./light.js";
import { straightenPlate } from "./course.js";
import { LOUPE, turnedSize } from "./loupe.js";
import { changeOutline, drawing, rest, turn } from "./store.js";
import { inside, pictureAt, shownAt } from "./turning.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Point} Point */

/** A press takes the nearest corner from this near [px]. */
const REACH_PX = 30;
/** Steps of keys, in parts of the picture's longer side. */
const STEP = 0.005;
const FINE_STEP = 0.001;

const NAMES = ["later.photo-lower-left", "later.photo-lower-right", "later.photo-upper-right", "later.photo-upper-left"];

/** @type {{pointer: number, svg: Element, x: number, y: number, corner: number, from: Point} | undefined} */
let held;

/** @param {State} state @param {State} wrong @param {Act} act @param {Photo} photo */
export function cornersView(state, wrong, act, photo) {
  const { attributes, told } = faultAt(wrong, "photo-corners");
  const busy = photo.waiting === "straightening";
  const straight = button({ id: "photo-straighten", label: busy ? say("later.photo-straightening") : say("later.photo-straighten"), kind: "main", press: () => straightenPlate(state, photo) });
  if (attributes["aria-describedby"]) straight.setAttribute("aria-describedby", attributes["aria-describedby"]);
  return [
    make(
      "div",
      { class: "photo-sides", id: "photo-corner-sides" },
      pictureView(photo),
      make(
        "div",
        { class: "photo-beside" },
        make("p", { id: "photo-found" }, say(`later.photo-corners-${photo.found}`)),
        make("div", { class: "photo-next", id: "photo-corners-next" }, straight, told),
        make(
          "div",
          { class: "photo-buttons", role: "group", "aria-label": say("later.photo-turn") },
          button({ id: "photo-turn-left", label: say("later.photo-turn-left"), press: () => turned(photo, -1) }),
          button({ id: "photo-turn-right", label: say("later.photo-turn-right"), press: () => turned(photo, 1) }),
        ),
        lightView(photo),
        sizeView(state, wrong, act, photo),
      ),
    ),
  ];
}

/** @param {Photo} photo @param {number} quarters */
function turned(photo, quarters) {
  rest(photo);
  turn(photo, quarters);
}

/** @param {State} state @param {State} wrong @param {Act} act @param {Photo} photo */
function sizeView(state, wrong, act, photo) {
  const plate = findPlate(state.sheet, photo.plate);
  return make(
    "fieldset",
    { class: "photo-size", id: "photo-size" },
    make("legend", {}, say("later.photo-size")),
    make(
      "div",
      { class: "two" },
      ...(/** @type {const} */ ([["height", "heightMm"], ["width", "widthMm"]])).map(([side, field]) =>
        typedField(wrong, {
          id: `photo-${side}`,
          label: say(side === "height" ? "page.height" : "page.width"),
          mode: "decimal",
          value: plate[field],
          typed: (value) => act.edit((sheet) => { findPlate(sheet, photo.plate)[field] = value; }, `photo-${side}`),
          left: act.rest,
        }),
      ),
    ),
  );
}

/** @param {Photo} photo */
function pictureView(photo) {
  const { width, height } = turnedSize(photo);
  return make(
    "div",
    { class: "photo-box", id: "photo-picture-box" },
    make("canvas", { id: "photo-picture", width, height, role: "img", "aria-label": say("later.photo-picture", { file: photo.name }) }),
    outline(photo),
    photo.loupe && make("canvas", { id: "photo-loupe", ...LOUPE, "aria-hidden": "true" }),
  );
}

const percent = (/** @type {number} */ share) => `${(100 * share).toFixed(3)}%`;

/** @param {Photo} photo */
function outline(photo) {
  const shown = photo.corners.map((corner) => shownAt(corner, photo.turns));
  const [left, right] = shown;
  const path = `M${shown.map(({ x, y }) => `${x.toFixed(5)} ${y.toFixed(5)}`).join("L")}Z`;
  return draw(
    "svg",
    { id: "photo-outline", class: "photo-over", role: "group", "aria-label": say("later.photo-outline"), ...pointerHandlers(photo) },
    draw(
      "svg",
      { viewBox: "0 0 1 1", preserveAspectRatio: "none", width: "100%", height: "100%", "aria-hidden": "true" },
      draw("path", { class: "photo-outside", d: `M0 0H1V1H0Z${path}`, "fill-rule": "evenodd" }),
      draw("path", { class: "photo-case", d: path }),
      draw("path", { class: "photo-line", d: path }),
      draw("path", { class: "photo-case photo-lower", d: `M${left.x} ${left.y}L${right.x} ${right.y}` }),
      draw("path", { class: "photo-line photo-lower", d: `M${left.x} ${left.y}L${right.x} ${right.y}` }),
    ),
    draw(
      "svg",
      { x: percent((left.x + right.x) / 2), y: percent((left.y + right.y) / 2), overflow: "visible", "aria-hidden": "true" },
      draw("text", { class: "photo-words", y: -10, "text-anchor": "middle" }, say("later.photo-start-below")),
    ),
    ...shown.map((at, i) => handle(photo, at, i)),
  );
}

/** @param {Photo} photo @param {Point} at @param {number} i */
function handle(photo, at, i) {
  const place = { x: Math.round(100 * at.x), y: Math.round(100 * at.y) };
  return draw(
    "svg",
    { id: `photo-corner-${i}-at`, x: percent(at.x), y: percent(at.y), overflow: "visible" },
    draw(
      "g",
      {
        id: `photo-corner-${i}`,
        class: held?.corner === i ? "photo-handle held" : "photo-handle",
        role: "slider",
        tabindex: 0,
        "aria-label": say(NAMES[i]),
        "aria-valuemin": 0,
        "aria-valuemax": 100,
        "aria-valuenow": place.x,
        "aria-valuetext": say("later.photo-corner-place", place),
        onkeydown: (event) => key(photo, i, event),
        onblur: () => rest(photo),
      },
      draw("circle", { class: "photo-reach", r: 22 }),
      draw("circle", { class: "photo-case", r: 15 }),
      draw("circle", { class: "photo-ring", r: 15 }),
      draw("circle", { class: "photo-dot", r: 2.5 }),
    ),
  );
}

/** Moves a corner to a place as it is shown. @param {Photo} photo @param {number} corner @param {Point} to @param {string} together */
function move(photo, corner, to, together) {
  const place = inside(pictureAt(to, photo.turns));
  changeOutline(photo, { corners: photo.corners.map((each, i) => (i === corner ? place : each)), turns: photo.turns }, together);
}

/** @param {Photo} photo @param {number} corner @param {KeyboardEvent} event */
function key(photo, corner, event) {
  const [across, up] = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key] ?? [0, 0];
  if ((across === 0 && up === 0) || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  const { width, height } = turnedSize(photo);
  const step = (event.shiftKey ? FINE_STEP : STEP) * Math.max(width, height);
  const at = shownAt(photo.corners[corner], photo.turns);
  move(photo, corner, { x: at.x + (across * step) / width, y: at.y + (up * step) / height }, `key-corner-${corner}`);
}

/** @param {Photo} photo */
const pointerHandlers = (photo) => ({
  onmousedown: (/** @type {MouseEvent} */ event) => event.preventDefault(),
  // browsers do not heed touch-action inside a drawing: what can be moved takes the finger, else the page scrolls
  ontouchstart: (/** @type {TouchEvent} */ event) => {
    if (held && event.touches.length === 1 && event.cancelable) event.preventDefault();
  },
  onpointerdown: (/** @type {PointerEvent} */ event) => press(photo, event),
  onpointermove: (/** @type {PointerEvent} */ event) => drag(photo, event),
  onpointerup: (/** @type {PointerEvent} */ event) => release(photo, event),
  onpointercancel: (/** @type {PointerEvent} */ event) => release(photo, event),
});

/** @param {Photo} photo @param {PointerEvent} event */
function press(photo, event) {
  if (held?.svg.isConnected || !event.isPrimary || event.button !== 0) return;
  const svg = /** @type {Element} */ (event.currentTarget);
  const box = svg.getBoundingClientRect();
  const near = photo.corners
    .map((corner, i) => {
      const at = shownAt(corner, photo.turns);
      return { i, at, px: Math.hypot(box.left + at.x * box.width - event.clientX, box.top + at.y * box.height - event.clientY) };
    })
    .filter(({ px }) => px <= REACH_PX)
    .sort((one, other) => one.px - other.px);
  if (near.length === 0) return;
  const [{ i, at }] = near;
  held = { pointer: event.pointerId, svg, x: event.clientX, y: event.clientY, corner: i, from: at };
  svg.setPointerCapture(event.pointerId);
  rest(photo);
  magnify(photo);
  document.getElementById(`photo-corner-${i}`)?.focus({ preventScroll: true });
}

/** @param {Photo} photo @param {PointerEvent} event */
function drag(photo, event) {
  if (held?.pointer !== event.pointerId) return;
  const box = held.svg.getBoundingClientRect();
  move(photo, held.corner, { x: held.from.x + (event.clientX - held.x) / box.width, y: held.from.y + (event.clientY - held.y) / box.height }, `drag-corner-${held.corner}`);
  magnify(photo);
}

/** @param {Photo} photo */
function magnify(photo) {
  if (!held || !photo.shown) return;
  photo.loupe = { image: photo.shown, ...photo.corners[held.corner] };
  drawing.again();
}

/** @param {Photo} photo @param {PointerEvent} event */
function release(photo, event) {
  if (held?.pointer !== event.pointerId) return;
  held = undefined;
  photo.loupe = undefined;
  rest(photo);
  drawing.again();
}
