// @ts-check
/** The numbers of a slip: what is noted, what is advised, where that leads, what to do. */

import { list, make } from "../../dom.js";
import { button } from "../../entry.js";
import { say } from "../../texts.js";
import { slipsOf } from "./state.js";

/** @typedef {import("../state.js").State} State */

/** @param {State} state */
export const strongName = ({ lesson, published }) => published.library.solvents.find((/** @type {any} */ each) => each.id === lesson.strong)?.name ?? lesson.strong;

/** @param {State} state @param {import("../state.js").Act} act @param {any} answer @returns {Element[]} */
export function numbers(state, act, answer) {
  const { guess } = slipsOf(state.lesson);
  return [
    make(
      "div",
      { id: "lesson-slips-told", tabindex: "-1", role: "group", "aria-labelledby": "lesson-slips-errs" },
      make("p", { id: "lesson-slips-errs", "data-errs": answer.errs }, make("b", {}, say(`later.lesson-slips-errs-${answer.errs}`))),
      guess !== undefined && make("p", { id: "lesson-slips-guessed", class: "aside" }, say("later.lesson-slips-guessed", { guess: say(`later.lesson-slips-guess-${guess}`) })),
      ratios(state, answer),
      make("h3", {}, say("later.lesson-slips-does")),
      make("ul", { id: "lesson-slips-does" }, ...answer.does.map((/** @type {any} */ each) => make("li", {}, each.text))),
      make("div", { id: "lesson-slips-table", class: "slips-scroll", tabindex: "0", role: "region", "aria-label": say("later.lesson-slips-table") }, table(answer)),
      make("h3", {}, say("later.lesson-slips-now")),
      make("p", { id: "lesson-slips-do" }, answer.now.text),
      make("h3", {}, say("later.lesson-slips-next")),
      make("p", { id: "lesson-slips-avoid" }, answer.next.text),
      make("h3", {}, say("later.lesson-slips-noticed")),
      answer.noticed.length > 0 ? list(answer.noticed.map((/** @type {any} */ each) => each.text)) : make("p", { id: "lesson-slips-unnoticed" }, say("later.lesson-slips-unnoticed")),
      make("h3", {}, say("later.lesson-slips-formula")),
      make("p", { id: "lesson-slips-formula" }, answer.formula.text),
      button({
        id: "lesson-slips-again",
        label: say("later.lesson-slips-again"),
        kind: "small",
        press: () => {
          act.edit((lesson) => {
            lesson.parts.slips = { ...slipsOf(lesson), shown: false, guess: undefined };
          });
          act.focus("lesson-slips-guess-weak");
        },
      }),
    ),
  ];
}

/** Where a reading is told apart by its ruler, which. @param {any} noted */
const end = ({ reading }) => (reading === "too-low" ? "low" : reading === "too-high" ? "high" : "seen");

/** The ratios advised, as large as they are on the bench. @param {State} state @param {any} answer */
function ratios(state, answer) {
  const all = [{ key: "right", noted: answer.careful }, ...answer.noted.map((/** @type {any} */ noted) => ({ key: end(noted), noted }))];
  return make(
    "dl",
    { id: "lesson-slips-ratios", class: "slips-ratios" },
    ...all.map(({ key, noted }) =>
      make(
        "div",
        { id: `lesson-slips-advice-${key}` },
        make("dt", {}, say(`later.lesson-slips-advice-${key}`)),
        make("dd", {}, make("b", { class: "slips-ratio" }, noted.advice ? noted.advice.ratio.replace(":", " : ") : say("later.lesson-slips-none"))),
        make("dd", { class: "aside" }, noted.advice ? say("later.lesson-slips-share", { percent: noted.advice.percentStrong, strong: strongName(state) }) : ""),
      ),
    ),
  );
}

/** @param {any} answer */
function table(answer) {
  const columns = [
    { head: "right", cells: answer.careful.spots.map((/** @type {any} */ spot) => read(spot, answer.careful)) },
    ...answer.noted.map((/** @type {any} */ noted) => ({ head: end(noted), cells: noted.spots.map((/** @type {any} */ spot) => read(spot, noted)) })),
    ...answer.noted.slice(0, 1).filter((/** @type {any} */ noted) => noted.advice && answer.noted.length === 1).map((/** @type {any} */ noted) => ({ head: "lands", cells: noted.advice.lands.map(landed) })),
  ];
  return make(
    "table",
    {},
    make("thead", {}, make("tr", {}, make("th", { scope: "col" }, say("later.lesson-slips-column-spot")), ...columns.map(({ head }) => make("th", { scope: "col" }, say(`later.lesson-slips-column-${head}`))))),
    make("tbody", {}, ...answer.careful.spots.map((/** @type {any} */ spot, /** @type {number} */ place) => make("tr", {}, make("th", { scope: "row" }, spot.name), ...columns.map(({ cells }) => make("td", {}, cells[place]))))),
  );
}

/** An Rf as the pair works it out. @param {any} spot @param {any} noted */
function read(spot, noted) {
  if (spot.rf === undefined) return say("later.lesson-slips-nothing");
  if (spot.limit === "at-start") return say("later.lesson-slips-at-most", { rf: spot.rf });
  if (spot.limit === "at-front") return say("later.lesson-slips-at-least", { rf: spot.rf });
  return say("later.lesson-slips-division", { spot: spot.centreMm - noted.startMm, run: noted.frontMm - noted.startMm, rf: spot.rf });
}

/** @param {any} spot */
const landed = (spot) => (spot.window === "inside" ? say("later.lesson-slips-rf", { rf: spot.rf }) : say(`later.lesson-slips-rf-${spot.window}`, { rf: spot.rf }));
