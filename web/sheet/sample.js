// @ts-check
/** The sample: its compounds, the solvents on the shelf, where plates are run, and what is wanted of the next one. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { shortName } from "../plate/names.js";
import { saidOf } from "../request.js";
import { marked, say } from "../texts.js";
import { askLine } from "../where/origin.js";
import { addToNext, additiveEntry, additiveWords } from "./additive.js";
import { identityLine } from "./identity.js";
import { choosePair, pairText, pairsAtHand, shelf } from "./shelf.js";
import { COLOURS, SETTINGS, WINDOWS, addSpot, removeSpot } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** @param {State} state @param {Act} act */
export function sampleView(state, act) {
  return [
    make("h2", { id: "sample-title" }, say("page.sample")),
    spots(state, act),
    eluent(state, act),
    wanted(state, act),
  ];
}

/** Whether there is room to show what is seldom changed; on a phone it stays folded until asked for. */
const isWide = () => matchMedia("(min-width: 900px)").matches;

/** @param {State} state @param {Act} act */
function spots(state, act) {
  const { sheet } = state;
  return make(
    "div",
    { id: "spots" },
    make("h3", { id: "spots-title" }, say("page.spots")),
    make("ul", { "aria-labelledby": "spots-title" }, ...sheet.spots.map((spot, i) => oneSpot(state, act, spot, i))),
    button({
      id: "add-spot",
      label: say("page.add-spot"),
      press: () => {
        act.edit(addSpot);
        const added = /** @type {HTMLInputElement | undefined} */ ([...document.querySelectorAll("#spots li input")].at(-1));
        added?.focus();
        added?.select();
      },
    }),
    state.sheet.spots.some((spot) => Object.keys(saidOf(spot)).length) && button({ id: "as-lesson", label: say("page.as-lesson"), kind: "small", press: async () => (await import("../lesson/hand.js")).handOver(state.sheet) }),
  );
}

/** @param {State} state @param {Act} act @param {import("./sheet.js").Spot} spot @param {number} i */
function oneSpot(state, act, spot, i) {
  const others = state.sheet.spots.length > 1;
  const short = shortName(state.sheet, spot.id);
  return make(
    "li",
    { id: `spot-${spot.id}-item` },
    make("span", { class: "sign", "aria-hidden": "true" }, make("span", { class: `swatch colour-${i % COLOURS}` }), short !== spot.name.trim() && make("span", {}, short)),
    typedField(state, {
      id: `spot-${spot.id}`,
      label: say("page.spot", { number: i + 1 }),
      hidden: "label",
      value: spot.name,
      typed: (name) =>
        act.edit((sheet) => {
          const mine = sheet.spots.find((each) => each.id === spot.id);
          if (mine) mine.name = name;
        }, `name-${spot.id}`),
      left: act.rest,
    }),
    others &&
      button({
        label: "\u00d7",
        name: say("page.remove-spot", { spot: spot.name.trim() || say("page.unnamed") }),
        kind: "small",
        press: () => {
          act.edit((sheet) => removeSpot(sheet, spot.id));
          act.focus("add-spot");
        },
      }),
    identityLine(state, act, spot),
  );
}

/** The pair, the layer and the shelf. @param {State} state @param {Act} act */
function eluent(state, act) {
  const { sheet } = state;
  const pairs = pairsAtHand(state);
  const chosen = `${sheet.weak} ${sheet.strong}`;
  const added = additiveWords(sheet.additive);
  const inUse = pairs.find(({ weak, strong }) => chosen === `${weak.id} ${strong.id}`);
  const words = inUse ? pairText(inUse) : say("page.eluent-wanted");
  return make(
    "details",
    { id: "eluent", open: isWide() },
    make("summary", {}, added ? say("page.eluent-with", { eluent: words, additive: added }) : words),
    choice(state, {
      id: "pair",
      label: say("page.pair"),
      value: chosen,
      options: pairs.map((pair) => ({ value: `${pair.weak.id} ${pair.strong.id}`, text: pairText(pair) })),
      chosen: (value) => {
        const [weak, strong] = value.split(" ");
        act.edit((next) => choosePair(next, weak, strong));
      },
    }),
    additiveEntry(state, {
      id: "additive",
      label: say("page.additive-next"),
      additive: sheet.additive,
      changed: (change, together) => act.edit((next) => addToNext(next, change), together),
      left: act.rest,
    }),
    shelf(state, act),
    choice(state, {
      id: "sorbent",
      label: say("page.sorbent"),
      value: sheet.sorbent,
      options: sorbents(state).map((id) => ({ value: id, text: say(`page.sorbent-${id}`) })),
      chosen: (value) => act.edit((next) => { next.sorbent = value; }),
    }),
    choice(state, {
      id: "setting",
      label: say("page.setting"),
      value: sheet.setting,
      options: SETTINGS.map((each) => ({ value: each, text: say(`page.setting-${each}`) })),
      chosen: (value) => act.edit((next) => { next.setting = value; }),
    }),
  );
}

