// @ts-check
/** Says what a compound is: a SMILES line, its groups, or only its class; and shows at once what was recognised. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { styled } from "../later.js";
import { LONGEST_SMILES } from "../line.js";
import { colourOf, fullName } from "../plate/names.js";
import { saidOf } from "../request.js";
import { openWhat } from "../sheet/identity.js";
import { WAYS, whatOf } from "../sheet/sheet.js";
import { furtherTexts, language, say } from "../texts.js";
import { editWhat } from "./edit.js";
import { groupsEntry } from "./groups.js";
import { groupsKnown, isRead, recognised } from "./recognise.js";
import { recognisedView } from "./recognised.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Spot} Spot */

await Promise.all([styled(new URL("./what.css", import.meta.url)), furtherTexts()]);

/** Acetophenone, as an example of such a line. */
const EXAMPLE = "CC(=O)c1ccccc1";

/** @param {State} state @param {Act} act @param {Spot} spot */
export function whatView(state, act, spot) {
  const back = state.looking.whatFrom?.spot === spot.id ? state.looking.whatFrom : undefined;
  const leaving = () => close(act, spot, back?.entry);
  return [
    make(
      "div",
      { class: "what-head", id: "what-head", onkeydown: leave(leaving) },
      make("h2", { id: "what-title" }, make("span", { class: `swatch ${colourOf(state.sheet, spot.id)}`, "aria-hidden": "true" }), say("page.what-of", { spot: fullName(state.sheet, spot.id) })),
      button({ id: "what-close", label: back ? say("later.what-back", { to: back.words }) : say("later.what-done"), press: leaving }),
    ),
    ...others(state, act, spot),
    make(
      "div",
      { class: "what-sides", id: `what-sides-${spot.id}`, onkeydown: leave(leaving) },
      make("div", { class: "what-entry", id: `what-entry-${spot.id}` }, ways(act, spot), ENTRIES[whatOf(spot).by](state, act, spot)),
      make("div", { class: "what-seen", id: `what-seen-${spot.id}`, "aria-live": "polite" }, ...seen(state, act, spot)),
    ),
  ];
}

/** Escape leaves, as from any window. @param {() => void} leaving @returns {(event: KeyboardEvent) => void} */
const leave = (leaving) => (event) => {
  if (event.key === "Escape") leaving();
};

/** The other compounds, to go on with. @param {State} state @param {Act} act @param {Spot} spot */
function others({ sheet }, act, spot) {
  const rest = sheet.spots.filter((each) => each.id !== spot.id);
  return rest.length === 0
    ? []
    : [
        make(
          "div",
          { class: "chips", id: "what-others", role: "group", "aria-label": say("later.what-others") },
          ...rest.map((each) => button({ id: `what-go-${each.id}`, label: say("page.what-of", { spot: fullName(sheet, each.id) }), kind: "small", press: () => openWhat(act, each) })),
        ),
      ];
}

/** @param {Act} act @param {Spot} spot */
function ways(act, spot) {
  const { by } = whatOf(spot);
  return make(
    "fieldset",
    { class: "ways", id: `ways-${spot.id}` },
    make("legend", {}, say("later.ways")),
    ...WAYS.map((way) =>
      make(
        "div",
        { class: "way", id: `way-${way}-${spot.id}-field` },
        make("input", {
          type: "radio",
          id: `way-${way}-${spot.id}`,
          name: `way-${spot.id}`,
          value: way,
          checked: way === by,
          onchange: () => editWhat(act, spot, (what) => { what.by = /** @type {"smiles" | "groups" | "class"} */ (way); }),
        }),
        make("label", { for: `way-${way}-${spot.id}` }, say(`later.way-${way}`)),
      ),
    ),
  );
}

/** @type {Record<string, (state: State, act: Act, spot: Spot) => Element>} */
const ENTRIES = { smiles: smilesEntry, groups: groupsEntry, class: classEntry };

/** @param {State} state @param {Act} act @param {Spot} spot */
function smilesEntry(state, act, spot) {
  const id = `smiles-${spot.id}`;
  return make(
    "div",
    { id: `${id}-entry`, class: "smiles" },
    typedField(state, {
      id,
      label: say("later.smiles"),
      value: whatOf(spot).smiles,
      longest: LONGEST_SMILES,
      typed: (value) => editWhat(act, spot, (what) => { what.smiles = value; }, id),
      entered: () => leaveRead(state, act, spot),
      left: act.rest,
    }),
    make("p", { class: "aside", id: `${id}-hint` }, say("later.smiles-hint", { example: EXAMPLE })),
  );
}

/** Enter is "Done" for a line that can be read; one that cannot keeps the entry open, with its fault. @param {State} state @param {Act} act @param {Spot} spot */
async function leaveRead(state, act, spot) {
  act.rest();
  const now = () => JSON.stringify(state.sheet.spots.find((each) => each.id === spot.id)?.what);
  const entered = now();
  if (await isRead(act, questionOf(state, spot))) {
    if (state.looking.what === spot.id && now() === entered) close(act, spot);
  }
}

/** Goes back to where it was asked from. @param {Act} act @param {Spot} spot @param {string} [entry] */
function close(act, spot, entry = `what-${spot.id}`) {
  act.look({ what: undefined, whatFrom: undefined, group: undefined });
  document.getElementById(entry)?.scrollIntoView({ block: "center" });
  act.focus(entry);
}

/** What to ask about a compound. @param {State} state @param {Spot} spot */
const questionOf = ({ sheet: { sorbent, weak, strong } }, spot) => ({ ...saidOf(spot), sorbent, weak, strong });

/** @param {State} state @param {Act} act @param {Spot} spot */
function classEntry(state, act, spot) {
  const id = `class-${spot.id}`;
  const classes = [...(groupsKnown(act)?.classes ?? [])].sort((a, b) => a.name.localeCompare(b.name, language()));
  const chosen = whatOf(spot).class;
  const missing = chosen && !classes.some((each) => each.id === chosen) ? [{ value: chosen, text: chosen }] : [];
  return make(
    "div",
    { id: `${id}-entry` },
    choice(state, {
      id,
      label: say("later.class"),
      value: chosen,
      options: [{ value: "", text: say("later.class-none") }, ...missing, ...classes.map((each) => ({ value: each.id, text: each.name }))],
      chosen: (value) => editWhat(act, spot, (what) => { what.class = value; }),
    }),
    make("p", { class: "aside", id: `${id}-hint` }, say("later.class-hint")),
  );
}

/** @param {State} state @param {Act} act @param {Spot} spot */
function seen(state, act, spot) {
  const said = saidOf(spot);
  if (Object.keys(said).length === 0) return [make("p", { class: "aside", id: "what-nothing" }, say("later.what-nothing"))];
  const told = recognised(act, questionOf(state, spot));
  return told && told !== "refused" ? recognisedView(state, act, spot, told.answer) : [];
}
