// @ts-check
/** Reads what this browser kept: only what is a sheet in every part is shown. */

import { isStudyId } from "../study/ids.js";
import { ADDITIVES, AGAINST_STREAKS } from "./additive.js";
import { SETTINGS, WAYS, emptySheet } from "./sheet.js";

/** @typedef {import("./sheet.js").Sheet} Sheet */

/** What was written, where it can be read; steps that cannot be read are left out. @param {string | null} written @returns {{sheet: Sheet, before: Sheet[]} | undefined} */
export function readSheets(written) {
  try {
    const found = JSON.parse(written ?? "null");
    if (!Array.isArray(found?.before)) return undefined;
    const own = identityOf(emptySheet());
    for (const sheet of [found.sheet, ...found.before]) bring(sheet, own);
    if (isSheet(found.sheet)) return { sheet: found.sheet, before: found.before.filter(isSheet) };
  } catch {
    // what cannot be read is passed over
  }
  return undefined;
}

/** What makes a sheet a study. @param {Sheet} sheet */
const identityOf = ({ id, title, notes, created, archived, advices }) => ({ id, title, notes, created, archived, advices });

/**
 * A sheet kept before there were additives had none in any jar, and none on its shelf to choose; one kept before there were studies
 * becomes one.
 * @param {any} sheet @param {ReturnType<typeof identityOf>} own
 */
function bring(sheet, own) {
  if (!sheet || typeof sheet !== "object") return;
  if (sheet.id === undefined) Object.assign(sheet, structuredClone(own));
  if (sheet.additive !== undefined) return;
  sheet.additive = { kind: "none", text: "" };
  for (const plate of sheet.plates ?? []) plate.additive = { kind: "none", text: "" };
  sheet.shelf = [...new Set([...(sheet.shelf ?? []), ...AGAINST_STREAKS])];
}

const isAdditive = (/** @type {any} */ additive) => ADDITIVES.includes(additive?.kind) && text(additive.text);

const text = (/** @type {unknown} */ value) => typeof value === "string";
const texts = (/** @type {unknown} */ value) => Array.isArray(value) && value.every(text);
const all = (/** @type {unknown} */ list, /** @type {(each: any) => boolean} */ check) => Array.isArray(list) && list.every(check);

/** @param {any} sheet @returns {sheet is Sheet} */
function isSheet(sheet) {
  return (
    isStudyId(sheet?.id) &&
    typeof sheet.archived === "boolean" &&
    all(sheet.advices, isAdvice) &&
    [sheet.title, sheet.notes, sheet.created, sheet.sorbent, sheet.weak, sheet.strong, sheet.amount, sheet.jar, sheet.example, sheet.windowKind].every(text) &&
    SETTINGS.includes(sheet.setting) &&
    texts(sheet.shelf) &&
    isAdditive(sheet.additive) &&
    texts(sheet.apart) &&
    texts(sheet.window) &&
    sheet.window.length === 2 &&
    sheet.spots?.length > 0 &&
    all(sheet.spots, (spot) => text(spot?.id) && text(spot.name) && (spot.what === undefined || isIdentity(spot.what))) &&
    all(sheet.plates, isPlate) &&
    (sheet.column === undefined || isColumn(sheet.column)) &&
    (sheet.checks === undefined || isChecks(sheet.checks))
  );
}

/** @param {any} what */
const isIdentity = (what) =>
  WAYS.includes(what?.by) && text(what.smiles) && text(what.class) && typeof what.groups === "object" && what.groups !== null && Object.values(what.groups).every(text);

/** @param {any} plate */
function isPlate(plate) {
  const fields = ["id", "heightMm", "widthMm", "startMm", "frontMm", "weak", "strong", "eluent"];
  return fields.every((field) => text(plate?.[field])) && isAdditive(plate.additive) && texts(plate.notSeen) && isPhoto(plate.photo) && all(plate.lanes, isLane);
}

/** @param {any} photo */
const isPhoto = (photo) => photo === undefined || (text(photo?.sha256) && text(photo.light));

/** @param {any} lane */
const isLane = (lane) =>
  text(lane?.id) &&
  all(lane.readings, (each) => text(each?.id) && texts(each.spots) && ["mm", "rf"].includes(each.by) && text(each.typed));

/** @param {any} column */
const isColumn = (column) =>
  [column?.target, column?.massMg, column?.loadMl, column?.flowMlMin, column?.fractionMl, column?.elution].every(text) && isBed(column) && all(column.runs, isRun);

/** @param {any} run */
const isRun = (run) =>
  [run?.id, run?.weak, run?.strong, run?.massMg, run?.fractionMl, run?.collectedFromMl].every(text) &&
  isBed(run) &&
  all(run.tubes, ({ id, marks }) => text(id) && (marks === undefined || all(marks, (mark) => text(mark?.spot) && typeof mark.strength === "number"))) &&
  all(run.flasks, (flask) => [flask?.id, flask?.fromTube, flask?.toTube, flask?.tareGrams, flask?.grossGrams].every(text));

/** What is common to what is planned and what was run. @param {any} either */
const isBed = ({ bed, loading, steps }) => text(bed?.kind) && text(loading) && all(steps, (step) => text(step?.eluent) && text(step.volumeMl));

/** @param {any} checks */
const isChecks = ({ identity, purity, hrf, reaction }) =>
  (!identity || (all(identity.references, isNamed) && all(identity.candidates, isNamed) && all(identity.plates, (plate) => isEluted(plate) && text(plate.startMm) && text(plate.frontMm) && all(plate.lanes, isCompared)))) &&
  (!purity || ([purity.rf, purity.spotsSeen, purity.volumeUl, purity.concentrationPercent, purity.touches].every(text) && texts(purity.seenBy))) &&
  (!hrf || (text(hrf.system) && texts(Object.values(hrf.measured)) && all(hrf.spots, (spot) => isNamed(spot) && text(spot.hrf)))) &&
  (!reaction || (text(reaction.expectedMinutes) && isEluted(reaction) && all(reaction.species, (one) => isNamed(one) && text(one.part)) && all(reaction.plates, isTimed)));

/** @param {any} one */
const isNamed = (one) => text(one?.id) && text(one.name);

/** @param {any} one with an eluent */
const isEluted = (one) => [one?.weak, one?.strong, one?.eluent].every(text) && isAdditive(one.additive);

/** @param {any} lane */
const isCompared = (lane) => text(lane?.id) && text(lane.role) && all(lane.readings, (seen) => text(seen?.id) && text(seen.centreMm ?? seen.rf));

/** @param {any} plate */
const isTimed = (plate) => text(plate?.id) && text(plate.minutes) && all(plate.marks, (mark) => text(mark?.species) && typeof mark.strength === "number");

/** @param {any} advice */
const isAdvice = (advice) => texts(advice?.after) && all(advice.spots, (each) => text(each?.spot)) && typeof advice.percentStrong === "number";
