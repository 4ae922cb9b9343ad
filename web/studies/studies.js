// @ts-check
/** All studies of the folder: found by what one types, opened, renamed, copied, put away; and what is brought in. */

import { make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { styled } from "../later.js";
import { closeStudies, timeOf } from "../study/head.js";
import { furtherTexts, say } from "../texts.js";
import { bringView } from "./bring.js";
import { onlyHere, search, searchFurther, searchSoon } from "./found.js";
import { studyRow } from "./row.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

await Promise.all([styled(new URL("./studies.css", import.meta.url)), furtherTexts()]);

/** Of the study shown when it was last searched: another, or a newer one, is searched again. */
let foundFor = "";

/** @param {State} state @param {Act} act @returns {Element[]} */
export function studiesView(state, act) {
  const now = `${state.sheet.id} ${state.study.standing.at ?? ""} ${state.study.standing.kind} ${document.documentElement.lang}`;
  if (now !== foundFor || !document.getElementById("studies-inside")) {
    foundFor = now;
    searchSoon(act, 0);
  }
  return [
    make(
      "div",
      { id: "studies-inside", onkeydown: (event) => { if (event.key === "Escape") closeStudies(act); } },
      make(
        "div",
        { class: "studies-head", id: "studies-head" },
        make("h2", { id: "studies-title" }, say("page.studies")),
        button({ id: "studies-close", label: say("page.close"), press: () => closeStudies(act) }),
      ),
      ...troubles(),
      make("div", { class: "studies-search", id: "studies-search" }, find(state, act), which(act)),
      make("p", { id: "studies-said", class: search.standing === "gone" ? "fault" : "aside", role: "status" }, [search.said, count()].filter(Boolean).join(" ")),
      here(state, act),
      make("ul", { id: "studies-list", "aria-labelledby": "studies-title" }, ...search.studies.map((study) => studyRow(state, act, study))),
      search.studies.length < search.total && search.standing === "found" && button({ id: "studies-further", label: say("later.further"), press: () => searchFurther(act) }),
      bringView(state, act),
    ),
  ];
}

/** @param {State} state @param {Act} act */
const find = (state, act) =>
  typedField(state, {
    id: "studies-find",
    label: say("later.find"),
    value: search.find,
    typed: (value) => {
      Object.assign(search, { find: value, said: "" });
      searchSoon(act);
      act.look({ came: "studies" });
    },
    entered: () => {
      const [first] = search.studies;
      if (first) act.focus(`open-${first.id}`);
    },
  });

/** @param {Act} act */
function which(act) {
  return make(
    "div",
    { class: "chips", id: "studies-which", role: "group", "aria-label": say("later.which") },
    .../** @type {const} */ (["at-hand", "archived"]).map((each) =>
      button({
        id: `which-${each}`,
        label: say(`later.which-${each}`),
        pressed: search.which === each,
        press: () => {
          Object.assign(search, { which: each, said: "" });
          searchSoon(act, 0);
          act.look({ came: "studies" });
        },
      }),
    ),
  );
}

function count() {
  if (search.standing === "gone") return [say("later.studies-gone"), search.studies.length > 0 && say("later.studies-old", { when: timeOf(search.at) })].filter(Boolean).join(" ");
  if (search.standing !== "found") return "";
  if (search.total === 0 && search.said) return ""; // what was done took the last one away
  if (search.total === 0) return say(search.find ? "later.none-found" : search.which === "archived" ? "later.none-archived" : "later.none");
  return say(search.total === 1 ? "later.one-study" : "later.some-studies", { count: search.total, folder: search.folder });
}

function troubles() {
  if (search.troubles.length === 0) return [];
  return [
    make(
      "div",
      { id: "folder-troubles" },
      make("h3", {}, say("later.troubles")),
      make("ul", {}, ...search.troubles.map(({ text }) => make("li", {}, text))),
    ),
  ];
}

/** What only this browser has yet. @param {State} state @param {Act} act */
function here(state, act) {
  const sheets = onlyHere(state);
  return (
    sheets.length > 0 &&
    make(
      "div",
      { id: "studies-here" },
      make("h3", {}, say("later.only-here")),
      make(
        "ul",
        { class: "studies-here" },
        ...sheets.map((sheet) =>
          make("li", {}, button({ id: `here-${sheet.id}`, label: sheet.title || say("page.untitled"), kind: "study-name", press: () => { act.open(sheet.id); act.focus("title"); } })),
        ),
      ),
    )
  );
}
