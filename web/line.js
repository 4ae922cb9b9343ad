// @ts-check
/** What one line of a study may hold; only its notes have several. */

/** Characters that the server takes. */
export const LONGEST_LINE = 1000;
export const LONGEST_TITLE = 300;
export const LONGEST_SMILES = 20_000;
export const LONGEST_NOTES = 100_000;

/** With a blank for each tab, line break and control sign, which no line of a study can hold. @param {string} text */
export const oneLine = (text) => text.replace(/\p{Cc}/gu, " ");

/**
 * A title made of another, which is shortened where both would be too long.
 * @param {string} title @param {(title: string) => string} made
 */
export function titleFrom(title, made = (same) => same) {
  const line = oneLine(title);
  const over = made(line).length - LONGEST_TITLE;
  return over > 0 ? made(`${line.slice(0, Math.max(0, line.length - over - 1)).replace(/[\ud800-\udbff]$/, "")}\u2026`) : made(line);
}
