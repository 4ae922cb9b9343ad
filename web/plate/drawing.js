// @ts-check
/** Draws a plate that was run, and lets its spots and lines be moved. */

import { draw } from "../dom.js";
import { drawnMm, laneX, lines, mmOf, rfOf, typedMm } from "../sheet/geometry.js";
import { marked, say } from "../texts.js";
import { fellowHandlers, isFellow } from "./fellows.js";
import { lineKeys, spotKeys } from "./keys.js";
import { labelPlaces } from "./labels.js";
import { isBroad, laneTicks, layer, pencilLine, pixelMm } from "./layer.js";
import { colourOf, guessOf, namesOf, shortName } from "./names.js";
import { GRIP_PX, REACH_PX, pointerHandlers } from "./pointer.js";

/**
 * @typedef {import("../state.js").State} State
 * @typedef {import("../state.js").Act} Act
 * @typedef {import("../sheet/sheet.js").Plate} Plate
 * @typedef {import("../sheet/sheet.js").Reading} Reading
 * @typedef {{reading: Reading, lane: number, x: number, y: number, r: number, letters: string, guessed: string[]}} Seen a spot with where it is drawn, in mm
 */

/** The least size of a plate on the page, in px, and of what is on it. */
const BOX = { across: 236, high: 420 };
const BROAD_BOX = { across: 330, high: 420 };
const SPOT_PX = 10;
const LETTER_PX = 14;

/** @param {State} state @param {Act} act @param {Plate} plate @param {number} number */
export function drawing(state, act, plate, number) {
  const at = lines(plate);
  const pixel = pixelMm(at, isBroad(at) ? BROAD_BOX : BOX);
  const seen = whereSeen(state, plate, pixel);
  const places = labelPlaces(seen, { width: at.width, size: LETTER_PX * pixel });
  const lanes = plate.lanes.map((_, i) => laneX(plate, i));
  const line = (/** @type {"start" | "front"} */ which) => lineDrawn(plate.id, at, number, which, pixel, { onkeydown: lineKeys(state, act, plate.id, which), onblur: act.rest });
  return draw(
    "svg",
    {
      id: `layer-${plate.id}`,
      class: "plate measured",
      viewBox: `0 0 ${at.width} ${at.height}`,
      role: "group",
      "aria-label": said(state, plate, number),
      ...pointerHandlers(state, act, plate, GRIP_PX * pixel),
    },
    layer(`layer-${plate.id}`, at, pixel, state.sheet.window),
    draw(
      "g",
      { "aria-hidden": "true", transform: `translate(0 ${at.height - at.start})` },
      laneTicks(lanes, pixel),
      ...lanes.map((x, i) => draw("text", { class: "lane-number", x, y: 15 * pixel, "font-size": 11 * pixel }, String(i + 1))),
    ),
    line("start"),
    line("front"),
    ...seen.map((one, i) => spot(state, act, plate, number, one, places[i], pixel)),
  );
}

/** The plate in words. @param {State} state @param {Plate} plate @param {number} number */
function said(state, plate, number) {
  const spots = plate.lanes.flatMap((lane) => lane.readings).map((reading) => valueOf(state, plate, reading));
  return spots.length ? say("page.plate-shown", { number, spots: spots.join("; ") }) : say("page.plate-empty", { number });
}

/** A reading with its Rf and height in words. @param {State} state @param {Plate} plate @param {Reading} reading */
function valueOf(state, plate, reading) {
  const spot = namesOf(state.sheet, reading.spots);
  const rf = rfOf(plate, reading);
  return rf === undefined ? say("page.seen-unread", { spot }) : say("page.seen-value", { spot, rf, mm: drawnMm(plate, reading) });
}

/** @param {State} state @param {Plate} plate @param {number} pixel @returns {Seen[]} */
function whereSeen(state, plate, pixel) {
  const { height, width } = lines(plate);
  const r = Math.max(0.55 * SPOT_PX * pixel, Math.min(SPOT_PX * pixel, (0.36 * width) / plate.lanes.length));
  return plate.lanes.flatMap((lane, index) =>
    lane.readings.map((reading) => {
      const guessed = guessOf(state, reading)?.spots ?? [];
      const letters = [...reading.spots, ...guessed].map((id) => shortName(state.sheet, id)).join(" ");
      return {
        reading,
        lane: index,
        x: laneX(plate, index),
        y: height - drawnMm(plate, reading),
        r,
        letters: reading.spots.length ? letters : `${letters}?`,
        guessed,
      };
    }),
  );
}

