// @ts-check
/** The unknowns: a ratio is chosen, a plate is run, and so on until all spots are in the window. */

import { askSoon, told } from "../ask.js";
import { lessonPlate } from "../plate.js";
import { list, make } from "../../dom.js";
import { button, typedField } from "../../entry.js";
import { faultsOf } from "../../faults.js";
import { decimal, orAsTyped, percentStrong, plain } from "../../numbers.js";
import { Refused, post } from "../../server.js";
import { marked, say } from "../../texts.js";
import { colour, editWork, eluentText, exerciseOf, ratioText, workOf } from "./work.js";

/** @typedef {import("./work.js").State} State @typedef {import("./work.js").Act} Act @typedef {import("./work.js").Work} Work */

const PATH = "/api/lesson/exercise";
const ENTRIES = new Map([["percentStrong", "exercise-share"], ["plate", "exercise-share"]]);
/** Stops of the slider, in ln(% + 1). */
const SLIDES = 0.01;
const MOST_HINTS = 4;

/** @param {State} state @param {Act} act @param {any} exercise what the server told @returns {Element} */
export function reachView(state, act, exercise) {
  const work = workOf(state.lesson);
  const plates = work.plates.map((share, index) => asked(state, act, plateQuestion(state, share, index)));
  const done = plates.findIndex((plate) => plate?.done);
  return make(
    "section",
    { id: "exercise-reach", "aria-labelledby": "exercise-reach-title" },
    make("h3", { id: "exercise-reach-title" }, say("later.lesson-exercise-step-reach")),
    make("p", {}, exercise.told.text, " ", exercise.goal.text),
    exercise.unknowns.some((/** @type {any} */ each) => each.groups) && make("ul", { id: "exercise-unknowns" }, ...exercise.unknowns.map((/** @type {any} */ each) => make("li", {}, say("later.lesson-exercise-unknown", { name: each.name, groups: each.groups.text })))),
    chooser(state, act, exercise, work),
    make("p", { id: "exercise-count" }, plates.length ? say("later.lesson-exercise-count", { count: plates.length }) : say("later.lesson-exercise-count-none"), done >= 0 ? ` ${say("later.lesson-exercise-done", { plate: done + 1 })}` : ""),
    make("div", { id: "exercise-plates", class: "exercise-plates" }, ...plates.map((plate, index) => plate ? plateFigure(plate, `exercise-plate-${index + 1}`, exercise) : make("p", { id: `exercise-plate-${index + 1}-counting` }, say("later.lesson-exercise-counting")))),
    plates.length > 0 && button({ id: "exercise-back", kind: "small", label: say("later.lesson-exercise-take-back"), press: () => editWork(act, (now) => ({ plates: now.plates.slice(0, -1), hints: 0 })) }),
    hintsView(state, act, work),
    done >= 0 && programView(state, act, exercise, work),
  );
}

/** @param {State} state @param {string} share @param {number} index */
const plateQuestion = (state, share, index) => ({
  name: `exercise-plate-${index + 1}`,
  path: `${PATH}/run`,
  body: { code: exerciseOf(state.lesson).code, percentStrong: decimal(share), plate: index + 1 },
  entries: new Map(),
});

/** The answer to a question, asked for where it is not there. @param {State} state @param {Act} act @param {import("../ask.js").Question} question */
function asked(state, act, question) {
  askSoon(state, act, question);
  const { answer, current } = told(state, question);
  return current ? answer : undefined;
}

