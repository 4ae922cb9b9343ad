// @ts-check
/** The plates that the answer rests on, one line each. */

import { make } from "../dom.js";
import { additiveWords } from "../sheet/additive.js";
import { rfOf } from "../sheet/geometry.js";
import { givenOn } from "../sheet/sheet.js";
import { marked, say } from "../texts.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("../sheet/sheet.js").Plate} Plate */

/** @param {Sheet} sheet @param {any} library @returns {Element[]} */
export function platesRun(sheet, library) {
  const run = sheet.plates.map((plate, i) => ({ plate, number: i + 1 })).filter(({ plate }) => givenOn(plate).length > 0 && plate.eluent.trim() !== "");
  if (run.length === 0) return [];
  return [
    make(
      "div",
      { id: "card-runs" },
      make("h3", {}, say("page.card-runs")),
      make("ul", { class: "short" }, ...run.map(({ plate, number }) => make("li", {}, sentence(sheet, plate, number, library)))),
    ),
  ];
}

/** @param {Sheet} sheet @param {Plate} plate @param {number} number @param {any} library */
function sentence(sheet, plate, number, library) {
  const solvent = (/** @type {string} */ id) => library.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  const spot = (/** @type {string} */ id) => sheet.spots.find((each) => each.id === id)?.name ?? id;
  const readings = givenOn(plate).map((reading) => {
    const rf = rfOf(plate, reading);
    const name = reading.spots.map(spot).join(" + ") || say("page.card-unlabelled");
    return rf === undefined ? name : say("page.card-reading", { spot: name, rf });
  });
  const missed = plate.notSeen.length ? [say("page.card-not-seen", { spots: plate.notSeen.map(spot).join(", ") })] : [];
  const eluent = plate.eluent.includes(":") || plate.eluent.includes("%") ? plate.eluent : `${plate.eluent} %`;
  const added = additiveWords(plate.additive);
  return say("page.card-run", { number, weak: solvent(plate.weak), strong: solvent(plate.strong), eluent: added ? say("page.eluent-with", { eluent: marked(eluent), additive: added }) : marked(eluent), spots: [...readings, ...missed].join("; ") });
}
