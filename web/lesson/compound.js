// @ts-check
/** One compound of a lesson: its name, and what it is: one of the table of lessons, a SMILES line, its class, or its groups. */

import { list, make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { LONGEST_SMILES } from "../line.js";
import { language, say } from "../texts.js";
import { wayOf } from "./state.js";

/** @typedef {import("./state.js").State} State @typedef {import("./state.js").Act} Act @typedef {import("./state.js").Compound} Compound */

/** Acetophenone, as an example of such a line. */
const EXAMPLE = "CC(=O)c1ccccc1";

/** The ways besides the table. */
const WAYS = /** @type {const} */ (["smiles", "class", "groups"]);

/** What it is, in a word or two. @param {State} state @param {Compound} compound */
export function identityOf({ published }, compound) {
  const way = wayOf(compound);
  if (way === "table") return tableOf(published, compound)?.name.text ?? say("later.lesson-what-none");
  if (way === "smiles") return compound.smiles?.trim() || say("later.lesson-what-none");
  if (way === "class") return published.groups.classes.find((/** @type {any} */ each) => each.id === compound.class)?.name ?? say("later.lesson-what-none");
  return say("later.lesson-what-groups");
}

/** @param {State["published"]} published @param {Compound} compound */
const tableOf = (published, { compound }) => published.tables.compounds.find((/** @type {any} */ each) => each.id === compound);

/** @param {Act} act @param {Compound} compound @param {(mine: Compound) => void} change */
const edit = (act, compound, change) =>
  act.edit((lesson) => {
    const mine = lesson.compounds.find(({ id }) => id === compound.id);
    if (mine) change(mine);
  });

/** @param {State} state with the faults of the sample @param {Act} act @param {Compound} compound @param {number} place */
export function compoundView(state, act, compound, place) {
  const { id } = compound;
  const way = wayOf(compound);
  const name = compound.name.trim() || say("page.unnamed");
  return make(
    "li",
    { id: `compound-${id}`, class: "compound-row" },
    make("span", { class: `swatch colour-${place}`, "aria-hidden": "true" }),
    typedField(/** @type {any} */ (state), {
      id: `lesson-name-${id}`,
      label: say("later.lesson-name", { number: place + 1 }),
      hidden: "label",
      value: compound.name,
      longest: 40,
      typed: (value) => edit(act, compound, (mine) => { mine.name = value; }),
    }),
    choice(/** @type {any} */ (state), {
      id: `lesson-what-${id}`,
      label: say("later.lesson-what", { spot: name }),
      hidden: "label",
      value: way === "table" ? (compound.compound ?? "") : `by ${way}`,
      options: options(state, compound),
      chosen: (value) =>
        edit(act, compound, (mine) => {
          if (!value.startsWith("by ")) Object.assign(mine, { by: "table", compound: value });
          else mine.by = /** @type {any} */ (value.slice(3));
        }),
    }),
    state.lesson.compounds.length > 1 &&
      button({
        id: `lesson-remove-${id}`,
        label: "\u00d7",
        name: say("page.remove-spot", { spot: name }),
        kind: "small",
        press: () => {
          act.edit((lesson) => { lesson.compounds = lesson.compounds.filter((each) => each.id !== id); });
          act.focus("add-compound");
        },
      }),
    make("div", { class: "compound-more", id: `more-${id}` }, ...MORE[way](state, act, compound)),
  );
}

/** @param {State} state @param {Compound} compound */
function options({ published }, { compound }) {
  const table = published.tables.compounds.map((/** @type {any} */ each) => ({ value: each.id, text: each.name.text }));
  const unknown = compound && !table.some((/** @type {any} */ each) => each.value === compound) ? [{ value: compound, text: compound }] : [];
  const none = compound ? [] : [{ value: "", text: say("later.lesson-what-none") }];
  return [...none, ...unknown, ...table, ...WAYS.map((way) => ({ value: `by ${way}`, text: say(`later.lesson-by-${way}`) }))];
}

/** What each way shows below. @type {Record<import("./state.js").Way, (state: State, act: Act, compound: Compound) => Element[]>} */
const MORE = { table: note, smiles, class: ofClass, groups };

/** What a teacher should know of it. @param {State} state @param {Act} act @param {Compound} compound */
function note({ published }, act, compound) {
  const known = tableOf(published, compound);
  return known ? [make("p", { class: "aside" }, say("later.lesson-note", { note: known.note, seen: say(`later.lesson-seen-${known.seen}`) }))] : [];
}

/** @param {State} state @param {Act} act @param {Compound} compound */
function smiles(state, act, compound) {
  return [
    typedField(/** @type {any} */ (state), {
      id: `lesson-smiles-${compound.id}`,
      label: say("later.lesson-smiles", { example: EXAMPLE }),
      value: compound.smiles ?? "",
      longest: LONGEST_SMILES,
      typed: (value) => edit(act, compound, (mine) => { mine.smiles = value; }),
    }),
  ];
}

/** @param {State} state @param {Act} act @param {Compound} compound */
function ofClass(state, act, compound) {
  const classes = inOrder(state.published.groups.classes);
  return [
    choice(/** @type {any} */ (state), {
      id: `lesson-class-${compound.id}`,
      label: say("later.class"),
      value: compound.class ?? "",
      options: [{ value: "", text: say("later.class-none") }, ...classes.map((each) => ({ value: each.id, text: each.name }))],
      chosen: (value) => edit(act, compound, (mine) => { mine.class = value; }),
    }),
  ];
}

/** @param {any[]} named */
const inOrder = (named) => [...named].sort((a, b) => a.name.localeCompare(b.name, language()));

/** How many of each group; further ones from a list. @param {State} state @param {Act} act @param {Compound} compound */
function groups(state, act, compound) {
  const { id } = compound;
  const counts = compound.groups ?? {};
  const known = state.published.groups.groups.filter((/** @type {any} */ each) => each.kind !== "unknown");
  const nameOf = (/** @type {string} */ group) => known.find((/** @type {any} */ each) => each.id === group)?.name ?? group;
  const faults = state.faults.get(`lesson-group-${id}`) ?? [];
  const further = state.looking[`group-${id}`] ?? "";
  return [
    make("ul", { class: "count-rows" }, ...Object.entries(counts).map(([group, count]) =>
      make(
        "li",
        { id: `count-row-${id}-${group}` },
        typedField(/** @type {any} */ (state), {
          id: `count-${id}-${group}`,
          label: nameOf(group),
          mode: "decimal",
          value: String(count),
          typed: (value) => edit(act, compound, (mine) => { (mine.groups ??= {})[group] = value; }),
        }),
        button({
          id: `count-less-${id}-${group}`,
          label: "\u00d7",
          name: say("later.lesson-group-without", { group: nameOf(group) }),
          kind: "small",
          press: () => {
            edit(act, compound, (mine) => { delete mine.groups?.[group]; });
            act.focus(`lesson-group-${id}`);
          },
        }),
      ))),
    make("div", { class: "count-further" },
      choice(/** @type {any} */ ({ ...state, faults: new Map() }), {
        id: `lesson-group-${id}`,
        label: say("later.lesson-group"),
        value: further,
        options: [{ value: "", text: say("later.lesson-group-none") }, ...inOrder(known.filter((/** @type {any} */ each) => !(each.id in counts))).map((each) => ({ value: each.id, text: each.name }))],
        chosen: (group) => act.look({ [`group-${id}`]: group }),
      }),
      button({ id: `lesson-group-add-${id}`, label: say("later.lesson-group-add"), disabled: further === "", press: () => add(act, compound, further) })),
    ...(faults.length > 0 ? [make("div", { class: "fault", id: `lesson-group-${id}-fault` }, list(faults))] : []),
  ];
}

/** One of a further group; its number can be typed at once. @param {Act} act @param {Compound} compound @param {string} group */
function add(act, compound, group) {
  act.look({ [`group-${compound.id}`]: "" });
  edit(act, compound, (mine) => { (mine.groups ??= {})[group] = "1"; });
  const count = /** @type {HTMLInputElement | null} */ (document.getElementById(`count-${compound.id}-${group}`));
  count?.focus();
  count?.select();
}
