// @ts-check
/** What is asked about a reaction, and which entry each field of it came from. */

import { orAsTyped } from "../numbers.js";
import { say } from "../texts.js";
import { askedEluent, where } from "./ask.js";
import { BASELINE, minutesOf, reactionOf, rfOf, whatIs } from "./reaction-sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("./reaction-sheet.js").Reaction} Reaction @typedef {import("./reaction-sheet.js").TimePlate} TimePlate */

/** Whether anything was looked at on a plate; one that was only taken says nothing yet. @param {TimePlate} plate */
const isLookedAt = ({ marks, baseline }) => marks.length > 0 || baseline !== undefined;

/** @param {State} state @returns {import("./ask.js").Question} nothing to ask before there is a plate */
export function questionOf({ sheet }) {
  const reaction = reactionOf(sheet);
  const entries = new Map([["species", "reaction-species"], ["plates", "reaction-strip"], ["expectedMinutes", "reaction-expected"], ["eluent", "eluent-reaction"]]);
  const names = namesOf(reaction);
  const species = reaction.species.map((one, i) => {
    const place = `species[${i}]`;
    for (const [field, id] of [["", "species"], [".name", "species"], [".part", "part"], [".rf", "rf"]]) entries.set(place + field, `${id}-${one.id}`);
    return { name: names.get(one.id), part: one.part, ...whatIs(sheet, one), ...where("rf", rfOf(reaction, sheet, one.id)) };
  });
  const plates = reaction.plates.filter(isLookedAt).map((plate, i) => askedPlate(reaction, sheet, plate, `plates[${i}]`, entries));
  const { expectedMinutes } = reaction;
  const expected = expectedMinutes.trim() === "" ? {} : { expectedMinutes: orAsTyped(minutesOf(expectedMinutes), expectedMinutes) };
  return { check: "reaction", entries, body: plates.length === 0 ? undefined : { species, plates, ...askedEluent(sheet, reaction), ...expected } };
}

/** @param {Reaction} reaction @param {State["sheet"]} sheet @param {TimePlate} plate @param {string} place @param {Map<string, string>} entries */
function askedPlate(reaction, sheet, plate, place, entries) {
  const names = namesOf(reaction);
  for (const field of ["", ".minutes", ".marks"]) entries.set(place + field, `minutes-${plate.id}`);
  entries.set(`${place}.baseline`, `grade-${plate.id}-${BASELINE}`);
  const marks = plate.marks.map(({ species, strength }, i) => {
    const at = `${place}.marks[${i}]`;
    for (const field of ["", ".species", ".strength"]) entries.set(at + field, `grade-${plate.id}-${species}`);
    entries.set(`${at}.rf`, `rf-${species}`);
    return { species: names.get(species), strength, ...where("rf", rfOf(reaction, sheet, species, plate)) };
  });
  const { minutes, baseline } = plate;
  return { minutes: orAsTyped(minutesOf(minutes), minutes), marks, ...(baseline === undefined ? {} : { baseline }) };
}

/** What each compound is called, by its id. @param {Reaction} reaction @returns {Map<string, string>} */
export const namesOf = ({ species }) => new Map([...species.map((one) => /** @type {[string, string]} */ ([one.id, one.name.trim()])), [BASELINE, say("later.checks-reaction-baseline")]]);