/** @param {State} state @param {Act} act @param {Plate} plate @param {number} number @param {Seen} seen @param {import("./labels.js").Place} place @param {number} pixel */
function spot(state, act, plate, number, seen, place, pixel) {
  const { reading, x, y, r } = seen;
  const compounds = [...reading.spots, ...seen.guessed];
  const rf = rfOf(plate, reading);
  const marks = [
    "seen",
    reading.spots.length ? "" : "unlabelled",
    mmOf(plate, reading) === undefined ? "faint" : "",
    isFellow(state.looking.fellow, compounds) ? "fellow" : "",
    state.looking.reading === reading.id ? "open" : "",
  ];
  return draw(
    "g",
    {
      id: `seen-${reading.id}`,
      class: marks.filter(Boolean).join(" "),
      transform: `translate(${x} ${y.toFixed(3)})`,
      role: "slider",
      tabindex: 0,
      "aria-orientation": "vertical",
      "aria-label": say("page.seen-in-lane", { spot: namesOf(state.sheet, reading.spots), lane: seen.lane + 1, number }),
      "aria-valuemin": 0,
      "aria-valuemax": 1,
      "aria-valuenow": Math.min(1, Math.max(0, rf ?? 0.5)).toFixed(2),
      "aria-valuetext": valueOf(state, plate, reading),
      onkeydown: spotKeys(state, act, plate.id, reading.id),
      onblur: act.rest,
      ...fellowHandlers(state, act, compounds),
    },
    draw("circle", { class: "reach", r: REACH_PX * pixel }),
    draw("circle", { class: "ring", r: r + 3.5 * pixel, "stroke-width": 2 * pixel }),
    place.far && draw("path", { class: "leader", d: `M0 0L${place.dx} ${place.dy}`, "stroke-width": 0.7 * pixel }),
    ...body(state, seen, pixel),
    draw(
      "text",
      {
        class: `letter ${letterColour(state, seen)}`,
        x: place.dx.toFixed(3),
        y: (place.dy + 0.35 * LETTER_PX * pixel).toFixed(3),
        "text-anchor": place.anchor,
        "font-size": LETTER_PX * pixel,
        "stroke-width": 3 * pixel,
        "aria-hidden": "true",
      },
      seen.letters,
    ),
  );
}

/** The matter of a spot: of one colour, of two where it hides two compounds, only an edge where nobody knows. @param {State} state @param {Seen} seen @param {number} pixel */
function body({ sheet }, { reading, guessed, r }, pixel) {
  const ry = 0.86 * r;
  const edge = { "stroke-width": 1.4 * pixel };
  const [one, other] = reading.spots;
  if (!one) {
    const colour = guessed.length === 1 ? colourOf(sheet, guessed[0]) : "";
    return [draw("ellipse", { class: `spot unknown ${colour}`, rx: r, ry, ...edge, "stroke-dasharray": `${3 * pixel} ${2.4 * pixel}` })];
  }
  if (!other) return [draw("ellipse", { class: `spot ${colourOf(sheet, one)}`, rx: r, ry, ...edge })];
  return [
    draw("path", { class: `spot ${colourOf(sheet, one)}`, d: `M0 ${-ry}A${r} ${ry} 0 0 0 0 ${ry}Z`, ...edge }),
    draw("path", { class: `spot ${colourOf(sheet, other)}`, d: `M0 ${-ry}A${r} ${ry} 0 0 1 0 ${ry}Z`, ...edge }),
  ];
}

/** @param {State} state @param {Seen} seen */
const letterColour = ({ sheet }, { guessed }) => (guessed.length === 1 ? `guessed ${colourOf(sheet, guessed[0])}` : "");

/**
 * The start line or the front, with a grip beside the plate.
 * @param {string} plate its id @param {import("./layer.js").Lines} at @param {number} number @param {"start" | "front"} which @param {number} pixel
 * @param {{onkeydown: (event: KeyboardEvent) => void, onblur: () => void}} handlers
 */
export function lineDrawn(plate, at, number, which, pixel, handlers) {
  return draw(
    "g",
    {
      id: `${which}-line-${plate}`,
      class: "line",
      transform: `translate(0 ${(at.height - at[which]).toFixed(3)})`,
      role: "slider",
      tabindex: 0,
      "aria-orientation": "vertical",
      "aria-label": say(which === "start" ? "page.start-line" : "page.front-line", { number }),
      "aria-valuemin": which === "start" ? 0 : at.start,
      "aria-valuemax": which === "start" ? at.front : at.height,
      "aria-valuenow": typedMm(at[which]),
      "aria-valuetext": say("page.length-shown", { mm: marked(typedMm(at[which])) }),
      ...handlers,
    },
    ...pencilLine(at.width, pixel),
    draw("path", { class: "grip", d: `M${at.width + pixel} 0l${9 * pixel} ${-5 * pixel}v${10 * pixel}Z`, "stroke-width": pixel }),
    draw("circle", { class: "reach", cx: at.width + GRIP_PX * pixel, r: REACH_PX * pixel }),
    draw("rect", { class: "ring", x: 0, y: -5 * pixel, width: at.width + 12 * pixel, height: 10 * pixel, "stroke-width": 2 * pixel }),
  );
}
