// @ts-check
/** The plan: what to pour on which column, which fractions to keep and how sure that is; the same on the page and on paper. */

import { printButtons } from "../card/card.js";
import { list, make } from "../dom.js";
import { additiveWords } from "../sheet/additive.js";
import { exampleWords } from "../sheet/sample.js";
import { marked, say, sayWith } from "../texts.js";
import { askSign, askable, askableMessage } from "../where/origin.js";
import { earlier, isAskable } from "./ask.js";
import { bandsTable, narrow, pictureView } from "./picture.js";
import { emptyTubes } from "./paper.js";
import { columnOf } from "./sheet.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** @param {State} now @param {Act} _act @param {boolean} current */
export function planView(now, _act, current) {
  const plan = now.looking.planned?.answer?.plan;
  if (!plan) return make("article", { id: "column-plan", hidden: true });
  const busy = !current && isAwaited(now);
  // until the next plan is there all of it, names too, is of the sheet that it was made for
  const state = { ...now, sheet: now.looking.planned?.sheet ?? now.sheet };
  return make(
    "article",
    { id: "column-plan", class: [current ? "" : "old", isFull(plan) ? "full" : ""].filter(Boolean).join(" ") || undefined, "aria-labelledby": "column-title", "aria-busy": busy ? "true" : undefined },
    make("p", { id: "plan-of", class: "only-paper" }, [say("later.elution-of", { target: targetOf(state), mass: columnOf(state.sheet).massMg }), state.sheet.title.trim()].filter(Boolean).join(" ")),
    ...marks(state, current || busy),
    isDoubtful(plan) && warnings(plan),
    make(
      "div",
      { id: "plan-words" },
      make("div", { id: "plan-do", class: "plan-do" }, pours(state, plan), keep(state, plan)),
      !isDoubtful(plan) && warnings(plan),
      make("div", { id: "plan-column", class: "plan-column" }, ...setUp(plan)),
      make("div", { id: "plan-cautions", class: "caution" }, make("h3", {}, say("page.cautions")), list(plan.cautions.map(text))),
    ),
    make(
      "div",
      { id: "plan-shown" },
      make("div", { id: "plan-picture" }, ...picture(state, plan)),
      why(state, plan),
    ),
    emptyTubes(plan),
    byHand(),
    make("div", { class: "buttons only-screen", id: "column-print" }, ...printButtons("column-print", "of-column", !current)),
  );
}

/** Spots, warnings and eluents together, and fractions, that fit one page in usual letters. */
const MOST_LARGE = 8;
const MOST_TUBES_LARGE = 50;

/** So many reasons are seen at once. */
const FIRST_REASONS = 4;

/** Below this chance what may fail comes before what to pour, where both are seen at once. */
const DOUBTFUL = 0.5;

const text = (/** @type {any} */ message) => message.text;

/** @param {any} plan */
const isDoubtful = ({ chancePure }) => !narrow.matches && chancePure < DOUBTFUL;

/** What may fail. @param {any} plan */
const warnings = ({ warnings: all }) => all.length > 0 && make("div", { id: "plan-warnings" }, ...all.map((/** @type {any} */ warning) => make("p", { class: "decisive" }, ...askableMessage(warning))));

/** Whether the plan for the sheet as it is is on its way. @param {State} state */
const isAwaited = (state) => isAskable(state) && ![state.standing, state.looking.planned?.standing].some((standing) => standing === "refused" || standing === "unreachable");

/** Whether it takes smaller letters to bring all of it on one page of paper. @param {any} plan */
const isFull = ({ spots, warnings, steps, fractions }) => spots.length + warnings.length + steps.length > MOST_LARGE || fractions > MOST_TUBES_LARGE;

/** The forecast, drawn, explained and in numbers. @param {State} state @param {any} plan */
const picture = (state, plan) => [
  make("h3", {}, say("later.elution-picture")),
  askSign("column-picture", say("later.elution-picture")),
  pictureView(state, plan),
  make("p", { class: "aside", id: "plan-picture-words" }, say("later.elution-picture-words")),
  bandsTable(state, plan),
];

/** That it is an example, is older than what stands there, and that earlier runs count. @param {State} state @param {boolean} awaited whether it is the plan wanted, or that is on its way */
function marks(state, awaited) {
  const example = exampleWords(state.sheet);
  const counted = new Set(earlier(state).map(({ bed, steps }) => JSON.stringify([bed, steps]))).size;
  const wrong = state.looking.planned?.faults.get("column-earlier") ?? [];
  return [
    example !== "" && make("p", { class: "mark", id: "plan-example" }, example),
    !awaited && make("p", { class: "decisive", id: "plan-old" }, say("page.changed")),
    counted > 0 && make("p", { class: "decisive", id: "column-earlier" }, counted === 1 ? say("later.elution-earlier-one") : say("later.elution-earlier", { count: counted })),
    ...wrong.map((sentence) => make("p", { class: "fault" }, sentence)),
  ].filter((each) => each !== false);
}

