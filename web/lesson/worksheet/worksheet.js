// @ts-check
/** Questions on paper: what is chosen, a preview, and print. The server draws everything from a code; the answers stand on pages of their own. */

import { make } from "../../dom.js";
import { button } from "../../entry.js";
import { styled } from "../../later.js";
import { furtherTexts, say } from "../../texts.js";
import { askSoon, told, withFaults } from "../ask.js";
import { choiceEntries, codeEntry, keptOf } from "./entries.js";
import { noPaperYet, paperView } from "./paper.js";
import { PAPERS, print } from "./printing.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

await Promise.all([...["worksheet", "paper"].map((name) => styled(new URL(`./${name}.css`, import.meta.url))), furtherTexts()]);

/** The solvents its plates ran in; none while those of a code are not known. @param {State} state */
export function pairOf(state) {
  const kept = keptOf(state.lesson);
  const { answer, current } = told(state, questionOf(kept));
  const [weak, strong] = kept.by === "choices" ? kept.pair.split("/") : current ? answer.pair.split("/") : ["", ""];
  return { weak, strong };
}

/** What is said once it is there: the code that was said last. */
let said = "";

/** @param {State} state @param {Act} act @returns {Element[]} */
export function view(state, act) {
  const kept = keptOf(state.lesson);
  const question = questionOf(kept);
  askSoon(state, act, question);
  const { answer, current, standing } = told(state, question);
  const shown = withFaults(state, question);
  if (current && said !== answer.code) {
    if (said) act.speak(say("later.lesson-worksheet-made", { code: answer.code }));
    said = answer.code;
  }
  return [
    make(
      "form",
      { id: "worksheet-entries", class: "worksheet-entries", onsubmit: (event) => event.preventDefault() },
      codeEntry(shown, act, kept, answer),
      ...choiceEntries(shown, act, kept, answer),
      make("p", { id: "worksheet-standing", class: "aside" }, standingWords(standing, current, kept)),
      make("div", { class: "buttons", id: "worksheet-print" }, ...PAPERS.map((paper) => button({ id: `worksheet-print-${paper}`, label: say(`later.lesson-worksheet-print-${paper}`), disabled: !current, press: () => print(paper) }))),
    ),
    answer ? paperView(state, act, kept, answer, current) : noPaperYet(),
  ];
}

/** @param {ReturnType<typeof keptOf>} kept @returns {import("../ask.js").Question} */
function questionOf({ by, code, seed, questions, variants, pair }) {
  const entries = new Map([["code", "worksheet-code"], ["seed", "worksheet-code"], ["questions", "worksheet-ask-rf"], ["variants", "worksheet-variants"], ["pair", "worksheet-pair"]]);
  const chosen = { seed, questions, variants: Number(variants), pair };
  return { name: "worksheet", path: "/api/lesson/worksheet", body: by === "code" ? { code } : questions.length > 0 ? chosen : undefined, entries };
}

/** @param {string | undefined} standing @param {boolean} current @param {ReturnType<typeof keptOf>} kept */
function standingWords(standing, current, { by, questions }) {
  if (by === "choices" && questions.length === 0) return say("later.lesson-worksheet-none");
  if (standing === "unreachable") return say("later.lesson-worksheet-gone");
  return current || standing === "refused" ? "" : say("later.lesson-worksheet-counting");
}
