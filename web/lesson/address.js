// @ts-check
/** The part that is shown stands in the address, such as lesson.html#climb: a link leads to it, and the browser's own way back goes through the parts. */

import { PARTS } from "./parts.js";

/** The part that the address names; undefined where it names none. */
export function partInAddress() {
  const named = location.hash.slice(1);
  return PARTS.find(({ id }) => id === named)?.id;
}

/** The part that was put there last. @type {string | undefined} */
let kept;

/**
 * Puts the part that is shown into the address: a step of the browser's history, unless no part stood there. Where it is the part of before and the
 * address names another, the browser just went there, and what follows it is on its way.
 * @param {string} id
 */
export function keepInAddress(id) {
  const before = partInAddress();
  const isOfBefore = id === kept;
  kept = id;
  if (before === id || (isOfBefore && before !== undefined)) return;
  window.history[before === undefined ? "replaceState" : "pushState"](null, "", `#${id}`);
}

/** Follows the address wherever the browser's history, a link or a hand changes it. @param {(id: string | undefined) => void} follow */
export function followAddress(follow) {
  window.addEventListener("hashchange", () => follow(partInAddress()));
  document.addEventListener("click", (event) => {
    const link = /** @type {HTMLElement} */ (event.target).closest?.('a[href^="#"]');
    const place = link && document.getElementById(link.getAttribute("href")?.slice(1) ?? "");
    if (!place) return; // such a place on this page is no address of its own
    event.preventDefault();
    place.scrollIntoView();
    place.focus({ preventScroll: true });
  });
}
