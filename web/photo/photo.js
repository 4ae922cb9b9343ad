// @ts-check
/** From a picture of a plate to Rf values: the picture comes in, the plate is outlined, its lines and spots are corrected and taken over. */

import { make, patch } from "../dom.js";
import { button } from "../entry.js";
import { faultAt } from "../faults.js";
import { styled } from "../later.js";
import { furtherTexts, say } from "../texts.js";
import { beginView, dropHandlers, pasted } from "./begin.js";
import { cornersView } from "./corners.js";
import { readLanes } from "./course.js";
import { withFaults } from "./faults.js";
import { keptView } from "./kept-view.js";
import { lightView } from "./light.js";
import { paint } from "./loupe.js";
import { methodView } from "./method.js";
import { plateView } from "./plate.js";
import { profileView, profileWords } from "./profile.js";
import { close } from "./reader.js";
import { marksButtons, spotsView } from "./spots.js";
import { canUndo, drawing, forgetOthers, photoOf, undo } from "./store.js";
import { takeView } from "./take.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./store.js").Photo} Photo */

await Promise.all([...["photo", "marks"].map((name) => styled(new URL(`./${name}.css`, import.meta.url))), furtherTexts()]);

const STAGES = /** @type {const} */ (["begin", "corners", "marks"]);

/** What is looked at now. @type {{state: State, act: Act, photo: Photo} | undefined} */
let now;

/** Nothing where the plate was taken off the sheet. @param {State} state @param {Act} act @returns {Element[] | undefined} */
export function photoView(state, act) {
  const plate = state.sheet.plates.find(({ id }) => id === state.looking.photo);
  if (!plate) return undefined;
  const photo = photoOf(state, plate.id);
  now = { state, act, photo };
  drawing.again = again;
  watch();
  queueMicrotask(() => paint(photo));
  const number = state.sheet.plates.indexOf(plate) + 1;
  const wrong = withFaults(state, photo);
  return [
    make(
      "div",
      { id: "photo-inside", class: "photo-inside", onkeydown: (event) => keys(photo, event), ...dropHandlers(state, photo) },
      make(
        "div",
        { class: "photo-head", id: "photo-head" },
        make("h2", { id: "photo-title", tabindex: -1 }, say("later.photo-title", { number })),
        photo.stage !== "begin" && button({ id: "photo-undo", label: say("page.undo"), name: say("later.photo-undo"), kind: "small", disabled: !canUndo(photo), press: () => takeBack(photo) }),
        button({ id: "photo-close", label: say("page.close"), name: say("later.photo-close"), kind: "small", press: () => closeView(act, photo) }),
      ),
      stages(photo),
      make("p", { id: "photo-spoken", class: "unseen", role: "status" }, spoken(wrong, photo)),
      make("div", { id: `photo-stage-${photo.stage}`, "data-waiting": photo.waiting === "" ? "no" : photo.waiting }, ...stageView(state, wrong, act, photo)),
      keptView(state, act, plate, number),
    ),
  ];
}

/** @param {State} state @param {State} wrong @param {Act} act @param {Photo} photo */
function stageView(state, wrong, act, photo) {
  if (photo.stage === "begin") return beginView(state, wrong, photo);
  const fileFault = faultAt(wrong, "photo-file").told;
  if (photo.stage === "corners") return [fileFault, ...cornersView(state, wrong, act, photo)];
  return [
    fileFault,
    make(
      "div",
      { class: "photo-sides", id: "photo-marks-sides" },
      make("div", { class: "photo-left", id: "photo-left" }, make("div", { class: "photo-plate", id: "photo-plate" }, plateView(photo), profileView(photo)), profileWords(photo)),
      make(
        "div",
        { class: "photo-beside" },
        ...linesTold(photo),
        faultAt(wrong, "photo-lines").told,
        takeView(state, wrong, act, photo),
        spotsView(photo),
        marksButtons(photo),
        lightView(photo),
        make("p", { class: "aside", id: "photo-help" }, say("later.photo-help")),
        methodView(),
      ),
    ),
  ];
}

/** Lines that were not found are to be put where they are. @param {Photo} photo */
function linesTold({ lines: { start, front } }) {
  const key = !start && !front ? "later.photo-no-lines" : !start ? "later.photo-no-start" : !front ? "later.photo-no-front" : "later.photo-lines";
  return [make("p", { id: "photo-lines-told", class: start && front ? undefined : "photo-advice" }, say(key))];
}

/** Where one is, and the way back. @param {Photo} photo */
function stages(photo) {
  const reached = { begin: true, corners: photo.shown !== undefined, marks: photo.marks !== undefined };
  return make(
    "ol",
    { class: "photo-stages", id: "photo-stages", "aria-label": say("later.photo-stages") },
    ...STAGES.map((stage, i) => {
      const press = button({ id: `photo-to-${stage}`, label: say(`later.photo-stage-${stage}`, { number: i + 1 }), kind: "small", disabled: !reached[stage], press: () => goTo(photo, stage) });
      if (stage === photo.stage) press.setAttribute("aria-current", "step");
      return make("li", { id: `photo-step-${stage}` }, press);
    }),
  );
}

/** @param {Photo} photo @param {Photo["stage"]} stage */
function goTo(photo, stage) {
  Object.assign(photo, { stage, together: undefined, loupe: undefined });
  drawing.again();
}

/** What whoever does not see it has to hear. @param {State} wrong @param {Photo} photo */
function spoken(wrong, photo) {
  const [fault] = photo.faults.keys();
  if (fault) return (wrong.faults.get(fault) ?? []).join(" ");
  if (photo.waiting) return say(`later.photo-${photo.waiting}`);
  if (photo.stage === "marks" && photo.marks) return say("later.photo-read", { spots: photo.marks.spots.length, lanes: photo.marks.lanes.length });
  return photo.stage === "corners" ? say(`later.photo-corners-${photo.found}`) : "";
}

/** @param {Photo} photo */
function takeBack(photo) {
  if (undo(photo) && photo.stage === "marks") readLanes(photo);
}

/** Steps of the photo are taken back here, those of the sheet elsewhere. @param {Photo} photo @param {KeyboardEvent} event */
function keys(photo, event) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== "z" || photo.stage === "begin") return;
  if (event.target instanceof HTMLInputElement && event.target.type === "text") return;
  event.preventDefault();
  event.stopPropagation();
  takeBack(photo);
}

/** @param {Act} act @param {Photo} photo */
function closeView(act, photo) {
  act.look({ photo: undefined });
  act.focus(`photo-${photo.plate}`);
}

function again() {
  const section = document.getElementById("photo");
  if (now && section && now.state.looking.photo === now.photo.plate && now.state.sheet.id === now.photo.study) patch(section, ...(photoView(now.state, now.act) ?? []));
}

/** @type {MutationObserver | undefined} */
let watching;

/** Once nobody looks any more the worker ends, and photos of another study are forgotten. */
function watch() {
  if (watching) return;
  const section = /** @type {HTMLElement} */ (document.getElementById("photo"));
  watching = new MutationObserver(() => {
    if (!section.hidden || !now) return;
    close();
    forgetOthers(now.state);
  });
  watching.observe(section, { attributes: true, attributeFilter: ["hidden"] });
  document.addEventListener("paste", (event) => {
    if (now && !section.hidden) pasted(now.state, now.photo, event);
  });
}
