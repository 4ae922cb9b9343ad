// @ts-check
/** The strip of tubes: each a small lane with what was seen in it; chosen by tap, drag or arrows, marked by tap, letter or digit. */

import { draw, make } from "../dom.js";
import { button } from "../entry.js";
import { faultAt } from "../faults.js";
import { COLOURS } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { isPooled } from "./ask.js";
import { choose, chosenIn, copyBefore, doneWith, forget, markEmpty, othersEmpty, put, tap } from "./marking.js";
import { MOST_TUBES, addTubes, editRun, keysOf, strengthIn } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Run} Run @typedef {import("./sheet.js").Tube} Tube */

const LANE = { width: 34, height: 66, start: 57, front: 6 };
/** Radius of a spot by its strength. */
const RADIUS = [0, 2.2, 3.4, 4.8, 6.2];
/** So many tubes are put on at once where more were collected. */
const MORE = 10;

/** @param {State} state @param {Act} act @param {Run} run */
export function stripView(state, act, run) {
  const chosen = chosenIn(state, run);
  const { attributes, told } = faultAt(state, `strip-${run.id}`);
  const pools = isPooled(state, run) ? state.looking.pooled?.[run.id].answer.pools : [];
  return make(
    "div",
    { id: `strip-all-${run.id}`, class: "strip-all" },
    make("p", { class: "aside strip-how", id: `strip-how-${run.id}` }, say("later.fractions-strip-how"), make("span", { class: "with-keys" }, " ", say("later.fractions-strip-keys"))),
    make(
      "div",
      {
        id: `strip-${run.id}`,
        class: "tube-strip",
        role: "group",
        "aria-label": say("later.fractions-strip"),
        ...attributes,
        onkeydown: (event) => keys(state, act, run, event),
        onpointerdown: (event) => drag(state, act, run, event),
        onpointermove: (event) => drag(state, act, run, event),
      },
      ...run.tubes.map((tube, i) => tubeView(state, act, run, tube, i, chosen, poolAt(pools, i + 1))),
    ),
    told,
    palette(state, act, run),
    make("p", { id: `strip-said-${run.id}`, class: "unseen", role: "status" }, chosen ? said(state, run, chosen.at) : ""),
  );
}

/** @param {any[]} pools @param {number} tube its number */
const poolAt = (pools, tube) => pools.find(({ fromTube, toTube }) => tube >= fromTube && tube <= toTube);

/** @param {State} state @param {Act} act @param {Run} run @param {Tube} tube @param {number} i @param {import("./sheet.js").Chosen | undefined} chosen @param {any} pool */
function tubeView(state, act, run, tube, i, chosen, pool) {
  const within = chosen !== undefined && i >= Math.min(chosen.at, chosen.from) && i <= Math.max(chosen.at, chosen.from);
  const at = chosen?.at ?? 0;
  return make(
    "button",
    {
      type: "button",
      id: `tube-${run.id}-${tube.id}`,
      class: ["tube", tube.marks ? "" : "unlooked", pool ? `pool-${pool.kind}` : ""].filter(Boolean).join(" "),
      "aria-pressed": String(within),
      "aria-label": said(state, run, i),
      tabindex: i === at ? 0 : -1,
      "data-place": i,
      onclick: (event) => choose(state, act, run, i, event.shiftKey ? "on" : "anew"),
    },
    lane(state, tube),
    make("span", { class: "tube-number", "aria-hidden": "true" }, String(i + 1)),
  );
}

