// @ts-check
/** The rows of the ladder: the strip, and beside it what speaks for that pair and what against. */

import { alone, ratioText } from "../answer/jar.js";
import { plates } from "../answer/outcome.js";
import { shareText } from "../answer/shares.js";
import { byId, list, make } from "../dom.js";
import { button } from "../entry.js";
import { choosePair } from "../sheet/shelf.js";
import { marked, say, sayWith } from "../texts.js";
import { askable } from "../where/origin.js";
import { sample, strip } from "./ladder.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** Below this chance to lie in the window a pair is offered in small. */
const SMALL = 0.1;

/** A ratio as it is read. @param {string} ratio */
const spaced = (ratio) => ratio.replace(":", " : ");

/** What is poured, in words: the ratio, or the solvent that is poured alone. @param {any} pair @param {string} ratio */
const pouredText = ({ weak, strong }, ratio) => ratioText({ weak, strong, ratio });

/** The mixture now in words; one that was typed may be no ratio that is poured. @param {any} of */
export const mixtureText = (of) => (of.ratio === undefined ? `${marked(String(of.percentStrong))}\u00a0%` : pouredText(of, of.ratio));

/** What is written in a strip: those words, or the ratio where they are too long. @param {any} pair @param {string} ratio */
const written = (pair, ratio) => [pouredText(pair, ratio), spaced(ratio)];

/** @param {any} pair */
const namesOf = ({ weak, strong }) => ({ weak: weak.name, strong: strong.name });

/** Which pair a number belongs to, for its origin. @param {any} pair */
const whichOf = ({ weak, strong, basis }) => ({ weakId: weak.id, strongId: strong.id, basis });

/** The pair now, to compare with. @param {State} _state @param {any} told */
export function nowRow(_state, { of, rungs }) {
  const pair = say("page.pair-option", namesOf(of));
  const label = say("later.swap-strip-now", { pair, ratio: mixtureText(of), rf: of.rf });
  return make(
    "li",
    { id: "swap-now", class: "ladder-row now" },
    heading(pair, of, say("later.swap-now")),
    make("div", { class: "strip-box" }, strip({ id: "strip-now", label, rungs, basis: of.basis, now: of.rf, ratio: of.ratio === undefined ? [mixtureText(of)] : written(of, of.ratio) })),
    make("div", { class: "row-words" }, ...(of.apart ? goal(of) : [window(of)])),
  );
}

/** The chance in the window; of another pair beside that of the mixture now. @param {any} pair @param {any} [of] the mixture now */
function window(pair, of) {
  const count = { count: (/** @type {string} */ shown) => askable("swap-chance", shown, whichOf(pair)) };
  const words = of ? sayWith("later.swap-window", { count: plates(pair.chance), now: plates(of.chance) }, count) : sayWith("later.swap-window-now", { count: plates(pair.chance) }, count);
  return make("p", { class: "row-goal" }, ...words);
}

/** The chance of both, in the window and the closest two apart, and in small that of each. @param {any} pair @param {any} [of] the mixture now */
function goal(pair, of) {
  const { apart, chance } = pair;
  const which = whichOf(pair);
  const words = { one: apart.spots[0], other: apart.spots[1], count: plates(pair.goal), now: of ? plates(of.goal) : "" };
  const parts = { window: plates(chance), apart: plates(apart.chance), gap: apart.gap };
  return [
    make("p", { class: "row-goal" }, ...sayWith(of ? "later.swap-goal" : "later.swap-goal-now", words, { count: (shown) => askable("swap-goal", shown, which) })),
    make(
      "p",
      { class: "row-parts" },
      ...sayWith(of ? "later.swap-parts" : "later.swap-parts-now", parts, {
        window: (shown) => askable("swap-chance", shown, which),
        apart: (shown) => askable("swap-apart", shown, which),
        gap: (shown) => askable("gap", shown),
      }),
    ),
  ];
}

/** The pair, what its model rests on as a line and as a word, and one word more. @param {string} pair @param {any} of @param {string} more */
const heading = (pair, of, more) =>
  make(
    "div",
    { class: "row-head" },
    make("h3", {}, pair),
    make("p", { class: "row-basis" }, sample(of.basis), askable("model", say(`page.model-${of.basis}`), whichOf(of)), more && make("span", {}, more)),
  );

/** @param {State} state @param {Act} act @param {any} told the answer @param {any} other one of its others @param {boolean} current */
export function otherRow(state, act, told, other, current) {
  const { of, aim } = told;
  const key = `${other.weak.id}-${other.strong.id}`;
  const pair = say("page.pair-option", namesOf(other));
  return make(
    "li",
    { id: `swap-${key}`, class: "ladder-row" },
    heading(pair, other, say(`later.swap-class-${other.class}`)),
    make(
      "div",
      { class: "strip-box" },
      strip({
        id: `strip-${key}`,
        label: stripWords(pair, other, aim),
        rungs: other.rungs,
        basis: other.basis,
        now: of.rf,
        aim,
        equal: other.equal,
        nearest: other.nearest,
        ratio: other.equal ? written(other, other.equal.ratio) : [],
      }),
    ),
    make(
      "div",
      { class: "row-words" },
      other.equal ? equal(other, aim) : nearest(other),
      ...(other.apart && of.apart ? goal(other, of) : [window(other, of)]),
      against(state, other),
      make(
        "div",
        { class: "row-foot" },
        button({ id: `swap-use-${key}`, label: say("later.swap-use"), name: say("later.swap-use-name", namesOf(other)), kind: other.chance < SMALL ? "small" : undefined, disabled: !current, press: () => use(state, act, other) }),
        more(key, pair, other),
      ),
    ),
  );
}