/** The two solvents of the plan, by their names. @param {State} state */
function solvents({ sheet, published }) {
  const name = (/** @type {string} */ id) => published.library?.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  return { weak: name(sheet.weak), strong: name(sheet.strong) };
}

/** A step's ratio, or its only solvent. @param {State} state @param {any} step */
export function stepRatio(state, { ratio }) {
  const [weakPart, strongPart] = ratio.split(":");
  const { weak, strong } = solvents(state);
  if (strongPart === "0") return say("page.pure", { solvent: weak });
  if (weakPart === "0") return say("page.pure", { solvent: strong });
  return ratio.replace(":", " : ");
}

/** Each eluent in the order it is poured. @param {State} state @param {any} plan */
function pours(state, plan) {
  const { weak, strong } = solvents(state);
  const added = additiveWords(state.sheet.additive);
  const mix = (/** @type {any} */ { weakMl, strongMl }) => {
    const ask = { weakMl: (/** @type {string} */ shown) => askable("column-pour", shown), strongMl: (/** @type {string} */ shown) => askable("column-pour", shown), ml: (/** @type {string} */ shown) => askable("column-pour", shown) };
    if (!(strongMl > 0)) return sayWith("page.pour-pure", { ml: weakMl, solvent: weak }, ask);
    if (!(weakMl > 0)) return sayWith("page.pour-pure", { ml: strongMl, solvent: strong }, ask);
    return sayWith("page.pour", { weakMl, strongMl, weak, strong }, ask);
  };
  return make(
    "div",
    { id: "plan-pours", class: "plan-pours" },
    make("h3", {}, say("later.elution-pour")),
    make("p", { class: "names", id: "plan-pair" }, say("page.pair-option", { weak, strong })),
    make(
      "ol",
      { class: plan.steps.length === 1 ? "one-step" : undefined },
      ...plan.steps.map((/** @type {any} */ step) =>
        make(
          "li",
          {},
          make("span", { class: "step-ratio" }, askable("column-ratio", stepRatio(state, step))),
          make("span", { class: "step-mix" }, ...mix(step)),
          make("span", { class: "aside step-run" }, say("later.elution-run-through", { ml: step.volumeMl, mix: step.mixMl })),
          make("span", { class: "only-paper step-really" }, say("later.elution-really"), " ", make("span", { class: "pen" }), " ml"),
        ),
      ),
    ),
    plan.stop && make("p", { id: "plan-stop" }, plan.stop.text),
    make("p", { class: "aside", id: "plan-spare" }, say("later.elution-spare"), added ? ` ${say("later.elution-additive", { added })}` : ""),
  );
}

/** The fractions to keep, and the chance. @param {State} state @param {any} plan */
function keep(state, { cut, fractionMl, chancePure, chanceInWords }) {
  const target = targetOf(state);
  return make(
    "div",
    { id: "plan-keep", class: "plan-keep" },
    make("h3", {}, say("later.elution-keep")),
    cut
      ? make("p", { class: "keep-tubes", id: "plan-cut" }, askable("column-cut", span(cut)))
      : make("p", { class: "decisive", id: "plan-no-cut" }, say("later.elution-no-cut", { target })),
    cut &&
      make(
        "p",
        { id: "plan-cut-words" },
        say("later.elution-cut", { from: rounded((cut.fromFraction - 1) * fractionMl), to: rounded(cut.toFraction * fractionMl), yield: hundredths(cut.yield), purity: hundredths(cut.purity), target }),
      ),
    make("meter", { min: 0, max: 1, value: chancePure, "aria-label": say("later.elution-chance-label") }),
    make("p", { id: "plan-chance" }, ...withChance(chanceInWords)),
  );
}

/** @param {any} cut */
const span = ({ fromFraction, toFraction }) => (fromFraction === toFraction ? say("later.elution-fraction-one", { number: fromFraction }) : say("later.elution-fraction-span", { from: fromFraction, to: toFraction }));

/** The chance with its number to be asked. @param {any} words */
function withChance({ text, args }) {
  const times = String(args?.times ?? "");
  const at = times === "" ? -1 : text.indexOf(times);
  return at < 0 ? [text] : [text.slice(0, at), askable("column-chance", times), text.slice(at + times.length)];
}

