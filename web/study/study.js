// @ts-check
/** The sheet as the study that is kept, and back: numbers as numbers where what was typed is one, else as it was typed. */

import { oneLine } from "../line.js";
import { decimal, percentStrong, written } from "../numbers.js";

/** @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("../sheet/sheet.js").Plate} Plate @typedef {import("../sheet/sheet.js").Spot} Spot */

const ORIGIN = { yes: "example", changed: "from-example", no: "own" };

/** @param {Sheet} sheet @param {Date} [now] */
export function studyOf(sheet, now = new Date()) {
  const { weak, strong, additive, windowKind, apart } = sheet;
  return kept({
    format: "midplate-study",
    version: 5,
    id: sheet.id,
    title: sheet.title,
    created: sheet.created,
    modified: now.toISOString(),
    archived: sheet.archived,
    origin: ORIGIN[sheet.example],
    sorbent: sheet.sorbent,
    setting: sheet.setting,
    shelf: sheet.shelf,
    spots: sheet.spots.map(({ id, name, what }) => ({ id, name, ...(what ? keptWhat(what) : {}) })),
    plates: sheet.plates.map(keptPlate),
    next: { weak, strong, additive, window: sheet.window.map(entered), windowKind, apart, amountMl: entered(sheet.amount), jarDiameterMm: entered(sheet.jar) },
    advices: sheet.advices,
    ...(sheet.column ? { column: keptColumn(sheet.column) } : {}),
    ...(sheet.checks ? { checks: numbersIn(sheet.checks, entered, keptStep) } : {}),
    notes: sheet.notes,
  });
}

/** @param {any} study of version 5, as the server gives it @returns {Sheet} */
export function sheetOf(study) {
  const { id, title, notes, created, archived, origin, sorbent, setting, shelf, next, advices, column, checks } = study;
  const { weak, strong, additive, windowKind, apart } = next;
  const example = /** @type {"yes" | "changed" | "no"} */ (Object.entries(ORIGIN).find(([, name]) => name === origin)?.[0] ?? "no");
  return structuredClone({
    id,
    title,
    notes,
    created,
    archived,
    example,
    sorbent,
    setting,
    shelf,
    weak,
    strong,
    additive,
    window: next.window.map(typed),
    windowKind,
    apart,
    amount: typed(next.amountMl),
    jar: typed(next.jarDiameterMm),
    spots: study.spots.length ? study.spots.map(spotOnSheet) : [{ id: "s1", name: "A" }],
    plates: study.plates.map(plateOnSheet),
    advices,
    ...(column ? { column: { target: "", ...numbersIn(column, typed, stepOnSheet) } } : {}),
    ...(checks ? { checks: numbersIn(checks, typed, stepOnSheet) } : {}),
  });
}

/** What a study holds, as one text that is the same for the same contents: neither when it was kept nor the order of its fields counts. @param {any} study */
export function contentsOf(study) {
  const { created, modified, ...rest } = studyOf(sheetOf(study));
  return JSON.stringify(sorted(rest));
}

/** A number where what was typed is one; else as it was typed. @param {string} text */
function entered(text) {
  const number = decimal(text);
  return number !== undefined && Number.isFinite(number) ? number : text;
}

/** @param {number | string} value */
const typed = (value) => (typeof value === "number" ? written(value) : value);

/** @param {import("../sheet/sheet.js").Identity} what */
function keptWhat({ by, smiles, groups, class: kind }) {
  const counts = Object.entries(groups).map(([id, count]) => [id, entered(count)]);
  return { by, ...(smiles ? { smiles } : {}), ...(counts.length ? { groups: Object.fromEntries(counts) } : {}), ...(kind ? { class: kind } : {}) };
}

/** @param {any} spot @returns {Spot} */
function spotOnSheet({ id, name, by, smiles, groups, class: kind }) {
  if (!by) return { id, name };
  const counts = Object.entries(groups ?? {}).map(([group, count]) => [group, typed(count)]);
  return { id, name, what: { by, smiles: smiles ?? "", groups: Object.fromEntries(counts), class: kind ?? "" } };
}

/** @param {Plate} plate */
function keptPlate(plate) {
  const { heightMm, widthMm, startMm, frontMm, ...rest } = plate;
  const percent = percentStrong(plate.eluent);
  return {
    ...rest,
    heightMm: entered(heightMm),
    widthMm: entered(widthMm),
    startMm: entered(startMm),
    frontMm: entered(frontMm),
    ...(percent !== undefined && Number.isFinite(percent) ? { percentStrong: percent } : {}),
    lanes: plate.lanes.map(({ id, readings }) => ({ id, readings: readings.map(keptReading) })),
  };
}

