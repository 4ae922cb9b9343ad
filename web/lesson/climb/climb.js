// @ts-check
/** A plate while it develops: the front climbs, spots wait and follow; played, scrubbed or stepped through. */

import { make } from "../../dom.js";
import { choice } from "../../entry.js";
import { styled } from "../../later.js";
import { say } from "../../texts.js";
import { askSoon, told, withFaults } from "../ask.js";
import { percentOf, ratioSlider, reach, standingView } from "../ratio.js";
import { seriesQuestion } from "../series/ask.js";
import { sampleAsked } from "../state.js";
import { clockWords, isStill, momentOf, play, pressed, running, scrub, TICKS } from "./clock.js";
import { jar, rows } from "./jar.js";
import { rise } from "./rise.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

await styled(new URL("./climb.css", import.meta.url));

const SPEEDS = ["10", "60", "300"];

/** @param {State} state @returns {import("../ask.js").Question} */
const question = (state) => ({ name: "climb", path: "/api/lesson/climb", body: { ...sampleAsked(state.lesson), percentStrong: percentOf(state) }, entries: new Map() });

/** @param {State} state */
const speedOf = (state) => (SPEEDS.includes(state.lesson.parts.climb?.speed) ? state.lesson.parts.climb.speed : "60");

/** @param {State} state @param {Act} act @returns {Element[]} */
export function view(state, act) {
  const asking = question(state);
  queueMicrotask(() => {
    askSoon(state, act, asking);
    askSoon(state, act, seriesQuestion(state)); // how far it can be pulled
  });
  const { answer, current, standing } = told(state, asking);
  const wrong = withFaults(state, asking);
  const seen = answer?.compounds.length === state.lesson.compounds.length ? answer : undefined;
  return [
    make("p", { class: "lesson-ask" }, say("later.lesson-climb-question")),
    ratioSlider(state, act, { id: "climb-percent", reach: reach(state) }),
    ...standingView(wrong, "climb", standing),
    ...(seen ? [stage(state, act, seen, current)] : []),
  ];
}

/** @param {State} state @param {Act} act @param {any} answer @param {boolean} current */
function stage(state, act, answer, current) {
  const moment = momentOf(answer);
  return make(
    "div",
    { id: "climb-stage", class: current ? "climb" : "climb old", "data-current": current ? "yes" : "no" },
    make("div", { class: "climb-jar" }, jar(answer, moment)),
    make(
      "div",
      { class: "climb-side" },
      controls(state, act, answer),
      make("p", { id: "climb-clock", class: "climb-clock" }, clockWords(answer, moment)),
      rows(answer, moment),
      make("p", { id: "climb-constant", class: "climb-answer" }, answer.sentences.find((/** @type {any} */ { key }) => key === "lesson.climb-constant").text),
    ),
    rise(answer, moment),
    make("ul", { id: "climb-said", class: "climb-said" }, ...answer.sentences.filter((/** @type {any} */ { key }) => key !== "lesson.climb-constant").map((/** @type {any} */ { text }) => make("li", {}, text))),
  );
}

/** @param {State} state @param {Act} act @param {any} answer */
function controls(state, act, answer) {
  const still = isStill();
  const label = still ? say("later.lesson-climb-step") : say(running() ? "later.lesson-climb-pause" : "later.lesson-climb-play");
  const faster = (/** @type {string} */ speed) => act.edit((lesson) => { lesson.parts.climb = { ...lesson.parts.climb, speed }; });
  if (running()) play(answer, Number(speedOf(state)), act); // goes on with what is shown now
  return make(
    "div",
    { class: "climb-controls" },
    make("button", { type: "button", id: "climb-play", class: "main", onclick: () => pressed(answer, Number(speedOf(state)), act) }, label),
    !still &&
      choice(state, { id: "climb-speed", label: say("later.lesson-climb-speed"), value: speedOf(state), options: SPEEDS.map((value) => ({ value, text: say("later.lesson-climb-times", { times: value }) })), chosen: faster }),
    make(
      "div",
      { class: "climb-scrub" },
      make("label", { for: "climb-time" }, say("later.lesson-climb-scrub")),
      make("input", {
        id: "climb-time",
        type: "range",
        min: 0,
        max: TICKS,
        step: 1,
        value: Math.round((TICKS * momentOf(answer).minutes) / momentOf(answer).end),
        "aria-valuetext": clockWords(answer, momentOf(answer)),
        oninput: (event) => scrub(answer, Number(event.target.value), act),
      }),
    ),
  );
}