/** The column, the load, what it takes. @param {any} plan */
function setUp({ bed, advised, voidMl, load, flowMlMin, minutes, solventMl, fractions, fractionMl }) {
  const ask = (/** @type {string} */ about) => (/** @type {string} */ shown) => askable(about, shown);
  const onto = load.loading === "dry" ? "later.elution-load-dry" : "later.elution-load-wet";
  const put = load.portion ? [make("strong", {}, load.portion.text)] : sayWith(onto, { mass: rounded(load.massMg), ml: rounded(load.loadMl), grams: rounded(load.loadSilicaGrams) }, { ml: ask("column-load"), grams: ask("column-load") });
  return [
    make("h3", {}, say(advised ? "later.elution-column-advised" : "later.elution-column-chosen")),
    make(
      "ul",
      { class: "short" },
      make("li", {}, make("b", {}, askable("column-bed", bedName(bed))), `; ${say("later.elution-void", { ml: rounded(voidMl), grams: rounded(bed.silicaGrams) })} ${bed.text.text}`),
      make("li", { id: "plan-load" }, ...put),
      load.mostMg > 0 && make("li", {}, ...sayWith("later.elution-most", { most: rounded(load.mostMg) }, { most: ask("column-most") })),
      make("li", {}, ...sayWith("later.elution-collect", { count: fractions, ml: rounded(fractionMl) }, { ml: ask("column-fraction") })),
      make("li", {}, ...sayWith("later.elution-time", { minutes: Math.max(1, Math.round(minutes)), flow: rounded(flowMlMin), ml: rounded(solventMl) }, { minutes: ask("column-minutes"), flow: ask("column-minutes"), ml: ask("column-solvent") })),
    ),
  ];
}

/** @param {any} bed */
const bedName = ({ cartridgeGrams, diameterMm, bedMm }) =>
  cartridgeGrams === undefined ? say("later.elution-is-glass", { diameter: rounded(diameterMm), height: rounded(bedMm) }) : say("later.elution-is-cartridge", { grams: rounded(cartridgeGrams) });

/** Why it is so: the first few reasons, the rest in a fold. @param {State} state @param {any} plan */
function why(state, plan) {
  const all = plan.reasons.filter((/** @type {any} */ reason) => reason.key !== plan.bed.text.key).map(text);
  const rest = all.slice(FIRST_REASONS);
  return make(
    "div",
    { id: "plan-why", class: "only-screen" },
    make("h3", {}, say("later.elution-why")),
    list(all.slice(0, FIRST_REASONS)),
    rest.length > 0 && make("details", { id: "plan-why-more" }, make("summary", {}, say("later.elution-why-more")), list(rest)),
    weighed(state, plan),
  );
}

/** What else was weighed. @param {State} state @param {any} plan */
function weighed(state, { tried }) {
  if (!tried?.length) return undefined;
  const cell = (/** @type {string} */ shown) => make("td", {}, shown);
  return make(
    "details",
    { id: "plan-tried" },
    make("summary", {}, say("later.elution-tried")),
    make(
      "table",
      {},
      make("caption", {}, say("later.elution-tried-what")),
      make("thead", {}, make("tr", {}, ...["share", "steps", "chance", "ml"].map((head) => make("th", { scope: "col" }, say(`later.elution-tried-${head}`, solvents(state)))))),
      make(
        "tbody",
        {},
        ...tried.map((/** @type {any} */ each) => make("tr", {}, cell(marked(String(rounded(each.percentStrong)))), cell(String(each.steps)), cell(`${hundredths(each.chancePure)}`), cell(marked(String(rounded(each.solventMl)))))),
      ),
    ),
  );
}

/** @param {State} state */
export const targetOf = ({ sheet }) => sheet.spots.find(({ id }) => id === columnOf(sheet).target)?.name.trim() ?? "";

/** No more digits than a volume or a mass deserves: three. @param {number} value */
export const rounded = (value) => (Math.abs(value) >= 100 ? Math.round(value) : Number(value.toPrecision(Math.abs(value) >= 10 ? 3 : 2)));

/** Of a hundred, never said to be certain. @param {number} part */
export const hundredths = (part) => Math.min(99, Math.max(1, Math.round(100 * part)));

/** To be filled in with a pen. */
const byHand = () =>
  make("div", { class: "by-hand only-paper", id: "plan-by-hand" }, ...["page.card-date", "page.card-name", "later.elution-batch"].map((key) => make("p", {}, make("span", {}, say(key)), make("span", { class: "line" }))));