/** @param {State} state @param {Act} act @param {any} exercise @param {Work} work */
function chooser(state, act, exercise, work) {
  const [low, high] = exercise.percentRange;
  const percent = percentStrong(work.share);
  const held = Math.min(high, Math.max(low, percent ?? low));
  const shown = { ...state, faults: state.looking.exerciseShareFaults ?? new Map() };
  const change = (/** @type {string} */ share) => {
    act.look({ exerciseShareFaults: undefined });
    editWork(act, () => ({ share }));
  };
  const full = work.plates.length >= exercise.mostPlates;
  const words = { weak: exercise.weak.name, strong: exercise.strong.name };
  return make(
    "div",
    { class: "exercise-chooser" },
    typedField(shown, { id: "exercise-share", label: say("later.lesson-exercise-share", words), value: work.share, longest: 20, typed: change, entered: () => run(state, act, exercise) }),
    make(
      "div",
      { class: "field" },
      make("label", { for: "exercise-slide" }, say("later.lesson-exercise-slide", words)),
      make("input", {
        id: "exercise-slide", type: "range", min: Math.log1p(low), max: Math.log1p(high), step: SLIDES, value: Math.log1p(held),
        "aria-valuetext": marked(`${plain(held, 1)} %`),
        oninput: (event) => change(plain(Math.min(high, Math.max(low, Math.expm1(Number(event.target.value)))), held < 10 ? 1 : 0)),
      }),
    ),
    make("p", { id: "exercise-ratio" }, percent === undefined || percent < 0 || percent > 100 ? "" : say("later.lesson-exercise-ratio-words", { weak: `${marked(plain(100 - percent, 1))} ${words.weak}`, strong: `${marked(plain(percent, 1))} ${words.strong}` })),
    button({ id: "exercise-run", kind: "main", disabled: full, label: say("later.lesson-exercise-run", { plate: work.plates.length + 1 }), press: () => run(state, act, exercise) }),
    full && make("p", {}, say("later.lesson-exercise-most", { most: exercise.mostPlates })),
  );
}

/** The plate that is being asked for, so that a second press asks no second one. */
let running = false;

/** @param {State} state @param {Act} act @param {any} exercise */
async function run(state, act, exercise) {
  const { share, plates } = workOf(state.lesson);
  const { code } = exerciseOf(state.lesson);
  if (running || plates.length >= exercise.mostPlates) return;
  running = true;
  try {
    const percent = percentStrong(share);
    const plate = await post(`${PATH}/run`, { code, percentStrong: orAsTyped(percent, share), plate: plates.length + 1 });
    if (exerciseOf(state.lesson).code !== code) return; // another one was opened meanwhile
    act.look({ exerciseShareFaults: undefined });
    editWork(act, (work) => ({ plates: [...work.plates, String(plate.percentStrong)], hints: 0 }));
    act.speak(say("later.lesson-exercise-said-run", { plate: plate.plate, text: plate.text.text }));
  } catch (failure) {
    const faults = failure instanceof Refused ? faultsOf(failure.faults, ENTRIES) : new Map([["exercise-share", [say("later.lesson-exercise-unreachable")]]]);
    act.look({ exerciseShareFaults: faults });
    act.focus("exercise-share");
  } finally {
    running = false;
  }
}

/** A ratio without its solvents, which stand in the words after it. @param {{weak: number, strong: number}} ratio @param {any} exercise */
const bareText = (ratio, exercise) => (ratio.weak === 0 || ratio.strong === 0 ? eluentText(ratio, exercise) : ratioText(ratio));

