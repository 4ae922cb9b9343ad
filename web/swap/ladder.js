// @ts-check
/**
 * The ladder of equal strength: for each pair a ladder that lies on its side, from where its weakest mixture brings the middle of
 * the sample to where its strongest does, with a rung at each share. Across is Rf from 0 to 1, in per cent of the drawing's width;
 * up and down is in px, so that text keeps its size at any width.
 */

import { draw, make } from "../dom.js";
import { marked, say } from "../texts.js";
import { shareText } from "../answer/shares.js";

/** @typedef {{percentStrong: number, rf: number}} Rung @typedef {"measured" | "theory" | "guess"} Basis */

/** Half the distance of the rails [px]. */
const HALF = 7;

/** The narrowest strip [px]: there labels must not touch, nor be cut at its ends. */
const NARROWEST = 280;

/** About the width of a character of a label, and of one in the larger type of a ratio [px]. */
const SMALL = 7.5;
const LARGE = 9;

/** Least distance in Rf of a number of the scale from the words at the line of now. */
const NOW_ROOM = 0.15;

/** The shares that are labelled first where there is room [%]. */
const LABELLED = [10, 50, 100, 20, 5, 2, 1, 30, 0];

/** Drawing beyond both ends of the scale, so that a label at the end has room [% of the width]. */
const EDGE = 4;

/** A place across, by Rf [% of the width]. @param {number} rf */
const placed = (rf) => EDGE + (100 - 2 * EDGE) * Math.min(1, Math.max(0, rf));

/** The same as it is written. @param {number} rf */
export const across = (rf) => `${placed(rf).toFixed(2)}%`;

/**
 * From where to where words at a place reach on the narrowest strip [px], and how they are anchored: about their place, or
 * inwards where an end of the strip would cut them; undefined where they are too long for either.
 * @param {number} rf @param {string} words @param {number} each width of a character [px]
 * @returns {{anchor: "middle" | "start" | "end", from: number, to: number} | undefined}
 */
export function laid(rf, words, each) {
  const at = (placed(rf) / 100) * NARROWEST;
  const width = words.length * each;
  if (at >= width / 2 && at + width / 2 <= NARROWEST) return { anchor: "middle", from: at - width / 2, to: at + width / 2 };
  if (at < NARROWEST / 2 && at + width <= NARROWEST) return { anchor: "start", from: at, to: at + width };
  return at >= NARROWEST / 2 && width <= at ? { anchor: "end", from: at - width, to: at } : undefined;
}

/**
 * Where a share stands on a row, by the rungs beside it: straight in ln(% + 1), held at the ends.
 * @param {Rung[]} rungs by rising share @param {number} percent
 */
export function placeOf(rungs, percent) {
  const after = rungs.findIndex((each) => each.percentStrong >= percent);
  if (after < 0) return rungs[rungs.length - 1].rf;
  if (after === 0) return rungs[0].rf;
  const [low, high] = [rungs[after - 1], rungs[after]];
  const part = (Math.log1p(percent) - Math.log1p(low.percentStrong)) / (Math.log1p(high.percentStrong) - Math.log1p(low.percentStrong));
  return low.rf + part * (high.rf - low.rf);
}

/** The rungs that get a label: the last, then the usual shares, as far as labels do not touch. @param {Rung[]} rungs */
export function labelled(rungs) {
  /** @type {{rf: number, words: string, anchor: string, from: number, to: number}[]} */
  const chosen = [];
  for (const share of [rungs[rungs.length - 1].percentStrong, ...LABELLED]) {
    const rung = rungs.find((each) => each.percentStrong === share);
    if (!rung) continue;
    const words = `${shareText(share)}${share === 0 ? "" : "\u00a0%"}`;
    const place = laid(rung.rf, words, SMALL);
    if (place && chosen.every((each) => each.to <= place.from || each.from >= place.to)) chosen.push({ rf: rung.rf, words, ...place });
  }
  return chosen;
}

/**
 * A row of the ladder.
 * @param {object} row
 * @param {string} row.id
 * @param {string} row.label what it shows, in words
 * @param {Rung[]} row.rungs by rising share
 * @param {Basis} row.basis
 * @param {number} row.now Rf of the middle with the mixture now
 * @param {number} [row.aim] Rf that the marks are matched at where it is not that of the mixture now
 * @param {{percentStrong: number, low: number, high: number}} [row.equal] none for a pair that does not reach
 * @param {{percentStrong: number, rf: number, side: string}} [row.nearest] what comes nearest where it does not reach
 * @param {string[]} ratio written over the mark, and what stands there where that is too long
 */
export function strip({ id, label, rungs, basis, now, aim, equal, nearest, ratio }) {
  const from = rungs[0];
  const to = rungs[rungs.length - 1];
  return draw(
    "svg",
    { id, class: "strip", role: "img", "aria-label": label },
    draw("line", { class: "now-line", x1: across(now), x2: across(now), y1: "0", y2: "100%" }),
    aim !== undefined && draw("line", { class: "aim-line", x1: across(aim), x2: across(aim), y1: "0", y2: "100%" }),
    draw(
      "svg",
      { y: "50%", width: "100%", overflow: "visible" },
      ...[-HALF, HALF].map((y) => draw("line", { class: `rail ${basis}`, x1: across(from.rf), x2: across(to.rf), y1: y, y2: y })),
      ...rungs.map(({ rf }) => draw("line", { class: "rung", x1: across(rf), x2: across(rf), y1: -HALF, y2: HALF })),
      ...labelled(rungs).map(({ rf, words, anchor }) => draw("text", { class: "rung-label", x: across(rf), y: 3 * HALF + 4, "text-anchor": anchor }, words)),
      ...(equal ? equalMark(rungs, equal, ratio) : []),
      ...(nearest ? [draw("circle", { class: "nearest", cx: across(nearest.rf), cy: 0, r: HALF + 1 }), written(nearest.rf, [say(`later.swap-ends-${nearest.side}`, { rf: nearest.rf })], "nearest-label", SMALL)] : []),
      ...(equal || nearest ? [] : [diamond(now, "mark here"), written(now, ratio, "equal-label", LARGE)]),
      ownAxis(),
    ),
  );
}

