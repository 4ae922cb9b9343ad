// @ts-check
/** The next jar: the ratio large, what to pour, the chance, what would help, and the plate to expect. */

import { list, make } from "../dom.js";
import { button } from "../entry.js";
import { expectedPlate } from "../plate/expected.js";
import { saidOf } from "../request.js";
import { additivePour } from "../sheet/additive.js";
import { openWhat } from "../sheet/identity.js";
import { say, sayWith } from "../texts.js";
import { askable, askableMessage } from "../where/origin.js";
import { anotherView } from "./another.js";
import { curvesAt } from "./curves.js";
import { ownPlates, runPlate } from "./run.js";
import { shareText } from "./shares.js";
import { whatIfView } from "./whatif.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** Of the cautions for every solvent, those for filling a jar. */
const AT_THE_JAR = ["sheet-first", "hood", "vapours"];

/** Notes that decide whether to pour at all: they stand beside the chance, the others under "To know". */
const DECISIVE = [
  "advice.additive",
  "advice.no-ratio",
  "advice.no-ratio-perhaps",
  "advice.no-ratio-probably",
  "advice.last-plate-best",
  "advice.last-plate-best-apart",
  "advice.silica-cannot-hold",
  "advice.readings-differ",
  "advice.runs-backwards",
  "advice.untrusted-range",
  "advice.graduation-coarse",
  "advice.spot-unread",
  "advice.spot-unread-first",
  "advice.spot-unread-first-name",
  "advice.last-plate-works",
];

/** @param {State} state @param {Act} act */
export function jarView(state, act) {
  const advice = state.answered?.answer.advice;
  return [
    make("h2", { id: "jar-title" }, say("page.jar")),
    ...standing(state),
    ...(advice && state.answered ? answer(state, act, advice) : []),
  ];
}

/** What to say in place of an answer that is not to the sheet as it is. @type {Record<string, string>} */
const OLD = { counting: "page.counting", refused: "page.look-above", unreachable: "page.out-of-reach-short" };

/** What stays at the lower edge of a phone. @param {State} state @param {Act} act @param {{told: string, to: string}} [column] what to say instead while one is at the column */
export function reachView(state, act, column) {
  const advice = state.answered?.answer.advice;
  if (!advice) return [];
  const old = OLD[state.standing];
  const told = old ? say(old) : (column?.told ?? say("page.in-reach", { ratio: ratioText(advice), count: advice.probabilityInWords.args.count }));
  return [
    make("a", { href: (!old && column?.to) || "#jar", id: "in-reach" }, told),
    button({ id: "reach-undo", label: say("page.undo"), kind: "small", disabled: !state.can.undo, press: act.undo }),
  ];
}

/** Why there is no answer to the sheet as it is, if so. @param {State} state */
function standing(state) {
  const lines = state.waiting.map((plate) =>
    make("p", { class: "decisive" }, say("page.plate-waits", { number: state.sheet.plates.findIndex((each) => each.id === plate.id) + 1 })),
  );
  if (state.standing === "counting") lines.push(make("p", { class: "decisive", id: "counting" }, say("page.counting")));
  if (state.standing === "unreachable") lines.push(make("p", { class: "decisive" }, say("page.out-of-reach")));
  if (state.standing === "refused") {
    lines.push(make("p", { class: "decisive" }, say("page.faults")));
    for (const told of state.faults.get("") ?? []) lines.push(make("p", { class: "fault" }, told));
    if (state.answered) lines.push(make("p", { class: "aside" }, say("page.changed")));
  }
  return lines;
}

/** @param {State} state @param {Act} act @param {any} advice */
function answer(state, act, advice) {
  const { notes } = /** @type {any} */ (state.answered).answer;
  return [
    make(
      "div",
      { id: "said", class: isOld(state) ? "old" : undefined },
      state.answered.runs.length === 0 && firstTry(state, act),
      ratio(advice),
      pour(advice, state.answered.sheet.additive),
      ...advice.card.warnings.map((/** @type {any} */ warning) => make("p", { class: "decisive" }, ...askableMessage(warning))),
      chance(state, advice, notes.filter(isDecisive)),
    ),
    make(
      "div",
      { class: "buttons", id: "jar-buttons" },
      button({
        id: "run-this",
        label: say("page.run-this"),
        kind: "main",
        disabled: isOld(state),
        press: () => runPlate(state, act, advice.ratio.replace(":", " : ")),
      }),
      make("a", { href: "#card", id: "to-card", class: "button" }, say("page.to-card")),
    ),
    anotherView(state, act),
    expected(state, advice),
    ...whatIfView(state, act),
    beforePouring(state.published.library),
  ];
}

/** Before any plate: what the ratio rests on, and what would make it better. @param {State} state @param {Act} act */
function firstTry(state, act) {
  const known = state.answered?.answer.structures ?? [];
  const next = state.sheet.spots.find((spot) => Object.keys(saidOf(spot)).length === 0);
  const spots = known.map((/** @type {any} */ each) => each.spot).join(", ");
  return make(
    "div",
    { class: "decisive", id: "first-try" },
    make("p", {}, known.length ? say("page.first-known", { spots }) : say("page.first-try")),
    next && button({ id: "first-what", label: say("page.say-what", { spot: next.name.trim() || say("page.unnamed") }), press: () => openWhat(act, next) }),
  );
}

/** @param {any} note */
export const isDecisive = (note) => DECISIVE.includes(note.key);