/** A plate with its readings. @param {any} plate @param {string} id @param {any} exercise */
export function plateFigure(plate, id, exercise) {
  const lanes = plate.lanes;
  const pixel = plate.heightMm / 280;
  const names = lanes.map((/** @type {any} */ lane) => lane.name ?? say("later.lesson-exercise-all-lane"));
  const spots = lanes.flatMap((/** @type {any} */ lane, /** @type {number} */ index) =>
    lane.spots.map((/** @type {any} */ spot, /** @type {number} */ at) => ({
      id: `${id}-spot-${index}-${at}`, lane: index, mm: spot.mm, across: 3.4, along: spot.sizeMm, colour: lane.name ? colour(index) : "colour-5", letters: "", kind: "seen",
    })));
  const read = lanes.filter((/** @type {any} */ lane) => lane.name).map((/** @type {any} */ lane) => readWords(lane.name, lane.spots[0]));
  const together = lanes[lanes.length - 1].spots;
  const percent = marked(plain(plate.percentStrong, 1));
  return make(
    "figure",
    { id, class: "exercise-plate" },
    make("figcaption", {}, make("strong", {}, say("later.lesson-exercise-plate", { plate: plate.plate })), " ", plate.ratio ? `${bareText(plate.ratio, exercise)}, ` : "", say("later.lesson-exercise-plate-share", { percent, strong: exercise.strong.name })),
    lessonPlate({
      id: `${id}-drawing`,
      size: { height: plate.heightMm, width: plate.widthMm, start: plate.startMm, front: plate.frontMm },
      lanes: lanes.length,
      spots,
      pixel,
      label: say("later.lesson-exercise-plate-label", { plate: plate.plate, percent, spots: read.join("; ") }),
    }),
    make("p", { class: "exercise-lanes", "aria-hidden": "true" }, ...names.map((/** @type {string} */ name) => make("span", {}, name))),
    list([...read, say("later.lesson-exercise-mixed", { count: together.length })]),
    make("p", { class: "aside" }, say("later.lesson-exercise-lines", { front: plate.frontMm, start: plate.startMm })),
    make("p", {}, plate.text.text),
  );
}

/** @param {string} name @param {any} spot */
function readWords(name, spot) {
  if (spot.limit === "start") return say("later.lesson-exercise-spot-start", { name });
  if (spot.limit === "front") return say("later.lesson-exercise-spot-front", { name });
  return say("later.lesson-exercise-spot-read", { name, mm: spot.mm, rf: spot.rf });
}

/** @param {State} state @param {Act} act @param {Work} work */
function hintsView(state, act, work) {
  const body = work.hints > 0 ? { code: exerciseOf(state.lesson).code, plates: work.plates.map(decimal), count: work.hints } : undefined;
  const answer = asked(state, act, { name: "exercise-hint", path: `${PATH}/hint`, body, entries: new Map() });
  const isMore = work.hints < MOST_HINTS && answer?.more !== 0; // it stays while a hint is on its way, or the focus would go
  return make(
    "div",
    { id: "exercise-hints" },
    work.hints > 0 && make("h4", { id: "exercise-hints-title" }, say("later.lesson-exercise-hints")),
    work.hints > 0 && !answer && make("p", { id: "exercise-hints-counting" }, say("later.lesson-exercise-counting")),
    answer && make("ol", { id: "exercise-hints-list" }, ...answer.hints.map((/** @type {any} */ hint) => make("li", {}, hint.text))),
    isMore && button({ id: "exercise-hint", label: say(work.hints === 0 ? "later.lesson-exercise-hint" : "later.lesson-exercise-hint-more"), press: () => editWork(act, (now) => ({ hints: now.hints + 1 })) }),
  );
}

/** @param {State} state @param {Act} act @param {any} exercise @param {Work} work */
function programView(state, act, exercise, work) {
  if (work.compared === "no") return button({ id: "exercise-compare", label: say("later.lesson-exercise-compare"), press: () => editWork(act, () => ({ compared: "yes" })) });
  const body = { code: exerciseOf(state.lesson).code };
  const answer = asked(state, act, { name: "exercise-program", path: `${PATH}/program`, body, entries: new Map() });
  return make(
    "div",
    { id: "exercise-program" },
    make("h4", {}, say("later.lesson-exercise-program")),
    answer ? make("p", { id: "exercise-program-text" }, answer.text.text) : make("p", { id: "exercise-program-counting" }, say("later.lesson-exercise-counting")),
    answer && make("div", { class: "exercise-plates", id: "exercise-program-plates" }, ...answer.plates.map((/** @type {any} */ plate) => plateFigure(plate, `exercise-program-${plate.plate}`, exercise))),
  );
}
