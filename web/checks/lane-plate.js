// @ts-check
/** Draws a plate of lanes: what was spotted is written in pencil under each, and the spots can be moved. */

import { draw } from "../dom.js";
import { lineDrawn } from "../plate/drawing.js";
import { laneTicks, layer, pencilLine, pixelMm } from "../plate/layer.js";
import { GRIP_PX, REACH_PX } from "../plate/pointer.js";
import { drawnMm, laneX, lines, rfOf } from "../sheet/geometry.js";
import { COLOURS } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { lineKeys, readingOf, seenKeys, shapeOf, sizeOf } from "./lane-moves.js";
import { lanePointer } from "./lane-pointer.js";
import { laneWords, referenceName } from "./references.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Identity} Identity @typedef {import("./sheet.js").LanePlate} LanePlate @typedef {import("./sheet.js").Lane} Lane @typedef {import("./sheet.js").Seen} Seen */

/** The least size of a plate on the page [px]. */
const BOX = { across: 300, high: 430 };
const LETTER_PX = 12;
const SMALL_LETTER_PX = 10.5;
/** A spot is drawn a little broader than high, and a streak at most so broad [mm]. */
const BROADER = 1.2;
const STREAK_MM = 3.6;
/** No spot is drawn smaller [px]. */
const LEAST_PX = 5;

/** @param {State} state @param {Act} act @param {Identity} identity @param {LanePlate} plate @param {number} number */
export function lanePlate(state, act, identity, plate, number) {
  const shape = shapeOf(plate);
  const at = lines(shape);
  const pixel = pixelMm(at, { ...BOX, across: Math.max(BOX.across, 62 * plate.lanes.length) });
  const lanes = plate.lanes.map((_, i) => laneX(shape, i));
  return draw(
    "svg",
    { id: `layer-${plate.id}`, class: "plate measured", viewBox: `0 0 ${at.width} ${at.height}`, role: "group", "aria-label": said(identity, plate, number), ...lanePointer(state, act, plate.id, GRIP_PX * pixel) },
    layer(`layer-${plate.id}`, at, pixel, ["", ""]),
    draw("g", { "aria-hidden": "true", transform: `translate(0 ${at.height - at.start})` }, laneTicks(lanes, pixel), ...plate.lanes.map((lane, i) => underLane(identity, plate, lane, lanes[i], at.width / plate.lanes.length, pixel))),
    ...(/** @type {const} */ (["start", "front"])).map((which) => lineDrawn(plate.id, at, number, which, pixel, { onkeydown: lineKeys(state, act, plate, which), onblur: act.rest })),
    ...plate.lanes.flatMap((lane, i) => lane.readings.map((seen) => spot(state, act, identity, plate, lane, seen, lanes[i], pixel))),
  );
}

/** The same to be looked at only, on paper. @param {Identity} identity @param {LanePlate} plate @param {number} number */
export function lanesOnPaper(identity, plate, number) {
  const shape = shapeOf(plate);
  const at = lines(shape);
  const pixel = pixelMm(at, { ...BOX, across: Math.max(BOX.across, 62 * plate.lanes.length) });
  const xs = plate.lanes.map((_, i) => laneX(shape, i));
  const along = (/** @type {"start" | "front"} */ which) => draw("g", { transform: `translate(0 ${(at.height - at[which]).toFixed(3)})` }, ...pencilLine(at.width, pixel));
  return draw(
    "svg",
    { class: "plate", viewBox: `0 0 ${at.width} ${at.height}`, role: "img", "aria-label": said(identity, plate, number) },
    layer(`paper-${plate.id}`, at, pixel, ["", ""]),
    draw("g", { transform: `translate(0 ${at.height - at.start})` }, laneTicks(xs, pixel), ...plate.lanes.map((lane, i) => underLane(identity, plate, lane, xs[i], at.width / plate.lanes.length, pixel))),
    along("start"),
    along("front"),
    ...plate.lanes.flatMap((lane, i) =>
      lane.readings.map((seen) => draw("g", { transform: `translate(${xs[i]} ${(at.height - drawnMm(shape, readingOf(seen))).toFixed(3)})` }, body(seen, `spot ${laneColour(identity, lane)}`, Math.max(LEAST_PX * pixel, sizeOf(seen) / 2), pixel))),
    ),
  );
}

/** Written by hand under the start line: what was spotted. @param {Identity} identity @param {LanePlate} plate @param {Lane} lane @param {number} x @param {number} wide [mm] @param {number} pixel */
function underLane(identity, plate, lane, x, wide, pixel) {
  const most = Math.max(3, Math.floor(wide / pixel / (0.56 * LETTER_PX)));
  const reference = lane.reference ? referenceName(identity, lane.reference) : "";
  const several = identity.references.length > 1;
  const words = lane.role === "unknown" ? [say("later.checks-lane-unknown")] : lane.role === "co-spot" ? [say("later.checks-lane-both"), ...(several ? [`+ ${reference}`] : [])] : [reference];
  const rows = words.flatMap((each) => inTwo(each, most));
  const px = rows.length > 2 ? SMALL_LETTER_PX : LETTER_PX;
  return draw(
    "g",
    { class: "lane-name" },
    ...rows.map((row, i) => draw("text", { x, y: (4 + (px + 1) * (i + 1)) * pixel, "font-size": px * pixel }, row)),
  );
}

