// @ts-check
/** A source in words: the work, the page, what it gives, and whether somebody had it in hand. */

import { make } from "../dom.js";
import { say } from "../texts.js";

/** A work that stands for none. */
const NO_WORK = "CommonPractice";

/**
 * @param {import("../state.js").State} state
 * @param {import("./origins.js").Cited} one
 */
export function cited(state, { source, locator: where, page, table, basis, gives }) {
  const locator = page !== undefined ? say("page.on-page", { page }) : table !== undefined ? say("page.in-table", { table }) : where;
  const named = source !== undefined && source !== NO_WORK && source !== "Midplate";
  const work = named ? state.published.sources?.sources.find((/** @type {any} */ each) => each.key === source) : undefined;
  const said = say(`page.basis-${source === NO_WORK ? "practice" : basis}`);
  return make(
    "span",
    {},
    gives && `${say(gives)} `,
    named && make("span", { lang: "en" }, work?.citation ?? source),
    named && `${locator ? `, ${locator}` : ""}. `,
    !named && locator && `${locator}. `,
    make("span", { class: "basis" }, said.slice(0, 1).toUpperCase() + said.slice(1) + "."),
    work?.address && " ",
    work?.address && make("span", { class: "address" }, work.address),
  );
}
