// @ts-check
/** The pages of a worksheet: questions of each sheet, then, on pages of their own, the answers. */

import { list, make } from "../../dom.js";
import { tick } from "../../entry.js";
import { say } from "../../texts.js";
import { checkLine, plateInMm } from "./plate.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** What each question takes of a page, what to mind before an experiment, and what fits on the first page and on a further one [mm]. */
const HIGH = /** @type {Record<string, number>} */ ({ rf: 78, order: 54, "co-spot": 84, ratio: 79, edge: 81 });
const CARE_HIGH = 60;
const FIRST_PAGE = 216;
const FURTHER_PAGE = 232;

/** @param {State} state @param {Act} act @param {import("./entries.js").Kept} kept @param {any} answer @param {boolean} current */
export function paperView(state, act, kept, answer, current) {
  const opened = Boolean(state.looking.worksheetAnswers);
  const title = kept.title.trim() || say("later.lesson-worksheet-title-usual");
  return make(
    "div",
    { id: "worksheet-paper", class: `on-paper-${kept.parts} ${current ? "" : "old"} ${opened ? "answers-shown" : ""}` },
    make("h3", { id: "worksheet-preview", class: "only-screen" }, say("later.lesson-worksheet-preview")),
    ...answer.sheets.flatMap((/** @type {any} */ sheet) => questionPages(answer, sheet, title, kept.codeOn === "all")),
    tick({ id: "worksheet-show", label: say("later.lesson-worksheet-show"), ticked: opened, changed: (shown) => act.look({ worksheetAnswers: shown }) }),
    ...answer.answers.map((/** @type {any} */ sheet) => answerPage(answer, sheet, title, kept.codeOn !== "none")),
  );
}

/** Room for the first page until it comes, so that what follows stays where it is. */
export const noPaperYet = () => make("div", { id: "worksheet-paper", class: "old" }, make("h3", { id: "worksheet-preview", class: "only-screen" }, say("later.lesson-worksheet-preview")), make("div", { class: "worksheet-blank" }));

/** Which questions stand on which page, each with its number, and whether what to mind is the last thing on it. @param {any[]} questions */
function packed(questions) {
  /** @type {{numbered: {question: any, number: number}[], care: boolean}[]} */
  const pages = [{ numbered: [], care: false }];
  let left = FIRST_PAGE;
  const turn = (/** @type {number} */ high) => {
    if (high > left) {
      pages.push({ numbered: [], care: false });
      left = FURTHER_PAGE;
    }
    left -= high;
  };
  questions.forEach((question, i) => {
    turn(HIGH[question.kind]);
    pages[pages.length - 1].numbered.push({ question, number: i + 1 });
  });
  turn(CARE_HIGH);
  pages[pages.length - 1].care = true;
  return pages;
}

/** @param {any} answer @param {any} sheet @param {string} title @param {boolean} coded whether the code stands on it @returns {Element[]} */
function questionPages(answer, { letter, questions }, title, coded) {
  const pages = packed(questions);
  return pages.map(({ numbered, care }, page) => {
    const id = `sheet-${letter}-${page + 1}`;
    return make(
      "section",
      { id, class: "worksheet-page of-questions" },
      make("h4", { class: "worksheet-head" }, make("span", {}, title), make("span", {}, say("later.lesson-worksheet-sheet", { letter }))),
      page === 0 && make("p", { class: "worksheet-by-hand" }, ...[say("later.lesson-worksheet-name"), say("later.lesson-worksheet-date")].map((words) => make("span", {}, words))),
      page === 0 && notesView(answer),
      ...numbered.map(({ question, number }) => questionView(`${id}-${question.kind}`, question, number)),
      care && make("div", { class: "worksheet-care" }, make("h5", {}, "! ", say("later.lesson-worksheet-care")), list(answer.cautions.map((/** @type {any} */ each) => each.text))),
      make("p", { class: "worksheet-foot" }, checkLine(`${id}-check`), make("span", {}, say("later.lesson-worksheet-scale")), make("span", { class: "worksheet-where" }, footWords(coded && answer.code, letter, page + 1, pages.length))),
    );
  });
}

