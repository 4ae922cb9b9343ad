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
import { badCells, classOf, classQuestion, columnsOf, editClass, shareOf } from "./table.js";

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
  const wrong = { ...state, faults: new Map([...refused, ...bad]) };
  const { answer, current, standing } = told(state, question);
  const shown = question.body && answer;
  return [
    make("p", { class: "aside", id: "class-about" }, say("later.lesson-class-about")),
    make("div", { id: "class-cautions" }),
    ...inventedView(state, mine, invented),
    make("div", { id: "class-all" }, make(
      "div",
      { id: "class-sides", class: "class-sides" },
      entryView(wrong, act, mine),
      make(
        "div",
        { id: "class-told", class: "class-told", "aria-busy": String(Boolean(question.body) && !current && standing === "counting") },
        !question.body && make("p", { id: "class-none" }, say("later.lesson-class-none")),
        ...[...bad.values()].map((sentences, i) => make("p", { class: "fault", id: `class-bad-${i}` }, sentences.join(" "))),
        ...refusedView(mine, refused),
        question.body && standing === "unreachable" && make("p", { class: "fault", id: "class-unreachable" }, say("later.lesson-class-unreachable")),
        question.body && !answer && standing === "counting" && make("p", { id: "class-counting" }, say("later.lesson-class-counting")),
        ...(shown ? toldView(state, act, mine, answer, current) : []),
      ),
    )),
  ];
}

/** What was refused, with the row it stands in; what the entry of the ratio says is not said twice. @param {import("./table.js").ClassPart} mine @param {Map<string, string[]>} refused */
function refusedView(mine, refused) {
  return [...refused].filter(([id]) => id !== "class-percent").map(([id, sentences], i) => {
    const row = mine.rows.findIndex((each) => id.includes(`-class-${each.id}`));
    const place = row < 0 ? "" : `${say("later.lesson-class-row")} ${row + 1}: `;
    return make("p", { class: "fault", id: `class-fault-${i}` }, `${place}${sentences.join(" ")}`);
  });
}

/** Asked for its words only, in the language of the page. @param {State} state @param {import("./table.js").ClassPart} mine */
function inventedQuestion(state, mine) {
  const body = mine.invented ? { ...sampleAsked(state.lesson), percentStrong: shareOf(state), code: mine.invented } : undefined;
  return { name: "class-invented", path: "/api/lesson/class/example", body, entries: new Map() };
}

/** @param {State} state @param {import("./table.js").ClassPart} mine @param {import("../ask.js").Question} question */
function inventedView(state, mine, question) {
  const { answer } = told(state, question);
  if (!mine.invented || !answer) return [];
  return [
    make("p", { id: "class-invented", class: "class-invented" }, `${answer.invented.text} ${say("later.lesson-class-example-code", { code: mine.invented })}`),
    make("details", { id: "class-hidden" }, make("summary", { id: "class-hidden-summary" }, say("later.lesson-class-hidden")), make("p", {}, answer.hidden.text)),
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
