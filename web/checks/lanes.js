// @ts-check
/** A plate of lanes with its readings as numbers, lane by lane, and in what it was run. */

import { make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { lines, mmOf, rfOf, typedMm, typedRf } from "../sheet/geometry.js";
import { say } from "../texts.js";
import { eluentEntry, eluentOffers, ranInWords } from "./eluent.js";
import { addTyped, editIdentity, editSeen, laneKeys, place, readingOf, removeSeen, shapeOf, toggleStreak } from "./lane-moves.js";
import { laneColour, lanePlate } from "./lane-plate.js";
import { firstEmpty, laneWords } from "./references.js";
import { addUnknownLane, freeCheckId } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Identity} Identity @typedef {import("./sheet.js").LanePlate} LanePlate @typedef {import("./sheet.js").Lane} Lane @typedef {import("./sheet.js").Seen} Seen */

/** More lanes than a plate holds. */
const MOST_LANES = 20;

/** @param {State} state @param {Act} act @param {Identity} identity @param {LanePlate} plate @param {number} number @param {State} wrong the state with the faults that belong here */
export function plateOfLanes(state, act, identity, plate, number, wrong) {
  const several = identity.plates.length > 1;
  return make(
    "fieldset",
    { id: `lanes-of-${plate.id}`, class: "lane-plate" },
    make("legend", { class: several ? undefined : "unseen" }, say("page.plate", { number })),
    several &&
      button({
        id: `unplate-${plate.id}`,
        label: "\u00d7",
        name: say("page.remove-plate", { number }),
        kind: "small unplate",
        press: () => {
          editIdentity(state, act, (mine) => { mine.plates = mine.plates.filter(({ id }) => id !== plate.id); });
          act.focus("add-lane-plate");
        },
      }),
    make("div", { class: "bench" }, lanePlate(state, act, identity, plate, number)),
    make("div", { class: "lane-lists", id: `lists-of-${plate.id}` }, ...plate.lanes.map((lane, i) => laneList(state, act, identity, plate, lane, i + 1, wrong)), addLane(state, act, identity, plate)),
    ranIn(state, act, plate, wrong),
  );
}

/** @param {State} state @param {Act} act @param {Identity} identity @param {LanePlate} plate @param {Lane} lane @param {number} number @param {State} wrong */
function laneList(state, act, identity, plate, lane, number, wrong) {
  const words = laneWords(identity, lane, number);
  const heads = [say("page.mm"), say("page.rf"), say("later.checks-size")];
  const told = wrong.faults.get(`add-check-${lane.id}`);
  return make(
    "div",
    { class: "lane-list", id: `list-of-${lane.id}` },
    make("p", { class: "lane-words", id: `words-of-${lane.id}` }, make("span", { class: `swatch ${laneColour(identity, lane)}`, "aria-hidden": "true" }), words, isFurtherUnknown(plate, lane) && removeLane(state, act, plate, lane, words)),
    lane.readings.length > 0 && make("p", { class: "mark-head", "aria-hidden": "true", id: `head-of-${lane.id}` }, ...heads.map((each) => make("span", {}, each))),
    make("ul", { id: `spots-of-${lane.id}`, "aria-label": words, hidden: lane.readings.length === 0 }, ...lane.readings.map((seen, i) => row(state, act, plate, lane, seen, `${words}, ${i + 1}`, wrong))),
    make(
      "button",
      { type: "button", id: `add-check-${lane.id}`, class: "lane-add", "aria-label": say("later.checks-spot-add-in", { lane: words }), onclick: () => addTyped(state, act, lane.id, ""), onkeydown: laneKeys(state, act, lane.id) },
      say(lane.readings.length ? "later.checks-spot-another" : "later.checks-spot-add"),
    ),
    told && make("p", { class: "fault", id: `add-check-${lane.id}-fault` }, told.join(" ")),
  );
}

/** @param {State} state @param {Act} act @param {Identity} identity @param {LanePlate} plate */
function addLane(state, act, identity, plate) {
  return button({
    id: `add-unknown-${plate.id}`,
    label: say("later.checks-lane-another"),
    kind: "small add-unknown",
    disabled: plate.lanes.length >= MOST_LANES,
    press: () => {
      const id = freeCheckId(identity, "l");
      editIdentity(state, act, (mine) => {
        const own = mine.plates.find((each) => each.id === plate.id);
        if (own) addUnknownLane(mine, own);
      });
      act.focus(`add-check-${id}`);
    },
  });
}

/** Whether a lane is one of the unknown besides its first on the plate. @param {LanePlate} plate @param {Lane} lane */
const isFurtherUnknown = ({ lanes }, lane) => lane.role === "unknown" && lanes.find(({ role }) => role === "unknown") !== lane;

