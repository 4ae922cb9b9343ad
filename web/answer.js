// @ts-check
/** Shows an advice: the ratio large, millilitres, the chance, the plate to expect, and why. */

import { byId, make } from "./dom.js";
import { drawPlate } from "./plate.js";
import { say } from "./texts.js";

/** Of the cautions for every solvent, those for filling a jar. */
const AT_THE_JAR = ["sheet-first", "hood"];

/**
 * @param {any} answer of /api/advice
 * @param {any} library of /api/library
 * @param {(ratio: string) => void} runThis puts the advised plate on the sheet
 */
export function showAnswer(answer, library, runThis) {
  const advice = answer.advice;
  byId("said").replaceChildren(ratio(advice), pour(advice), chance(advice));
  const put = make("button", { type: "button", id: "run-this" }, say("page.run-this"));
  put.addEventListener("click", () => runThis(advice.ratio));
  byId("after").replaceChildren(expected(advice), put, ...beforePouring(library));
  byId("reasons").replaceChildren(
    list(advice.why.map(text)),
    ...messages("page.notes", answer.notes.map(text)),
    ...messages("page.alternatives", advice.alternatives.map(alternative)),
    ...hazards(advice, library),
  );
  byId("why").removeAttribute("hidden");
}

/** Before there is an answer, and after a sheet was cleared. */
export function showNoAnswer() {
  byId("said").replaceChildren(make("p", {}, say("page.no-answer")));
  byId("after").replaceChildren();
  byId("why").setAttribute("hidden", "");
}

/** Says something in place of an answer. @param {string} sentence */
export function showInstead(sentence) {
  byId("said").replaceChildren(make("p", {}, sentence));
}

/** Says that the answer shown is no longer to the sheet shown. */
export function showChanged() {
  if (document.getElementById("changed") || !document.querySelector(".ratio")) return;
  byId("said").prepend(make("p", { id: "changed" }, say("page.changed")));
}

/** @param {any} message */
const text = (message) => message.text;

/** @param {any} advice */
function ratio(advice) {
  const [weak, strong] = advice.ratio.split(":");
  if (strong === "0") return make("p", { class: "ratio" }, say("page.pure", { solvent: advice.weak.name }));
  if (weak === "0") return make("p", { class: "ratio" }, say("page.pure", { solvent: advice.strong.name }));
  return make("p", { class: "ratio" }, `${weak} : ${strong}`);
}

/** @param {any} advice */
function pour(advice) {
  const names = say("page.pair-option", { weak: advice.weak.name, strong: advice.strong.name });
  const millilitres = say("page.pour", {
    weakMl: advice.pour.weakMl,
    strongMl: advice.pour.strongMl,
    weak: advice.weak.name,
    strong: advice.strong.name,
  });
  return make("p", { class: "pour" }, make("span", {}, names), make("span", { class: "millilitres" }, millilitres));
}

/** @param {any} advice */
function chance(advice) {
  const meter = make("meter", {
    min: 0,
    max: 1,
    value: advice.probabilityAllInWindow,
    "aria-label": say("page.chance-label"),
  });
  return make("div", { class: "chance" }, meter, make("p", {}, advice.probabilityInWords.text));
}

/** @param {any} advice */
function expected(advice) {
  const words = advice.spots.map((/** @type {any} */ spot) => say("page.predicted-spot", spot));
  const lanes = advice.spots.map((/** @type {any} */ spot) => ({ ...spot, name: spot.spot }));
  return make(
    "figure",
    { class: "next" },
    drawPlate(lanes, say("page.predicted-plate", { spots: words.join("; ") }), "expected"),
    make("figcaption", {}, say("page.next-plate"), list(words)),
  );
}

/** @param {any} each */
function alternative(each) {
  return say("page.alternative", { text: each.text, percent: 100 * each.probability });
}

/** @param {string} heading @param {string[]} sentences */
function messages(heading, sentences) {
  return sentences.length ? [make("h3", {}, say(heading)), list(sentences)] : [];
}

/** @param {string[]} sentences */
function list(sentences) {
  return make("ul", {}, ...sentences.map((sentence) => make("li", {}, sentence)));
}

/** What to mind with every solvent, beside the millilitres. @param {any} library */
function beforePouring(library) {
  const general = library.cautions.filter((/** @type {any} */ one) => AT_THE_JAR.includes(one.key));
  return [
    make("div", { class: "caution" }, make("h3", {}, say("page.cautions")), list(general.map(text))),
  ];
}

/** What to mind with these two. @param {any} advice @param {any} library */
function hazards(advice, library) {
  const solvents = library.solvents.filter((/** @type {any} */ one) =>
    [advice.weak.id, advice.strong.id].includes(one.id),
  );
  const own = solvents.flatMap((/** @type {any} */ one) => one.cautions);
  const statements = solvents.map((/** @type {any} */ one) =>
    make(
      "li",
      {},
      `${one.name}: `,
      one.hazards.map((/** @type {any} */ hazard) => `${hazard.code} ${hazard.text}`).join(" "),
    ),
  );
  return [
    make(
      "div",
      { class: "caution" },
      make("h3", {}, say("page.hazards", { weak: advice.weak.name, strong: advice.strong.name })),
      ...(own.length ? [list([...new Set(own.map(text))])] : []),
      make("details", {}, make("summary", {}, say("page.hazard-statements")), make("ul", {}, ...statements)),
    ),
  ];
}
