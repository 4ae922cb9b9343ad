// @ts-check
/** Same? Pure? Done? What plates answer every day, each part with its entries and, beside them, the answer. */

import { printButtons } from "../card/card.js";
import { make } from "../dom.js";
import { button } from "../entry.js";
import { styled } from "../later.js";
import { furtherTexts, say } from "../texts.js";
import { paperView } from "./paper.js";
import "./printing.js";
import { pureView } from "./pure.js";
import { watchParts } from "./reach.js";
import { reactionView } from "./reaction.js";
import { sameView } from "./same.js";
import { seeingView } from "./seeing.js";

export { reachView } from "./reach.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

const SHEETS = ["checks", "told", "paper", "reaction"];

await Promise.all([...SHEETS.map((name) => styled(new URL(`./${name}.css`, import.meta.url))), furtherTexts()]);

/** The parts in their order, each with what of the study belongs to it. */
const PARTS = /** @type {const} */ ([
  ["same", "identity", sameView],
  ["pure", "purity", pureView],
  ["done", "reaction", reactionView],
  ["seeing", undefined, seeingView],
]);

/** Parts that were opened once; what is in none of them is neither drawn nor asked. @type {Set<string>} */
const opened = new Set();

/** The id of the first entry, where it is still empty and a keyboard is at hand. */
export function beginAt() {
  const entry = document.querySelector("#check-references input");
  return entry instanceof HTMLInputElement && entry.value.trim() === "" && entry.checkVisibility() && matchMedia("(pointer: fine)").matches ? entry.id : undefined;
}

/** @param {State} state @param {Act} act @returns {Element[]} */
export function checksView(state, act) {
  const { checks } = state.sheet;
  queueMicrotask(() => watchParts(state, act));
  const printable = checks !== undefined || (opened.has("seeing") && state.looking.checked?.seeing !== undefined);
  const close = () => {
    act.look({ checks: "folded" });
    act.focus("checks-open");
  };
  return [
    make(
      "div",
      { id: "checks-inside" },
      make(
        "div",
        { class: "checks-head", id: "checks-head" },
        make("h2", { id: "checks-title", tabindex: -1 }, say("page.checks-open")),
        make("div", { class: "buttons only-screen", id: "checks-print" }, ...printButtons("checks-print", "of-checks", !printable)),
        button({ id: "checks-close", label: say("page.close"), name: say("later.checks-close"), press: close }),
      ),
      ...PARTS.map(([name, part, view]) => {
        const begun = part !== undefined && checks?.[part] !== undefined;
        const first = name === "same" && (!checks || Object.keys(checks).length === 0);
        if (begun || first) opened.add(name);
        return make(
          "details",
          {
            id: `check-${name}`,
            class: "check-part",
            open: begun || first,
            ontoggle: (event) => {
              if (!event.target.open || opened.has(name)) return;
              opened.add(name);
              act.look({ came: name });
            },
          },
          make("summary", {}, make("h3", { id: `check-${name}-title` }, say(`later.checks-${name}`))),
          ...(opened.has(name) ? view(state, act) : []),
        );
      }),
      printable && paperView(state),
    ),
  ];
}
