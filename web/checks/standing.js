// @ts-check
/** How an answer stands: being worked out, refused, out of reach; and sentences as the server gives them. */

import { list, make } from "../dom.js";
import { ofHundred } from "../plate/names.js";
import { say } from "../texts.js";
import { askedOf } from "./ask.js";

/** @typedef {import("../state.js").State} State @typedef {{key: string, args: Record<string, any>, text: string}} Message */

/** @param {State} state with the faults of the question @param {import("./ask.js").Question} question @returns {Element[]} */
export function standing(state, question) {
  const asked = askedOf(state, question);
  if (question.body === undefined || !asked) return [];
  const { check } = question;
  if (asked.standing === "unreachable") return [make("p", { class: "decisive", id: `${check}-out` }, say("page.out-of-reach"))];
  if (asked.standing === "counting") return [make("p", { class: asked.answer ? "unseen" : "aside", id: `${check}-counting` }, say("page.counting"))];
  if (asked.standing !== "refused" || state.faults.size === 0) return [];
  const told = [...state.faults].flatMap(([entry, sentences]) => (entry === "" || !document.getElementById(entry) ? sentences : []));
  return [make("p", { class: "decisive", id: `${check}-refused` }, say("page.faults")), ...told.map((sentence) => make("p", { class: "fault" }, sentence))];
}

/** The short of an answer to whoever does not see it; the whole would be too much to hear at each change. @param {string} check @param {string | false | undefined} text */
export const spoken = (check, text) => make("p", { class: "unseen", role: "status", id: `${check}-spoken` }, text || "");

/** A list of sentences under a heading; nothing where there are none. @param {string | undefined} id @param {string} heading @param {Message[] | undefined} messages */
export const sentences = (id, heading, messages) => (messages ?? []).length > 0 && make("div", { id }, make("h4", {}, heading), list((messages ?? []).map(({ text }) => text)));

/** What to mind, with the sign of a caution. @param {string} id @param {Message[] | undefined} cautions */
export const cautionsView = (id, cautions) =>
  (cautions ?? []).length > 0 &&
  make("div", { id, class: "check-cautions" }, make("h4", {}, make("span", { class: "caution-sign", "aria-hidden": "true" }, "!"), say("later.checks-cautions")), list((cautions ?? []).map(({ text }) => text)));

/** The same folded on the screen, where it stands beside each answer. @param {string} id @param {Message[] | undefined} cautions */
export const cautionsFold = (id, cautions) =>
  (cautions ?? []).length > 0 &&
  make(
    "details",
    { id, class: "check-cautions" },
    make("summary", {}, make("span", { class: "caution-sign", "aria-hidden": "true" }, "!"), say("later.checks-cautions-count", { count: (cautions ?? []).length })),
    list((cautions ?? []).map(({ text }) => text)),
  );

/** Above an answer to what stood there before. @param {boolean} current */
export const fromBefore = (current) => !current && make("p", { class: "aside from-before" }, say("page.changed"));

/** A chance in words; none is said to be nothing, or certain. @param {number} chance */
export const ofHundredWords = (chance) => (chance < 0.01 ? say("later.checks-under-one") : say("later.checks-of-hundred", { count: ofHundred(chance) }));

/** What to run next: the best, and the others in a fold; on paper, where nothing has an id, those that there is room for. @param {string | undefined} id @param {any[] | undefined} next */
export function nextView(id, next) {
  if (!next?.length) return false;
  const [first, ...others] = next.map((one) => one.text.text);
  const heading = make("h4", {}, say("later.checks-next"));
  if (id === undefined) return make("div", { class: "check-next" }, heading, make("ol", {}, make("li", {}, first), ...others.map((each) => make("li", { class: "may-go" }, each))));
  return make(
    "div",
    { id, class: "check-next" },
    heading,
    make("p", {}, first),
    others.length > 0 && make("details", { id: `${id}-others` }, make("summary", {}, say("later.checks-next-others", { count: others.length })), make("ol", { start: 2 }, ...others.map((each) => make("li", {}, each)))),
  );
}
