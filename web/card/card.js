// @ts-check
/** The pour card: what to pin to the hood. Everything on it comes from the answer and the library. */

import { alone, isDecisive, ratioText, restsOn } from "../answer/jar.js";
import { make } from "../dom.js";
import { button } from "../entry.js";
import { additivePour } from "../sheet/additive.js";
import { exampleWords } from "../sheet/sample.js";
import { marked, say, sayWith } from "../texts.js";
import { minutes } from "../where/facts.js";
import { askable, askableMessage } from "../where/origin.js";
import { cautionsView } from "./cautions.js";
import { guideView } from "./guide.js";
import { platesRun } from "./runs.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** @param {State} state @param {Act} _act @returns {Element[]} */
export function cardView(state, _act) {
  const title = make("h2", { id: "card-title" }, say("page.card"));
  const { answered } = state;
  const { library } = state.published;
  if (!answered || !library) return [title, make("p", { id: "no-card" }, say("page.no-answer"))];
  const { advice, notes } = answered.answer;
  return [
    title,
    make("div", { class: "buttons only-screen", id: "print-buttons" }, ...printButtons("print")),
    make(
      "article",
      { id: "pour-card", class: "pour-card", "aria-labelledby": "card-title" },
      ...marks(state),
      make("div", { class: "head", id: "card-head" }, ...head(advice, answered.sheet.additive)),
      make(
        "div",
        { class: "body", id: "card-body" },
        guideView(answered.sheet),
        make("div", { id: "card-steps" }, ...steps(answered, advice), ...expected(answered, advice), ...warnings(advice, notes)),
      ),
      make("div", { class: "caution", id: "card-cautions" }, ...cautionsView(advice, library, answered.sheet.additive.kind)),
      ...platesRun(answered.sheet, library),
      byHand(),
    ),
  ];
}

/** That it is an example, or older than what stands on the sheet. @param {State} state */
function marks(state) {
  const example = exampleWords(answeredSheet(state));
  const old = state.standing === "refused" || state.standing === "unreachable";
  return [
    example !== "" && make("p", { class: "mark" }, example),
    old && make("p", { class: "decisive" }, say("page.card-old")),
  ].filter((each) => each !== false);
}

/** @param {State} state */
const answeredSheet = (state) => /** @type {any} */ (state.answered).sheet;

/** The ratio and the volumes, large. @param {any} advice @param {import("../sheet/sheet.js").Additive} additive */
function head(advice, additive) {
  const { weakMl, strongMl } = advice.pour;
  const poured = [
    { ml: weakMl, solvent: advice.weak.name },
    { ml: strongMl, solvent: advice.strong.name },
  ].filter(({ ml }) => ml > 0);
  const added = additivePour(additive, weakMl + strongMl);
  return [
    make("p", { class: alone(advice) ? "ratio pure" : "ratio" }, askable("ratio", ratioText(advice))),
    make(
      "p",
      { class: "volumes" },
      ...poured.flatMap(({ ml, solvent }, i) => [
        ...(i > 0 ? [" + "] : []),
        ...sayWith("page.card-volume", { ml, solvent }, { ml: (shown) => askable("pour", shown) }),
      ]),
      added !== undefined && make("span", { id: "card-added" }, " ", say("page.additive-plus", { added })),
    ),
  ];
}

/** @param {any} message a text of the server, alone or with its key */
const textOf = (message) => (typeof message === "string" ? message : message.text);

/** From pouring to taking the plate out. @param {import("../state.js").Answered} answered @param {any} advice */
function steps({ sheet }, advice) {
  const { card } = advice;
  if (!card) return [];
  const ask = (/** @type {string} */ about) => (/** @type {string} */ shown) => askable(about, shown);
  const jar = { diameter: marked(sheet.jar), level: card.levelMm, start: card.startMm };
  const stop = { stop: card.stopMm, run: card.runMm, start: card.startMm };
  return [
    make("h3", {}, say("page.card-steps")),
    make(
      "ol",
      { class: "steps" },
      make("li", {}, textOf(card.order)),
      make("li", {}, ...sayWith("page.card-jar", jar, { diameter: ask("jar"), level: ask("level"), start: ask("start") })),
      make("li", {}, textOf(card.paper)),
      make("li", {}, ...sayWith("page.card-stop", stop, { stop: ask("stop"), run: ask("run"), start: ask("start") }), " ", ...time(card)),
    ),
  ];
}

/** @param {any} card @returns {(Node | string)[]} */
function time(card) {
  if (!card.highMinutes) return [say("page.card-time-unknown")];
  const [low, high] = [minutes(card.lowMinutes), minutes(card.highMinutes)];
  const ask = (/** @type {string} */ shown) => askable("minutes", shown);
  return low === high ? sayWith("page.card-time-one", { high }, { high: ask }) : sayWith("page.card-time", { low, high }, { low: ask, high: ask });
}

/** Where each spot should come to lie, and how likely all of it is. @param {import("../state.js").Answered} answered @param {any} advice */
function expected(answered, advice) {
  const { setting } = answered.sheet;
  const row = (/** @type {any} */ { spot, rf, low, high }) =>
    make(
      "tr",
      {},
      make("th", { scope: "row" }, spot),
      make("td", {}, askable("rf", marked(rf.toFixed(2)), { spot })),
      make("td", {}, say("page.card-range", { low, high })),
    );
  const heads = ["page.card-spot", "page.card-rf", "page.card-band"].map((key) => make("th", { scope: "col" }, say(key)));
  return [
    make("h3", {}, say("page.card-expected")),
    make("table", { class: "spots" }, make("thead", {}, make("tr", {}, ...heads)), make("tbody", {}, ...advice.spots.map(row))),
    make("p", { class: "chance-line" }, ...askableMessage(advice.probabilityInWords), " ", ...settingSentence(setting)),
    ...[restsOn(answered, advice, "card-rests-on")].filter((each) => each !== false),
  ];
}

/** @param {string} setting */
const settingSentence = (setting) =>
  sayWith("page.holds-for", { setting: say(`page.setting-${setting}`) }, { setting: (shown) => askable("setting", shown) });

/** What does not fit together, and what decides whether to pour at all. @param {any} advice @param {any[]} notes */
function warnings(advice, notes) {
  const told = [...(advice.card?.warnings ?? []), ...notes.filter(isDecisive)].map(textOf);
  return told.map((text) => make("p", { class: "decisive" }, text));
}

/** To be filled in with a pen. */
const byHand = () =>
  make(
    "div",
    { class: "by-hand", id: "card-by-hand" },
    ...["page.card-date", "page.card-name"].map((key) => make("p", {}, make("span", {}, say(key)), make("span", { class: "line" }))),
  );

const PAPERS = ["a4", "letter"];

/** One button for each size of paper. @param {string} id they begin with @param {string} [what] a class that says what else than the card is printed @param {boolean} [disabled] */
export const printButtons = (id, what, disabled) => PAPERS.map((paper) => button({ id: `${id}-${paper}`, label: say(`page.print-${paper}`), disabled, press: () => print(paper, what) }));

/** Prints: a class on the root element says on what paper, and the style sheets do the rest. @param {string} paper @param {string} [what] */
function print(paper, what) {
  const root = document.documentElement.classList;
  root.remove(...PAPERS.map((each) => `on-${each}`));
  root.add(`on-${paper}`);
  if (what) root.add(what);
  document.documentElement.dataset.printing = "asked"; // what is printed is chosen; else it would be what is in view
  window.print();
  delete document.documentElement.dataset.printing;
  if (what) root.remove(what);
}
