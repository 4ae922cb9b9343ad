// @ts-check
/** Known compounds: students put each ring where they expect its spot, then the model's spots come beside. */

import { askSoon, told } from "../ask.js";
import { USUAL, laneX, lessonPlate, mmOf } from "../plate.js";
import { draw, list, make } from "../../dom.js";
import { button, typedField } from "../../entry.js";
import { decimal, plain } from "../../numbers.js";
import { say } from "../../texts.js";
import { colour, editWork, eluentText, exerciseOf, workOf } from "./work.js";

/** @typedef {import("./work.js").State} State @typedef {import("./work.js").Act} Act */

const LETTERS = ["A", "B", "C"];
/** How far a key moves a ring, in Rf. */
const STEPS = /** @type {Record<string, number>} */ ({ ArrowUp: 0.01, ArrowRight: 0.01, ArrowDown: -0.01, ArrowLeft: -0.01, PageUp: 0.1, PageDown: -0.1, Home: -1, End: 1 });
const PIXEL = USUAL.height / 420;
/** How near a finger has to come to a ring [px]. */
const REACH = 22;

/** What is dragged. @type {{pointer: number, index: number, y: number, rf: number} | undefined} */
let held;

/** The Rf that was placed, or undefined. @param {string} typed */
function rfOf(typed) {
  const rf = decimal(typed);
  return rf !== undefined && rf >= 0 && rf <= 1 ? rf : undefined;
}

/** @param {State} state @param {Act} act @param {any} exercise what the server told @returns {Element} */
export function placeView(state, act, exercise) {
  const work = workOf(state.lesson);
  const { compounds, ratio } = exercise.knowns;
  const values = { eluent: eluentText(ratio, exercise) };
  const question = placedQuestion(state);
  askSoon(state, act, question);
  const { answer, current } = told(state, question);
  const beside = work.shown === "yes" && current ? answer : undefined;
  return make(
    "section",
    { id: "exercise-place", "aria-labelledby": "exercise-place-title" },
    make("h3", { id: "exercise-place-title", tabindex: -1 }, say("later.lesson-exercise-step-place")),
    make("p", {}, say("later.lesson-exercise-place-how", values)),
    make(
      "div",
      { class: "exercise-placing" },
      make("div", { class: "exercise-plate large" }, drawing(state, act, exercise, work, beside, say("later.lesson-exercise-place-plate", values))),
      make(
        "div",
        { id: "exercise-placing-entries" },
        ...compounds.map((/** @type {any} */ each, /** @type {number} */ index) =>
          typedField(state, { id: `exercise-rf-${index}`, label: say("later.lesson-exercise-placed-rf", { letter: LETTERS[index], compound: each.name.text }), value: work.placed[index], mode: "decimal", typed: (value) => place(act, index, value), entered: () => run(state, act) })),
        button({ id: "exercise-place-run", kind: "main", label: say(work.shown === "yes" ? "later.lesson-exercise-place-again" : "later.lesson-exercise-run-place"), press: () => (work.shown === "yes" ? again(act) : run(state, act)) }),
        state.looking.exerciseUnplaced && make("p", { class: "fault", id: "exercise-place-fault", role: "alert" }, say("later.lesson-exercise-place-unread")),
        work.shown === "yes" && !current && make("p", { id: "exercise-place-counting" }, say("later.lesson-exercise-counting")),
        beside && make("div", { id: "exercise-placed" }, make("p", {}, say("later.lesson-exercise-place-told")), list(beside.spots.map((/** @type {any} */ spot) => spot.text.text)), make("p", {}, beside.text.text), list(beside.orders.map((/** @type {any} */ order) => order.text.text))),
      ),
    ),
  );
}

/** @param {State} state @returns {import("../ask.js").Question} */
function placedQuestion(state) {
  const { placed, shown } = workOf(state.lesson);
  const body = shown === "yes" ? { code: exerciseOf(state.lesson).code, placed: placed.map(rfOf) } : undefined;
  return { name: "exercise-placed", path: "/api/lesson/exercise/placed", body, entries: new Map() };
}

/** Where a ring is; what changes takes the model's spots away again. @param {Act} act @param {number} index @param {string} value */
function place(act, index, value) {
  act.look({ exerciseUnplaced: undefined });
  editWork(act, ({ placed }) => ({ placed: placed.map((each, at) => (at === index ? value : each)), shown: "no" }));
}

