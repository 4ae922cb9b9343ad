// @ts-check
/** Puts the lesson together: what it is about, its parts by name, and the one that is shown. */

import { byId, make, patch } from "../dom.js";
import { button } from "../entry.js";
import { get } from "../server.js";
import { fetchTexts, fillTexts, firstLanguage, furtherTexts, language, say, speakIn } from "../texts.js";
import { followAddress, keepInAddress, partInAddress } from "./address.js";
import { isAsking } from "./ask.js";
import { ALL, cautionsView } from "./cautions.js";
import { guideView, hidesPart, seePart } from "./guide/guide.js";
import { LessonHistory } from "./history.js";
import { PARTS, partOf } from "./parts.js";
import { sampleView } from "./sample.js";
import { handedOver, keptLesson, putAside, sampleFaults } from "./state.js";

/** How soon what did not come is asked for again [ms]. */
const AGAIN = 2000;

const kept = keptLesson();
const history = new LessonHistory(kept.lesson);

/** @type {import("./state.js").State} */
const state = { lesson: history.lesson, published: /** @type {any} */ ({}), asked: {}, faults: new Map(), looking: { unread: kept.read === "no" } };

/** The views of the parts that were fetched. @type {Map<string, import("./parts.js").PartModule>} */
const views = new Map();
/** The parts that are on their way. @type {Set<string>} */
const coming = new Set();

/** @type {import("./state.js").Act} */
const act = {
  edit: (change, together) => {
    history.edit(change, together);
    draw();
  },
  look: (looking) => {
    Object.assign(state.looking, looking);
    draw();
  },
  focus: (id) => document.getElementById(id)?.focus(),
  speak: (words) => {
    byId("spoken").textContent = words;
  },
};

function draw() {
  state.lesson = history.lesson;
  if (!state.published.tables) return; // nothing can be said yet
  const part = partOf(state.lesson);
  const title = say(`later.lesson-part-${part.id}`);
  keepInAddress(part.id);
  document.title = `${title} \u2013 Midplate`;
  byId("undo").toggleAttribute("disabled", !history.canUndo);
  byId("redo").toggleAttribute("disabled", !history.canRedo);
  patch(byId("lesson-parts"), ...navigation(part.id));
  patch(byId("lesson-told"), ...told());
  patch(byId("lesson-guide"), ...guideView(state, act));
  drawSample(part);
  const hidden = hidesPart(state.lesson);
  byId("lesson-part").toggleAttribute("hidden", hidden);
  const view = hidden ? undefined : viewOf(part);
  patch(
    byId("lesson-part"),
    make("div", { class: "lesson-head", id: "lesson-head" }, make("h2", { id: "lesson-part-title" }, title), make("p", { class: "aside", id: "lesson-about" }, say(`later.lesson-about-${part.id}`))),
    ...(view ? elementsOf(part.id, view) : []),
    ...(view ? toMind(part, view) : []),
  );
  Object.assign(document.documentElement.dataset, { part: part.id, shown: view ? part.id : "", asking: isAsking(state) ? "yes" : "no" });
}

/** Parts that were drawn: what stands in them can be read. @type {Set<string>} */
const drawn = new Set();

/** What a part shows; what was kept of it and cannot be read is put aside and told of. @param {string} id @param {import("./parts.js").PartModule} module @returns {Element[]} */
function elementsOf(id, module) {
  try {
    const elements = module.view(state, act);
    drawn.add(id);
    return elements;
  } catch (failure) {
    if (drawn.has(id) || state.lesson.parts[id] === undefined) throw failure;
    putAside(JSON.stringify({ [id]: state.lesson.parts[id] }));
    history.edit((lesson) => { delete lesson.parts[id]; });
    state.looking.unread = true;
    queueMicrotask(draw);
    return [];
  }
}

/** What to mind where an experiment is set; folded where it may be tried. @param {import("./parts.js").Part} part @param {import("./parts.js").PartModule} view */
function toMind({ cautions }, view) {
  if (!cautions) return [];
  const told = cautionsView(ALL, state, view.pairOf?.(state));
  return cautions === "shown" ? told : [make("details", { id: "lesson-try" }, make("summary", {}, say("later.lesson-try")), ...told)];
}