/** @param {State} state @param {Act} act @param {LanePlate} plate @param {Lane} lane @param {string} words */
function removeLane(state, act, plate, lane, words) {
  return button({
    id: `unlane-${lane.id}`,
    label: "\u00d7",
    name: say("later.checks-lane-remove", { lane: words }),
    kind: "small",
    press: () => {
      editIdentity(state, act, (mine) => { for (const each of mine.plates) each.lanes = each.lanes.filter(({ id }) => id !== lane.id); });
      act.focus(`add-unknown-${plate.id}`);
    },
  });
}

/** @param {State} state @param {Act} act @param {LanePlate} plate @param {Lane} lane @param {Seen} seen @param {string} words @param {State} wrong */
function row(state, act, plate, lane, seen, words, wrong) {
  const shape = shapeOf(plate);
  const reading = readingOf(seen);
  const { run } = lines(shape);
  const entered = () => {
    act.rest();
    const next = nextLane(state, lane.id);
    act.focus(next ?? `add-check-${lane.id}`);
  };
  const number = (/** @type {"mm" | "rf"} */ by) => {
    const [value, own] = by === "mm" ? [mmOf(shape, reading), typedMm] : [rfOf(shape, reading), typedRf];
    const follows = reading.by !== by && run > 0;
    return make(
      "div",
      { class: `number ${by}${follows ? " follows" : ""}`, id: `${by}-of-${seen.id}` },
      typedField(wrong, {
        id: `${by}-${seen.id}`,
        label: say(by === "mm" ? "later.checks-mm-of" : "later.checks-rf-of", { spot: words }),
        hidden: "label",
        mode: "decimal",
        value: follows ? (value === undefined ? "" : own(value)) : reading.typed,
        typed: (typed) => editSeen(state, act, seen.id, (mine) => place(mine, by, typed), `${by}-${seen.id}`),
        entered,
        left: act.rest,
      }),
    );
  };
  return make(
    "li",
    { id: `row-${seen.id}`, class: state.looking.mark === seen.id ? "mark-row open" : "mark-row", onfocusin: () => state.looking.mark !== seen.id && act.look({ mark: seen.id }) },
    number("mm"),
    number("rf"),
    make(
      "div",
      { class: "number size", id: `size-of-${seen.id}` },
      typedField(wrong, {
        id: `size-${seen.id}`,
        label: say("later.checks-size-of", { spot: words }),
        hidden: "label",
        mode: "decimal",
        value: seen.sizeMm ?? "",
        typed: (typed) => editSeen(state, act, seen.id, (mine) => { mine.sizeMm = typed; }, `size-${seen.id}`),
        entered,
        left: act.rest,
      }),
    ),
    button({ id: `streak-${seen.id}`, label: say("later.checks-streak"), name: say("later.checks-streak-of", { spot: words }), kind: "small", pressed: seen.shape === "streak", press: () => editSeen(state, act, seen.id, toggleStreak) }),
    isZero(seen) && make("p", { class: "aside rf-zero", id: `zero-${seen.id}` }, say("later.checks-rf-zero")),
    button({ id: `unseen-${seen.id}`, label: "\u00d7", name: say("later.checks-spot-remove", { spot: words }), kind: "small", press: () => removeSeen(state, act, seen.id) }),
  );
}

/** Whether a 0 was left as an Rf; while somebody types, more may follow. @param {Seen} seen */
const isZero = ({ id, rf }) => rf !== undefined && /^\s*0+([.,]0*)?\s*$/.test(rf) && document.activeElement?.id !== `rf-${id}`;

/** Where to go on after a number: the next lane that is still empty. @param {State} state @param {string} laneId */
function nextLane({ sheet }, laneId) {
  const identity = sheet.checks?.identity;
  return identity && firstEmpty(identity, laneId);
}

/** In what it was run, and its lines; folded, for both come from the study. @param {State} state @param {Act} act @param {LanePlate} plate @param {State} wrong */
function ranIn(state, act, plate, wrong) {
  const edit = (/** @type {(mine: LanePlate) => void} */ change, /** @type {string} */ together = "") =>
    editIdentity(
      state,
      act,
      (identity) => {
        const mine = identity.plates.find(({ id }) => id === plate.id);
        if (mine) change(mine);
      },
      together || undefined,
    );
  const offers = eluentOffers(state, { id: plate.id, eluent: plate, changed: (change) => edit(change) });
  const fold = make(
    "details",
    { id: `run-of-${plate.id}`, class: "run-of" },
    make("summary", {}, ranInWords(state, plate)),
    eluentEntry(wrong, act, { id: plate.id, eluent: plate, changed: (change, together) => edit(change, together) }),
    make(
      "div",
      { class: "two" },
      .../** @type {const} */ ([["start", "startMm"], ["front", "frontMm"]]).map(([line, field]) =>
        typedField(wrong, {
          id: `${line}-${plate.id}`,
          label: say(line === "start" ? "page.start" : "page.front"),
          mode: "decimal",
          value: plate[field],
          typed: (typed) => edit((mine) => { mine[field] = typed; }, `${line}-${plate.id}`),
          left: act.rest,
        }),
      ),
    ),
  );
  return make("div", { class: "ran-in", id: `ran-of-${plate.id}` }, fold, offers);
}
