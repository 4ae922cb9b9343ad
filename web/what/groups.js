// @ts-check
/** Groups to press, those of every day first, the others by name; carbons and surroundings at the end. */

import { list, make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { decimal } from "../numbers.js";
import { whatOf } from "../sheet/sheet.js";
import { language, say } from "../texts.js";
import { editWhat } from "./edit.js";
import { groupsKnown, recognised } from "./recognise.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Spot} Spot */

/** What a synthesis laboratory meets every day, offered before the others are asked for; common practice, no source. */
const EVERY_DAY =
  "alcohol phenol ketone aryl-ketone aldehyde ester carboxylic-acid alkyl-ether aryl-ether secondary-amide carbamate primary-amine aniline nitrile nitro aryl-bromide".split(" ");

/** Whose N is counted in them, and is no amine as well. */
const AMIDES = "carbamate primary-amide secondary-amide tertiary-amide urea imide sulfonamide".split(" ");
const AMINES = "primary-amine secondary-amine tertiary-amine aniline n-alkylaniline dialkylaniline".split(" ");

/** @param {State} state @param {Act} act @param {Spot} spot */
export function groupsEntry(state, act, spot) {
  const known = groupsKnown(act);
  const faults = state.faults.get(`groups-${spot.id}`) ?? [];
  return make(
    "div",
    { id: `groups-${spot.id}`, class: "groups", role: "group", "aria-label": say("later.way-groups") },
    make("p", { class: "aside", id: "groups-lead" }, say("later.groups-lead")),
    ...fromLine(state, act, spot),
    faults.length > 0 && make("div", { class: "fault", id: `groups-${spot.id}-fault` }, list(faults)),
    ...(known ? offered(state, act, spot, known.groups) : []),
  );
}

/** Where a line was recognised already its groups are a start. @param {State} state @param {Act} act @param {Spot} spot */
function fromLine({ sheet }, act, spot) {
  const { smiles, groups } = whatOf(spot);
  if (!smiles.trim() || Object.keys(groups).length > 0) return [];
  const { sorbent, weak, strong } = sheet;
  const told = recognised(act, { smiles: smiles.trim(), sorbent, weak, strong });
  if (!told || told === "refused") return [];
  const found = told.answer.groups.filter((/** @type {any} */ group) => group.id !== "unrecognised");
  return [
    button({
      id: "groups-from-line",
      label: say("later.groups-from-line"),
      press: () => {
        editWhat(act, spot, (what) => { what.groups = Object.fromEntries(found.map((/** @type {any} */ group) => [group.id, String(group.count)])); });
        act.focus("find-group");
      },
    }),
  ];
}

/** @param {State} state @param {Act} act @param {Spot} spot @param {any[]} groups */
function offered(state, act, spot, groups) {
  const counts = whatOf(spot).groups;
  const ofKind = (/** @type {string} */ kind) => inOrder(groups.filter((group) => group.kind === kind));
  const find = (state.looking.find ?? "").trim().toLowerCase();
  const chosen = (/** @type {any} */ group) => group.id in counts;
  const all = ofKind("group");
  const shown = find
    ? inOrder(groups.filter((group) => group.kind !== "unknown" && (isCalled(group, find) || chosen(group))))
    : all.filter((group) => EVERY_DAY.includes(group.id) || state.looking.offered === "all" || chosen(group));
  const rows = (/** @type {any[]} */ some) => some.map((group) => row(state, act, spot, group));
  return [
    typedField(state, { id: "find-group", label: say("later.find-group"), value: state.looking.find ?? "", typed: (value) => act.look({ find: value }) }),
    make("ul", { class: "group-rows", id: "group-rows", "aria-label": say("later.groups-usual") }, ...rows(shown)),
    find !== "" && !shown.some((group) => isCalled(group, find)) && make("p", { class: "aside", id: "groups-none" }, say("later.groups-none", { find })),
    !find && more(state, act, all.length),
    ...(find ? [] : [fold(spot, "size", rows(ofKind("size"))), fold(spot, "surrounding", rows(ofKind("surrounding")))]),
  ].filter((each) => each !== false);
}

/** @param {any[]} groups */
function inOrder(groups) {
  const place = (/** @type {any} */ { id }) => (EVERY_DAY.includes(id) ? EVERY_DAY.indexOf(id) : EVERY_DAY.length);
  return [...groups].sort((a, b) => place(a) - place(b) || a.name.localeCompare(b.name, language()));
}

/** @param {any} group @param {string} find */
const isCalled = (group, find) => group.name.toLowerCase().includes(find);

/** @param {State} state @param {Act} act @param {number} count */
function more({ looking }, act, count) {
  const all = looking.offered === "all";
  return button({
    id: "groups-more",
    label: all ? say("later.groups-fewer") : say("later.groups-all", { count }),
    kind: "small",
    press: () => act.look({ offered: all ? "usual" : "all" }),
  });
}

/** @param {Spot} spot @param {"size" | "surrounding"} kind @param {Element[]} rows */
const fold = (spot, kind, rows) =>
  make(
    "details",
    { id: `groups-${kind}-${spot.id}` },
    make("summary", {}, say(`later.groups-${kind}`)),
    make("p", { class: "aside" }, say(`later.groups-${kind}-words`)),
    make("ul", { class: "group-rows", "aria-label": say(`later.groups-${kind}`) }, ...rows),
  );

/** A group: pressed once for each time it occurs; its number and one fewer beside it once there is one. @param {State} state @param {Act} act @param {Spot} spot @param {any} group */
function row(state, act, spot, group) {
  const counts = whatOf(spot).groups;
  const typed = counts[group.id];
  const twice = AMINES.includes(group.id) && AMIDES.some((id) => id in counts);
  const add = `add-${spot.id}-${group.id}`;
  const id = `count-${spot.id}-${group.id}`;
  const by = (/** @type {number} */ step) =>
    editWhat(act, spot, (what) => {
      const count = (decimal(what.groups[group.id] ?? "") ?? 0) + step;
      if (count > 0) what.groups[group.id] = String(count);
      else delete what.groups[group.id];
    });
  const name = make("button", { type: "button", id: add, class: "group-add", "aria-label": say("later.group-add", { group: group.name }), onclick: () => by(1) }, "+\u2002", make("span", {}, group.name));
  if (typed === undefined) return make("li", { id: `row-${spot.id}-${group.id}` }, name);
  return make(
    "li",
    { id: `row-${spot.id}-${group.id}`, class: "chosen" },
    name,
    typedField(state, {
      id,
      label: say("later.group-count", { group: group.name }),
      hidden: "label",
      mode: "decimal",
      value: typed,
      typed: (value) => editWhat(act, spot, (what) => { what.groups[group.id] = value; }, id),
      left: act.rest,
    }),
    button({
      id: `less-${spot.id}-${group.id}`,
      label: "\u2212",
      name: say("later.group-less", { group: group.name }),
      kind: "small",
      press: () => {
        const last = !((decimal(typed) ?? 0) > 1);
        by(-1);
        if (last) act.focus(add);
      },
    }),
    twice && make("p", { class: "aside", id: `twice-${spot.id}-${group.id}` }, say("later.group-twice")),
  );
}
