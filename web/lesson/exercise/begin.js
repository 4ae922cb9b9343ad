// @ts-check
/** How an exercise begins: made anew, by its code, or from a file. */

import { make } from "../../dom.js";
import { button, choice, typedField } from "../../entry.js";
import { faultsOf } from "../../faults.js";
import { Refused, post } from "../../server.js";
import { say } from "../../texts.js";
import { readFile } from "./file.js";
import { editExercise, editWork, exerciseOf } from "./work.js";

/** @typedef {import("./work.js").State} State @typedef {import("./work.js").Act} Act */

const LEVELS = ["groups-told", "number-told", "hard-to-part"];
const MOST_SEED = 2 ** 20;
const ENTRIES = new Map([["code", "exercise-code"], ["level", "exercise-level"], ["weak", "exercise-pair"], ["strong", "exercise-pair"]]);

/** @param {State} state @param {Act} act */
export function beginView(state, act) {
  const exercise = exerciseOf(state.lesson);
  const { pairs, names } = pairsOf(state);
  const shown = { ...state, faults: state.looking.exerciseFaults ?? new Map() };
  const other = shown.faults.get("");
  return make(
    "div",
    { id: "exercise-begin" },
    make("p", {}, say("later.lesson-exercise-about-new")),
    make(
      "div",
      { class: "exercise-ways" },
      make(
        "div",
        { id: "exercise-new" },
        choice(shown, { id: "exercise-level", label: say("later.lesson-exercise-level"), value: exercise.level, options: LEVELS.map((level) => ({ value: level, text: say(`later.lesson-exercise-level-${level}`) })), chosen: (level) => editExercise(act, { level }) }),
        choice(shown, { id: "exercise-pair", label: say("later.lesson-exercise-pair"), value: exercise.pair, options: pairs.map((pair, index) => ({ value: String(index), text: say("later.lesson-exercise-pair-option", { weak: names(pair.weak), strong: names(pair.strong) }) })), chosen: (pair) => editExercise(act, { pair }) }),
        button({ id: "exercise-make", label: say("later.lesson-exercise-make"), press: () => open(act, { level: exercise.level, ...pairs[Number(exercise.pair)], seed: seed() }) }),
      ),
      make(
        "div",
        { id: "exercise-given" },
        typedField(shown, { id: "exercise-code", label: say("later.lesson-exercise-code"), value: exercise.typed, longest: 40, typed: (typed) => editExercise(act, { typed }), entered: () => open(act, { code: exerciseOf(state.lesson).typed }) }),
        make(
          "div",
          { class: "exercise-buttons" },
          button({ id: "exercise-open", label: say("later.lesson-exercise-open-code"), press: () => open(act, { code: exercise.typed }) }),
          button({ id: "exercise-choose", label: say("later.lesson-exercise-open-file"), press: () => document.getElementById("exercise-file")?.click() }),
        ),
        make("input", { id: "exercise-file", type: "file", hidden: true, accept: ".json,application/json", "aria-label": say("later.lesson-exercise-open-file"), onchange: (event) => brought(act, event.target) }),
      ),
    ),
    other && make("p", { class: "fault", id: "exercise-begin-fault", role: "alert" }, other.join(" ")),
  );
}

/** The pairs of exercises, and what their solvents are called. @param {State} state */
function pairsOf(state) {
  const solvents = new Map(state.published.library.solvents.map((/** @type {any} */ each) => [each.id, each.name]));
  /** @type {{weak: string, strong: string}[]} */
  const pairs = state.published.tables.exercisePairs;
  return { pairs, names: (/** @type {string} */ id) => solvents.get(id) ?? id };
}

/** Chance of the browser, never of the clock. */
const seed = () => crypto.getRandomValues(new Uint32Array(1))[0] % MOST_SEED;

/** @param {Act} act @param {HTMLInputElement} input */
async function brought(act, input) {
  const file = input.files?.[0];
  input.value = ""; // the same file, mended, can be chosen again
  if (!file) return;
  const came = await readFile(file);
  if (typeof came === "string") act.look({ exerciseFaults: new Map([["", [`${file.name}: ${came}`]]]) });
  else await open(act, { code: came.code }, came);
}

/** Opens what the server makes of it. @param {Act} act @param {object} asked @param {{title: string, note: string}} [handed] */
async function open(act, asked, handed) {
  try {
    const { code } = await post("/api/lesson/exercise", asked);
    act.look({ exerciseFaults: new Map(), exerciseKey: undefined });
    editExercise(act, { code, typed: code });
    editWork(act, (work) => (handed ? { title: handed.title, note: handed.note } : work));
    act.focus("exercise-place-title");
  } catch (failure) {
    const faults = failure instanceof Refused ? faultsOf(failure.faults, ENTRIES) : new Map([["", [say("later.lesson-exercise-unreachable")]]]);
    act.look({ exerciseFaults: faults });
    if (faults.has("exercise-code")) act.focus("exercise-code");
  }
}
