// @ts-check
/** The name of a study among all studies: the day it was begun and ten signs at random. */

/** No 0 and 1, which are read as letters. */
const SIGNS = "abcdefghijklmnopqrstuvwxyz23456789";
const LENGTH = 10;
/** Bytes from here on would make some signs likelier than others. */
const FAIR = 256 - (256 % SIGNS.length);

const FORM = /^[0-9]{8}-[a-z2-9]{10}$/;

/** Whether a text can be the name of a study. @param {unknown} text */
export const isStudyId = (text) => typeof text === "string" && FORM.test(text);

/** @param {Date} [now] */
export function freshId(now = new Date()) {
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part, i) => String(part).padStart(i === 0 ? 4 : 2, "0")).join("");
  let signs = "";
  while (signs.length < LENGTH) {
    for (const byte of crypto.getRandomValues(new Uint8Array(LENGTH))) {
      if (byte < FAIR && signs.length < LENGTH) signs += SIGNS[byte % SIGNS.length];
    }
  }
  return `${day}-${signs}`;
}