/** @param {State} state @param {Tube} tube */
function lane(state, tube) {
  const { spots } = state.sheet;
  return draw(
    "svg",
    { class: "tube-lane", viewBox: `0 0 ${LANE.width} ${LANE.height}`, "aria-hidden": "true", focusable: "false" },
    draw("rect", { class: "tube-layer", x: 0.5, y: 0.5, width: LANE.width - 1, height: LANE.height - 1 }),
    draw("line", { class: "tube-line", x1: 4, x2: LANE.width - 4, y1: LANE.start, y2: LANE.start }),
    draw("line", { class: "tube-line", x1: 4, x2: LANE.width - 4, y1: LANE.front, y2: LANE.front }),
    !tube.marks && draw("text", { class: "tube-unlooked", x: LANE.width / 2, y: 36, "text-anchor": "middle" }, "?"),
    ...spots.flatMap((spot, i) => {
      const strength = strengthIn(tube, spot.id);
      if (strength === 0) return [];
      const x = (LANE.width * (i + 0.75)) / (spots.length + 0.5);
      const y = LANE.start - rfOf(state, spot.name.trim(), i) * (LANE.start - LANE.front);
      return [draw("circle", { class: `tube-spot chart-colour-${i % COLOURS} colour-${i % COLOURS}`, cx: x, cy: y, r: RADIUS[strength] })];
    }),
  );
}

/** Where a compound runs on a plate in the first eluent, as far as it was foretold. @param {State} state @param {string} name @param {number} i */
function rfOf({ sheet, looking, answered }, name, i) {
  const planned = looking.planned?.answer?.plan.spots.find((/** @type {any} */ each) => each.spot === name)?.rf.value;
  const advised = answered?.answer.advice.spots.find((/** @type {any} */ each) => each.spot === name)?.rf;
  return planned ?? advised ?? (i + 1) / (sheet.spots.length + 1);
}

/** A tube in words. @param {State} state @param {Run} run @param {number} i */
function said({ sheet }, run, i) {
  const { marks } = run.tubes[i];
  const seen = sheet.spots
    .map((spot) => ({ spot: spot.name.trim() || say("page.unnamed"), strength: strengthIn(run.tubes[i], spot.id) }))
    .filter(({ strength }) => strength > 0)
    .map(({ spot, strength }) => say("later.fractions-seen", { spot, strength: say(`later.fractions-strength-${strength}`) }));
  const what = !marks ? say("later.fractions-unlooked") : seen.length === 0 ? say("later.fractions-nothing") : seen.join(", ");
  return say("later.fractions-tube", { number: i + 1, what });
}

/** What to press for the tubes that are chosen. @param {State} state @param {Act} act @param {Run} run */
function palette(state, act, run) {
  const chosen = chosenIn(state, run);
  const letters = keysOf(state.sheet.spots);
  const words = !chosen
    ? say("later.fractions-choose")
    : chosen.at === chosen.from
      ? say("later.fractions-chosen", { number: chosen.at + 1 })
      : say("later.fractions-chosen-span", { from: Math.min(chosen.at, chosen.from) + 1, to: Math.max(chosen.at, chosen.from) + 1 });
  const unlooked = run.tubes.some(({ marks }) => marks === undefined);
  return make(
    "div",
    { id: `palette-${run.id}`, class: "palette" },
    make("p", { class: "palette-words", id: `palette-words-${run.id}` }, words),
    make(
      "div",
      { class: "chips", id: `palette-spots-${run.id}`, role: "group", "aria-labelledby": `palette-words-${run.id}` },
      ...state.sheet.spots.map((spot, i) => {
        const strength = chosen ? strengthIn(run.tubes[chosen.at], spot.id) : 0;
        const label = strength > 0 ? say("later.fractions-seen", { spot: spot.name.trim(), strength: say(`later.fractions-strength-${strength}`) }) : spot.name.trim() || say("page.unnamed");
        return make(
          "button",
          { type: "button", id: `put-${run.id}-${spot.id}`, class: `put colour-${i % COLOURS}`, disabled: !chosen, "aria-pressed": String(strength > 0), "aria-keyshortcuts": letters.get(spot.id)?.toUpperCase(), onclick: () => tap(state, act, run, spot.id) },
          label,
          letters.get(spot.id) !== undefined && make("kbd", { "aria-hidden": "true" }, letters.get(spot.id)?.toUpperCase()),
        );
      }),
      quick("nothing", "0", !chosen, () => markEmpty(state, act, run)),
      quick("same", "=", !chosen || Math.min(chosen.at, chosen.from) === 0, () => copyBefore(state, act, run)),
      quick("next", "\u21b5", !chosen, () => doneWith(state, act, run)),
    ),
    make(
      "div",
      { class: "chips", id: `palette-all-${run.id}` },
      unlooked &&
        quick("others", undefined, false, () => {
          othersEmpty(act, run);
          act.focus(`more-${run.id}`); // this button is gone, and with it the focus
        }),
      run.tubes.length < MOST_TUBES && quick("more", undefined, false, () => editRun(act, run.id, (mine, column) => addTubes(column, mine, MORE))),
      run.tubes.length > 1 && run.tubes.at(-1)?.marks === undefined && quick("fewer", undefined, false, () => editRun(act, run.id, (mine) => mine.tubes.pop())),
    ),
  );

  /** @param {"nothing" | "same" | "next" | "others" | "more" | "fewer"} what @param {string | undefined} key @param {boolean} disabled @param {() => void} press */
  function quick(what, key, disabled, press) {
    return make("button", { type: "button", id: `${what}-${run.id}`, disabled, onclick: press }, say(`later.fractions-do-${what}`, { count: MORE }), key !== undefined && make("kbd", { "aria-hidden": "true" }, key));
  }
}

