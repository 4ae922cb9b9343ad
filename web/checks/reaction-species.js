// @ts-check
/** What is looked for on the plates of a reaction, and what they run in. */

import { make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { faultAt } from "../faults.js";
import { COLOURS, givenOn } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { eluentEntry, eluentWords } from "./eluent.js";
import { MOST_SPECIES, addSpecies, editReaction, reactionOf, removeSpecies, rfOf, setRf } from "./reaction-sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./reaction-sheet.js").Species} Species @typedef {import("./reaction-sheet.js").Reaction} Reaction */

const PARTS = /** @type {const} */ (["start", "product", "other"]);

/** Where there is little room it is folded from the beginning. */
const wide = window.matchMedia("(min-width: 700px)");

/** Folded in a study that has plates: it is said once. @param {State} state with the faults at their entries @param {Act} act */
export function setupView(state, act) {
  const reaction = reactionOf(state.sheet);
  const { told } = faultAt(state, "reaction-species");
  return make(
    "details",
    { id: "reaction-setup", open: reaction.plates.length === 0 && wide.matches },
    make("summary", { id: "reaction-setup-words" }, say("later.checks-reaction-setup", { names: reaction.species.map(({ name }) => name.trim() || say("page.unnamed")).join(", "), eluent: eluentWords(state, reaction) || say("later.checks-reaction-no-eluent") })),
    make("div", { id: "reaction-species", class: "species-list" }, ...reaction.species.map((one, i) => speciesEntry(state, act, reaction, one, i))),
    told,
    make(
      "div",
      { class: "chips", id: "reaction-more" },
      reaction.species.length < MOST_SPECIES && button({ id: "reaction-add", label: say("later.checks-reaction-add"), press: () => add(act) }),
      reaction.plates.length > 0 &&
        reaction.plates.every(({ baseline }) => baseline === undefined) &&
        button({ id: "reaction-baseline", label: say("later.checks-reaction-add-baseline"), press: () => editReaction(act, (mine) => mine.plates.forEach((plate) => (plate.baseline = 0))) }),
    ),
    runEntries(state, act, reaction),
  );
}

/** @param {Act} act */
function add(act) {
  let id = "";
  editReaction(act, (reaction) => (id = addSpecies(reaction).id));
  act.focus(`species-${id}`);
  const entry = document.getElementById(`species-${id}`);
  if (entry instanceof HTMLInputElement) entry.select();
}

/** @param {State} state @param {Act} act @param {Reaction} reaction @param {Species} one @param {number} i */
function speciesEntry(state, act, reaction, one, i) {
  const { id } = one;
  const edit = (/** @type {Partial<Species>} */ change, /** @type {string} */ together) => editReaction(act, (mine) => mine.species.filter((each) => each.id === id).forEach((each) => Object.assign(each, change)), together);
  const rf = rfOf(reaction, state.sheet, id);
  return make(
    "div",
    { id: `species-entry-${id}`, class: `species-entry colour-${i % COLOURS}` },
    typedField(state, { id: `species-${id}`, label: say(`later.checks-reaction-part-${one.part}`), value: one.name, typed: (name) => edit({ name }, `species-${id}`), left: act.rest }),
    reaction.plates.length > 0 &&
      typedField(state, {
        id: `rf-${id}`,
        label: say("page.rf"),
        value: rf,
        mode: "decimal",
        typed: (typed) => editReaction(act, (mine, sheet) => setRf(mine, sheet, id, rfOf(mine, sheet, id), typed), `rf-${id}`),
        left: act.rest,
      }),
    ...(i > 1 || one.part === "other" ? [partChoice(state, one, edit), removeButton(act, one)] : []),
    links(state, act, one),
  );
}

/** @param {State} state @param {Species} one @param {(change: Partial<Species>, together: string) => void} edit */
const partChoice = (state, { id, part }, edit) =>
  choice(state, {
    id: `part-${id}`,
    label: say("later.checks-reaction-part"),
    value: part,
    options: PARTS.map((value) => ({ value, text: say(`later.checks-reaction-part-${value}`) })),
    chosen: (value) => edit({ part: /** @type {Species["part"]} */ (value) }, ""),
  });

/** @param {Act} act @param {Species} one */
const removeButton = (act, { id, name }) =>
  button({
    id: `species-remove-${id}`,
    label: "\u00d7",
    name: say("page.remove-spot", { spot: name.trim() || say("page.unnamed") }),
    kind: "small",
    press: () => {
      editReaction(act, (reaction) => removeSpecies(reaction, id));
      act.focus("reaction-add");
    },
  });

/** Which compound of the sample it is: from there come its Rf and what it is. @param {State} state @param {Act} act @param {Species} one */
function links({ sheet }, act, one) {
  if (!sheet.plates.some((plate) => givenOn(plate).length > 0) && !sheet.spots.some(({ what }) => what !== undefined)) return undefined;
  return make(
    "div",
    { class: "species-links", id: `links-${one.id}` },
    make("span", { class: "entry-words", id: `links-words-${one.id}` }, say("later.checks-reaction-is")),
    make(
      "div",
      { class: "chips", role: "group", "aria-labelledby": `links-words-${one.id}` },
      ...sheet.spots.map(({ id, name }) => button({ id: `link-${one.id}-${id}`, label: name.trim() || say("page.unnamed"), pressed: one.spot === id, press: () => link(act, one.id, id) })),
    ),
  );
}

/** Ties a compound to one of the sample, or unties it where it was that; it then runs where the sample's plates show it. @param {Act} act @param {string} id @param {string} spot */
function link(act, id, spot) {
  editReaction(act, (reaction, sheet) => {
    const mine = reaction.species.find((each) => each.id === id);
    if (!mine) return;
    if (mine.spot === spot) {
      delete mine.spot;
      return;
    }
    for (const other of reaction.species) if (other.spot === spot) delete other.spot;
    mine.spot = spot;
    const marks = reaction.plates.flatMap((plate) => plate.marks).filter((mark) => mark.species === id);
    const typed = marks.map(({ rf }) => rf);
    for (const mark of marks) delete mark.rf;
    const rf = rfOf(reaction, sheet, id);
    marks.forEach((mark, i) => {
      const its = rf === "" ? typed[i] : rf;
      if (its !== undefined) mark.rf = its;
    });
  });
}

/** What the plates run in, and how long it is expected to take. @param {State} state @param {Act} act @param {Reaction} reaction */
const runEntries = (state, act, reaction) =>
  make(
    "div",
    { class: "reaction-run", id: "reaction-run" },
    eluentEntry(state, act, { id: "reaction", eluent: reaction, solvents: "later.checks-reaction-solvents", changed: (change, together) => editReaction(act, change, together) }),
    typedField(state, {
      id: "reaction-expected",
      label: say("later.checks-reaction-expected"),
      value: reaction.expectedMinutes,
      mode: "decimal",
      typed: (expectedMinutes) => editReaction(act, (mine) => (mine.expectedMinutes = expectedMinutes), "reaction-expected"),
      left: act.rest,
    }),
  );
