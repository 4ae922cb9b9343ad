// @ts-check
/** What a compound is, in the line under its name: what was said, or the question. The entry itself is fetched when it is opened. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { fetchLater } from "../later.js";
import { saidOf } from "../request.js";
import { say } from "../texts.js";
import { WAYS, whatOf } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Spot} Spot */

export const WHAT = "what";
export const fetchWhat = () => import("../what/what.js");

/** Opens the entry and goes there. @param {Act} act @param {Spot} spot */
export async function openWhat(act, spot) {
  await fetchLater(WHAT, fetchWhat, act);
  act.look({ what: spot.id, find: "" });
  const { by } = whatOf(spot);
  act.focus(by === "smiles" && matchMedia("(pointer: fine)").matches ? `smiles-${spot.id}` : `way-${by}-${spot.id}`);
  document.getElementById("what")?.scrollIntoView({ block: "nearest" });
}

/** @param {State} state @param {Act} act @param {Spot} spot */
export function identityLine(state, act, spot) {
  const open = state.looking.what === spot.id;
  const words = identityWords(state, spot);
  const name = spot.name.trim() || say("page.unnamed");
  const wrong = identityFaults(state, spot);
  return make(
    "div",
    { class: "identity" },
    button({
      id: `what-${spot.id}`,
      label: wrong.length > 0 ? say("page.what-unread") : (words ?? say("page.what")),
      name: words ? say("page.what-of-said", { spot: name, words }) : say("page.what-of", { spot: name }),
      kind: "small",
      press: () => (open ? act.focus(`way-${whatOf(spot).by}-${spot.id}`) : openWhat(act, spot)),
      keys: (event) => beginRatio(state, act, event),
    }),
    !open && wrong.length > 0 && make("p", { class: "fault" }, wrong.join(" ")),
  );
}

/** A digit is no answer here: it begins the ratio of a plate that has none, which takes it. @param {State} state @param {Act} act @param {KeyboardEvent} event */
function beginRatio({ sheet }, act, { key, ctrlKey, metaKey, altKey }) {
  const empty = sheet.plates.find((plate) => plate.eluent.trim() === "");
  if (empty && /^\d$/.test(key) && !(ctrlKey || metaKey || altKey)) act.focus(`eluent-${empty.id}`);
}

/** What was said of it; undefined where nothing was. @param {State} state @param {Spot} spot */
function identityWords(state, spot) {
  const said = saidOf(spot);
  if (Object.keys(said).length === 0) return undefined;
  const found = structureOf(state, spot);
  const held = found?.groups.find((/** @type {any} */ group) => group.id === found.heldBy);
  if (held) return say("page.held-by", { group: shortly(held.name) });
  return "smiles" in said ? said.smiles : say("page.what-said");
}

/** The name of a group without what stands in brackets after it. @param {string} name */
const shortly = (name) => name.replace(/ \(.*\)$/, "");

/** What the latest answer recognised in a compound, where it was asked about the same. @param {State} state @param {Spot} spot */
export function structureOf({ answered }, spot) {
  const asked = answered?.sheet.spots.find((each) => each.id === spot.id);
  if (!asked || JSON.stringify(saidOf(asked)) !== JSON.stringify(saidOf(spot))) return undefined;
  return answered?.answer.structures?.find((/** @type {any} */ each) => each.spot === asked.name.trim());
}

/** What is wrong with what was said. @param {State} state @param {Spot} spot */
function identityFaults(state, spot) {
  const own = [...WAYS.map((way) => `${way}-${spot.id}`), ...Object.keys(whatOf(spot).groups).map((id) => `count-${spot.id}-${id}`)];
  return own.flatMap((id) => state.faults.get(id) ?? []);
}