/** What is computed, and what the pair rests on. @param {any} answer */
const notesView = (answer) => make("p", { class: "worksheet-note" }, answer.notes.map((/** @type {any} */ each) => each.text).join(" "));

/** @param {string | false} code @param {string} letter @param {number} page @param {number} pages */
const footWords = (code, letter, page, pages) => [...(code ? [say("later.lesson-worksheet-foot", { code })] : []), say("later.lesson-worksheet-sheet", { letter }), say("later.lesson-worksheet-page", { page, pages })].join(" \u00b7 ");

/** @param {string} id @param {any} question @param {number} number */
function questionView(id, { title, asked, plate, table, lines }, number) {
  return make(
    "article",
    { id, class: plate ? "worksheet-question with-plate" : "worksheet-question" },
    plate && plateInMm(`${id}-plate`, plate),
    make(
      "div",
      { class: "worksheet-asked" },
      make("h5", {}, `${number}. ${title.text}`),
      ...asked.map((/** @type {any} */ each) => make("p", {}, each.text)),
      table && tableView(table),
      ...Array.from({ length: lines }, () => make("p", { class: "worksheet-line" })),
    ),
  );
}

/** A number, or from one to another: it never goes over two lines. */
const NUMBER = /^[\d.,]+( \S+ [\d.,]+)?$/;

/** @param {{columns: string[], rows: string[][]}} table @param {Record<string, string | number>} [reached] what lets a wide one be reached by keyboard, as it is moved aside on a narrow screen */
function tableView({ columns, rows }, reached = {}) {
  const cell = (/** @type {string} */ words) => make("td", { class: NUMBER.test(words) ? "number" : undefined }, words || make("span", { class: "unseen" }, say("later.lesson-worksheet-to-fill")));
  return make(
    "div",
    { class: "worksheet-table", ...reached },
    make(
      "table",
      {},
      make("thead", {}, make("tr", {}, ...columns.map((each) => make("th", { scope: "col" }, each)))),
      make("tbody", {}, ...rows.map((row) => make("tr", { class: row.some((each) => each === "") ? "to-fill" : undefined }, ...row.map(cell)))),
    ),
  );
}

/** What an answer says that none before it on the page has said. @param {any[]} answers @param {number} place */
const saidOnce = (answers, place) => answers[place].says.filter((/** @type {any} */ one) => !answers.slice(0, place).some(({ says }) => says.some((/** @type {any} */ each) => each.text === one.text)));

/** @param {any} answer @param {any} sheet @param {string} title @param {boolean} coded whether the code stands on it */
function answerPage(answer, { letter, answers }, title, coded) {
  const id = `answers-${letter}`;
  return make(
    "section",
    { id, class: "worksheet-page of-answers" },
    make("h4", { class: "worksheet-head" }, make("span", {}, title), make("span", {}, say("later.lesson-worksheet-answers-of", { letter }))),
    ...answers.map((/** @type {any} */ each, /** @type {number} */ i) =>
      make(
        "article",
        { id: `${id}-${each.kind}`, class: each.kind === "order" ? "worksheet-answer is-wide" : "worksheet-answer" },
        make("div", {}, make("h5", {}, `${i + 1}. ${each.title.text}`), ...saidOnce(answers, i).map((/** @type {any} */ one) => make("p", {}, one.text))),
        each.table && tableView(each.table, each.kind === "order" ? { id: `${id}-order-table`, tabindex: 0, role: "group", "aria-label": `${each.title.text} ${letter}` } : {}),
      )),
    notesView(answer),
    make("p", { class: "worksheet-foot" }, make("span", { class: "worksheet-where" }, [...(coded ? [say("later.lesson-worksheet-foot", { code: answer.code })] : []), say("later.lesson-worksheet-answers-of", { letter })].join(" \u00b7 "))),
  );
}
