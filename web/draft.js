// @ts-check
/** What stands on the sheet, kept in this browser so that a reload loses nothing. */

/**
 * @typedef {{id: string, name: string}} Spot
 * @typedef {{eluent: string, rf: Record<string, string>}} Plate what was typed; rf by the spot's id
 * @typedef {{pair: number, setting: string, amount: string, spots: Spot[], plates: Plate[], example: boolean}} Sheet
 */

const KEY = "midplate-draft";

/** The pairs that were measured; the page offers no other. */
export const PAIRS = [
  { weak: "hexane", strong: "ethyl acetate" },
  { weak: "hexane", strong: "diethyl ether" },
  { weak: "dichloromethane", strong: "methanol" },
];

export const SETTINGS = ["bench", "class", "automated"];

/** @returns {Sheet} */
export function emptySheet() {
  return {
    pair: 0,
    setting: "bench",
    amount: "10",
    spots: [{ id: "s1", name: "A" }],
    plates: [{ eluent: "", rf: {} }],
    example: false,
  };
}

/** An example, invented: no such plate was ever run. @returns {Sheet} */
export function inventedExample() {
  return {
    pair: 0,
    setting: "bench",
    amount: "10",
    spots: [
      { id: "s1", name: "A" },
      { id: "s2", name: "B" },
    ],
    plates: [{ eluent: "9 : 1", rf: { s1: "0.06", s2: "0.14" } }],
    example: true,
  };
}

/** @param {Sheet} sheet */
export function keep(sheet) {
  try {
    localStorage.setItem(KEY, JSON.stringify(sheet));
  } catch {
    // a browser that keeps nothing still works until the page is closed
  }
}

/** The sheet as it was left; an empty one where nothing was left or it cannot be read. @returns {Sheet} */
export function left() {
  try {
    const sheet = JSON.parse(localStorage.getItem(KEY) ?? "null");
    return isSheet(sheet) ? sheet : emptySheet();
  } catch {
    return emptySheet();
  }
}

/** @param {any} sheet @returns {sheet is Sheet} */
function isSheet(sheet) {
  const text = (/** @type {unknown} */ value) => typeof value === "string";
  return (
    sheet !== null &&
    typeof sheet === "object" &&
    PAIRS[sheet.pair] !== undefined &&
    SETTINGS.includes(sheet.setting) &&
    text(sheet.amount) &&
    Array.isArray(sheet.spots) &&
    sheet.spots.length > 0 &&
    sheet.spots.every((/** @type {any} */ spot) => text(spot?.id) && text(spot?.name)) &&
    Array.isArray(sheet.plates) &&
    sheet.plates.every(
      (/** @type {any} */ plate) => text(plate?.eluent) && Object.values(plate?.rf ?? { no: 0 }).every(text),
    )
  );
}

/** A name that no spot has yet: the next letter. @param {Sheet} sheet */
export function freeName(sheet) {
  const taken = new Set(sheet.spots.map((spot) => spot.name));
  for (let i = 0; i < 26; i++) {
    const letter = String.fromCharCode(65 + i);
    if (!taken.has(letter)) return letter;
  }
  return `S${sheet.spots.length + 1}`;
}

/** An id that no spot has yet. @param {Sheet} sheet */
export function freeId(sheet) {
  const taken = new Set(sheet.spots.map((spot) => spot.id));
  let number = 1;
  while (taken.has(`s${number}`)) number++;
  return `s${number}`;
}
