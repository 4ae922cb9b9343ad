// @ts-check
/** The one ratio that a lesson pulls along, as one and the same slider wherever it is pulled, and how an answer stands. */

import { nearestStop, ratioOf, shareText, stopsBetween, stopsFurther } from "../answer/shares.js";
import { make } from "../dom.js";
import { decimal } from "../numbers.js";
import { say } from "../texts.js";
import { told } from "./ask.js";
import { seriesQuestion } from "./series/ask.js";

/** @typedef {import("./state.js").State} State @typedef {import("./state.js").Act} Act */

/**
 * @typedef {object} Reach
 * @property {number} from @property {number} to how far the ratio can be pulled [% v/v]
 * @property {number} advised a stop of its own [% v/v]
 * @property {{name: string}} weak @property {{name: string}} strong
 */

/** How many stops each key goes. */
const KEYS = /** @type {Record<string, number>} */ ({ ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -5, PageUp: 5, Home: -Infinity, End: Infinity });
/** A pull that rests so long is said [ms]. */
const SETTLED = 700;

let settling = 0;

/** The eluent as it is poured: "4 : 1", "hexane alone", "23 %". @param {number} percent @param {any} pair with weak and strong */
export const eluentText = (percent, pair) => ratioOf(percent, pair) ?? `${shareText(percent)} %`;

/** The share that was entered, held to what can be pulled; the least where it is no number. @param {{from: number, to: number}} reach @param {string} typed */
export const heldTo = ({ from, to }, typed) => Math.min(to, Math.max(from, decimal(typed) ?? from));

/** What a series reaches. @param {any} answer of the series @returns {Reach} */
export const reachOf = ({ curves, best, weak, strong }) => ({ from: curves.percentStrong[0], to: curves.percentStrong.at(-1), advised: best.percentStrong, weak, strong });

/** What can be pulled: as far as the model goes, once that was told; until then all. @param {State} state @returns {Reach} */
export function reach(state) {
  const { answer, current } = told(state, seriesQuestion(state));
  if (current) return reachOf(answer);
  const named = (/** @type {string} */ id) => state.published.library.solvents.find((/** @type {any} */ each) => each.id === id) ?? { name: id };
  return { from: 0, to: 100, advised: 0, weak: named(state.lesson.weak), strong: named(state.lesson.strong) };
}

/** The share that is pulled. @param {State} state */
export const percentOf = (state) => heldTo(reach(state), state.lesson.percent);

/**
 * The slider: stops at sensible shares, close together where little of the strong solvent does much.
 * @param {State} state
 * @param {Act} act
 * @param {object} slider
 * @param {string} slider.id
 * @param {Reach} slider.reach
 * @param {() => string} [slider.spoken] what is said once a pull rests, besides the ratio
 */
export function ratioSlider(state, act, { id, reach: how, spoken }) {
  const { from, to, advised, weak, strong } = how;
  const percent = heldTo(how, state.lesson.percent);
  const stops = stopsBetween(from, to, advised);
  const pull = (/** @type {number} */ share) => {
    act.edit((lesson) => { lesson.percent = String(Number(share.toFixed(2))); });
    clearTimeout(settling);
    if (spoken) settling = window.setTimeout(() => act.speak(spoken()), SETTLED);
  };
  const ratio = ratioOf(percent, { weak, strong });
  const words = say("later.lesson-series-pulled", { percent: shareText(percent), strong: strong.name });
  return make(
    "div",
    { class: "lesson-ratio", id: `${id}-ratio` },
    make("label", { for: id }, say("later.lesson-series-pull", { strong: strong.name })),
    make("input", {
      id,
      type: "range",
      min: Math.log1p(from),
      max: Math.log1p(to),
      step: "any",
      value: Math.log1p(percent),
      "aria-valuetext": ratio ? `${ratio}, ${words}` : words,
      oninput: (event) => pull(nearestStop(stops, Math.expm1(Number(event.target.value)))),
      onkeydown: (event) => {
        const steps = KEYS[event.key];
        if (steps === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
        event.preventDefault();
        pull(stopsFurther(stops, percent, steps));
      },
    }),
    make("p", { id: `${id}-now` }, ...(ratio ? [make("strong", {}, ratio), ` ${words}`] : [make("strong", {}, words)])),
  );
}

/** What is told while an answer is on its way or was refused. @param {State} state with its faults @param {string} part @param {string | undefined} standing */
export function standingView(state, part, standing) {
  if (standing === "unreachable") return [make("p", { class: "decisive", id: `${part}-out` }, say("page.out-of-reach"))];
  if (standing !== "refused") return [];
  return [...state.faults.values()].flat().map((sentence) => make("p", { class: "fault" }, sentence));
}
