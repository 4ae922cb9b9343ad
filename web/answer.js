// @ts-check
/** Shows an advice: the ratio large, millilitres, the chance, the plate to expect, and why. */

import { byId, list, make } from "./dom.js";
import { drawPlate } from "./plate.js";
import { openProvenance, provenance } from "./provenance.js";
import { published } from "./published.js";
import { say } from "./texts.js";

/** Of the cautions for every solvent, those for filling a jar. */
const AT_THE_JAR = ["sheet-first", "hood", "vapours"];

/** Notes that decide whether to pour at all: they stand beside the chance, the others under "To know". */
const DECISIVE = [
  "advice.no-ratio",
  "advice.silica-cannot-hold",
  "advice.readings-differ",
  "advice.runs-backwards",
  "advice.untrusted-range",
  "advice.graduation-coarse",
];

/**
 * @typedef {{library: any, sources: any, accuracy: any}} Published of /api/library, /api/sources and /api/accuracy
 *
 * @param {any} answer of /api/advice
 * @param {string} setting the setting it was asked for
 * @param {Published} all what is published about the solvents
 * @param {(ratio: string) => void} runThis puts the advised plate on the sheet
 */
export function showAnswer(answer, setting, all, runThis) {
  const { advice, notes } = answer;
  const decisive = notes.filter(isDecisive);
  byId("said").replaceChildren(ratio(advice), pour(advice), chance(advice, decisive, setting));
  const put = make("button", { type: "button", id: "run-this" }, say("page.run-this"));
  put.addEventListener("click", () => runThis(advice.ratio));
  byId("after").replaceChildren(expected(advice), put, ...beforePouring(all.library));
  byId("reasons").replaceChildren(
    list(advice.why.map(text)),
    ...messages("page.notes", notes.filter((/** @type {any} */ note) => !isDecisive(note)).map(text)),
    ...messages("page.alternatives", advice.alternatives.map(alternative)),
    provenance(advice, setting, all),
    hazards(advice, all.library),
    published(advice, all),
  );
  byId("why").removeAttribute("hidden");
  const short = { ratio: ratioText(advice), count: advice.probabilityInWords.args.count };
  byId("in-reach").textContent = say("page.in-reach", short);
  byId("in-reach").removeAttribute("hidden");
}

/** Before there is an answer, and after a sheet was cleared. */
export function showNoAnswer() {
  byId("said").replaceChildren(make("p", {}, say("page.no-answer")));
  byId("after").replaceChildren();
  byId("why").setAttribute("hidden", "");
  byId("in-reach").setAttribute("hidden", "");
}

/** Says something in place of an answer. @param {string} sentence */
export function showInstead(sentence) {
  byId("said").replaceChildren(make("p", {}, sentence));
}

/** Says that the answer shown is no longer to the sheet shown. */
export function showChanged() {
  if (document.getElementById("changed") || !document.querySelector(".ratio")) return;
  byId("said").prepend(make("p", { id: "changed" }, say("page.changed")));
  byId("in-reach").setAttribute("hidden", "");
}

/** @param {any} message */
const text = (message) => message.text;

/** @param {any} note */
const isDecisive = (note) => DECISIVE.includes(note.key);

/** The solvent that is poured alone; undefined where two are mixed. @param {any} advice */
function alone(advice) {
  const [weak, strong] = advice.ratio.split(":");
  if (strong === "0") return advice.weak;
  return weak === "0" ? advice.strong : undefined;
}

/** @param {any} advice */
function ratioText(advice) {
  const one = alone(advice);
  return one ? say("page.pure", { solvent: one.name }) : advice.ratio.replace(":", " : ");
}

/** @param {any} advice */
const ratio = (advice) => make("p", { class: alone(advice) ? "ratio pure" : "ratio" }, ratioText(advice));

/** @param {any} advice */
function pour(advice) {
  const { weakMl, strongMl } = advice.pour;
  const one = alone(advice);
  if (one) {
    const ml = say("page.pour-pure", { ml: weakMl + strongMl, solvent: one.name });
    return make("p", { class: "pour" }, make("span", { class: "millilitres" }, ml));
  }
  const names = { weak: advice.weak.name, strong: advice.strong.name };
  return make(
    "p",
    { class: "pour" },
    make("span", {}, say("page.pair-option", names)),
    make("span", { class: "millilitres" }, say("page.pour", { weakMl, strongMl, ...names })),
  );
}

/** The bar, its sentence, for which setting, and what would help. @param {any} advice @param {any[]} decisive @param {string} setting */
function chance(advice, decisive, setting) {
  const meter = make("meter", {
    min: 0,
    max: 1,
    value: advice.probabilityAllInWindow,
    "aria-label": say("page.chance-label"),
  });
  const from = make("a", { href: "#from-where", id: "where-from" }, say("page.where-from"));
  from.addEventListener("click", openProvenance);
  const other = advice.alternatives[0];
  return make(
    "div",
    { class: "chance" },
    meter,
    make("p", {}, advice.probabilityInWords.text),
    ...decisive.map((note) => make("p", { class: "decisive" }, note.text)),
    ...(other ? [make("p", { class: "decisive" }, say("page.best-alternative", { text: alternative(other) }))] : []),
    make("p", { class: "hold" }, say("page.holds-for", { setting: say(`page.setting-${setting}`) }), " ", from),
  );
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

/** What to mind with every solvent, beside the millilitres. @param {any} library */
function beforePouring(library) {
  const general = library.cautions.filter((/** @type {any} */ one) => AT_THE_JAR.includes(one.key));
  return [make("div", { class: "caution" }, make("h3", {}, say("page.cautions")), list(general.map(text)))];
}

/** What to mind with these two. @param {any} advice @param {any} library */
function hazards(advice, library) {
  const two = library.solvents.filter((/** @type {any} */ one) => [advice.weak.id, advice.strong.id].includes(one.id));
  const own = two.flatMap((/** @type {any} */ one) => one.cautions.map(text));
  const statements = two.map((/** @type {any} */ one) => {
    const all = one.hazards.map((/** @type {any} */ hazard) => `${hazard.code} ${hazard.text}`);
    return `${one.name}: ${all.join(" ")}`;
  });
  return make(
    "div",
    { class: "caution" },
    make("h3", {}, say("page.hazards", { weak: advice.weak.name, strong: advice.strong.name })),
    ...(own.length ? [list([...new Set(own)])] : []),
    make("details", {}, make("summary", {}, say("page.hazard-statements")), list(statements)),
  );
}
