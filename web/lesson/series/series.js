// @ts-check
/** Plates side by side, weak eluent to strong, and one that is pulled by hand. */

import { list, make } from "../../dom.js";
import { button, choice, tick } from "../../entry.js";
import { styled } from "../../later.js";
import { marked, say } from "../../texts.js";
import { askSoon, told, withFaults } from "../ask.js";
import { eluentText } from "../ratio.js";
import { besideQuestion, chosenPair, entered, pairsBeside, seriesQuestion } from "./ask.js";
import { letterOf, plateFigure } from "./plates.js";
import { pulledAlone, pulledView } from "./pulled.js";
import { foretold } from "./read.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** More lanes than this make a plate wider. */
const NARROW = 4;

const KINDS = ["series", "ends", "solvents", "layers"];

await styled(new URL("series.css", import.meta.url));

/** @param {State} state @param {Act} act @returns {Element[]} */
export const view = (state, act) => {
  const main = seriesQuestion(state);
  askSoon(state, act, main);
  const { answer, standing } = told(state, main);
  const beside = besideQuestion(state);
  askSoon(state, act, beside);
  const refused = [...withFaults(state, main).faults.values()].flat();
  const wrong = withFaults(state, beside);
  if (state.lesson.parts.series?.only === "pulled" && answer) return [cloudTick(act, entered(state).cloud), pulledAlone(state, answer, entered(state).cloud)];
  return [
    make("p", { class: "aside" }, say("later.lesson-series-about")),
    kinds(state, act),
    ...(entered(state).shows === "solvents" ? [pairChoice(wrong, act)] : []),
    ...[...refused, ...(wrong.faults.get("") ?? [])].map((sentence) => make("p", { class: "fault" }, sentence)),
    ...(answer ? shown(state, act, told(state, main), told(state, beside)) : standing === "refused" ? [] : [make("p", { id: "series-waiting" }, say("later.lesson-series-asked"))]),
  ];
};

/** @param {State} state @param {Act} act */
function kinds(state, act) {
  const { shows } = entered(state);
  const choose = (/** @type {string} */ kind) => change(act, { shows: kind });
  return make(
    "div",
    { id: "series-kinds", class: "series-kinds", role: "group", "aria-label": say("later.lesson-series-kinds") },
    ...KINDS.map((kind) => button({ id: `series-kind-${kind}`, label: say(`later.lesson-series-kind-${kind}`), pressed: kind === shows, press: () => choose(kind) })),
  );
}

/** @param {Act} act @param {Record<string, string>} entry */
const change = (act, entry) => act.edit((lesson) => { lesson.parts.series = { ...lesson.parts.series, ...entry }; });

/** @param {State} state @param {Act} act */
const pairChoice = (state, act) =>
  choice(state, { id: "series-against", label: say("later.lesson-series-against"), value: chosenPair(state), options: pairsBeside(state), chosen: (against) => change(act, { against }) });

/** Whether two answers are of the same compounds in the same two solvents, so that one may stand beside the other. @param {any} one @param {any} other */
const isSame = (one, other) => JSON.stringify([one.weak.id, one.strong.id, one.curves]) === JSON.stringify([other.weak.id, other.strong.id, other.curves]);

/** @param {State} state @param {Act} act @param {{answer: any, current: boolean}} main @param {{answer: any, current: boolean}} beside */
function shown(state, act, { answer, current }, beside) {
  const { shows, cloud } = entered(state);
  const fits = beside.answer && isSame(answer, beside.answer);
  const row = shows === "ends" && fits ? beside.answer : answer;
  const joined = fits ? { ...answer, against: beside.answer.against, otherLayer: beside.answer.otherLayer } : answer;
  const old = !current || (shows !== "series" && !beside.current && fits);
  const sentences = answer.basis === "measured" ? [...row.sentences, answer.basisSaid] : [answer.basisSaid, ...row.sentences];
  const all = [
    cloudTick(act, cloud),
    make("div", { id: "series-row", class: Object.keys(answer.curves.spots).length > NARROW ? "wide" : undefined, role: "group", "aria-label": say("later.lesson-series-row") }, ...row.plates.map((/** @type {any} */ plate, /** @type {number} */ place) => smallPlate(row, plate, place, cloud))),
    ...(cloud === "shown" ? [make("p", { class: "aside", id: "series-cloud-says" }, say("later.lesson-series-cloud-says", { count: Object.values(answer.clouds.spots)[0].length }))] : []),
    make("div", { id: "series-below" }, pulledView(state, act, joined, cloud), make("div", { id: "series-see" }, make("h3", {}, say("later.lesson-series-see")), list(sentences.map(({ text }) => text)))),
    table(state, row),
    strengths(state, [row.strengths, joined.against?.strengths, joined.otherLayer?.strengths].filter(Boolean)),
  ];
  return [make("div", { id: "series-shown", class: old ? "old" : undefined }, make("p", { id: "series-before", class: "aside" }, old ? say("later.lesson-series-before") : ""), ...all)];
}

/** @param {Act} act @param {"shown" | "hidden"} cloud */
const cloudTick = (act, cloud) =>
  tick({ id: "series-cloud", label: say("later.lesson-series-cloud"), ticked: cloud === "shown", changed: (ticked) => change(act, { cloud: ticked ? "shown" : "hidden" }) });

/** @param {any} row @param {any} plate @param {number} place @param {"shown" | "hidden"} cloud */
function smallPlate(row, plate, place, cloud) {
  const further = plate.strength === undefined ? [] : [say("later.lesson-series-epsilon", { strength: plate.strength })];
  return plateFigure({ id: `series-${place}`, at: foretold(row, plate.percentStrong, cloud === "shown"), percent: plate.percentStrong, pair: row, kind: "small", further });
}

/** @param {State} state @param {any} row */
function table(state, row) {
  const names = Object.keys(row.curves.spots);
  const head = names.map((name, place) => make("th", { scope: "col" }, name === letterOf(place) ? name : `${letterOf(place)} ${name}`));
  const caption = say("later.lesson-series-table");
  return make(
    "details",
    { id: "series-numbers" },
    make("summary", {}, caption),
    make(
      "div",
      { class: "series-scroll", id: "series-scroll", tabindex: 0, role: "region", "aria-label": caption },
      make(
        "table",
        {},
        make("thead", {}, make("tr", {}, make("td"), ...head)),
        make("tbody", {}, ...row.plates.map((/** @type {any} */ plate) => make("tr", {}, make("th", { scope: "row" }, eluentText(plate.percentStrong, row)), ...names.map((name) => make("td", {}, say("later.lesson-series-rf", plate.spots[name])))))),
      ),
    ),
    make("h3", {}, say("later.lesson-series-changed")),
    list(row.plates.flatMap((/** @type {any} */ plate) => plate.changed.map((/** @type {any} */ each) => each.text))),
  );
}

/** Where the strengths come from. @param {State} state @param {any[]} all */
function strengths({ published }, all) {
  const names = new Map(published.library.solvents.map((/** @type {any} */ each) => [each.id, each.name]));
  const said = all.map(({ seriesText, values }) =>
    say("later.lesson-series-epsilon-source", {
      series: seriesText,
      values: values
        .filter((/** @type {any} */ each) => each.property === "eluent_strength")
        .map((/** @type {any} */ each) => say("later.lesson-series-value", { solvent: names.get(each.solvent) ?? each.solvent, value: marked(each.value), source: each.source, locator: each.locator }))
        .join("; "),
    }));
  return make("div", { id: "series-strengths", class: "aside" }, ...[...new Set(said)].map((sentence) => make("p", {}, sentence)));
}
