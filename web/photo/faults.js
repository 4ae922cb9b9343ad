// @ts-check
/** What is wrong with a photo, in sentences: what it is about, what came, what is allowed, what to do. */

import { decimal } from "../numbers.js";
import { findPlate } from "../sheet/sheet.js";
import { marked, say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Fault} Fault */

/** Lengths a plate may have, as its form takes them [mm]. */
const LENGTHS = { height: [10, 1000], width: [5, 1000] };

/** @param {Fault} fault */
function sentence({ code, name, ...numbers }) {
  const file = String(name ?? "");
  switch (code) {
    case "too-large":
      return say("later.photo-fault-too-large", { file, megapixels: Math.ceil(Number(numbers.megapixels)) });
    case "too-small":
      return say("later.photo-fault-too-small", { file, width: Number(numbers.width), height: Number(numbers.height) });
    case "not-a-picture":
    case "heic":
    case "all-black":
    case "all-white":
      return say(`later.photo-fault-${code}`, { file });
    case "corners-crossed":
    case "corners-small":
    case "front-below-start":
    case "lines-outside":
    case "not-kept":
      return say(`later.photo-fault-${code}`);
    default:
      return say("later.photo-fault-broken");
  }
}

/** The state with what is wrong on this view at its entries. @param {State} state @param {Photo} photo @returns {State} */
export function withFaults(state, photo) {
  const faults = new Map([...photo.faults].map(([id, fault]) => [id, [sentence(fault)]]));
  const plate = findPlate(state.sheet, photo.plate);
  for (const side of /** @type {const} */ (["height", "width"])) {
    const [came, [from, to]] = [plate[`${side}Mm`].trim(), LENGTHS[side]];
    const mm = decimal(came);
    if (mm === undefined || mm < from || mm > to) faults.set(`photo-${side}`, [say(`later.photo-fault-${side}`, { came: marked(came) || "\u2013", from, to })]);
  }
  return { ...state, faults };
}
