// @ts-check
/** What the unknown is compared with: the references, by name, and a folded list of all that it might be. */

import { make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { LONGEST_SMILES } from "../line.js";
import { say } from "../texts.js";
import { editIdentity } from "./lane-moves.js";
import { addReference, freeCheckId, removeReference } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Identity} Identity @typedef {import("./sheet.js").Lane} Lane @typedef {import("./sheet.js").Said} Said */

/** More references than lanes of a plate hold, and more candidates than anybody looks through. */
const MOST_REFERENCES = 6;
const MOST_CANDIDATES = 50;

/** A reference by its name, by its number where nobody named it. @param {Identity} identity @param {string} id */
export function referenceName({ references }, id) {
  const at = references.findIndex((each) => each.id === id);
  return references[at]?.name.trim() || (references.length > 1 ? say("later.checks-reference-number", { number: at + 1 }) : say("later.checks-lane-reference"));
}

/** What was spotted in a lane, in words. @param {Identity} identity @param {Lane} lane @param {number} number */
export function laneWords(identity, lane, number) {
  const reference = lane.reference ? referenceName(identity, lane.reference) : "";
  return say(`later.checks-lane-is-${lane.role}`, { number, reference });
}

/** @param {State} state @param {Act} act @param {Identity} identity @param {State} wrong the state with the faults that belong here */
export function referencesEntry(state, act, identity, wrong) {
  const edit = (/** @type {(mine: Identity) => void} */ change, /** @type {string} */ together = "") => editIdentity(state, act, change, together || undefined);
  const { references } = identity;
  return make(
    "div",
    { class: "check-references", id: "check-references" },
    ...references.map(({ id, name }, i) =>
      make(
        "div",
        { class: "check-name", id: `reference-${id}-line` },
        typedField(wrong, {
          id: `reference-${id}`,
          label: references.length > 1 ? say("later.checks-reference-numbered", { number: i + 1 }) : say("later.checks-reference"),
          value: name,
          typed: (typed) => edit((mine) => Object.assign(mine.references[i], { name: typed }), `reference-${id}`),
          entered: () => {
            act.rest();
            act.focus(firstEmpty(identity) ?? `reference-${id}`);
          },
          left: act.rest,
        }),
        references.length > 1 &&
          button({
            id: `unreference-${id}`,
            label: "\u00d7",
            name: say("later.checks-reference-remove", { reference: referenceName(identity, id) }),
            kind: "small",
            press: () => {
              edit((mine) => removeReference(mine, id));
              act.focus("add-reference");
            },
          }),
      ),
    ),
    button({
      id: "add-reference",
      label: say("later.checks-reference-add"),
      disabled: references.length >= MOST_REFERENCES,
      press: () => {
        const id = freeCheckId(identity, "k");
        edit((mine) => addReference(mine));
        act.focus(`reference-${id}`);
      },
    }),
  );
}

/** The button of the first lane that nothing was seen in. @param {Identity} identity @param {string} [after] the lane to begin after */
export function firstEmpty({ plates }, after) {
  const lanes = plates.flatMap((plate) => plate.lanes);
  const from = lanes.findIndex(({ id }) => id === after) + 1;
  const next = [...lanes.slice(from), ...lanes.slice(0, from)].find(({ readings }) => readings.length === 0);
  return next && `add-check-${next.id}`;
}

/** What the references are: it helps to find where they part. @param {State} state @param {Act} act @param {Identity} identity @param {State} wrong */
export function referencesWhat(state, act, identity, wrong) {
  return make(
    "details",
    { id: "check-what", open: identity.references.some(({ smiles }) => smiles) },
    make("summary", {}, say("later.checks-reference-what")),
    make("p", { class: "aside" }, say("later.checks-reference-what-why")),
    ...identity.references.map((one, i) =>
      typedField(wrong, {
        id: `smiles-${one.id}`,
        label: say("later.checks-reference-smiles", { reference: referenceName(identity, one.id) }),
        value: one.smiles ?? "",
        longest: LONGEST_SMILES,
        typed: (typed) => editIdentity(state, act, (mine) => Object.assign(mine.references[i], { by: "smiles", smiles: typed }), `smiles-${one.id}`),
        left: act.rest,
      }),
    ),
  );
}

/** All that it might be. @param {State} state @param {Act} act @param {Identity} identity @param {State} wrong */
export function candidatesEntry(state, act, identity, wrong) {
  const { candidates } = identity;
  const edit = (/** @type {(mine: Identity["candidates"]) => void} */ change, /** @type {string} */ together = "") => editIdentity(state, act, (mine) => change(mine.candidates), together || undefined);
  const field = (/** @type {number} */ i, /** @type {"name" | "rf" | "hrf" | "smiles"} */ side) => {
    const { id, ...rest } = candidates[i];
    const entry = `${side}-${id}`;
    return typedField(wrong, {
      id: entry,
      label: say(`later.checks-candidate-${side}`),
      value: rest[side] ?? "",
      mode: side.endsWith("rf") ? "decimal" : "text",
      longest: side === "smiles" ? LONGEST_SMILES : undefined,
      typed: (typed) => edit((mine) => Object.assign(mine[i], side === "smiles" ? { by: "smiles", smiles: typed } : { [side]: typed }), entry),
      left: act.rest,
    });
  };
  return make(
    "details",
    { id: "check-candidates", open: candidates.length > 0 },
    make("summary", {}, candidates.length ? say("later.checks-candidates-count", { count: candidates.length }) : say("later.checks-candidates")),
    make("p", { class: "aside" }, say("later.checks-candidates-why")),
    ...candidates.map(({ id, name }, i) =>
      make(
        "div",
        { class: "check-candidate", id: `candidate-${id}` },
        field(i, "name"),
        field(i, "rf"),
        state.sheet.checks?.hrf && field(i, "hrf"),
        field(i, "smiles"),
        button({
          id: `uncandidate-${id}`,
          label: "\u00d7",
          name: say("later.checks-candidate-remove", { name: name.trim() || String(i + 1) }),
          kind: "small",
          press: () => {
            edit((mine) => mine.splice(i, 1));
            act.focus("add-candidate");
          },
        }),
      ),
    ),
    button({
      id: "add-candidate",
      label: say("later.checks-candidate-add"),
      disabled: candidates.length >= MOST_CANDIDATES,
      press: () => {
        const id = freeCheckId(identity, "n");
        edit((mine) => mine.push({ id, name: "" }));
        act.focus(`name-${id}`);
      },
    }),
  );
}
