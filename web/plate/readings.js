// @ts-check
/** What was seen on a plate, lane by lane: which compound, how high, what Rf. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { decimal } from "../numbers.js";
import { errorOfRf, lines, mmOf, rfOf, typedMm, typedRf } from "../sheet/geometry.js";
import { findReading, labelReading, placeReading } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { fellowHandlers, isFellow } from "./fellows.js";
import { removeSeen } from "./moves.js";
import { colourOf, fullName, guessOf, namesOf, ofHundred, shortName } from "./names.js";

/**
 * @typedef {import("../state.js").State} State
 * @typedef {import("../state.js").Act} Act
 * @typedef {import("../sheet/sheet.js").Plate} Plate
 * @typedef {import("../sheet/sheet.js").Lane} Lane
 * @typedef {import("../sheet/sheet.js").Reading} Reading
 */

/** With more compounds, two together are offered only with one that is chosen already. */
const ALL_PAIRS_UP_TO = 8;

/** @param {State} state @param {Act} act @param {Plate} plate */
export function readingsView(state, act, plate) {
  return make(
    "div",
    { class: "seen-list", id: `seen-list-${plate.id}` },
    ...plate.lanes.map((lane, index) => lane.readings.length > 0 && laneList(state, act, plate, lane, index + 1)),
  );
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {Lane} lane @param {number} number */
function laneList(state, act, plate, lane, number) {
  const name = say("page.lane", { lane: number });
  return make(
    "div",
    { id: `lane-list-${lane.id}` },
    head(lane.id, plate.lanes.length > 1 ? name : ""),
    make("ul", { id: `list-${lane.id}`, "aria-label": name }, ...lane.readings.map((reading) => row(state, act, plate, lane, number, reading))),
  );
}

/** What the columns hold; each entry says it, too. @param {string} laneId @param {string} lane */
function head(laneId, lane) {
  const columns = [lane, say("page.mm"), say("page.rf")].map((each) => make("span", {}, each));
  return make("p", { class: "seen-head", id: `head-${laneId}`, "aria-hidden": "true" }, ...columns);
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {Lane} lane @param {number} number @param {Reading} reading */
function row(state, act, plate, lane, number, reading) {
  const spot = namesOf(state.sheet, reading.spots);
  const compounds = [...reading.spots, ...(guessOf(state, reading)?.spots ?? [])];
  const marks = [
    "seen-row",
    state.looking.reading === reading.id ? "open" : "",
    isFellow(state.looking.fellow, compounds) ? "fellow" : "",
  ];
  return make(
    "li",
    { id: `reading-${reading.id}`, class: marks.filter(Boolean).join(" "), ...fellowHandlers(state, act, compounds) },
    which(state, act, spot, number, reading),
    numberField(state, act, plate, lane, reading, "mm", say("page.mm-in-lane", { spot, lane: number })),
    numberField(state, act, plate, lane, reading, "rf", say("page.rf-in-lane", { spot, lane: number })),
    button({
      id: `remove-${reading.id}`,
      label: "\u00d7",
      name: say("page.remove-seen", { spot, lane: number }),
      kind: "small",
      press: () => removeSeen(state, act, reading.id),
    }),
    fromPhoto(plate, reading),
    guess(state, act, reading),
  );
}

/** How sure a place is that was read from a photo and not moved since. @param {Plate} plate @param {Reading} reading */
function fromPhoto(plate, reading) {
  const [error, rf] = [decimal(String(reading.errorMm ?? "")), rfOf(plate, reading)];
  if (error === undefined || rf === undefined) return undefined;
  return make("p", { class: "guess aside", id: `error-${reading.id}` }, say("page.from-photo", { error: errorOfRf(error, rf, lines(plate).run) }));
}

/**
 * The height or the Rf; what is typed into one is what was measured, and the other follows.
 * @param {State} state @param {Act} act @param {Plate} plate @param {Lane} lane @param {Reading} reading @param {"mm" | "rf"} by @param {string} label
 */
function numberField(state, act, plate, lane, reading, by, label) {
  const id = `${by}-${reading.id}`;
  const follows = by === "mm" ? mmOf(plate, reading) : rfOf(plate, reading);
  const shown = follows === undefined ? "" : by === "mm" ? typedMm(follows) : typedRf(follows);
  return make(
    "div",
    { class: `number ${by} ${reading.by === by ? "typed" : "follows"}` },
    typedField(state, {
      id,
      label,
      hidden: "label",
      mode: "decimal",
      value: reading.by === by ? reading.typed : shown,
      typed: (typed) =>
        act.edit((sheet) => {
          const mine = findReading(sheet, reading.id)?.reading;
          if (mine) placeReading(mine, by, typed);
        }, id),
      entered: () => act.focus(`add-${lane.id}`),
      left: () => {
        if (reading.by === by) settle(act, reading, lines(plate).start);
        act.rest();
      },
    }),
  );
}

/** From here on a number is no Rf, even a slip of one; it was read from the ruler. */
const NO_RF = 2;
/** A start line is never drawn lower [mm]: a number below is an Rf. */
const NO_HEIGHT = 1;

/** Takes a number typed into the wrong one of the two entries for what it can only be. @param {Act} act @param {Reading} reading @param {number} start [mm] */
function settle(act, reading, start) {
  const number = decimal(reading.typed);
  if (number === undefined) return;
  const height = reading.by === "rf" && number >= NO_RF;
  const rf = reading.by === "mm" && number >= 0 && number < NO_HEIGHT && start >= NO_HEIGHT;
  if (!height && !rf) return;
  act.edit((sheet) => {
    const mine = findReading(sheet, reading.id)?.reading;
    if (mine) mine.by = height ? "mm" : "rf";
  }, `${reading.by}-${reading.id}`);
}

/** Swatch and letter, which open the choice of compounds. @param {State} state @param {Act} act @param {string} spot @param {number} lane @param {Reading} reading */
function which(state, act, spot, lane, reading) {
  const { sheet } = state;
  const guessed = guessOf(state, reading)?.spots ?? [];
  const letters = [...reading.spots, ...guessed].map((id) => shortName(sheet, id)).join(" ");
  return make(
    "div",
    { class: "which" },
    make(
      "span",
      { class: "chip", "aria-hidden": "true" },
      ...(reading.spots.length
        ? reading.spots.map((id) => make("span", { class: `swatch ${colourOf(sheet, id)}` }))
        : [make("span", { class: "swatch unknown" })]),
      make("span", { class: "letters" }, reading.spots.length ? letters : `${letters}?`),
    ),
    choice(state, {
      id: `which-${reading.id}`,
      label: say("page.which", { spot, lane }),
      hidden: "label",
      value: reading.spots.join(" "),
      options: whichOptions(sheet, reading),
      chosen: (value) => act.edit((next) => labelReading(next, reading.id, value.split(" ").filter(Boolean))),
    }),
  );
}

/** @param {import("../sheet/sheet.js").Sheet} sheet @param {Reading} reading */
function whichOptions(sheet, reading) {
  const ids = sheet.spots.map((spot) => spot.id);
  const near = (/** @type {string[]} */ pair) => ids.length <= ALL_PAIRS_UP_TO || pair.some((id) => reading.spots.includes(id));
  const pairs = ids.flatMap((one, i) => ids.slice(i + 1).map((other) => [one, other])).filter(near);
  return [
    ...ids.map((id) => ({ value: id, text: fullName(sheet, id) })),
    ...pairs.map((pair) => ({ value: pair.join(" "), text: namesOf(sheet, pair) })),
    { value: "", text: say("page.not-sure") },
  ];
}

/** What an unlabelled spot is taken for, to be accepted. @param {State} state @param {Act} act @param {Reading} reading */
function guess(state, act, reading) {
  const found = guessOf(state, reading);
  if (!found) return undefined;
  const count = ofHundred(found.probability);
  if (found.spots.length === 0) return make("div", { class: "guess" }, say("page.guess-none", { count }));
  const spot = namesOf(state.sheet, found.spots);
  return make(
    "div",
    { class: "guess" },
    make("span", {}, say("page.guess", { spot, count })),
    button({
      id: `take-${reading.id}`,
      label: say("page.take-guess", { spot }),
      press: () => {
        act.edit((sheet) => labelReading(sheet, reading.id, found.spots));
        act.focus(`which-${reading.id}`);
      },
    }),
  );
}
