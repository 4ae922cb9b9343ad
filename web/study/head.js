// @ts-check
/** Above the sheet: what the study is called, what of it is saved, where and when, and what is noted. */

import { make } from "../dom.js";
import { button, typedField } from "../entry.js";
import { fetchLater, later } from "../later.js";
import { LONGEST_NOTES, LONGEST_TITLE } from "../line.js";
import { say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

const STUDIES = "studies";
const fetchStudies = () => import("../studies/studies.js");
export const CHECKS = "checks";
export const fetchChecks = () => import("../checks/checks.js");

/** @param {State} state @param {Act} act @returns {(Element | false)[]} */
export function headView(state, act) {
  const { sheet, study } = state;
  const open = state.looking.studies === "open";
  return [
    make(
      "div",
      { class: "title-line", id: "title-line" },
      make("h2", { id: "study-heading", class: "unseen" }, say("page.study")),
      titleEntry(state, act),
      button({ id: "checks-open", label: say("page.checks-open"), press: () => openChecks(act) }),
      button({
        id: "studies-open",
        label: study.total ? say("page.studies-count", { count: study.total }) : say("page.studies"),
        pressed: open,
        press: () => (open ? closeStudies(act) : openStudies(act)),
      }),
    ),
    make("div", { id: "kept", class: study.standing.kind in NOT_SAVED ? "kept not-saved" : "aside kept", "data-kept": study.standing.kind }, ...keptWords(state, act)),
    make(
      "details",
      { id: "notes-fold", open: false },
      make("summary", {}, sheet.notes.trim() ? say("page.notes-begin", { begin: begin(sheet.notes) }) : say("page.study-notes")),
      make("label", { for: "notes", class: "unseen" }, say("page.study-notes")),
      make("textarea", {
        id: "notes",
        rows: 5,
        maxlength: LONGEST_NOTES,
        oninput: (event) => {
          if (!event.isComposing) act.edit((next) => { next.notes = event.target.value; }, "notes");
        },
        oncompositionend: (event) => act.edit((next) => { next.notes = event.target.value; }, "notes"),
        onblur: act.rest,
      }, sheet.notes),
    ),
    ...told(state, act),
  ];
}

/** @param {State} state @param {Act} act */
function titleEntry(state, act) {
  const entry = typedField(state, {
    id: "title",
    label: say("page.title"),
    hidden: "label",
    value: state.sheet.title,
    longest: LONGEST_TITLE,
    typed: (title) => act.edit((next) => { next.title = title; }, "title"),
    left: act.rest,
  });
  const input = /** @type {HTMLInputElement} */ (entry.querySelector("input"));
  input.placeholder = say("page.title-hint");
  return entry;
}

/** The first words of a text, on one line. @param {string} text */
function begin(text) {
  const line = text.trim().replace(/\s+/g, " ");
  return line.length > 60 ? `${line.slice(0, 60).trimEnd()}\u2026` : line;
}

/** @param {string | undefined} at */
export function timeOf(at) {
  const when = new Date(at ?? Date.now());
  const today = when.toDateString() === new Date().toDateString();
  const lang = document.documentElement.lang === "en" ? "en-GB" : document.documentElement.lang;
  const time = when.toLocaleTimeString(lang, { hour: "2-digit", minute: "2-digit" });
  return today ? time : `${when.toLocaleDateString(lang, { day: "numeric", month: "long", year: "numeric" })}, ${time}`;
}

/** What is told of a study that is not saved, and by which word it begins. */
const NOT_SAVED = { gone: "page.not-in-folder", nowhere: "page.not-kept-anywhere", elsewhere: "page.not-in-this-folder", refused: "page.not-saved-word" };

/** A sign and a word, for nobody may take it for "saved". @param {keyof typeof NOT_SAVED} kind */
const caution = (kind) => [make("span", { class: "caution-sign", "aria-hidden": "true" }, "!"), make("strong", {}, say(NOT_SAVED[kind])), " "];

/** What is saved, where and when; or what is not, and why. @param {State} state @param {Act} act @returns {(string | Node | false)[]} */
function keptWords({ sheet, study }, act) {
  const { standing, folder } = study;
  const again = (/** @type {string} */ label) => button({ id: "save-again", label: say(label), kind: "small", press: act.save });
  switch (standing.kind) {
    case "untouched":
      return [make("p", {}, say("page.kept-untouched")), ...elsewhereKept(sheet, study, act)];
    case "saved":
      return [
        make(
          "details",
          { id: "saved-where", open: false },
          make("summary", {}, say("page.saved", { time: timeOf(standing.at) })),
          make("p", { id: "saved-file" }, say(folder ? "page.saved-in" : "page.saved-as", { folder: folder ?? "", file: `${sheet.id}.json` })),
        ),
      ];
    case "saving":
      return [say("page.saving")];
    case "gone":
      return [...caution("gone"), say("page.saved-later")];
    case "browser":
      return [say("page.kept")];
    case "nowhere":
      return [...caution("nowhere"), say("page.not-kept")];
    case "elsewhere":
      return [...caution("elsewhere"), say("page.saved-elsewhere", { folder: folder ?? "" }), " ", again("page.save-here")];
    default:
      return [...caution("refused"), say("page.not-saved", { why: standing.text ?? "" }), " ", again("page.save-again")];
  }
}

/** Beside a sheet that nothing was entered on yet: the study before it, or those that the folder has. @param {State["sheet"]} sheet @param {State["study"]} study @param {Act} act */
function elsewhereKept(sheet, study, act) {
  const { before } = study;
  if (before) return [make("p", { id: "study-before" }, say("page.study-before", { title: before.title || say("page.untitled") }))];
  return sheet.example === "yes" ? [] : studiesKept(study, act);
}

/** A way to the studies of the folder for whoever has none of them on the sheet. @param {State["study"]} study @param {Act} act */
export function studiesKept({ standing, total }, act) {
  if (standing.kind !== "untouched" || total === 0) return [];
  return [
    make("p", { id: "studies-kept" }, button({ id: "studies-kept-open", label: total === 1 ? say("page.study-kept") : say("page.studies-kept", { count: total }), kind: "small", press: () => openStudies(act) })),
  ];
}

/** What a person has to know about this study. @param {State} state @param {Act} act */
function told({ sheet, study }, act) {
  const { both, unknown, changed, takenOver, notices, troubles } = study;
  const lines = [];
  const seen = (/** @type {"both" | "unknown" | "troubles"} */ what) => button({ id: `${what}-seen`, label: say("page.told-seen"), kind: "small", press: () => act.seen(what) });
  if (both && [both.was, both.mine].includes(sheet.id)) {
    const [here, other, title] = sheet.id === both.mine ? ["page.both-mine", both.was, both.title] : ["page.both-theirs", both.mine, both.mineTitle];
    lines.push([say(here), " ", make("a", { id: "both-other", href: `#${other}`, class: "button" }, say("page.both-go", { title: title || say("page.untitled") })), " ", seen("both")]);
  }
  if (unknown) lines.push([unknown.how === "gone" ? say("page.study-gone", { title: unknown.title }) : say("page.study-unknown", { id: unknown.id }), " ", seen("unknown")]);
  if (changed) lines.push([say("page.study-changed")]);
  if (takenOver) lines.push([say("page.study-taken-over")]);
  if (sheet.archived) lines.push([say("page.study-archived"), " ", button({ id: "restore", label: say("page.study-restore"), kind: "small", press: () => act.archive(false) })]);
  for (const notice of notices) lines.push([notice]);
  if (troubles) lines.push([say("page.folder-troubles"), " ", seen("troubles")]);
  return [lines.length > 0 && make("ul", { id: "study-told", class: "told" }, ...lines.map((pieces) => make("li", {}, ...pieces)))];
}

/** How a study stands that needs nobody; what is told of it is news only where it stood otherwise before. */
const QUIET = ["untouched", "saving", "saved", "browser"];
let heard = "";

/** Whether whoever does not see the page has to hear of the study: of trouble, of its end, of what somebody else did. @param {State} state */
export function isNews({ study: { standing, both, unknown, changed, takenOver } }) {
  if (standing.kind === "saving") return false; // it will be saved or not
  const now = [QUIET.includes(standing.kind) ? "" : standing.kind, both?.mine, unknown?.id, changed || (takenOver && "window")].join(" ");
  const news = now !== heard && (heard !== "" || now.trim() !== "false");
  heard = now;
  return news;
}

/** What is told of it, as it stands there. */
export const newsText = () => ["kept", "study-told"].map((id) => [...(document.getElementById(id)?.childNodes ?? [])].map((node) => node.textContent).join(" ")).join(" ").trim();

/** A study that holds a check shows it, until somebody closes it. @param {State} state */
export const isChecksOpen = ({ looking, sheet }) => (looking.checks ?? (sheet.checks && "open")) === "open";

/** Goes to same, pure and done. @param {Act} act */
async function openChecks(act) {
  const view = await fetchLater(CHECKS, fetchChecks, act);
  act.look({ checks: "open" });
  act.focus(view?.beginAt() ?? "checks-title");
  document.getElementById("checks")?.scrollIntoView({ block: "start" });
}

/** @param {Act} act */
async function openStudies(act) {
  await fetchLater(STUDIES, fetchStudies, act);
  act.look({ studies: "open" });
  act.focus("studies-find");
}

/** @param {Act} act */
export function closeStudies(act) {
  act.look({ studies: "folded" });
  act.focus("studies-open");
}

/** All studies; open only while somebody looks for one. @param {State} state @param {Act} act */
export const studiesView = (state, act) =>
  state.looking.studies === "open" ? later(STUDIES, fetchStudies, act)?.studiesView(state, act) : undefined;
