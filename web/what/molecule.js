// @ts-check
/** The drawing of a molecule: taken over shape by shape, in the colours of the page, with the atoms of a group marked. */

import { draw } from "../dom.js";

/** What a drawing is made of; all else in it is passed over. */
const SHAPES = ["g", "path", "line", "rect", "polygon", "polyline", "circle", "ellipse"];
const GEOMETRY = ["d", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "width", "height", "points", "transform", "stroke-width", "stroke-linecap", "stroke-linejoin", "stroke-dasharray"];

/** A class that says which atom or bond a shape shows, counted from zero: a3, b12. */
const PART = /(?:^|\s)([ab]\d+)(?:\s|$)/;

/** How many times as wide as its ink a mark is. */
const WIDER = 6;

/** With more bonds a drawing needs the whole width to be read. */
const SMALL = 14;

/** Whether a drawing takes the whole width. @param {string} svg */
export const isLarge = (svg) => (svg.match(/class=["']bond /g)?.length ?? 0) > SMALL;

/**
 * @param {string} svg as the server gives it
 * @param {{atoms?: number[][], bonds?: number[][]} | undefined} group counted from zero
 * @param {string} name for screen readers
 */
export function molecule(svg, group, name) {
  const given = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  if (given.localName !== "svg") return undefined; // no drawing can be read; the groups are told all the same
  const parts = new Set([
    ...(group?.atoms ?? []).flat().map((atom) => `a${atom}`),
    ...(group?.bonds ?? []).flat().map((bond) => `b${bond}`),
  ]);
  const shapes = [...given.children];
  return draw(
    "svg",
    { id: "molecule", class: "molecule", viewBox: given.getAttribute("viewBox") ?? "0 0 300 200", role: "img", "aria-label": name },
    draw("g", { class: "halo" }, ...shapes.flatMap((shape) => halo(shape, parts))),
    draw("g", { class: "ink" }, ...shapes.flatMap((shape) => taken(shape, 1))),
  );
}

/** A shape in the ink of the page. @param {Element} shape @param {number} wider how many times as wide its lines are @returns {SVGElement[]} */
function taken(shape, wider) {
  if (!SHAPES.includes(shape.localName) || isPaper(shape)) return [];
  return [draw(shape.localName, looks(shape, wider), ...[...shape.children].flatMap((each) => taken(each, wider)))];
}

/** What lies behind the shapes that are marked, in the groups they stand in, for those may be moved. @param {Element} shape @param {Set<string>} parts @returns {SVGElement[]} */
function halo(shape, parts) {
  const part = PART.exec(shape.getAttribute("class") ?? "");
  if (part) return parts.has(part[1]) ? taken(shape, WIDER) : [];
  if (shape.localName !== "g") return [];
  const inside = [...shape.children].flatMap((each) => halo(each, parts));
  return inside.length > 0 ? [draw("g", looks(shape, WIDER), ...inside)] : [];
}

/** @param {Element} shape @param {number} wider */
function looks(shape, wider) {
  /** @type {Record<string, string | undefined>} */
  const looks = {};
  for (const attribute of GEOMETRY) looks[attribute] = shape.getAttribute(attribute) ?? undefined;
  if (looks["stroke-width"] !== undefined) looks["stroke-width"] = String(wider * Number(looks["stroke-width"]));
  for (const paint of ["fill", "stroke"]) looks[paint] = paintOf(shape.getAttribute(paint));
  return looks;
}

/** @param {string | null} given */
const paintOf = (given) => (given === null ? undefined : given === "none" ? "none" : "currentColor");

/** The white sheet behind a drawing. @param {Element} shape */
const isPaper = (shape) => shape.localName === "rect" && /^(#fff|#ffffff|white)$/i.test(shape.getAttribute("fill") ?? "");