/** Moves along the strip with each arrow. @param {Element} strip @param {number} at @param {string} key @param {number} last */
function moved(strip, at, key, last) {
  const tubes = /** @type {HTMLElement[]} */ ([...strip.querySelectorAll(".tube")]);
  const inRow = Math.max(1, tubes.filter((each) => each.offsetTop === tubes[0].offsetTop).length);
  const to = { ArrowRight: at + 1, ArrowLeft: at - 1, ArrowDown: at + inRow, ArrowUp: at - inRow, Home: 0, End: last }[key];
  return to === undefined ? undefined : to < 0 || to > last ? at : to;
}

/** @param {State} state @param {Act} act @param {Run} run @param {KeyboardEvent} event */
function keys(state, act, run, event) {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
  const chosen = chosenIn(state, run);
  const strip = /** @type {Element} */ (event.currentTarget);
  const under = event.target instanceof Element ? event.target.getAttribute("data-place") : null;
  const at = chosen?.at ?? Number(under ?? 0);
  const to = moved(strip, at, event.key, run.tubes.length - 1);
  const letter = event.key.toLowerCase();
  const spot = [...keysOf(state.sheet.spots)].find(([, key]) => key === letter)?.[0];
  if (to !== undefined) choose(state, act, run, to, event.shiftKey ? "on" : "anew");
  else if (!chosen && /^(Enter|=|[0-4a-z]|Backspace|Delete)$/i.test(event.key)) {
    choose(state, act, run, at, "anew");
    return keys(state, act, run, event);
  } else if (event.key === "Enter") doneWith(state, act, run);
  else if (event.key === "=") copyBefore(state, act, run);
  else if (event.key === "Backspace" || event.key === "Delete") forget(state, act, run);
  else if (/^[0-4]$/.test(event.key)) put(state, act, run, Number(event.key));
  else if (spot !== undefined) tap(state, act, run, spot);
  else return;
  event.preventDefault();
}

/** Tubes that a finger or the mouse is drawn over are chosen together. @param {State} state @param {Act} act @param {Run} run @param {PointerEvent} event */
function drag(state, act, run, event) {
  if (event.type === "pointermove" && !(event.buttons & 1)) return;
  const under = document.elementFromPoint(event.clientX, event.clientY)?.closest(".tube");
  if (!under || under.parentElement !== event.currentTarget) return;
  const at = Number(under.getAttribute("data-place"));
  if (event.type === "pointerdown") {
    if (event.button === 0 && !event.shiftKey) choose(state, act, run, at, "anew");
  } else if (chosenIn(state, run)?.at !== at) choose(state, act, run, at, "on");
}
