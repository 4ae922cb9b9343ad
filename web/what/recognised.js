// @ts-check
/** What was recognised in a compound: its drawing, its formula, its groups with what each does, and what holds it back. */

import { draw, list, make } from "../dom.js";
import { marked, say } from "../texts.js";
import { askable } from "../where/origin.js";
import { isLarge, molecule } from "./molecule.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Spot} Spot */

/** A bar as long as half the scale is never less than this [ln units], so that small effects look small. */
const LEAST_SCALE = 2;

/** What each row says of its group already. */
const IN_ITS_ROW = "structure.rare";

/** @param {State} state @param {Act} act @param {Spot} spot @param {any} found answer of /api/structure */
export function recognisedView(state, act, spot, found) {
  const groups = [...found.groups].sort((a, b) => a.count * a.effect - b.count * b.effect);
  const looked = groups.find((group) => group.id === state.looking.group);
  const held = groups.find((group) => group.id === found.heldBy);
  const scale = Math.max(LEAST_SCALE, ...groups.map((group) => Math.abs(group.effect)));
  const notes = found.notes.filter((/** @type {any} */ note) => note.key !== IN_ITS_ROW);
  return [
    make("h3", { id: "seen-title" }, say("later.recognised")),
    found.svg !== undefined &&
      make("div", { class: isLarge(found.svg) ? "drawn large" : "drawn", id: "drawn" }, molecule(found.svg, looked, say("later.drawing-of", { formula: found.formula })), formula(found)),
    held && make("p", { id: "held-by" }, say("later.held-most", { group: held.name })),
    groups.length > 0 && make("p", { class: "effect-ways", id: "effect-ways", "aria-hidden": "true" }, ...["later.effect-holds", "later.effect-lets", "later.effect-each"].map((key) => make("span", {}, say(key)))),
    make("ul", { class: "found-groups", id: "found-groups", "aria-labelledby": "seen-title" }, ...groups.map((group) => row(state, act, spot, group, scale, found.svg !== undefined))),
    groups.length > 0 && make("p", { class: "aside", id: "effect-words" }, say("later.effect-words")),
    notes.length > 0 && make("div", { id: "found-notes" }, list(notes.map((/** @type {any} */ note) => note.text))),
  ].filter((each) => each !== undefined && each !== false);
}

/** @param {any} found */
function formula({ formula: written, molarMass }) {
  const pieces = String(written)
    .split(/(\d+)/)
    .filter(Boolean)
    .map((piece) => (/^\d/.test(piece) ? make("sub", {}, piece) : piece));
  return make("p", { id: "formula" }, ...pieces, ", ", askable("molar-mass", `${marked(molarMass.toFixed(2))} g/mol`, { formula: written }));
}

/** A group; pressed, pointed at or with the focus it is marked in the drawing. @param {State} state @param {Act} act @param {Spot} spot @param {any} group @param {number} scale @param {boolean} drawn */
function row({ looking }, act, spot, group, scale, drawn) {
  const times = group.count > 1 ? `${group.count} \u00d7 ${group.name}` : group.name;
  const mark = () => looking.group !== group.id && act.look({ group: group.id });
  const name = drawn
    ? make(
        "button",
        {
          type: "button",
          id: `found-${spot.id}-${group.id}`,
          class: "small",
          "aria-pressed": String(looking.group === group.id),
          onclick: mark,
          onfocus: mark,
          onpointerenter: mark,
        },
        times,
      )
    : make("span", { class: "found-name" }, times);
  return make(
    "li",
    { id: `found-row-${spot.id}-${group.id}`, class: group.id === looking.group ? "looked" : undefined },
    name,
    bar(group.effect, scale),
    make("span", { class: "found-effect" }, effect(group), group.count > 1 && make("span", { class: "unseen" }, ` ${say("later.effect-each")}`)),
    group.rare && make("span", { class: "rare" }, say("later.group-rare")),
  );
}

/** To the left it holds the compound back, to the right it lets it go. @param {number} effect [ln units] @param {number} scale [ln units] */
function bar(effect, scale) {
  const long = (50 * Math.abs(effect)) / scale;
  return draw(
    "svg",
    { class: effect < 0 ? "effect-bar holds" : "effect-bar", viewBox: "0 0 100 10", preserveAspectRatio: "none", "aria-hidden": "true" },
    draw("line", { x1: 50, x2: 50, y1: 0, y2: 10, "vector-effect": "non-scaling-stroke" }),
    draw("rect", { x: effect < 0 ? 50 - long : 50, y: 2, width: long, height: 6 }),
  );
}

/** @param {any} group */
function effect({ id, name, effect: by, error, compounds, energy, energyBasis }) {
  const number = (/** @type {number} */ value) => marked(value.toFixed(2).replace("-", "\u2212"));
  return askable("group", `${number(by)} \u00b1 ${number(error)}`, {
    id, name, effect: number(by), error: number(error), compounds, energy: energy === undefined ? "" : number(energy), basis: energyBasis ?? "",
  });
}
