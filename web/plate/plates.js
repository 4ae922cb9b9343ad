// @ts-check
/** The plates, which are the form: they lie side by side in the order they were run. */

import { list, make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { fetchLater, later } from "../later.js";
import { percentStrong, plain } from "../numbers.js";
import { addToPlate, additiveEntry } from "../sheet/additive.js";
import { lines } from "../sheet/geometry.js";
import { addLane, addPlate, findPlate, freeId, readingsOf, removeLane, removePlate } from "../sheet/sheet.js";
import { marked, say } from "../texts.js";
import { drawing } from "./drawing.js";
import { laneKeys } from "./keys.js";
import { isBroad } from "./layer.js";
import { addUnplaced } from "./moves.js";
import { readingsView } from "./readings.js";
import { sizeFold, solventNames } from "./size.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Plate} Plate */

/** Ratios that many begin with; common practice, no source. */
const USUAL_RATIOS = ["19 : 1", "9 : 1", "4 : 1", "1 : 1"];

/** @param {State} state @param {Act} act @returns {Element[]} */
export function platesView(state, act) {
  return [
    make("h2", { id: "plates-title" }, say("page.plates")),
    make("div", { id: "plate-strip" }, ...state.sheet.plates.map((plate, i) => onePlate(state, act, plate, i + 1))),
    button({
      id: "add-plate",
      label: say("page.add-plate"),
      press: () => {
        const id = freeId(state.sheet, "p");
        act.edit((sheet) => addPlate(sheet, ""));
        act.focus(`eluent-${id}`);
      },
    }),
    scout(state, act),
    advised(state, act),
  ];
}

const PHOTO = "photo";
const fetchPhoto = () => import("../photo/photo.js");

/** Reads a plate from its photo. @param {Act} act @param {string} id of the plate @param {string} [at] what gets the focus */
async function openPhoto(act, id, at = "photo-title") {
  await fetchLater(PHOTO, fetchPhoto, act);
  act.look({ photo: id });
  act.focus(at);
  document.getElementById(PHOTO)?.scrollIntoView({ block: "start" });
}

/** The photo that is being read, if one is. @param {State} state @param {Act} act @returns {Element[] | undefined} */
export const photoOpen = (state, act) => (state.looking.photo ? later(PHOTO, fetchPhoto, act)?.photoView(state, act) : undefined);

const fetchScout = () => import("../scout/scouting.js");

/** Several jars at once; fetched when it is first unfolded. @param {State} state @param {Act} act */
function scout(state, act) {
  const view = state.looking.scout === "open" ? later("scout", fetchScout, act) : undefined;
  return make(
    "details",
    { id: "scout", ontoggle: (event) => act.look({ scout: event.target.open ? "open" : "folded" }) },
    make("summary", {}, say("page.scout")),
    make("div", { id: "scout-inside" }, ...(view?.scoutView(state, act) ?? [])),
  );
}

const fetchAdvised = () => import("../advised/advised.js");

/** What was advised and what happened; fetched when it is first unfolded. @param {State} state @param {Act} act */
function advised(state, act) {
  return make(
    "details",
    { id: "advised", ontoggle: (event) => act.look({ advised: event.target.open ? "open" : "folded" }) },
    make("summary", {}, say("page.advised")),
    make("div", { id: "advised-inside" }, ...advisedInside(state, act)),
  );
}

/** @param {State} state @param {Act} act @returns {(Element | false)[]} */
export const advisedInside = (state, act) => (state.looking.advised === "open" ? (later("advised", fetchAdvised, act)?.advisedView(state, act) ?? []) : []);

/** @param {State} state @param {Act} act @param {Plate} plate @param {number} number */
function onePlate(state, act, plate, number) {
  return make(
    "fieldset",
    { id: `plate-${plate.id}`, class: isBroad(lines(plate)) ? "one-plate broad" : "one-plate" },
    make("legend", {}, say("page.plate", { number })),
    button({
      id: `remove-plate-${plate.id}`,
      label: "\u00d7",
      name: say("page.remove-plate", { number }),
      kind: "small",
      press: () => {
        act.edit((sheet) => removePlate(sheet, plate.id));
        act.focus("add-plate");
      },
    }),
    make("div", { class: "bench" }, drawing(state, act, plate, number)),
    make(
      "div",
      { class: "entries" },
      eluent(state, act, plate),
      lanes(state, act, plate),
      button({ id: `photo-${plate.id}`, label: say("page.photo"), name: say("page.photo-of", { number }), press: () => openPhoto(act, plate.id) }),
      plate.photo && button({ id: `picture-${plate.id}`, label: say("page.photo-kept"), kind: "small", press: () => openPhoto(act, plate.id, "photo-kept-open") }),
      readingsView(state, act, plate),
      told(state, plate),
      sizeFold(state, act, plate),
    ),
  );
}

/** What the answer has to tell about how this plate was run or measured. @param {State} state @param {Plate} plate */
function told({ answered }, plate) {
  const run = answered?.runs.indexOf(plate.id) ?? -1;
  const notes = (answered?.answer.notes ?? []).filter((/** @type {any} */ note) => run >= 0 && note.about === `runs[${run}]`);
  return notes.length > 0 && make("div", { id: `told-${plate.id}`, class: "told" }, list(notes.map((/** @type {any} */ note) => note.text)));
}

/** What it ran in, with usual ratios to press as long as nothing is written. @param {State} state @param {Act} act @param {Plate} plate */
function eluent(state, act, plate) {
  const goOn = () => {
    act.rest();
    act.focus(`add-${plate.lanes[0].id}`);
  };
  const set = (/** @type {string} */ value, /** @type {string} */ together) =>
    act.edit((sheet) => { findPlate(sheet, plate.id).eluent = value; }, together);
  return make(
    "div",
    { class: "ran-in", id: `ran-in-${plate.id}` },
    typedField(state, {
      id: `eluent-${plate.id}`,
      label: say("page.eluent", solventNames(state, plate)),
      value: plate.eluent,
      typed: (value) => set(value, `eluent-${plate.id}`),
      entered: goOn,
      left: act.rest,
    }),
    share(state, plate),
    plate.eluent.trim() === "" &&
      make(
        "div",
        { class: "chips", role: "group", "aria-label": say("page.usual-ratios") },
        ...USUAL_RATIOS.map((ratio, i) =>
          button({
            id: `usual-${plate.id}-${i}`,
            label: ratio,
            press: () => {
              set(ratio, "");
              goOn();
            },
          }),
        ),
      ),
    additiveEntry(state, {
      id: `additive-${plate.id}`,
      label: say("page.additive"),
      additive: plate.additive,
      changed: (change, together) => act.edit((sheet) => addToPlate(sheet, plate.id, change), together),
      left: act.rest,
    }),
  );
}

/** What a ratio comes to, so that one written the wrong way round is seen. @param {State} state @param {Plate} plate */
function share(state, plate) {
  const percent = plate.eluent.includes("%") ? undefined : percentStrong(plate.eluent);
  if (percent === undefined || percent > 100) return undefined;
  return make("p", { class: "aside share", id: `share-${plate.id}` }, say("page.eluent-share", { percent: marked(plain(percent, 1)), strong: solventNames(state, plate).strong }));
}

/** A button for each lane, which takes the beginning of an Rf, too. @param {State} state @param {Act} act @param {Plate} plate */
function lanes(state, act, plate) {
  const empty = plate.lanes.length > 1 ? plate.lanes.findLastIndex((lane) => lane.readings.length === 0) : -1;
  return make(
    "div",
    { class: "lanes", id: `lanes-${plate.id}` },
    readingsOf(plate).length === 0 && make("p", { class: "aside", id: `hint-${plate.id}` }, say("page.tap-plate")),
    make("span", { class: "lane-words", "aria-hidden": "true" }, say("page.spot-in-lane")),
    ...plate.lanes.map((lane, i) => laneButton(state, act, plate, lane.id, i + 1)),
    button({
      id: `add-lane-${plate.id}`,
      label: say("page.add-lane"),
      kind: "small",
      press: () => {
        const id = freeId(state.sheet, "l");
        act.edit((sheet) => addLane(sheet, findPlate(sheet, plate.id)));
        act.focus(`add-${id}`);
      },
    }),
    empty >= 0 &&
      button({
        id: `remove-lane-${plate.id}`,
        label: say("page.remove-lane", { lane: empty + 1 }),
        kind: "small",
        press: () => {
          act.edit((sheet) => removeLane(findPlate(sheet, plate.id), plate.lanes[empty].id));
          act.focus(`add-lane-${plate.id}`);
        },
      }),
  );
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {string} laneId @param {number} lane */
function laneButton(state, act, plate, laneId, lane) {
  return make(
    "button",
    {
      type: "button",
      id: `add-${laneId}`,
      class: "lane",
      "aria-label": say("page.add-in-lane", { lane }),
      onclick: () => addUnplaced(state, act, plate.id, laneId),
      onkeydown: laneKeys(state, act, plate.id, laneId),
    },
    String(lane),
  );
}
