// @ts-check
/** A class reads: what twenty pairs make of the same spots, and how much of their scatter is reading and how much the plate. */

import { list, make } from "../../dom.js";
import { button, choice } from "../../entry.js";
import { styled } from "../../later.js";
import { say } from "../../texts.js";
import { askSoon, told, withFaults } from "../ask.js";
import { sampleAsked } from "../state.js";
import { entryView } from "./entry.js";
import { histogram, platesDrawing } from "./picture.js";
import { badCells, cellId, classOf, classQuestion, columnsOf, editClass, isShareEmpty, shareOf, strongName } from "./table.js";

await styled(new URL("class.css", import.meta.url));

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** @param {State} state @param {Act} act @returns {Element[]} */
export function view(state, act) {
  const mine = classOf(state.lesson);
  const question = classQuestion(state, mine);
  const invented = inventedQuestion(state, mine);
  queueMicrotask(() => {
    askSoon(state, act, question);
    askSoon(state, act, invented);
  });
  const bad = badCells(state, mine);
  const refused = withFaults(state, question).faults;
  const empty = isShareEmpty(state) ? [/** @type {[string, string[]]} */ (["class-percent", [say("later.lesson-class-percent-empty", { strong: strongName(state) })]])] : [];
  const wrong = { ...state, faults: new Map([...refused, ...bad, ...empty]) };
  const { answer, current, standing } = told(state, question);
  const shown = question.body && answer;
  return [
    make("p", { class: "aside", id: "class-about" }, say("later.lesson-class-about")),
    ...inventedView(state, mine, invented, current ? answer : undefined),
    make("div", { id: "class-all" }, make(
      "div",
      { id: "class-sides", class: "class-sides" },
      entryView(wrong, act, mine, refusedView(state, mine, bad, refused)),
      make(
        "div",
        { id: "class-told", class: "class-told", "aria-busy": String(Boolean(question.body) && !current && standing === "counting") },
        !question.body && empty.length === 0 && make("p", { id: "class-none" }, say("later.lesson-class-none")),
        question.body && standing === "unreachable" && make("p", { class: "fault", id: "class-unreachable" }, say("later.lesson-class-unreachable")),
        question.body && !answer && standing === "counting" && make("p", { id: "class-counting" }, say("later.lesson-class-counting")),
        ...(shown ? toldView(state, act, mine, answer, current) : []),
      ),
    )),
  ];
}

/** What is left out or was refused, with the row and the column it stands in; what the entry of the ratio says is not said twice. @param {State} state @param {import("./table.js").ClassPart} mine @param {Map<string, string[]>} bad @param {Map<string, string[]>} refused */
function refusedView(state, mine, bad, refused) {
  const told = [...bad.values()].map((sentences, i) => make("p", { class: "fault", id: `class-bad-${i}` }, sentences.join(" ")));
  const others = [...refused].filter(([id]) => id !== "class-percent" && !bad.has(id));
  return [...told, ...others.map(([id, sentences], i) => make("p", { class: "fault", id: `class-fault-${i}` }, placed(state, mine, id, sentences.join(" "))))];
}

/** @param {State} state @param {import("./table.js").ClassPart} mine @param {string} id of the entry @param {string} told */
function placed(state, mine, id, told) {
  const row = mine.rows.findIndex((each) => id.endsWith(`-class-${each.id}`) || id.includes(`-class-${each.id}-`));
  if (row < 0) return told;
  const heads = new Map([["pair", "later.lesson-class-pair"], ["plate", "later.lesson-class-plate"], ["start", "later.lesson-class-start"], ["front", "later.lesson-class-front"]]);
  const head = heads.get(id.split("-")[0]);
  const column = head ? say(head) : columnsOf(state, mine).find((each) => cellId(mine.rows[row], each.id) === id)?.name ?? "";
  return say("later.lesson-class-place", { row: row + 1, column, told });
}

/** Asked for its words only, in the language of the page. @param {State} state @param {import("./table.js").ClassPart} mine */
function inventedQuestion(state, mine) {
  const body = mine.invented && !isShareEmpty(state) ? { ...sampleAsked(state.lesson), percentStrong: shareOf(state), code: mine.invented } : undefined;
  return { name: "class-invented", path: "/api/lesson/class/example", body, entries: new Map() };
}

/** @param {State} state @param {import("./table.js").ClassPart} mine @param {import("../ask.js").Question} question @param {any} judged what the readings show */
function inventedView(state, mine, question, judged) {
  const { answer } = told(state, question);
  if (!mine.invented || !answer) return [];
  return [
    make("p", { id: "class-invented", class: "class-invented" }, `${answer.invented.text} ${say("later.lesson-class-example-code", { code: mine.invented })}`),
    make("details", { id: "class-hidden" }, make("summary", { id: "class-hidden-summary" }, say("later.lesson-class-hidden")), make("p", { id: "class-hidden-text" }, answer.hidden.text.text), judged && !judged.slips.some((/** @type {any} */ slip) => slip.pair === answer.hidden.pair) && make("p", { id: "class-hidden-unfound" }, say("later.lesson-class-hidden-unfound"))),
  ];
}

/** @param {State} state @param {Act} act @param {import("./table.js").ClassPart} mine @param {any} answer @param {boolean} current */
function toldView(state, act, mine, answer, current) {
  const colours = new Map(columnsOf(state, mine).map(({ name, colour }) => [name, colour]));
  const scatter = answer.scatter?.sentences ?? [];
  return [
    make(
      "div",
      { id: "class-findings", "data-standing": current ? "current" : "before" },
      make("h3", { id: "class-scatter-title" }, say("later.lesson-class-scatter")),
      list([...scatter, ...answer.sentences].map(({ text }) => text)),
      answer.withoutFar && make("p", { id: "class-without-far" }, `${say("later.lesson-class-without-far")} ${answer.withoutFar.sentences.slice(0, 2).map((/** @type {any} */ each) => each.text).join(" ")}`),
      ...titled("class-slips", say("later.lesson-class-slips-title"), answer.slips),
      ...titled("class-far", say("later.lesson-class-far-title"), answer.far),
      ...titled("class-plates-far", say("later.lesson-class-plates-far-title"), answer.farPlates),
      make("h3", { id: "class-plates-title" }, say("later.lesson-class-plates")),
      choice(state, {
        id: "class-order",
        label: say("later.lesson-class-order"),
        value: mine.order,
        options: [{ value: "entered", text: say("later.lesson-class-order-entered") }, { value: "shift", text: say("later.lesson-class-order-shift") }],
        chosen: (value) => editClass(act, (own) => { own.order = value === "shift" ? "shift" : "entered"; }),
      }),
      platesDrawing(answer, mine.order, colours),
      make("h3", { id: "class-spots-title" }, say("later.lesson-class-spots")),
      make("p", { class: "aside", id: "class-band-how" }, say("later.lesson-class-band")),
      make("div", { id: "class-histograms", class: "class-histograms" }, ...answer.spots.map((/** @type {any} */ spot, /** @type {number} */ i) => histogram(spot, colours.get(spot.spot) ?? 5, `class-spot-${i}`))),
      make("div", { class: "class-presses", id: "class-print-press" }, button({ id: "class-print", label: say("later.lesson-class-print"), press: () => window.print() })),
    ),
  ];
}

/** @param {string} id @param {string} title @param {{text: {text: string}}[]} told */
const titled = (id, title, told) => (told.length === 0 ? [] : [make("h3", { id: `${id}-title` }, title), make("ul", { id }, ...told.map(({ text }) => make("li", {}, text.text)))]);