/** The view of a part; where it is not there yet it is sent for, again where the server does not answer. @param {import("./parts.js").Part} part */
function viewOf({ id, fetch }) {
  if (!views.has(id) && !coming.has(id)) {
    coming.add(id);
    fetch().then(
      (module) => {
        coming.delete(id);
        views.set(id, module);
        act.look({ gone: undefined });
      },
      () => {
        window.setTimeout(() => { coming.delete(id); draw(); }, AGAIN);
        act.look({ gone: id });
      },
    );
  }
  return views.get(id);
}

/** What was refused of the sample when it was drawn last. */
let faultsBefore = "";

/** @param {import("./parts.js").Part} part */
function drawSample({ sample }) {
  const faults = sample ? sampleFaults(state) : new Map();
  byId("lesson-sample").toggleAttribute("hidden", !sample);
  patch(byId("lesson-sample"), ...(sample ? sampleView({ ...state, faults }, act) : []));
  const now = JSON.stringify([...faults]);
  if (faults.size > 0 && now !== faultsBefore) document.getElementById("sample-fold")?.setAttribute("open", "");
  faultsBefore = now;
}

/** What is to be told of the page itself. */
function told() {
  const unanswered = Object.values(state.asked).some(({ standing }) => standing === "unreachable") || state.looking.gone !== undefined;
  return [
    unanswered && make("p", { id: "lesson-gone", class: "fault" }, say("later.lesson-gone")),
    state.looking.unread === true &&
      make("div", { id: "lesson-unread", class: "mark" }, make("span", {}, say("later.lesson-unread")), button({ id: "lesson-unread-seen", label: say("page.close"), press: () => act.look({ unread: false }) })),
  ].filter((each) => each !== false);
}

/** @param {string} shown */
function navigation(shown) {
  return [
    make("ol", { class: "lesson-parts", id: "lesson-parts-list" }, ...PARTS.map(({ id }) =>
      make("li", { id: `lesson-go-${id}-item` }, make("button", { type: "button", id: `lesson-go-${id}`, "aria-current": id === shown ? "page" : undefined, onclick: () => goTo(id) }, say(`later.lesson-part-${id}`))))),
  ];
}

/** Shows a part. @param {string} id */
function goTo(id) {
  act.edit((lesson) => {
    lesson.part = id;
    seePart(lesson);
  });
  act.focus("lesson-part");
}

/** @param {"undo" | "redo"} step */
function move(step) {
  history[step]();
  draw();
  act.speak(say(step === "undo" ? "later.lesson-undone" : "later.lesson-redone"));
}

byId("undo").addEventListener("click", () => move("undo"));
byId("redo").addEventListener("click", () => move("redo"));
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key !== "z" && key !== "y") return;
  event.preventDefault();
  if (state.published.tables) move(key === "y" || event.shiftKey ? "redo" : "undo");
});

let spoken = 0;

/** Shows everything in a language; a later choice overtakes an earlier one. @param {string} chosen */
async function speak(chosen) {
  const mine = ++spoken;
  try {
    const texts = await fetchTexts(chosen);
    const [library, sources, tables, groups] = await Promise.all(["/api/library", "/api/sources", "/api/lesson/tables", "/api/groups"].map((path) => get(path, chosen)));
    if (mine !== spoken) return;
    speakIn(chosen, texts);
    await furtherTexts();
    state.published = { library, sources, tables, groups };
    state.looking.gone = undefined;
    fillTexts(document);
  } catch {
    if (mine !== spoken) return;
    window.setTimeout(() => { if (mine === spoken) speak(chosen); }, AGAIN);
    if (state.published.tables) state.looking.gone = "texts";
    else byId("lesson-gone-first").removeAttribute("hidden"); // there are no texts to say it with
    draw();
    return;
  }
  byId("lesson-gone-first").setAttribute("hidden", "");
  /** @type {HTMLSelectElement} */ (byId("language")).value = language();
  draw();
  document.documentElement.dataset.ready = "yes";
}

byId("language").addEventListener("change", (event) => speak(/** @type {HTMLSelectElement} */ (event.target).value));
followAddress((id) => (id === undefined ? draw() : goTo(id)));
const linked = partInAddress();
if (linked && linked !== history.lesson.part) goTo(linked);
const handed = handedOver();
if (handed) {
  history.edit((lesson) => {
    Object.assign(lesson, handed, { part: "series" });
    seePart(lesson);
  });
}
await speak(firstLanguage());
