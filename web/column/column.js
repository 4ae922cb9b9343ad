// @ts-check
/** From the plate to the column: what is wanted, what to pour and keep, the picture of it, and the columns that were run. */

import { ratioText } from "../answer/jar.js";
import { byId, make } from "../dom.js";
import { button } from "../entry.js";
import { styled } from "../later.js";
import { furtherTexts, say } from "../texts.js";
import { askPlan, askWhereNeeded, isAskable, isPlanCurrent } from "./ask.js";
import { entriesView } from "./entries.js";
import { narrow } from "./picture.js";
import { judgeWhereNeeded } from "./judge.js";
import { hundredths, planView, stepRatio } from "./plan.js";
import "./printing.js";
import { runsView } from "./runs.js";

const COLUMN = "column";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

const SHEETS = ["column", "picture", "runs", "paper"];

await Promise.all([...SHEETS.map((name) => styled(new URL(`./${name}.css`, import.meta.url))), furtherTexts()]);

/** @param {State} state @param {Act} act @returns {Element[]} */
export function columnView(state, act) {
  queueMicrotask(() => {
    askWhereNeeded(state, act);
    judgeWhereNeeded(state, act);
  });
  watch(act);
  narrow.onchange = () => act.look({ came: COLUMN });
  const current = isPlanCurrent(state);
  const close = () => {
    act.look({ column: "folded" });
    act.focus("column-open");
  };
  return [
    make(
      "div",
      { id: "column-inside" },
      make(
        "div",
        { class: "column-head", id: "column-head" },
        make("h2", { id: "column-title", tabindex: -1 }, say("later.elution")),
        button({ id: "column-close", label: say("page.close"), name: say("later.elution-close"), press: close }),
      ),
      make("div", { id: "column-entries", class: "column-entries" }, ...entriesView(state, act)),
      make("div", { id: "column-standing", role: "status" }, ...standing(state, act, current)),
      planView(state, act, current),
      runsView(state, act, current),
    ),
  ];
}

/** The id of the first entry that is still empty, to begin at. */
export function beginAt() {
  const target = document.querySelector("#column-target button");
  if (target && !document.querySelector("#column-target [aria-pressed=true]")) return target.id;
  const mass = byId("column-mass");
  return mass instanceof HTMLInputElement && mass.value.trim() === "" ? mass.id : undefined;
}

/** Tells when the middle of the screen comes into the column's part of the page, and when it leaves it. @type {IntersectionObserver | undefined} */
let watching;

/** @param {Act} act */
function watch(act) {
  if (watching) return;
  watching = new IntersectionObserver(([{ isIntersecting }]) => act.look({ at: isIntersecting ? COLUMN : undefined }), { rootMargin: "-50% 0px -50% 0px" });
  watching.observe(byId(COLUMN));
}

/** What stays at the lower edge of a phone while one is at the column: its eluent, or that of the next plate, called so. @param {State} state @returns {{told: string, to: string} | undefined} */
export function reachOf(state) {
  const advice = state.answered?.answer.advice;
  if (!advice) return undefined;
  const plan = state.looking.planned?.answer?.plan;
  if (!plan || !isPlanCurrent(state)) return { to: "#jar", told: say("later.elution-reach-plate", { ratio: ratioText(advice), count: advice.probabilityInWords.args.count }) };
  const told = say("later.elution-reach", { ratios: plan.steps.map((/** @type {any} */ step) => stepRatio(state, step)).join(" \u2192 "), count: hundredths(plan.chancePure) });
  return { to: "#plan-do", told };
}

/** Why there is no plan for what stands there, if so. @param {State} state @param {Act} act @param {boolean} current */
function standing(state, act, current) {
  const { planned } = state.looking;
  if (current) return [make("p", { class: "unseen", id: "column-told" }, say("later.elution-told"))];
  if (state.standing === "refused") return [make("p", { class: "decisive" }, say("page.faults"))];
  if (!isAskable(state)) return [make("p", { class: "aside", id: "column-wanting" }, say(wanting(state)))];
  if (state.standing === "unreachable") return [make("p", { class: "decisive" }, say("page.out-of-reach"))];
  if (planned?.standing === "refused") {
    const told = [...planned.faults].flatMap(([entry, sentences]) => (entry === "" || !document.getElementById(entry) ? sentences : []));
    return [make("p", { class: "decisive" }, say("page.faults")), ...told.map((sentence) => make("p", { class: "fault" }, sentence))];
  }
  if (planned?.standing === "unreachable") {
    return [make("p", { class: "decisive" }, say("page.out-of-reach")), button({ id: "column-again", label: say("later.elution-again"), press: () => askPlan(state, act) })];
  }
  return [make("p", { class: planned?.answer ? "unseen" : "aside", id: "column-counting" }, say("page.counting"))];
}

/** What is still to be said before anything can be planned. @param {State} state */
function wanting({ sheet }) {
  const { target = "", massMg = "" } = sheet.column ?? {};
  const chosen = sheet.spots.length === 1 || sheet.spots.some(({ id }) => id === target);
  if (!chosen) return massMg.trim() === "" ? "later.elution-wanting" : "later.elution-wanting-target";
  return massMg.trim() === "" ? "later.elution-wanting-mass" : "later.elution-wanting-steps";
}
