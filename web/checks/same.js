// @ts-check
/** Is it the same? The plate with the unknown, both, and the reference; beside it what the lanes say of each reference. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { say } from "../texts.js";
import { askSoon, isTold, withFaults } from "./ask.js";
import { correctionView } from "./correction.js";
import { editIdentity } from "./lane-moves.js";
import { plateOfLanes } from "./lanes.js";
import { candidatesEntry, laneWords, referencesEntry, referencesWhat } from "./references.js";
import { emptyLane, sameQuestion } from "./same-question.js";
import { addLanePlate, checksOf } from "./sheet.js";
import { spoken, standing } from "./standing.js";
import { verdictsSpoken, verdictsView } from "./verdicts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** More plates than anybody runs to tell two compounds apart. */
const MOST_PLATES = 6;

/** @param {State} state @param {Act} act @returns {Element[]} */
export function sameView(state, act) {
  const { identity } = checksOf(state);
  const question = sameQuestion(state, identity);
  queueMicrotask(() => askSoon(state, act, question));
  const wrong = withFaults(state, question);
  return [
    make("p", { class: "aside", id: "same-how" }, say("later.checks-same-how")),
    make(
      "div",
      { class: "same-sides", id: "same-sides" },
      make(
        "div",
        { class: "same-entry", id: "same-entry" },
        referencesEntry(state, act, identity, wrong),
        make("div", { id: "lane-plates", class: identity.plates.length > 1 ? "lane-plates several" : "lane-plates" }, ...identity.plates.map((plate, i) => plateOfLanes(state, act, identity, plate, i + 1, wrong))),
        button({
          id: "add-lane-plate",
          label: say("page.add-plate"),
          disabled: identity.plates.length >= MOST_PLATES,
          press: () => {
            const at = identity.plates.length;
            editIdentity(state, act, (mine) => addLanePlate(mine, state));
            act.focus(`add-check-${checksOf(state).identity.plates[at].lanes[0].id}`);
          },
        }),
      ),
      make(
        "div",
        { class: "same-told", id: "same-told" },
        spoken("same", isTold(state, question) && verdictsSpoken(state, question)),
        wanting(identity, question),
        ...standing(wrong, question),
        verdictsView(state, identity, question, isTold(state, question)),
      ),
      make("div", { id: "same-else" }, referencesWhat(state, act, identity, wrong), candidatesEntry(state, act, identity, wrong)),
    ),
    correctionView(state, act),
  ];
}

/** What to do next, in one line. @param {import("./sheet.js").Identity} identity @param {import("./ask.js").Question} question */
function wanting(identity, question) {
  const empty = emptyLane(identity);
  if (!empty) return question.body === undefined && make("p", { id: "same-wanting" }, say("later.checks-same-wanting-numbers"));
  const lane = laneWords(identity, empty.lane, empty.number);
  return make("p", { id: "same-wanting", class: question.body ? "aside" : "decisive" }, say(question.body ? "later.checks-same-lane-empty" : "later.checks-same-wanting", { lane }));
}
