// @ts-check
/** What to mind where an experiment is set. */

import { ownCautions } from "../card/cautions.js";
import { make } from "../dom.js";
import { say } from "../texts.js";

/** @typedef {"solvents" | "uv" | "silica" | "stains" | "gloves"} Caution */

/** The cautions of the library for each, by their keys. @type {Record<Caution, string[]>} */
const OF = {
  solvents: ["hood", "vapours", "static", "labels", "waste"],
  uv: ["uv-lamps"],
  silica: ["silica-dust"],
  stains: ["stains-dry", "dinitrophenylhydrazine", "oxidizing-stains"],
  gloves: ["gloves"],
};

const FOLD = "lesson-hazards";

/** All that a plate run and looked at under the lamp asks for. @type {Caution[]} */
export const ALL = ["solvents", "uv", "silica", "gloves"];

/**
 * That the safety data sheet, the local rules and the responsible person come first, and what to mind besides.
 * @param {Caution[]} which
 * @param {import("./state.js").State} state
 * @param {{weak: string, strong: string}} [pair] ids of the solvents that are poured, where they are not those of the lesson
 * @returns {Element[]}
 */
export function cautionsView(which, { published: { library }, lesson }, pair = lesson) {
  const general = (/** @type {string[]} */ keys) => library.cautions.filter((/** @type {any} */ one) => keys.includes(one.key)).map((/** @type {any} */ one) => one.text);
  const poured = which.includes("solvents")
    ? [pair.weak, pair.strong].map((id) => library.solvents.find((/** @type {any} */ one) => one.id === id)).filter((solvent) => solvent !== undefined)
    : [];
  return [
    make(
      "div",
      { class: "lesson-cautions", id: "lesson-cautions", role: "group", "aria-labelledby": "lesson-cautions-title" },
      make("h3", { id: "lesson-cautions-title" }, say("later.lesson-cautions")),
      ...general(["sheet-first"]).map((/** @type {string} */ text) => make("p", { class: "caution-first" }, text)),
      make("ul", {}, ...[...general(which.flatMap((each) => OF[each])), ...ownCautions(poured)].map((text) => make("li", {}, text))),
      ...(poured.length === 2 ? [statements(poured)] : []),
    ),
  ];
}

/** The hazard statements of the two solvents, folded on the screen. @param {any[]} poured */
const statements = (poured) =>
  make(
    "details",
    { id: FOLD },
    make("summary", { id: `${FOLD}-title` }, say("later.lesson-cautions-hazards", { weak: poured[0].name, strong: poured[1].name })),
    ...poured.map((solvent) => make("p", { class: "statements" }, make("b", {}, `${solvent.name}: `), solvent.hazards.map((/** @type {any} */ hazard) => `${hazard.code} ${hazard.text}`).join(" "))),
  );

/** Whether it was unfolded for the paper alone. */
let unfolded = false;

window.addEventListener("beforeprint", () => {
  const fold = /** @type {HTMLDetailsElement | null} */ (document.getElementById(FOLD));
  unfolded = fold !== null && !fold.open;
  if (unfolded) fold?.setAttribute("open", "");
});

window.addEventListener("afterprint", () => {
  if (unfolded) document.getElementById(FOLD)?.removeAttribute("open");
  unfolded = false;
});
