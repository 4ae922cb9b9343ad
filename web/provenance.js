// @ts-check
/** Where the number comes from: what the chance means, what was measured, the equation, the papers. Fetched when it is first unfolded. */

import { citations } from "./citations.js";
import { make } from "./dom.js";
import { marked, say, sayWith } from "./texts.js";
import { figuresOf, measuredPair } from "./where/facts.js";
import { askable } from "./where/origin.js";

/** The work whose equation the model takes over; the measurements name their own. */
const LAW = "Snyder1968";

/**
 * @param {any} advice
 * @param {string} setting the setting it was asked for
 * @param {import("./state.js").Published} all
 */
export function provenance(advice, setting, { library, sources, accuracy }) {
  const pair = measuredPair(advice, library);
  const cited = citations(sources);
  const { count, low, high } = advice.probabilityInWords.args;
  return [
    ...paragraphs(
      say("page.chance-meaning", { count, low, high }),
      say(`answer.setting-${setting}`),
      ...(pair ? measured(pair, cited) : []),
      ...(["theory", "guess"].includes(advice.basis) ? [say(`page.origin-model-${advice.basis}`), say("page.origin-model-sure-theory")] : []),
    ),
    make("p", { class: "formula" }, say("page.equation")),
    ...paragraphs(say("page.equation-words"), say("page.equation-source", { reference: cited.number(LAW) })),
    ...(pair ? [curve(pair)] : []),
    ...cameTrue(accuracy),
    ...paragraphs(say("page.refuses")),
    ...cited.works(),
  ];
}

/** @param {any} pair @param {ReturnType<typeof citations>} cited */
function measured(pair, cited) {
  const numbers = {
    sorbent: say(`sorbent.${pair.sorbent}`),
    weak: pair.weak.name,
    strong: pair.strong.name,
    series: pair.compounds,
    readings: pair.readings,
    deviation: pair.meanDeviationRf,
    from: pair.trustedFromPercent,
    to: pair.trustedToPercent,
  };
  const references = pair.sources.map(cited.number).join(", ");
  return [
    say("page.measured", { ...numbers, references }),
    say("page.fit", numbers),
    ...(pair.leftOut ? [say("page.left-out", { what: pair.leftOut })] : []),
  ];
}

/** A row of a table. @param {"td" | "th"} tag @param {string[]} values */
const cells = (tag, values) =>
  make("tr", {}, ...values.map((value) => make(tag, tag === "th" ? { scope: "col" } : {}, value)));

/** How often chances like this came true on compounds that the fit had not seen. @param {any} accuracy */
function cameTrue(accuracy) {
  const figures = figuresOf(accuracy);
  const rows = [1, 2, 3, 4, 5].map((fifth) => {
    const said = figures[`plates.all.fifth-${fifth}.said`];
    const came = figures[`plates.all.fifth-${fifth}.came`];
    const error = Math.max(1, Math.round(100 * came.standardError));
    return cells("td", [
      marked(said.value.toFixed(2)),
      marked(`${came.value.toFixed(2)} \u00b1 ${(error / 100).toFixed(2)}`),
      String(came.count),
    ]);
  });
  const error = figures["one-trial-informative.error"];
  return [
    make(
      "p",
      {},
      ...sayWith("page.judged", { error: error.value, standardError: error.standardError }, { error: (shown) => askable("accuracy", shown) }),
    ),
    make(
      "table",
      {},
      make("caption", {}, say("page.came-true")),
      make("thead", {}, cells("th", [say("page.chance-said"), say("page.share-came"), say("page.plates-judged")])),
      make("tbody", {}, ...rows),
    ),
  ];
}

/** The fitted strength curve at the measured ratios. @param {any} pair */
function curve(pair) {
  const rows = pair.percentStrong.map((/** @type {number} */ percent, /** @type {number} */ i) =>
    cells("td", [String(percent), pair.strength[i].toFixed(2).replace("-", "\u2212"), pair.strengthError[i].toFixed(2)].map(marked)),
  );
  const head = [say("page.curve-percent", { strong: pair.strong.name }), say("page.curve-strength"), say("page.curve-error")];
  return make(
    "table",
    {},
    make("caption", {}, say("page.curve", { weak: pair.weak.name, strong: pair.strong.name })),
    make("thead", {}, cells("th", head)),
    make("tbody", {}, ...rows),
  );
}

/** @param {...string} sentences */
const paragraphs = (...sentences) => sentences.map((sentence) => make("p", {}, sentence));