/** @param {import("../sheet/sheet.js").Reading} reading */
function keptReading({ by, typed: text, ...rest }) {
  return { ...rest, [by === "mm" ? "centreMm" : "rf"]: entered(text) };
}

/** What the page has no entry for stays on the plate as it is. @param {any} plate @returns {Plate} */
export function plateOnSheet({ percentStrong: percent, ...plate }) {
  const { heightMm, widthMm, startMm, frontMm } = plate;
  return {
    ...plate,
    heightMm: typed(heightMm),
    widthMm: typed(widthMm),
    startMm: typed(startMm),
    frontMm: typed(frontMm),
    eluent: plate.eluent === "" && percent !== undefined ? `${written(percent)} %` : plate.eluent,
    lanes: plate.lanes.map((/** @type {any} */ { id, readings }) => ({ id, readings: readings.map(readingOnSheet) })),
  };
}

/** @param {any} reading @returns {import("../sheet/sheet.js").Reading} */
function readingOnSheet({ centreMm, rf, ...rest }) {
  return centreMm === undefined ? { ...rest, by: "rf", typed: typed(rf) } : { ...rest, by: "mm", typed: typed(centreMm) };
}

/** What of a column is a number, and what of checks; what was measured has one by each name. */
const NUMBERS = "grams massMg loadMl flowMlMin fractionMl collectedFromMl diameterMm bedMm volumeMl fromTube toTube tareGrams grossGrams startMm frontMm centreMm sizeMm rf hrf spotsSeen volumeUl concentrationPercent touches minutes expectedMinutes".split(" ");

/** A column, or checks, with each number, and each eluent, put into form. @param {any} value @param {(number: any) => any} number @param {(step: any) => any} step @returns {any} */
function numbersIn(value, number, step) {
  if (Array.isArray(value)) return value.map((each) => numbersIn(each, number, step));
  if (!value || typeof value !== "object") return value;
  const formed = Object.entries(value).map(([key, each]) => [key, key === "measured" ? numbersUnder(each, number) : NUMBERS.includes(key) && typeof each !== "object" ? number(each) : numbersIn(each, number, step)]);
  return "eluent" in value ? step(Object.fromEntries(formed)) : Object.fromEntries(formed);
}

/** @param {Record<string, any>} each @param {(number: any) => any} number */
const numbersUnder = (each, number) => Object.fromEntries(Object.entries(each).map(([name, value]) => [name, number(value)]));

/** @param {import("../column/sheet.js").Column} column */
function keptColumn(column) {
  const { target, ...rest } = numbersIn(column, entered, keptStep);
  return { ...(target ? { target } : {}), ...rest };
}

/** @param {any} step */
function keptStep(step) {
  const percent = percentStrong(step.eluent);
  return percent !== undefined && Number.isFinite(percent) ? { ...step, percentStrong: percent } : step;
}

/** @param {any} step */
const stepOnSheet = ({ percentStrong: percent, ...step }) => ({ ...step, eluent: step.eluent === "" && percent !== undefined ? `${written(percent)} %` : step.eluent });

/** As a file can hold it: only notes have several lines. @param {any} study @returns {any} */
const kept = ({ notes, ...rest }) => ({ ...formed(rest, (text) => oneLine(whole(text))), notes: whole(notes) });

/** With half characters, which no file can hold, replaced. @param {string} text */
const whole = (text) => text.replace(/\p{Surrogate}/gu, "\ufffd");

/** With each text in it put into form. @param {any} value @param {(text: string) => string} form @returns {any} */
function formed(value, form) {
  if (typeof value === "string") return form(value);
  if (Array.isArray(value)) return value.map((each) => formed(each, form));
  if (value && typeof value === "object") return Object.fromEntries(Object.entries(value).map(([key, each]) => [form(key), formed(each, form)]));
  return value;
}

/** @param {any} value @returns {any} */
function sorted(value) {
  if (Array.isArray(value)) return value.map(sorted);
  if (!value || typeof value !== "object") return value;
  return Object.fromEntries(Object.keys(value).sort().map((key) => [key, sorted(value[key])]));
}
