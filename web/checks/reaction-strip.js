// @ts-check
/** The strip of plates from left to right, one for each time, with a cell for each compound; and the next plate, ready to be taken. */

import { draw, make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { COLOURS } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { allAssumed, assumedOf, cellOf, choose, chosenMark, confirm, dragHandlers, grade, insertBefore, removePlate, step, stripKeys, takeNext } from "./reaction-moves.js";
import { gradeWords, plateDrawing, strengthWords, timeWords } from "./reaction-plate.js";
import { namesOf } from "./reaction-question.js";
import { MOST_PLATES, STRENGTHS, editReaction, isOutOfOrder, minutesOf, nextMinutes, putInOrder, reactionOf, rowsOf, strengthOf } from "./reaction-sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./reaction-sheet.js").TimePlate} TimePlate */

/** @param {State} state with the faults at their entries @param {Act} act @param {number | undefined} advised when to look again [min], where that is told */
export function stripView(state, act, advised) {
  const reaction = reactionOf(state.sheet);
  const chosen = chosenMark(state);
  const rows = rowsOf(reaction);
  const at = chosen ?? { plate: reaction.plates.at(-1)?.id, row: rows[0] };
  return make(
    "div",
    { id: "reaction-strip-all" },
    reaction.plates.length < 2 && make("p", { class: "aside", id: "reaction-how" }, say("later.checks-reaction-how")),
    make(
      "div",
      { id: "reaction-strip", class: "time-strip", role: "group", "aria-label": say("later.checks-reaction-strip"), onkeydown: (event) => stripKeys(state, act, event) },
      ...reaction.plates.map((plate) => plateView(state, act, plate, rows, at)),
      nextView(state, act, advised),
    ),
    reaction.plates.length > 0 && make("p", { class: "aside with-keys", id: "reaction-keys" }, say("later.checks-reaction-keys")),
    ...faultsOf(state, "reaction-strip"),
    isOutOfOrder(reaction) && button({ id: "reaction-order", label: say("later.checks-reaction-order"), press: () => editReaction(act, putInOrder) }),
    paletteView(state, act),
  );
}

/** @param {State} state @param {Act} act @param {TimePlate} plate @param {string[]} rows @param {{plate?: string, row: string}} at the cell that Tab leads to */
function plateView(state, act, plate, rows, at) {
  const reaction = reactionOf(state.sheet);
  const { id } = plate;
  const here = at.plate === id && chosenMark(state) !== undefined;
  return make(
    "div",
    { id: `time-${id}`, class: here ? "time-card here" : "time-card", role: "group", "aria-label": timeWords(plate.minutes) },
    plateDrawing(`time-drawing-${id}`, state.sheet, reaction, plate, dragHandlers(state, act, id), allAssumed(state, plate)),
    make(
      "div",
      { class: "time-entry", id: `time-entry-${id}` },
      typedField(state, {
        id: `minutes-${id}`,
        label: say("later.checks-reaction-time"),
        hidden: "label",
        value: plate.minutes,
        mode: "decimal",
        typed: (minutes) => editReaction(act, (mine) => mine.plates.filter((each) => each.id === id).forEach((each) => (each.minutes = minutes)), `minutes-${id}`),
        left: act.rest,
      }),
      make("span", { class: "time-unit", "aria-hidden": "true" }, /[a-z]/i.test(plate.minutes) ? "" : "min"),
    ),
    ...rows.map((row) => cell(state, act, plate, row, at.plate === id && at.row === row)),
    ...rows.flatMap((row) => faultsOf(state, cellOf(id, row))),
  );
}

/** What is wrong with something that is no entry to type in. @param {State} state @param {string} id */
function faultsOf(state, id) {
  const { plate, row, came } = chosenMark(state) ?? {};
  const own = came !== undefined && plate !== undefined && row !== undefined && cellOf(plate, row) === id ? [say("later.checks-reaction-no-strength", { came })] : [];
  const sentences = [...own, ...(state.faults.get(id) ?? [])];
  return sentences.length > 0 ? [make("p", { class: "fault", id: `${id}-fault`, role: own.length > 0 ? "alert" : undefined }, sentences.join(" "))] : [];
}