/** @param {any} message */
const text = (message) => message.text;

/** Whether the answer shown is not to what stands on the sheet, and no other will come by itself. @param {State} state */
const isOld = ({ standing }) => ["counting", "refused", "unreachable"].includes(standing);

/** The solvent that is poured alone; undefined where two are mixed. @param {any} advice */
export function alone(advice) {
  const [weak, strong] = advice.ratio.split(":");
  if (strong === "0") return advice.weak;
  return weak === "0" ? advice.strong : undefined;
}

/** @param {any} advice */
export function ratioText(advice) {
  const one = alone(advice);
  return one ? say("page.pure", { solvent: one.name }) : advice.ratio.replace(":", " : ");
}

/** @param {any} advice */
const ratio = (advice) =>
  make("p", { class: alone(advice) ? "ratio pure" : "ratio", id: "ratio" }, askable("ratio", ratioText(advice)));

/** @param {any} advice @param {import("../sheet/sheet.js").Additive} additive */
function pour(advice, additive) {
  const { weakMl, strongMl } = advice.pour;
  const one = alone(advice);
  const names = { weak: advice.weak.name, strong: advice.strong.name };
  const ml = one
    ? say("page.pour-pure", { ml: weakMl + strongMl, solvent: one.name })
    : say("page.pour", { weakMl, strongMl, ...names });
  const added = additivePour(additive, weakMl + strongMl);
  return make(
    "p",
    { class: "pour", id: "pour" },
    !one && make("span", { class: "names" }, say("page.pair-option", names)),
    make("span", { class: "millilitres" }, askable("pour", ml)),
    added !== undefined && make("span", { class: "added", id: "pour-added" }, say("page.additive-plus", { added })),
  );
}

/** The bar, its sentence, for which setting, and what would help. @param {State} state @param {any} advice @param {any[]} decisive */
function chance(state, advice, decisive) {
  const other = advice.alternatives[0];
  const { setting } = /** @type {any} */ (state.answered).sheet;
  return make(
    "div",
    { class: "chance", id: "chance" },
    make("meter", {
      min: 0,
      max: 1,
      value: advice.probabilityGoal ?? advice.probabilityAllInWindow,
      "aria-label": say("page.chance-label"),
    }),
    make("p", { id: "chance-words" }, ...askableMessage(advice.probabilityInWords)),
    restsOn(/** @type {any} */ (state.answered), advice),
    ...decisive.map((note) => make("p", { class: "decisive" }, ...askableMessage(note))),
    other &&
      make("p", { class: "decisive" }, ...sayWith("page.best-alternative", { text: "" }, { text: () => make("span", {}, ...askableAlternative(other)) })),
    make(
      "p",
      { class: "aside", id: "hold" },
      ...sayWith("page.holds-for", { setting: say(`page.setting-${setting}`) }, { setting: (shown) => askable("setting", shown) }),
    ),
  );
}

/** Said beside a chance of a pair whose model comes from no plates of it: one's own count all the same. @param {import("../state.js").Answered} answered @param {any} advice @param {string} id of the line */
export function restsOn(answered, { basis, weak, strong }, id = "rests-on") {
  if (!["theory", "guess"].includes(basis)) return false;
  const key = ownPlates(answered, weak.id, strong.id) ? `page.rests-on-${basis}-own` : `page.rests-on-${basis}`;
  return make("p", { class: "decisive", id }, ...sayWith(key, { basis: say(`page.model-${basis}`) }, { basis: (shown) => make("b", {}, askable("model", shown)) }));
}

/** The next plate at the ratio looked at. @param {State} state @param {any} advice */
function expected(state, advice) {
  const { answer, sheet } = /** @type {any} */ (state.answered);
  const percent = state.looking.percent ?? advice.percentStrong;
  const spots =
    state.looking.percent === undefined
      ? advice.spots
      : Object.entries(curvesAt(answer.curves, percent).spots).map(([spot, at]) => ({ spot, .../** @type {any} */ (at) }));
  const words = spots.map((/** @type {any} */ spot) => say("page.predicted-spot", spot));
  return make(
    "figure",
    { class: "next", id: "next" },
    expectedPlate(sheet, spots, say("page.predicted-plate", { spots: words.join("; ") }), state.looking.fellow ?? []),
    make("figcaption", {}, caption(state, advice), make("ul", {}, ...spots.map(askableSpot))),
  );
}

/** @param {State} state @param {any} advice */
function caption({ looking }, advice) {
  if (looking.percent === undefined) return say("page.next-plate");
  return say("page.tried-plate", { percent: shareText(looking.percent), strong: advice.strong.name });
}

/** @param {any} spot */
const askableSpot = (spot) =>
  make("li", {}, ...sayWith("page.predicted-spot", spot, { rf: (shown) => askable("rf", shown, { spot: spot.spot }) }));

/** @param {any} each */
export const askableAlternative = (each) =>
  sayWith("page.alternative", { text: each.text, percent: 100 * each.probability }, { percent: (shown) => askable("alternative", shown) });

/** What to mind with every solvent, beside the millilitres. @param {any} library */
function beforePouring(library) {
  const general = (library?.cautions ?? []).filter((/** @type {any} */ one) => AT_THE_JAR.includes(one.key));
  return make("div", { class: "caution", id: "before-pouring" }, make("h3", {}, say("page.cautions")), list(general.map(text)));
}
