// @ts-check
/** Reads numbers as people type them. */

/**
 * A number with a point or a comma before its decimals; undefined where it is none.
 * @param {string} text
 */
export function decimal(text) {
  const plain = text.trim();
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain) ? Number(plain.replace(",", ".")) : undefined;
}

/**
 * The share of the stronger solvent in per cent, from "10", "10 %" or the ratio "9 : 1", "9/1", "9 + 1"; undefined where it is none.
 * @param {string} text
 */
export function percentStrong(text) {
  const parts = text.split(/[:/+]/);
  if (parts.length === 1) return decimal(text.replace(/%\s*$/, ""));
  if (parts.length !== 2) return undefined;
  const weak = decimal(parts[0]);
  const strong = decimal(parts[1]);
  if (weak === undefined || strong === undefined || !(weak >= 0 && strong >= 0 && weak + strong > 0)) return undefined;
  return (100 * strong) / (weak + strong);
}

/** As a number where it is one, else as it was typed, so that the server can say what is wrong with it. */
export const orAsTyped = (/** @type {number | undefined} */ value, /** @type {string} */ text) => value ?? text.trim();

/** A number with at most so many decimals, as one types it: no zeros at the end. @param {number} value @param {number} decimals */
export const plain = (value, decimals) => String(Number(value.toFixed(decimals)));

/** A number in digits, as one types it, with a point and never with an exponent; read again it is the same number. @param {number} value */
export function written(value) {
  const [, sign, whole, fraction = "", power] = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value)) ?? [];
  if (power === undefined) return String(value);
  const digits = whole + fraction;
  const point = whole.length + Number(power);
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${digits}`;
  return point >= digits.length ? sign + digits.padEnd(point, "0") : `${sign}${digits.slice(0, point)}.${digits.slice(point)}`;
}