/** A name on one line, or on two: broken at a blank or a hyphen, else where the line ends. @param {string} text @param {number} most letters of a line */
function inTwo(text, most) {
  const letters = [...text];
  if (letters.length <= most) return [text];
  const fitting = letters.slice(0, most).join("");
  const at = Math.max(fitting.lastIndexOf(" "), fitting.lastIndexOf("-")) + 1;
  const first = at > 2 ? fitting.slice(0, at) : `${letters.slice(0, most - 1).join("")}-`;
  const rest = text.slice(at > 2 ? at : letters.slice(0, most - 1).join("").length);
  return [first.trimEnd(), shortened(rest, most)];
}

/** @param {string} text @param {number} most letters */
function shortened(text, most) {
  const letters = [...text];
  return letters.length <= most ? text : `${letters.slice(0, most - 1).join("")}\u2026`;
}

/** The plate in words. @param {Identity} identity @param {LanePlate} plate @param {number} number */
function said(identity, plate, number) {
  const spots = plate.lanes.flatMap((lane, i) => lane.readings.map((seen) => `${laneWords(identity, lane, i + 1)}: ${placeWords(plate, seen)}`));
  return spots.length ? say("later.checks-plate-shown", { number, spots: spots.join("; ") }) : say("page.plate-empty", { number });
}

/** @param {LanePlate} plate @param {Seen} seen */
function placeWords(plate, seen) {
  const shape = shapeOf(plate);
  const rf = rfOf(shape, readingOf(seen));
  if (rf === undefined) return say("later.checks-spot-unread");
  return say(seen.shape === "streak" ? "later.checks-streak-value" : "later.checks-spot-value", { rf, mm: drawnMm(shape, readingOf(seen)), size: sizeOf(seen) });
}

/** The class of a reference's colour. @param {Identity} identity @param {Lane} lane */
export function laneColour(identity, lane) {
  if (lane.role === "unknown") return `colour-${COLOURS - 1}`;
  return lane.role === "co-spot" ? "" : `colour-${identity.references.findIndex(({ id }) => id === lane.reference) % (COLOURS - 1)}`;
}

/** @param {State} state @param {Act} act @param {Identity} identity @param {LanePlate} plate @param {Lane} lane @param {Seen} seen @param {number} x @param {number} pixel */
function spot(state, act, identity, plate, lane, seen, x, pixel) {
  const shape = shapeOf(plate);
  const reading = readingOf(seen);
  const rf = rfOf(shape, reading);
  const ry = Math.max(LEAST_PX * pixel, sizeOf(seen) / 2);
  const marks = ["seen", rf === undefined ? "faint" : "", state.looking.mark === seen.id ? "open" : ""];
  const place = plate.lanes.indexOf(lane) + 1;
  return draw(
    "g",
    {
      id: `seen-${seen.id}`,
      class: marks.filter(Boolean).join(" "),
      transform: `translate(${x} ${(lines(shape).height - drawnMm(shape, reading)).toFixed(3)})`,
      role: "slider",
      tabindex: 0,
      "aria-orientation": "vertical",
      "aria-label": say("later.checks-spot-in", { lane: laneWords(identity, lane, place) }),
      "aria-valuemin": 0,
      "aria-valuemax": 1,
      "aria-valuenow": Math.min(1, Math.max(0, rf ?? 0.5)).toFixed(2),
      "aria-valuetext": placeWords(plate, seen),
      onkeydown: seenKeys(state, act, seen.id),
      onblur: act.rest,
    },
    draw("circle", { class: "reach", r: REACH_PX * pixel }),
    draw("circle", { class: "ring", r: ry * BROADER + 4 * pixel, "stroke-width": 2 * pixel }),
    body(seen, `spot ${laneColour(identity, lane)}`, ry, pixel),
  );
}

/** @param {Seen} seen @param {string} kind @param {number} ry [mm] @param {number} pixel */
function body(seen, kind, ry, pixel) {
  const edge = { class: kind, "stroke-width": 1.2 * pixel };
  if (seen.shape !== "streak") return draw("ellipse", { ...edge, rx: BROADER * ry, ry });
  const rx = Math.min(STREAK_MM / 2, BROADER * ry);
  const head = rx - ry; // a round head above, a tail towards the start
  return draw("path", { ...edge, d: `M${-rx} ${head}A${rx} ${rx} 0 0 1 ${rx} ${head}Q${0.8 * rx} ${0.5 * ry} 0 ${ry}Q${-0.8 * rx} ${0.5 * ry} ${-rx} ${head}Z` });
}
