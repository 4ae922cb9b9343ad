// @ts-check
/** What is rarely changed about a plate: its lines and size, its solvents, and what was looked for in vain. */

import { make } from "../dom.js";
import { choice, tick, typedField } from "../entry.js";
import { pairText, pairsAtHand } from "../sheet/shelf.js";
import { findPlate, readingsOf } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { fullName } from "./names.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Plate} Plate */

const LENGTHS = /** @type {const} */ ([
  ["start", "startMm"],
  ["front", "frontMm"],
  ["height", "heightMm"],
  ["width", "widthMm"],
]);

/** @param {State} state @param {Act} act @param {Plate} plate */
export function sizeFold(state, act, plate) {
  const labels = { start: "page.start", front: "page.front", height: "page.height", width: "page.width" };
  return make(
    "details",
    { id: `fold-${plate.id}`, class: "size" },
    make("summary", { id: `size-${plate.id}` }, say("page.size")),
    make("p", { class: "aside" }, say("page.from-edge")),
    make(
      "div",
      { class: "two" },
      ...LENGTHS.map(([side, field]) =>
        typedField(state, {
          id: `${side}-${plate.id}`,
          label: say(labels[side]),
          mode: "decimal",
          value: plate[field],
          typed: (value) => act.edit((sheet) => { findPlate(sheet, plate.id)[field] = value; }, `${side}-${plate.id}`),
          left: act.rest,
        }),
      ),
    ),
    solvents(state, act, plate),
    ...notSeen(state, act, plate),
  );
}

/** @param {State} state @param {Act} act @param {Plate} plate */
function solvents(state, act, plate) {
  const own = `${plate.weak} ${plate.strong}`;
  const options = pairsAtHand(state).map((pair) => ({ value: `${pair.weak.id} ${pair.strong.id}`, text: pairText(pair) }));
  if (!options.some((each) => each.value === own)) options.push({ value: own, text: say("page.pair-option", solventNames(state, plate)) });
  return choice(state, {
    id: `solvents-${plate.id}`,
    label: say("page.plate-solvents"),
    value: own,
    options,
    chosen: (value) =>
      act.edit((sheet) => {
        const mine = findPlate(sheet, plate.id);
        [mine.weak, mine.strong] = value.split(" ");
      }),
  });
}

/** The names of a plate's solvents. @param {State} state @param {Plate} plate */
export function solventNames({ published }, { weak, strong }) {
  const name = (/** @type {string} */ id) => published.library?.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  return { weak: name(weak), strong: name(strong) };
}

/** @param {State} state @param {Act} act @param {Plate} plate */
function notSeen(state, act, plate) {
  const read = new Set(readingsOf(plate).flatMap((each) => each.spots));
  const open = state.sheet.spots.filter((spot) => !read.has(spot.id));
  if (open.length === 0) return [];
  return [
    make(
      "div",
      { id: `not-seen-${plate.id}`, role: "group", "aria-label": say("page.looked-for") },
      make("p", { class: "aside" }, say("page.looked-for")),
      ...open.map((spot) =>
        tick({
          id: `not-seen-${plate.id}-${spot.id}`,
          label: fullName(state.sheet, spot.id),
          ticked: plate.notSeen.includes(spot.id),
          changed: (ticked) =>
            act.edit((sheet) => {
              const mine = findPlate(sheet, plate.id);
              mine.notSeen = ticked ? [...mine.notSeen, spot.id] : mine.notSeen.filter((id) => id !== spot.id);
            }),
        }),
      ),
      make("p", { class: "aside" }, say("page.not-absent")),
    ),
  ];
}
