// @ts-check
/** What stays at the lower edge of a phone while one is at same, pure or done: what that part says, not what the sheet advises. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { say } from "../texts.js";
import { askedOf, isTold } from "./ask.js";
import { questionOf } from "./reaction-question.js";
import { sameQuestion } from "./same-question.js";
import { checksOf } from "./sheet.js";
import { verdictsSpoken } from "./verdicts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** Parts that are in the middle of the screen. @type {Set<string>} */
const inMiddle = new Set();
/** @type {WeakSet<Element>} */
const watched = new WeakSet();
/** @type {IntersectionObserver | undefined} */
let watching;

/** Tells which part comes into the middle of the screen, and when it leaves it. @param {State} state @param {Act} act */
export function watchParts(state, act) {
  watching ??= new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) inMiddle[isIntersecting ? "add" : "delete"](target.id);
      const [checkAt] = inMiddle;
      if (state.looking.checkAt !== checkAt) act.look({ checkAt });
    },
    { rootMargin: "-50% 0px -50% 0px" },
  );
  for (const part of document.querySelectorAll("#checks .check-part")) {
    if (watched.has(part)) continue;
    watched.add(part);
    watching.observe(part);
  }
}

/** @param {State} state @param {Act} act @returns {Element[] | undefined} nothing while one is elsewhere */
export function reachView(state, act) {
  const { checkAt } = state.looking;
  if (!checkAt) return undefined;
  return [
    make("a", { href: `#${checkAt}`, id: "in-reach" }, told(state, checkAt.replace("check-", ""))),
    button({ id: "reach-undo", label: say("page.undo"), kind: "small", disabled: !state.can.undo, press: act.undo }),
  ];
}

/** What a part says in a few words, else what it asks. @param {State} state @param {string} part */
function told(state, part) {
  const { identity } = checksOf(state);
  const [same, done] = [sameQuestion(state, identity), questionOf(state)];
  if (part === "same" && isTold(state, same)) return verdictsSpoken(state, same);
  if (part === "done" && isTold(state, done)) return say(`later.checks-reaction-state-${askedOf(state, done)?.answer.state}`);
  return say(`later.checks-${part}`);
}