/** The layers that were measured. @param {State} state @returns {string[]} */
function sorbents(state) {
  const measured = state.published.library?.pairs.map((/** @type {any} */ pair) => pair.sorbent) ?? [];
  return [...new Set([state.sheet.sorbent, ...measured])];
}

/** Window, spots to keep apart, amount, jar. @param {State} state @param {Act} act */
function wanted(state, act) {
  const { sheet } = state;
  const field = (/** @type {0 | 1} */ side, /** @type {string} */ id, /** @type {string} */ label) =>
    typedField(state, {
      id,
      label,
      mode: "decimal",
      value: sheet.window[side],
      typed: (value) => act.edit((next) => { next.window[side] = value; }, id),
      left: act.rest,
    });
  return make(
    "details",
    { id: "wanted", open: isWide() },
    make("summary", {}, say("page.wanted", { low: marked(sheet.window[0]), high: marked(sheet.window[1]), amount: marked(sheet.amount) })),
    choice(state, {
      id: "window-choice",
      label: say("page.window"),
      value: sheet.windowKind,
      options: ["usual", "column", "own"].map((kind) => ({ value: kind, text: say(`page.window-${kind}`) })),
      chosen: (kind) =>
        act.edit((next) => {
          next.windowKind = /** @type {"usual" | "column" | "own"} */ (kind);
          next.window = [...(WINDOWS[kind] ?? next.window)];
        }),
    }),
    make("div", { class: "two", hidden: sheet.windowKind !== "own" }, field(0, "window-low", say("page.window-low")), field(1, "window-high", say("page.window-high"))),
    sheet.spots.length > 1 && apart(state, act),
    make(
      "div",
      { class: "two" },
      typedField(state, {
        id: "amount",
        label: say("page.amount"),
        mode: "decimal",
        value: sheet.amount,
        typed: (value) => act.edit((next) => { next.amount = value; }, "amount"),
        left: act.rest,
      }),
      typedField(state, {
        id: "jar-diameter",
        label: say("page.jar-diameter"),
        mode: "decimal",
        value: sheet.jar,
        typed: (value) => act.edit((next) => { next.jar = value; }, "jar"),
        left: act.rest,
      }),
    ),
    askLine(["window", "amount", "jar", "plate"]),
  );
}

/** Two compounds to keep apart. @param {State} state @param {Act} act */
function apart(state, act) {
  const { spots, apart: now } = state.sheet;
  const pairs = spots.flatMap((one, i) => spots.slice(i + 1).map((other) => [one, other]));
  const shown = (/** @type {import("./sheet.js").Spot} */ spot) => spot.name.trim() || say("page.unnamed");
  return choice(state, {
    id: "apart",
    label: say("page.apart"),
    value: now.join(" "),
    options: [
      { value: "", text: say("page.apart-none") },
      ...pairs.map(([one, other]) => ({
        value: `${one.id} ${other.id}`,
        text: say("page.apart-pair", { one: shown(one), other: shown(other) }),
      })),
    ],
    chosen: (value) => act.edit((sheet) => { sheet.apart = value ? value.split(" ") : []; }),
  });
}

/** That a sheet is the invented example, or began as that; empty for a sheet of a person's own. @param {import("./sheet.js").Sheet} sheet */
export function exampleWords({ example }) {
  if (example === "no") return "";
  return say(example === "yes" ? "page.example-shown" : "page.example-changed");
}
