// @ts-check
/** The entries of the sheet: solvents, spots, plates. Draws them from the sheet and writes edits back into it. */

import { PAIRS, SETTINGS, freeId, freeName } from "./draft.js";
import { byId, make } from "./dom.js";
import { decimal } from "./numbers.js";
import { drawPlate } from "./plate.js";
import { say } from "./texts.js";

/** @typedef {import("./draft.js").Sheet} Sheet */

/**
 * Draws all entries.
 * @param {Sheet} sheet
 * @param {() => void} changed told after each edit
 */
export function drawForm(sheet, changed) {
  const again = () => {
    drawForm(sheet, changed);
    changed();
  };
  byId("example-mark").toggleAttribute("hidden", !sheet.example);
  byId("frame").replaceChildren(pair(sheet, again), setting(sheet, changed), amount(sheet, changed));
  byId("spots").replaceChildren(...sheet.spots.map((_, i) => spot(sheet, i, changed, again)));
  byId("plate-list").replaceChildren(...sheet.plates.map((_, i) => plate(sheet, i, changed, again)));
}

/** Adds a spot with the next free letter. @param {Sheet} sheet */
export function addSpot(sheet) {
  sheet.spots.push({ id: freeId(sheet), name: freeName(sheet) });
}

/** Adds a plate. @param {Sheet} sheet @param {string} eluent */
export function addPlate(sheet, eluent) {
  sheet.plates.push({ eluent, rf: {} });
}

/** @param {Sheet} sheet @param {() => void} again */
function pair(sheet, again) {
  const select = make(
    "select",
    { id: "pair" },
    ...PAIRS.map((each, i) =>
      make("option", { value: i, selected: i === sheet.pair }, say("page.pair-option", each)),
    ),
  );
  select.addEventListener("change", () => {
    sheet.pair = Number(select.value);
    again();
    byId("pair").focus();
  });
  return labelled("page.pair", {}, select);
}

/** @param {Sheet} sheet @param {() => void} changed */
function setting(sheet, changed) {
  const select = make(
    "select",
    { id: "setting" },
    ...SETTINGS.map((each) =>
      make("option", { value: each, selected: each === sheet.setting }, say(`page.setting-${each}`)),
    ),
  );
  select.addEventListener("change", () => {
    sheet.setting = select.value;
    changed();
  });
  return labelled("page.setting", {}, select);
}

/** @param {Sheet} sheet @param {() => void} changed */
function amount(sheet, changed) {
  const input = entry("amount", sheet.amount, "decimal", (typed) => {
    sheet.amount = typed;
    changed();
  });
  return labelled("page.amount", {}, input);
}

/** @param {Sheet} sheet @param {number} i @param {() => void} changed @param {() => void} again */
function spot(sheet, i, changed, again) {
  const each = sheet.spots[i];
  const input = entry(`spot-${each.id}`, each.name, "text", (typed) => {
    each.name = typed;
    renamePlates(sheet, each.id);
    changed();
  });
  const item = make("li", {}, labelled("page.spot", { number: i + 1 }, input));
  if (sheet.spots.length > 1) {
    item.append(
      remove(say("page.remove-spot", { spot: shownName(each) }), () => {
        sheet.spots.splice(i, 1);
        for (const one of sheet.plates) delete one.rf[each.id];
        again();
        byId("add-spot").focus();
      }),
    );
  }
  return item;
}

/** After a name changed: labels and drawings follow, entries stay as they are. @param {Sheet} sheet @param {string} id */
function renamePlates(sheet, id) {
  const each = sheet.spots.find((one) => one.id === id);
  if (!each) return;
  sheet.plates.forEach((_, index) => {
    const label = document.querySelector(`label[for="rf-${index}-${id}"]`);
    if (label) label.textContent = say("page.rf", { spot: shownName(each) });
    redraw(sheet, index);
  });
}

/** @param {Sheet} sheet @param {number} index @param {() => void} changed @param {() => void} again */
function plate(sheet, index, changed, again) {
  const each = sheet.plates[index];
  const eluent = entry(`eluent-${index}`, each.eluent, "text", (typed) => {
    each.eluent = typed;
    redraw(sheet, index);
    changed();
  });
  const readings = sheet.spots.map((one) =>
    labelled(
      "page.rf",
      { spot: shownName(one) },
      entry(`rf-${index}-${one.id}`, each.rf[one.id] ?? "", "decimal", (typed) => {
        each.rf[one.id] = typed;
        redraw(sheet, index);
        changed();
      }),
    ),
  );
  const box = make(
    "fieldset",
    {},
    make("legend", {}, say("page.plate", { number: index + 1 })),
    make("div", { class: "drawing", id: `drawing-${index}` }, drawing(sheet, index)),
    make(
      "div",
      { class: "entries" },
      labelled("page.eluent", PAIRS[sheet.pair], eluent),
      make("div", { class: "readings" }, ...readings),
      remove(say("page.remove-plate", { number: index + 1 }), () => {
        sheet.plates.splice(index, 1);
        again();
        byId("add-plate").focus();
      }),
    ),
  );
  return box;
}

/** @param {Sheet} sheet @param {number} index */
function redraw(sheet, index) {
  byId(`drawing-${index}`).replaceChildren(drawing(sheet, index));
}

/** @param {Sheet} sheet @param {number} index */
function drawing(sheet, index) {
  const each = sheet.plates[index];
  const number = index + 1;
  const lanes = sheet.spots.map((one) => {
    const rf = decimal(each.rf[one.id] ?? "");
    return rf !== undefined && rf >= 0 && rf <= 1 ? { name: shownName(one), rf } : undefined;
  });
  const words = lanes.flatMap((one) => (one ? [say("page.spot-shown", { spot: one.name, rf: one.rf })] : []));
  const label = words.length
    ? say("page.plate-shown", { number, spots: words.join(", ") })
    : say("page.plate-empty", { number });
  return make(
    "figure",
    {},
    drawPlate(lanes, label, "measured"),
    make("figcaption", {}, each.eluent.trim() || "\u00a0"),
  );
}

/** @param {import("./draft.js").Spot} one */
const shownName = (one) => one.name.trim() || say("page.unnamed");

/** @param {string} key @param {Record<string, string | number>} values @param {HTMLElement} field */
function labelled(key, values, field) {
  return make("div", { class: "field" }, make("label", { for: field.id }, say(key, values)), field);
}

/** @param {string} id @param {string} value @param {"text" | "decimal"} mode @param {(typed: string) => void} typed */
function entry(id, value, mode, typed) {
  const input = make("input", { id, value, type: "text", inputmode: mode, autocomplete: "off", spellcheck: "false" });
  input.addEventListener("input", () => typed(input.value));
  return input;
}

/** @param {string} label @param {() => void} act */
function remove(label, act) {
  const button = make("button", { type: "button", class: "small" }, label);
  button.addEventListener("click", act);
  return button;
}
