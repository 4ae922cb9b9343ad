// @ts-check
/**
 * Draws the surface: silica with its OH in a row, molecules of the two solvents on them, and ten copies of each compound, some of them held
 * with their polar group down, in the place of a solvent molecule that floats above them.
 */

import { draw, make } from "../../dom.js";
import { say } from "../../texts.js";

/** Places of one strip of the surface. */
export const SITES = 30;
/** Copies of each compound. */
export const COPIES = 10;
/** Compounds over one strip. */
const A_STRIP = 3;
const STEP = 12;
const WIDTH = SITES * STEP;
const LIQUID = 92;
const HEIGHT = 128;
const R = 5;

/** The order in which places are taken: a step that meets each once, so that neighbours are not taken one after the other. @param {number} count @param {number} step */
const order = (count, step) => Array.from({ length: count }, (_, i) => (i * step) % count);
const TAKEN = order(SITES, 7);
const HELD = order(COPIES, 3);

/** How many places the strong solvent takes, and how many copies of each compound are held. @param {{coverage: number, adsorbed: number[]}} now */
export const counted = ({ coverage, adsorbed }) => ({ taken: Math.round(SITES * coverage), held: adsorbed.map((share) => Math.round(COPIES * share)) });

/** @param {any} answer @param {{coverage: number, adsorbed: number[]}} now */
export function surface(answer, now) {
  const { taken, held } = counted(now);
  const strips = Math.ceil(answer.compounds.length / A_STRIP);
  const words = answer.compounds.map((/** @type {any} */ each, /** @type {number} */ i) => say("later.lesson-why-held-now", { name: each.name, held: held[i], copies: COPIES })).join(", ");
  return make(
    "div",
    { id: "why-picture", role: "img", "aria-label": say("later.lesson-why-picture", { taken, sites: SITES, strong: answer.strong.name, words }) },
    ...Array.from({ length: strips }, (_, strip) => [stripOf(answer, strip, taken, held), names(answer, strip, held)]).flat(),
  );
}

/** Under each strip its compounds, in words of the page's size. @param {any} answer @param {number} strip @param {number[]} held */
function names(answer, strip, held) {
  const first = strip * A_STRIP;
  const here = answer.compounds.slice(first, first + A_STRIP);
  return make(
    "div",
    { id: `why-names-${strip}`, class: "why-names" },
    ...here.map((/** @type {any} */ each, /** @type {number} */ column) => make("p", {}, say("later.lesson-why-held-of", { name: each.name, held: held[first + column], copies: COPIES }))),
  );
}

/** @param {any} answer @param {number} strip @param {number} taken @param {number[]} held */
function stripOf(answer, strip, taken, held) {
  const first = strip * A_STRIP;
  const here = answer.compounds.slice(first, first + A_STRIP);
  const columns = here.length;
  const strong = new Set(TAKEN.slice(0, taken));
  /** Places from which a compound pushed the solvent. @type {Map<number, string>} */
  const pushed = new Map();
  const copies = here.flatMap((/** @type {any} */ each, /** @type {number} */ column) => {
    const i = first + column;
    const from = Math.round((column * SITES) / columns) + Math.floor((SITES / columns - COPIES) / 2);
    return HELD.map((place, copy) => {
      const isHeld = copy < held[i];
      const site = from + place;
      if (isHeld) pushed.set(site, `why-copy-${i}-${copy}`);
      return solute(`why-copy-${i}-${copy}`, i, isHeld ? [STEP * (site + 0.5), LIQUID + 6] : floating(from, copy), isHeld);
    });
  });
  return draw(
    "svg",
    { id: `why-strip-${strip}`, viewBox: `0 0 ${WIDTH} ${HEIGHT}` },
    draw("rect", { class: "why-liquid", width: WIDTH, height: LIQUID + 12 }),
    draw("rect", { class: "why-silica", y: LIQUID + 19, width: WIDTH, height: 16 }),
    ...Array.from({ length: SITES }, (_, site) => draw("g", { transform: `translate(${STEP * (site + 0.5)} ${LIQUID + 12})` }, draw("path", { class: "why-bond", d: "M0 1v6" }), draw("circle", { class: "why-oh", cy: 1.6, r: 1.6 }))),
    ...Array.from({ length: SITES }, (_, site) =>
      draw("circle", {
        id: `why-site-${strip}-${site}`,
        class: `${strong.has(site) ? "why-strong" : "why-weak"}${pushed.has(site) ? " pushed" : ""}`,
        transform: `translate(${STEP * (site + 0.5)} ${LIQUID + (pushed.has(site) ? -8 : 5)})`,
        r: 4.2,
      }),
    ),
    ...copies,
  );
}

/** Where a free copy floats: two rows, a little apart from a grid, always in the same places. @param {number} from @param {number} copy */
function floating(from, copy) {
  const [row, at] = [copy % 2, Math.floor(copy / 2)];
  return [STEP * (from + 2 * at + 1) + (row ? 5 : -3), 16 + 30 * row + ((copy * 7) % 5) * 3];
}

/** A copy of a compound: a disc whose polar group is a notch; held, it looks down. @param {string} id @param {number} i @param {number[]} at @param {boolean} isHeld */
function solute(id, i, [x, y], isHeld) {
  return draw(
    "g",
    { id, class: `why-copy colour-${i} ${isHeld ? "held" : "free"}`, transform: `translate(${x} ${y})` },
    draw("circle", { class: "why-body", r: R }),
    draw("path", { class: "why-notch", d: "M-2.6 4.3L0 0.6L2.6 4.3Z", transform: isHeld ? "rotate(0)" : `rotate(${((i * 97 + Number(id.split("-").at(-1)) * 131) % 300) + 30})` }),
  );
}
