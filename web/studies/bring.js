// @ts-check
/** Brings in a file: a study, or a table of runs. Nothing is kept before somebody has seen what is in it and says so. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { post } from "../server.js";
import { emptySheet, isUntouched } from "../sheet/sheet.js";
import { studyOf, sheetOf } from "../study/study.js";
import { freshId } from "../study/ids.js";
import { say } from "../texts.js";
import { runsPreview, studyPreview } from "./preview.js";
import { asNewStudy, ontoSheet } from "./runs.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/** What was chosen, and what the program makes of it; "empty" where nothing was. */
const brought = {
  /** @type {"empty" | "reading" | "read" | "refused"} */
  standing: "empty",
  file: "",
  base64: "",
  /** Which column is what, where somebody corrected it. @type {Record<string, number> | undefined} */
  columns: undefined,
  /** @type {string | undefined} */
  decimal: undefined,
  /** @type {any} */
  answer: undefined,
  refusal: "",
  said: "",
  /** Whether a file is held over the page. */
  over: false,
};

/** @param {State} state @param {Act} act */
export function bringView(state, act) {
  return make(
    "section",
    {
      id: "bring",
      class: brought.over ? "bring over" : "bring",
      "aria-labelledby": "bring-title",
      ondragover: (event) => {
        event.preventDefault();
        if (!brought.over) show(act, { over: true });
      },
      ondragleave: (event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) show(act, { over: false });
      },
      ondrop: (event) => {
        event.preventDefault();
        brought.over = false;
        const [file] = event.dataTransfer?.files ?? [];
        if (file) read(state, act, file);
      },
    },
    make("h3", { id: "bring-title" }, say("later.bring")),
    make("p", { class: "aside", id: "bring-what" }, say("later.bring-what")),
    button({ id: "bring-choose", label: say("later.bring-file"), press: () => document.getElementById("bring-file")?.click() }),
    make("input", {
      id: "bring-file",
      type: "file",
      hidden: true, // what a browser writes on it is in a language of its own
      onchange: (event) => {
        const [file] = event.target.files;
        if (file) read(state, act, file);
        event.target.value = ""; // the same file, mended, can be chosen again
      },
    }),
    make("p", { id: "bring-said", role: "status", class: brought.standing === "refused" ? "fault" : "aside" }, words()),
    make("div", { id: "bring-preview" }, ...preview(state, act)),
  );
}

function words() {
  const { standing, file, refusal, said } = brought;
  if (standing === "refused") return `${file}: ${refusal}`;
  if (standing === "reading") return say("later.bring-reading", { file });
  return said;
}

/** @param {Act} act @param {Partial<typeof brought>} now */
function show(act, now) {
  Object.assign(brought, now);
  act.look({ came: "brought" });
}

/** @param {State} state @param {Act} act @param {File} file */
async function read(state, act, file) {
  show(act, { standing: "reading", file: file.name, answer: undefined, columns: undefined, decimal: undefined, said: "" });
  try {
    brought.base64 = await base64Of(file);
  } catch {
    show(act, { standing: "refused", refusal: say("later.bring-unread") });
    return;
  }
  await ask(state, act);
  act.focus(brought.standing === "read" ? "preview-title" : "bring-choose");
}

/** @param {Blob} file @returns {Promise<string>} */
const base64Of = (file) =>
  new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,?/, ""));
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(file);
  });

/** @param {State} state @param {Act} act */
async function ask(state, act) {
  const { file, base64, columns, decimal } = brought;
  try {
    const answer = await post("/api/import", {
      file,
      base64,
      ...(columns ? { columns } : {}),
      ...(decimal ? { decimal } : {}),
      ...(isUntouched(state.sheet) ? {} : { into: studyOf(state.sheet) }),
    });
    show(act, { standing: "read", answer });
  } catch (failure) {
    const faults = failure instanceof Error && "faults" in failure ? /** @type {import("../server.js").Fault[]} */ (failure.faults) : undefined;
    const refusal = faults ? faults.map(({ message, todo }) => `${message} ${todo ?? ""}`.trim()).join(" ") : say("later.studies-gone");
    show(act, brought.answer && faults ? { said: refusal } : { standing: "refused", refusal });
  }
}

/** @param {State} state @param {Act} act @returns {(Element | false)[]} */
function preview(state, act) {
  const { answer, standing, file } = brought;
  if (standing !== "read" || !answer) return [];
  const leave = button({ id: "bring-leave", label: say("later.bring-leave"), kind: "small", press: () => finish(act, "", "bring-choose") });
  const asNew = (/** @type {() => import("../sheet/sheet.js").Sheet} */ made) =>
    button({
      id: "bring-new",
      label: say("later.bring-new"),
      kind: answer.kind === "study" ? "main" : undefined,
      press: () => {
        act.begin(made());
        finish(act, "", "title");
        act.look({ studies: "folded" });
        act.focus("title");
      },
    });
  if (answer.kind === "study") {
    const made = () => ({ ...sheetOf(answer.study), id: freshId(), archived: false });
    return [...studyPreview(state, answer, file), make("div", { class: "chips" }, asNew(made), leave)];
  }
  const correct = (/** @type {{columns?: Record<string, number>, decimal?: string}} */ change) => {
    Object.assign(brought, { said: "" }, change);
    ask(state, act);
  };
  const count = answer.plates.length;
  const takes = answer.canBeTaken ?? count > 0;
  return [
    ...runsPreview(state, answer, file, correct),
    make(
      "div",
      { class: "chips" },
      takes && button({
        id: "bring-onto",
        label: say("later.bring-onto"),
        kind: "main",
        press: () => {
          // an invented example, or a sheet that nothing was entered on, makes room: runs are never mixed with what is invented
          if (isUntouched(state.sheet)) act.begin(asNewStudy(emptySheet(), answer, file));
          else act.edit((sheet) => ontoSheet(sheet, answer));
          finish(act, say(count === 1 ? "later.brought-one" : "later.brought", { count }), "bring-choose");
        },
      }),
      takes && asNew(() => asNewStudy(emptySheet(), answer, file)),
      leave,
    ),
  ];
}

/** @param {Act} act @param {string} said @param {string} focus */
function finish(act, said, focus) {
  show(act, { standing: "empty", answer: undefined, base64: "", said });
  act.focus(focus);
}