/** @param {State} state @param {Act} act @param {TimePlate} plate @param {string} row @param {boolean} reached by Tab */
function cell(state, act, plate, row, reached) {
  const reaction = reactionOf(state.sheet);
  const name = namesOf(reaction).get(row) || say("page.unnamed");
  const strength = strengthOf(plate, row);
  const assumed = assumedOf(state, plate, row);
  const i = reaction.species.findIndex((one) => one.id === row);
  const id = cellOf(plate.id, row);
  const wrong = state.faults.has(id) || (state.looking.grade?.came !== undefined && chosenMark(state)?.plate === plate.id && chosenMark(state)?.row === row);
  return make(
    "button",
    {
      type: "button",
      id,
      class: ["grade", i < 0 ? "" : `colour-${i % COLOURS}`, assumed !== undefined ? "assumed" : strength === undefined ? "unlooked" : "", wrong ? "wrong" : ""].filter(Boolean).join(" "),
      "aria-label": say("later.checks-reaction-cell", { words: gradeWords(name, strength, assumed), minutes: timeWords(plate.minutes) }),
      "aria-describedby": wrong ? `${id}-fault` : undefined,
      tabindex: reached ? 0 : -1,
      "data-plate": plate.id,
      "data-row": row,
      onfocus: () => choose(state, act, plate.id, row),
      onclick: () => step(state, act, plate, row),
    },
    make("span", { class: "grade-name" }, name),
    bars(strength ?? assumed),
    make("span", { class: "grade-number" }, String(strength ?? assumed ?? "?")),
  );
}

/** The strength as four bars that rise. @param {number | undefined} strength */
const bars = (strength = 0) =>
  draw(
    "svg",
    { class: "grade-bars", viewBox: "0 0 22 14", "aria-hidden": "true", focusable: "false" },
    ...STRENGTHS.slice(1).map((each) => draw("rect", { class: each <= strength ? "full" : "empty", x: 5.5 * (each - 1) + 0.75, y: 13 - 3 * each, width: 4, height: 3 * each })),
  );

/** The next plate: at the next usual time, or when it is advised to look again. @param {State} state @param {Act} act @param {number | undefined} advised */
function nextView(state, act, advised) {
  const reaction = reactionOf(state.sheet);
  const first = reaction.plates.length === 0;
  const minutes = nextMinutes(reaction);
  const last = Math.max(-1, ...reaction.plates.map((plate) => minutesOf(plate.minutes) ?? -1));
  const other = advised !== undefined && advised > last && advised !== minutes ? advised : undefined;
  return make(
    "div",
    { id: "time-next", class: "time-card next-card" },
    make(
      "button",
      { type: "button", id: "reaction-next", class: "next-plate", disabled: reaction.plates.length >= MOST_PLATES, onclick: () => takeNext(state, act, String(minutes)) },
      make("b", {}, say(first ? "later.checks-reaction-first" : "later.checks-reaction-next")),
      make("span", {}, say("later.checks-reaction-at", { minutes })),
    ),
    other !== undefined && button({ id: "reaction-next-advised", label: say("later.checks-reaction-at-advised", { minutes: other }), press: () => takeNext(state, act, String(other)) }),
  );
}

/** What can be pressed for the cell that is chosen, and for its plate. @param {State} state @param {Act} act */
function paletteView(state, act) {
  const chosen = chosenMark(state);
  const reaction = reactionOf(state.sheet);
  const plate = reaction.plates.find(({ id }) => id === chosen?.plate);
  if (!chosen || !plate) return undefined;
  const { row } = chosen;
  const strength = strengthOf(plate, row);
  const name = namesOf(reaction).get(row) || say("page.unnamed");
  const minutes = timeWords(plate.minutes);
  const one = (/** @type {number | undefined} */ each) =>
    button({
      id: `reaction-strength-${each ?? "none"}`,
      label: each === undefined ? strengthWords(each) : `${each} ${strengthWords(each)}`,
      pressed: strength === each,
      press: () => grade(state, act, plate.id, row, each),
    });
  return make(
    "div",
    { id: "reaction-palette", class: "grade-palette" },
    make("p", { id: "reaction-palette-words", class: "palette-words" }, say("later.checks-reaction-chosen", { name, minutes })),
    make("div", { class: "chips", id: "reaction-strengths", role: "group", "aria-labelledby": "reaction-palette-words" }, ...[...STRENGTHS].map(one), one(undefined)),
    make(
      "div",
      { class: "chips", id: "reaction-plate-buttons" },
      Object.keys(allAssumed(state, plate)).length > 0 && button({ id: "reaction-confirm", label: say("later.checks-reaction-confirm"), press: () => confirm(state, act, plate) }),
      reaction.plates.length < MOST_PLATES && button({ id: "reaction-insert", label: say("later.checks-reaction-insert"), name: say("later.checks-reaction-insert-name", { minutes }), press: () => insertBefore(state, act, plate.id) }),
      button({ id: "reaction-remove", label: say("later.checks-reaction-remove-plate"), name: say("later.checks-reaction-remove-plate-name", { minutes }), press: () => removePlate(state, act, plate.id) }),
    ),
  );
}