/** The band of the share along the row, its ends as brackets, and the mark with its ratio. @param {Rung[]} rungs @param {{percentStrong: number, low: number, high: number}} equal @param {string[]} ratio */
function equalMark(rungs, { percentStrong, low, high }, ratio) {
  const ends = [low, high].map((share) => placeOf(rungs, share));
  const at = placeOf(rungs, percentStrong);
  const reach = HALF + 4;
  return [
    draw("line", { class: "band", x1: across(ends[0]), x2: across(ends[1]), y1: 0, y2: 0, "stroke-width": 2 * HALF }),
    ...ends.map((rf) => draw("line", { class: "band-end", x1: across(rf), x2: across(rf), y1: -reach, y2: reach })),
    diamond(at, "mark"),
    written(at, ratio, "equal-label", LARGE),
  ];
}

/** A diamond about a place on the row; drawn in a frame of its own, since paths know no per cent. @param {number} rf @param {string} kind */
const diamond = (rf, kind) => draw("svg", { x: across(rf), overflow: "visible" }, draw("path", { class: kind, d: `M0 ${-HALF - 2}L${HALF} 0L0 ${HALF + 2}L${-HALF} 0Z` }));

/** What stands over a place: the first of the words that has room there, else the last. @param {number} rf @param {string[]} words @param {string} kind @param {number} each width of a character [px] */
function written(rf, words, kind, each) {
  const chosen = words.find((one) => laid(rf, one, each)) ?? words[words.length - 1];
  return draw("text", { class: kind, x: across(rf), y: -HALF - 10, "text-anchor": laid(rf, chosen, each)?.anchor ?? "middle" }, chosen);
}

const TICKS = [0, 0.2, 0.4, 0.6, 0.8, 1];

/** The scale under a strip that stands alone, on a phone. */
const ownAxis = () =>
  draw(
    "g",
    { class: "own-axis" },
    draw("line", { class: "axis-line", x1: across(0), x2: across(1), y1: 40, y2: 40 }),
    ...TICKS.flatMap((rf) => [
      draw("line", { class: "axis-line", x1: across(rf), x2: across(rf), y1: 40, y2: 44 }),
      draw("text", { class: "axis-label", x: across(rf), y: 58, "text-anchor": rf === 0 ? "start" : "middle" }, rf === 0 ? say("later.swap-zero") : marked(String(rf))),
    ]),
  );

/** The scale over all rows, with where the sample's middle stands now, and what is drawn in the rows. @param {number} now */
export function axisView(now) {
  const isClear = (/** @type {number} */ rf) => Math.abs(rf - now) > NOW_ROOM;
  return make(
    "div",
    { class: "ladder-axis", id: "ladder-axis" },
    draw(
      "svg",
      { class: "axis", "aria-hidden": "true" },
      draw("text", { class: "axis-label", x: across(0), y: 12, "text-anchor": "start" }, say("later.swap-axis")),
      draw("line", { class: "axis-line", x1: across(0), x2: across(1), y1: 46, y2: 46 }),
      ...TICKS.flatMap((rf) => [
        draw("line", { class: "axis-line", x1: across(rf), x2: across(rf), y1: 42, y2: 46 }),
        isClear(rf) && draw("text", { class: "axis-label", x: across(rf), y: 38, "text-anchor": "middle" }, marked(String(rf))),
      ]),
      draw("line", { class: "now-line", x1: across(now), x2: across(now), y1: 42, y2: "100%" }),
      draw("text", { class: "now-label", x: across(now), y: 38, "text-anchor": now > 0.85 ? "end" : now < 0.15 ? "start" : "middle" }, say("later.swap-now-rf", { rf: now })),
    ),
    legend(),
  );
}

/** What the bar, the rungs, the band and the diamond are. */
function legend() {
  const end = (/** @type {number} */ x) => draw("line", { class: "band-end", x1: x, x2: x, y1: 1, y2: 15 });
  /** @type {[string, SVGElement[]][]} */
  const kinds = [
    ["bar", [2, 14].map((y) => draw("line", { class: "rail", x1: 1, x2: 27, y1: y, y2: y }))],
    ["rungs", [5, 14, 23].map((x) => draw("line", { class: "rung", x1: x, x2: x, y1: 2, y2: 14 }))],
    ["band", [draw("line", { class: "band", x1: 3, x2: 25, y1: 8, y2: 8, "stroke-width": 10 }), end(3), end(25)]],
    ["mark", [draw("path", { class: "mark", d: "M14 0L21 8L14 16L7 8Z" })]],
  ];
  return make(
    "p",
    { class: "legend", id: "ladder-legend" },
    ...kinds.map(([kind, drawn]) => make("span", {}, draw("svg", { class: "legend-mark", viewBox: "0 0 28 16", "aria-hidden": "true" }, ...drawn), say(`later.swap-legend-${kind}`))),
  );
}

/** The line that goes with a word: solid, in dashes, or in dots. @param {Basis} basis */
export const sample = (basis) =>
  draw("svg", { class: "rail-sample", viewBox: "0 0 36 8", "aria-hidden": "true" }, draw("line", { class: `rail ${basis}`, x1: 1, x2: 35, y1: 4, y2: 4 }));
