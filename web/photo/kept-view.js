// @ts-check
/** The picture that is kept with a plate: to be seen, and taken out again. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { findPlate } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { dropPicture, pictureAddress } from "./kept.js";
import { drawing } from "./store.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Plate} Plate */

/** Plates whose picture could not be taken out when somebody wanted it. @type {Set<string>} */
const stuck = new Set();

/** Pictures that this folder does not have, as where a study came as a file. @type {Set<string>} */
const missing = new Set();

/** @param {State} state @param {Act} act @param {Plate} plate @param {number} number */
export function keptView(state, act, plate, number) {
  const { photo } = plate;
  if (!photo) return false;
  const address = pictureAddress(state.sheet.id, photo.sha256);
  const gone = () => {
    missing.add(photo.sha256);
    drawing.again();
  };
  return make(
    "div",
    { id: "photo-kept", class: "photo-kept" },
    missing.has(photo.sha256)
      ? make("p", { id: "photo-kept-open", tabindex: -1 }, say("later.photo-missing", { number }))
      : make("a", { id: "photo-kept-open", href: address, target: "_blank" }, make("img", { src: address, alt: say("later.photo-kept", { number }), onerror: gone })),
    button({ id: "photo-kept-drop", label: say("later.photo-drop-picture"), press: () => takeOut(state, act, plate.id, photo.sha256) }),
    stuck.has(photo.sha256) && make("span", { class: "fault", id: "photo-kept-fault" }, say("later.photo-fault-not-dropped")),
  );
}

/** Takes the picture out of the folder, unless another plate shows the same, and off the plate. @param {State} state @param {Act} act @param {string} id of the plate @param {string} sha256 */
async function takeOut(state, act, id, sha256) {
  const study = state.sheet.id;
  const isShared = state.sheet.plates.some((other) => other.id !== id && other.photo?.sha256 === sha256);
  try {
    if (!isShared) await dropPicture(study, sha256);
    stuck.delete(sha256);
  } catch {
    stuck.add(sha256);
    drawing.again();
    return;
  }
  if (state.sheet.id !== study || !state.sheet.plates.some((plate) => plate.id === id)) return;
  act.rest();
  act.edit((sheet) => { delete findPlate(sheet, id).photo; });
  act.focus("photo-title");
}