/** @param {State} state @param {Act} act */
function run(state, act) {
  const unplaced = workOf(state.lesson).placed.findIndex((each) => rfOf(each) === undefined);
  act.look({ exerciseUnplaced: unplaced >= 0 ? "yes" : undefined });
  if (unplaced >= 0) return act.focus(`exercise-rf-${unplaced}`);
  editWork(act, () => ({ shown: "yes" }));
}

/** @param {Act} act */
function again(act) {
  editWork(act, () => ({ shown: "no", placed: ["", "", ""] }));
  act.focus("exercise-ring-0");
}

/** @param {State} state @param {Act} act @param {any} exercise @param {import("./work.js").Work} work @param {any} beside @param {string} label */
function drawing(state, act, exercise, work, beside, label) {
  const { compounds } = exercise.knowns;
  const computed = (beside?.spots ?? []).map((/** @type {any} */ spot, /** @type {number} */ lane) => ({
    id: `exercise-model-${lane}`, lane, mm: mmOf(USUAL, spot.rf), across: 5, along: 5, colour: colour(lane), letters: "", kind: "computed", band: [mmOf(USUAL, spot.low), mmOf(USUAL, spot.high)],
  }));
  return lessonPlate({
    id: "exercise-known-plate",
    size: USUAL,
    lanes: compounds.length,
    spots: computed,
    label,
    pixel: PIXEL,
    further: { role: "group" },
    over: compounds.map((/** @type {any} */ each, /** @type {number} */ index) => ring(state, act, each, index, work.placed[index], compounds.length)),
  });
}

/** @param {State} state @param {Act} act @param {any} compound @param {number} index @param {string} typed @param {number} lanes */
function ring(state, act, compound, index, typed, lanes) {
  const rf = rfOf(typed);
  const at = rf ?? 0;
  const to = (/** @type {number} */ wanted) => place(act, index, plain(Math.min(1, Math.max(0, wanted)), 2));
  const x = laneX(USUAL, index, lanes);
  const y = USUAL.height - mmOf(USUAL, at);
  return draw(
    "g",
    {
      id: `exercise-ring-${index}`,
      class: `exercise-ring ${colour(index)}${rf === undefined ? " unplaced" : ""}`,
      tabindex: 0,
      role: "slider",
      "aria-orientation": "vertical",
      "aria-valuemin": 0,
      "aria-valuemax": 1,
      "aria-valuenow": at,
      "aria-valuetext": say("later.lesson-exercise-placed-at", { letter: LETTERS[index], compound: compound.name.text, rf: at }),
      "aria-label": say("later.lesson-exercise-placed-rf", { letter: LETTERS[index], compound: compound.name.text }),
      onkeydown: (event) => {
        const step = STEPS[event.key];
        if (step === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
        event.preventDefault();
        to(at + step);
      },
      ontouchstart: (event) => event.cancelable && event.preventDefault(), // it moves the ring, not the page
      onpointerdown: (event) => {
        if (!event.isPrimary || event.button !== 0) return;
        held = { pointer: event.pointerId, index, y: event.clientY, rf: at };
        event.currentTarget.setPointerCapture(event.pointerId);
        event.currentTarget.focus({ preventScroll: true });
      },
      onpointermove: (event) => {
        if (held?.pointer !== event.pointerId || held?.index !== index) return;
        const px = event.currentTarget.ownerSVGElement.getScreenCTM().a;
        to(held.rf + (held.y - event.clientY) / px / (USUAL.front - USUAL.start));
      },
      onpointerup: release,
      onpointercancel: release,
    },
    draw("circle", { class: "reach", cx: x, cy: y.toFixed(3), r: REACH * PIXEL }),
    draw("circle", { class: "focus", cx: x, cy: y.toFixed(3), r: 4.6, "stroke-width": 2.4 * PIXEL }),
    draw("circle", { class: "body", cx: x, cy: y.toFixed(3), r: 3, "stroke-width": 2.2 * PIXEL }),
    draw("text", { class: "letter", x, y: (y + 4.5 * PIXEL).toFixed(3), "text-anchor": "middle", "font-size": 13 * PIXEL, "stroke-width": 3 * PIXEL, "aria-hidden": "true" }, LETTERS[index]),
  );
}

/** @param {PointerEvent} event */
function release(event) {
  if (held?.pointer === event.pointerId) held = undefined;
}