/** What a strip shows, in words. @param {string} pair @param {any} other @param {number} [aim] Rf that is matched where it is not that of the mixture now */
function stripWords(pair, other, aim) {
  const { rungs, equal: found, basis } = other;
  const [first, last] = [rungs[0], rungs[rungs.length - 1]];
  const reach = say("later.swap-strip", {
    pair,
    basis: say(`page.model-${basis}`),
    first: shareText(first.percentStrong),
    last: shareText(last.percentStrong),
    firstRf: first.rf,
    lastRf: last.rf,
  });
  if (!found) return reach;
  const band = { ratio: pouredText(other, found.ratio), low: shareText(found.low), high: shareText(found.high) };
  return `${reach} ${aim === undefined ? say("later.swap-strip-equal", band) : say("later.swap-strip-aim", { ...band, aim })}`;
}

/** @param {any} other @param {number} [aim] */
function equal(other, aim) {
  const { ratio, low, high } = other.equal;
  const isAnywhere = low <= other.rungs[0].percentStrong && high >= other.rungs[other.rungs.length - 1].percentStrong;
  const which = { ...whichOf(other), lowShare: shareText(low), highShare: shareText(high), ...(aim === undefined ? {} : { aim: marked(aim.toFixed(2)) }) };
  const ask = (/** @type {string} */ shown) => askable("swap-equal", shown, which);
  return make(
    "p",
    { class: "row-ratio" },
    make("b", {}, ask(pouredText(other, ratio))),
    " ",
    ...sayWith(isAnywhere ? "later.swap-band-anywhere" : "later.swap-band", { low: shareText(low), high: shareText(high) }, { low: ask, high: ask }),
  );
}

/** @param {any} other */
function nearest(other) {
  const { percentStrong, rf, side } = other.nearest;
  const pure = percentStrong <= 0 ? other.weak : percentStrong >= 100 ? other.strong : undefined;
  const ask = (/** @type {string} */ shown) => askable("swap-middle", shown, whichOf(other));
  return make("p", { class: "row-short" }, ...(pure ? sayWith(`later.swap-nearest-pure-${side}`, { solvent: pure.name, rf }, { rf: ask }) : sayWith(`later.swap-nearest-${side}`, { percent: shareText(percentStrong), strong: other.strong.name, rf }, { rf: ask })));
}

/** What it takes to get rid of it and to handle it, and what of it is not at hand. @param {State} state @param {any} other */
function against({ published, sheet }, other) {
  const flags = other.flags.map((/** @type {string} */ flag) => say(`later.swap-flag-${flag}`));
  const missing = [other.weak, other.strong].filter(({ id }) => !sheet.shelf.includes(id)).map(({ name }) => name);
  const boils = other.boilingPoint !== undefined && sayWith("later.swap-boils", { degrees: marked(String(other.boilingPoint)) }, { degrees: (shown) => boiling(published.library, other, shown) });
  return make(
    "p",
    { class: "row-against" },
    boils && make("span", {}, ...boils),
    flags.length > 0 && make("span", {}, say("later.swap-against", { flags: flags.join(", ") })),
    missing.length > 0 && make("span", {}, say("later.swap-absent", { solvents: missing.join(", ") })),
  );
}

/** The boiling point with the printed value it is, where the library has that; else as it is. @param {any} library @param {any} other @param {string} shown */
function boiling(library, { weak, strong, boilingPoint }, shown) {
  for (const { id } of [weak, strong]) {
    const values = library?.solvents.find((/** @type {any} */ one) => one.id === id)?.values ?? [];
    const place = values.findIndex((/** @type {any} */ value) => value.property === "boiling_point" && value.value.split(/[^\d.]+/).map(Number).includes(boilingPoint));
    if (place >= 0) return askable("value", shown, { solvent: id, place: String(place) });
  }
  return shown;
}

/** The millilitres, the reasons, and where each spot should come to lie. @param {string} key @param {string} pair @param {any} other */
function more(key, pair, other) {
  const { equal: found, spots, reasons } = other;
  const one = found && alone({ ...other, ratio: found.ratio });
  const ml = found && (one ? say("page.pour-pure", { ml: found.weakMl + found.strongMl, solvent: one.name }) : say("page.pour", { weakMl: found.weakMl, strongMl: found.strongMl, ...namesOf(other) }));
  const poured = ml && say("later.swap-pour", { pour: ml });
  const foretold = Object.entries(spots ?? {}).map(([spot, at]) =>
    make("li", {}, ...sayWith("page.predicted-spot", { spot, .../** @type {any} */ (at) }, { rf: (shown) => askable("swap-spot", shown, { ...whichOf(other), spot }) })),
  );
  return make(
    "details",
    { id: `swap-more-${key}` },
    make("summary", { "aria-label": say("later.swap-more-name", { pair }) }, say("later.swap-more")),
    poured && make("p", {}, poured),
    list(reasons.map((/** @type {any} */ reason) => reason.text)),
    foretold.length > 0 && make("ul", {}, ...foretold),
  );
}

/** Makes it the pair of the next plate, in one step that can be taken back; what was not on the shelf is put there. @param {State} state @param {Act} act @param {any} other */
function use(state, act, { weak, strong }) {
  act.edit((sheet) => {
    choosePair(sheet, weak.id, strong.id);
    sheet.shelf = [...new Set([...sheet.shelf, weak.id, strong.id])];
  });
  act.look({ swapTook: { weak: weak.id, strong: strong.id }, swapWish: { ...state.looking.swapWish, match: "" } });
  const jar = byId("jar");
  jar.focus({ preventScroll: true });
  if (getComputedStyle(jar).position !== "sticky") jar.scrollIntoView({ block: "start" }); // beside the ladder it is in sight already
}
