// @ts-check
/** The clock of the plate that develops: what time it is on the plate, and how it goes on. Only what moves is touched. */

import { say } from "../../texts.js";
import { moveJar } from "./jar.js";
import { moveRise } from "./rise.js";

/** @typedef {import("../state.js").Act} Act @typedef {{minutes: number, end: number}} Moment minutes since the plate was put in, and at the stop */

/** Places of the scrub. */
export const TICKS = 200;
const STEPS = 10;
const SECONDS = 60;

/** How far it is, as a share of all the time, so that it stays where it is when the ratio changes. */
let share = 0;
/** The frame that is waited for; 0 where it stands still. */
let frame = 0;
let before = 0;
/** @type {{answer: any, speed: number, act: Act} | undefined} */
let playing;

/** Whether somebody wants nothing to move by itself. */
export const isStill = () => matchMedia("(prefers-reduced-motion: reduce)").matches;

export const running = () => frame !== 0;

/** @param {any} answer @returns {Moment} */
export function momentOf(answer) {
  const end = answer.minutes.at(-1);
  return { minutes: share * end, end };
}

/** @param {any} answer @param {Moment} moment */
export function clockWords(answer, { minutes }) {
  const seconds = Math.round(minutes * SECONDS);
  const said = [...answer.events].reverse().find((/** @type {any} */ event) => event.minutes <= minutes + 1e-9);
  const clock = say("later.lesson-climb-clock", { minutes: Math.floor(seconds / SECONDS), seconds: String(seconds % SECONDS).padStart(2, "0") });
  return `${clock} ${said ? said.said.text : say("later.lesson-climb-waiting")}`;
}

/** The button: play and pause, or where nothing is to move by itself the next of ten steps. @param {any} answer @param {number} speed @param {Act} act */
export function pressed(answer, speed, act) {
  if (isStill()) {
    halt();
    share = share >= 1 ? 0 : Math.min(1, (Math.floor(share * STEPS + 1e-6) + 1) / STEPS);
    act.look({});
    act.speak(clockWords(answer, momentOf(answer)));
  } else if (running()) {
    halt();
    act.look({});
  } else {
    if (share >= 1) share = 0;
    play(answer, speed, act);
    act.look({});
  }
}

/** @param {any} answer @param {number} speed plate seconds in a second @param {Act} act */
export function play(answer, speed, act) {
  playing = { answer, speed, act };
  if (!running()) {
    before = performance.now();
    frame = requestAnimationFrame(tick);
  }
}

function halt() {
  cancelAnimationFrame(frame);
  frame = 0;
}

/** @param {any} answer @param {number} place @param {Act} act */
export function scrub(answer, place, act) {
  const was = running();
  halt();
  share = place / TICKS;
  show(answer);
  if (was) act.look({}); // the button says play again
}

/** @param {number} now */
function tick(now) {
  frame = 0;
  if (!playing || !document.getElementById("climb-stage")) return; // another part is shown
  const { answer, speed, act } = playing;
  const { minutes, end } = momentOf(answer);
  const next = minutes + (Math.max(0, now - before) / 1000) * (speed / SECONDS);
  before = now;
  share = Math.min(1, next / end);
  show(answer);
  const passed = answer.events.find((/** @type {any} */ event) => event.minutes > minutes && event.minutes <= next);
  if (passed) act.speak(passed.said.text);
  if (share < 1) frame = requestAnimationFrame(tick);
  else act.look({});
}

/** @param {any} answer */
function show(answer) {
  const moment = momentOf(answer);
  moveJar(answer, moment);
  moveRise(answer, moment);
  const words = clockWords(answer, moment);
  const clock = document.getElementById("climb-clock");
  const time = document.getElementById("climb-time");
  if (clock) clock.textContent = words;
  if (time instanceof HTMLInputElement) {
    time.value = String(Math.round(TICKS * share));
    time.setAttribute("aria-valuetext", words);
  }
}
