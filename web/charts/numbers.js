// @ts-check
/** The numbers of a chart: folded in a table, copied as CSV; and the buttons that take a chart away. */

import { shareText } from "../answer/shares.js";
import { make } from "../dom.js";
import { marked, say } from "../texts.js";
import { indexOf, valueAt } from "./frame.js";

/** @typedef {import("./data.js").ChartData} ChartData */

/** The shares told in the table; the copied numbers have all. */
const TOLD = [0, 1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100];

/**
 * @typedef {{head: string, values: number[], decimals: number}} Column
 * @typedef {{share: string, shares: number[], columns: Column[], advised: number}} Numbers share is the head of the first column
 * @typedef {{id: string, file: string, title: string, words: string[], numbers: Numbers, data?: ChartData, of?: string}} Taken of what it is a chart, where it is none of an answer
 */

/** @param {ChartData} data @param {Column[]} columns @returns {Numbers} */
export function numbersOf({ advice, shares }, columns) {
  return { share: say("page.chart-share-column", { strong: advice.strong.name }), shares, columns, advised: advice.percentStrong };
}

/** @param {string} id @param {string} title @param {Numbers} numbers */
export function tableOf(id, title, { share, shares, columns, advised }) {
  const told = [...new Set([...TOLD, advised])].filter((each) => each >= shares[0] && each <= shares[shares.length - 1]);
  const rows = told.sort((a, b) => a - b).map((each) => {
    const at = indexOf(shares, each);
    const head = each === advised ? say("page.chart-advised-share", { percent: shareText(each) }) : shareText(each);
    return { head, kind: each === advised ? "chart-advised-row" : undefined, cells: columns.map(({ values, decimals }) => marked(valueAt(values, at).toFixed(decimals))) };
  });
  return foldedTable(id, title, say("page.chart-numbers"), [share, ...columns.map(({ head }) => head)], rows);
}

/** A table of the numbers as they are, one row for each. @param {string} id @param {string} title @param {string} summary @param {Numbers} numbers */
export function tableOfRows(id, title, summary, { share, shares, columns }) {
  const rows = shares.map((each, i) => ({ head: marked(String(each)), kind: undefined, cells: columns.map(({ values, decimals }) => marked(values[i].toFixed(decimals))) }));
  return foldedTable(id, title, summary, [share, ...columns.map(({ head }) => head)], rows);
}

/** @param {string} id @param {string} title @param {string} summary @param {string[]} heads @param {{head: string, kind: string | undefined, cells: string[]}[]} rows */
function foldedTable(id, title, summary, heads, rows) {
  return make(
    "details",
    { id: `${id}-numbers` },
    make("summary", {}, summary),
    make(
      "div",
      { class: "chart-table", id: `${id}-table`, tabindex: 0, role: "region", "aria-label": title },
      make(
        "table",
        {},
        make("caption", {}, title),
        make("thead", {}, make("tr", {}, ...heads.map((head) => make("th", { scope: "col" }, head)))),
        make(
          "tbody",
          {},
          ...rows.map(({ head, kind, cells }) => make("tr", { class: kind }, make("th", { scope: "row" }, head), ...cells.map((each) => make("td", {}, each)))),
        ),
      ),
    ),
  );
}

/** All numbers, one share a line, with a decimal point whatever the language. @param {Numbers} numbers */
function csvOf({ share, shares, columns }) {
  const quoted = (/** @type {string} */ text) => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const head = [share, ...columns.map((column) => column.head)].map(quoted).join(",");
  const lines = shares.map((each, i) => [each, ...columns.map(({ values }) => values[i])].map((value) => String(Number(value.toFixed(6)))).join(","));
  return `${[head, ...lines].join("\n")}\n`;
}

/** @param {import("../state.js").State} state @param {import("../state.js").Act} act @param {Taken} taken */
export function takeAway(state, act, taken) {
  const { id, title } = taken;
  const taking = state.looking.taken?.chart === id ? state.looking.taken.how : undefined;
  const csv = csvOf(taken.numbers);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(csv);
      act.look({ taken: { chart: id, how: "copied" } });
    } catch {
      act.look({ taken: { chart: id, how: "by-hand" } });
      const text = /** @type {HTMLTextAreaElement | null} */ (document.getElementById(`${id}-csv`));
      text?.focus();
      text?.select();
    }
  };
  const failed = () => act.look({ taken: { chart: id, how: "no-picture" } });
  const drawing = () => import("./save.js").then(({ saveDrawing }) => saveDrawing(taken)).catch(failed);
  const picture = () => import("./save.js").then(({ savePicture }) => savePicture(taken)).catch(failed);
  const button = (/** @type {string} */ what, /** @type {() => void} */ press) =>
    make("button", { type: "button", id: `${id}-${what}`, "aria-label": `${say(`page.chart-${what}`)}: ${title}`, onclick: press }, say(`page.chart-${what}`));
  return make(
    "div",
    { id: `${id}-take`, class: "chart-take" },
    button("svg", drawing),
    button("png", picture),
    button("copy", copy),
    make("p", { id: `${id}-said`, class: "chart-said", role: "status" }, taking ? say(`page.chart-${taking}`) : ""),
    taking === "by-hand" && make("textarea", { id: `${id}-csv`, readonly: true, rows: 6, "aria-label": say("page.chart-csv", { title }) }, csv),
  );
}
