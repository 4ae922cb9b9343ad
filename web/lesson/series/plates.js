// @ts-check
/** Draws the plates of a series, small ones side by side and large ones to be pulled. */

import { shareText } from "../../answer/shares.js";
import { make } from "../../dom.js";
import { say } from "../../texts.js";
import { USUAL, lessonPlate, mmOf, sizeFor } from "../plate.js";
import { eluentText } from "../ratio.js";

/** @typedef {import("./read.js").At} At */

/** How high a plate is drawn [px], and how large its spots are [mm]: as large as their letters. */
const DRAWN = { small: { high: 160, spot: 5.2 }, large: { high: 340, spot: 4 } };

/** The letter that stands in a spot. @param {number} place */
export const letterOf = (place) => String.fromCharCode(65 + place);

/**
 * A plate with its caption.
 * @param {object} shown
 * @param {string} shown.id
 * @param {Record<string, At>} shown.at
 * @param {number} shown.percent
 * @param {any} shown.pair with weak and strong
 * @param {"small" | "large"} shown.kind
 * @param {"band"} [shown.band] whether the 90 % band of each spot is drawn though no cloud is
 * @param {string} [shown.title] above it
 * @param {(string | undefined)[]} [shown.further] lines under it
 */
export function plateFigure({ id, at, percent, pair, kind, band, title, further = [] }) {
  const names = Object.keys(at);
  const { high, spot } = DRAWN[kind];
  const pixel = USUAL.height / high;
  const spots = names.map((name, lane) => spotOf(id, at[name], lane, spot, band));
  const eluent = eluentText(percent, pair);
  return make(
    "figure",
    { id: `${id}-figure`, class: `series-plate ${kind}` },
    title !== undefined && make("p", { class: "series-title" }, title),
    // another number of lanes is another plate: it is drawn anew
    make("div", { id: `${id}-of-${names.length}` }, lessonPlate({ id, size: sizeFor(names.length), lanes: names.length, spots, pixel, label: say("later.lesson-series-plate-label", { eluent, spots: placesOf(at) }) })),
    make("figcaption", {}, make("span", { class: "series-ratio" }, eluent), ...[...new Set([kind === "small" ? `${shareText(percent)} %` : share(percent, eluent, pair), ...further])].map((line) => line !== undefined && line !== eluent && make("span", {}, line))),
  );
}

/** The share in words, where the ratio does not say it already. @param {number} percent @param {string} eluent @param {any} pair */
function share(percent, eluent, { strong }) {
  return eluent.endsWith("%") ? strong.name : say("later.lesson-series-pulled", { percent: shareText(percent), strong: strong.name });
}

/** Where the spots are, in words. @param {Record<string, At>} at */
export const placesOf = (at) =>
  Object.entries(at)
    .map(([name, { rf }]) => say("later.lesson-series-spot-at", { name, rf }))
    .join(", ");

/** @param {string} id @param {At} at @param {number} lane @param {number} size @param {"band"} [band] @returns {import("../plate.js").Spot} */
function spotOf(id, { rf, low, high, cloud }, lane, size, band) {
  return {
    id: `${id}-spot-${lane}`,
    lane,
    mm: mmOf(USUAL, rf),
    across: size,
    along: size,
    colour: `colour-${lane}`,
    letters: letterOf(lane),
    kind: "computed",
    band: (cloud || band) && low !== undefined && high !== undefined ? [mmOf(USUAL, low), mmOf(USUAL, high)] : undefined,
    cloud: cloud?.map((each) => mmOf(USUAL, each)),
  };
}
