// @ts-check
/** One study in the list: its name opens it; the rest is folded away. */

import { make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { LONGEST_TITLE } from "../line.js";
import { timeOf } from "../study/head.js";
import { say } from "../texts.js";
import { change, copyOf, done, focusNext, search, searchSoon, studyNow } from "./found.js";
import { takeRuns, takeStudy } from "./take.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./found.js").Found} Found */

/** More names than these are counted. */
const NAMED = 4;

/** @param {State} state @param {Act} act @param {Found} study */
export function studyRow(state, act, study) {
  const title = study.title || say("page.untitled");
  const shown = study.id === state.sheet.id;
  return make(
    "li",
    { id: `study-${study.id}`, class: shown ? "study-row shown" : "study-row" },
    search.renaming === study.id
      ? rename(state, act, study)
      : button({ id: `open-${study.id}`, label: title, name: say("later.open", { title }), kind: "study-name", press: () => open(act, study) }),
    make("p", { class: "aside" }, facts(study).join(" \u00b7 ")),
    shown && make("p", { class: "aside" }, say("later.on-sheet")),
    ...study.notices.map(({ text }) => make("p", { class: "fault" }, text)),
    make(
      "details",
      { id: `with-${study.id}`, class: "study-with" },
      make("summary", { "aria-label": say("later.with-of", { title }) }, say("later.with")),
      make("div", { class: "chips" }, ...deeds(state, act, study, title)),
    ),
  );
}

/** @param {Found} study */
function facts({ spots, plates, modified, origin }) {
  const names = spots.slice(0, NAMED).map((name) => name || say("page.unnamed"));
  if (spots.length > NAMED) names.push(say("later.more-spots", { count: spots.length - NAMED }));
  return [
    names.join(", "),
    plates === 1 ? say("later.one-plate") : say("later.plates", { count: plates }),
    say("later.saved-at", { when: timeOf(modified) }),
    ...(origin === "own" ? [] : [say("later.from-example")]),
  ];
}

/** @param {Act} act @param {Found} study */
async function open(act, { id, title }) {
  const outcome = await act.open(id, title);
  if (outcome !== "shown") {
    searchSoon(act, 0); // the list may be old
    return;
  }
  act.look({ studies: "folded" });
  act.focus("title");
}

/** @param {State} state @param {Act} act @param {Found} study @param {string} title */
function deeds(state, act, study, title) {
  const { id } = study;
  const deed = (/** @type {string} */ what, /** @type {() => void} */ press) =>
    button({ id: `${what}-${id}`, label: say(`later.do-${what}`), name: `${say(`later.do-${what}`)}: ${title}`, press });
  const move = (/** @type {boolean} */ archived) => async () => {
    focusNext(nextTo(id));
    await done(act, async () => {
      await change(state, act, id, { archived });
      return say(archived ? "later.archived" : "later.restored", { title });
    });
  };
  return [
    deed("rename", () => {
      search.renaming = id;
      act.look({ came: "studies" });
      act.focus(`name-${id}`);
    }),
    deed("copy", async () => {
      focusNext(`copy-${id}`);
      await done(act, async () => say("later.copied", { title: (await copyOf(await studyNow(state, id))).title }));
    }),
    study.archived ? deed("restore", move(false)) : deed("archive", move(true)),
    deed("json", () => done(act, async () => takeStudy(await studyNow(state, id)))),
    deed("csv", () => done(act, async () => takeRuns(act, study))),
  ];
}

/** Where the focus goes when a row goes. @param {string} id */
function nextTo(id) {
  const at = search.studies.findIndex((each) => each.id === id);
  const next = search.studies[at + 1] ?? search.studies[at - 1];
  return next ? `open-${next.id}` : "studies-find";
}

/** @param {State} state @param {Act} act @param {Found} study */
function rename(state, act, study) {
  const { id } = study;
  const entry = () => /** @type {HTMLInputElement | null} */ (document.getElementById(`name-${id}`));
  const leave = () => {
    search.renaming = "";
    act.look({ came: "studies" });
    act.focus(`open-${id}`);
  };
  const keep = async () => {
    const title = entry()?.value ?? study.title;
    leave();
    focusNext("studies-find"); // it may no longer be among those searched for
    await done(act, async () => {
      await change(state, act, id, { title });
      return say("later.renamed", { title: title || say("page.untitled") });
    });
  };
  return make(
    "div",
    { class: "study-rename", id: `rename-entry-${id}`, onkeydown: (event) => { if (event.key === "Escape") { event.stopPropagation(); leave(); } } },
    typedField(state, { id: `name-${id}`, label: say("page.title"), value: entry()?.value ?? study.title, longest: LONGEST_TITLE, typed: () => {}, entered: keep }),
    button({ id: `name-keep-${id}`, label: say("later.rename-keep"), press: keep }),
    button({ id: `name-leave-${id}`, label: say("later.rename-leave"), kind: "small", press: leave }),
  );
}
