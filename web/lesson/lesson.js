// @ts-check
/** Puts the lesson together: what it is about, its parts by name, and the one that is shown. */

import { byId, make, patch } from "../dom.js";
import { get } from "../server.js";
import { fetchTexts, fillTexts, firstLanguage, furtherTexts, language, say, speakIn } from "../texts.js";
import { PARTS, partOf } from "./parts.js";
import { sampleView } from "./sample.js";
import { keep, keptLesson } from "./state.js";

/** @type {import("./state.js").State} */
const state = { lesson: keptLesson(), published: /** @type {any} */ ({}), asked: {}, faults: new Map(), looking: {} };

/** The views of the parts that were fetched. @type {Map<string, any>} */
const views = new Map();

/** @type {import("./state.js").Act} */
const act = {
  edit: (change) => {
    change(state.lesson);
    keep(state.lesson);
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
  if (!state.published.tables) return; // nothing can be said yet
  const part = partOf(state.lesson);
  patch(byId("lesson-parts"), ...navigation(part.id));
  const view = views.get(part.id);
  if (!view) part.fetch().then((module) => { views.set(part.id, module); draw(); });
  patch(byId("lesson-sample"), ...(part.sample ? sampleView(state, act) : []));
  byId("lesson-sample").toggleAttribute("hidden", !part.sample);
  patch(byId("lesson-part"), make("h2", { id: "lesson-part-title" }, say(`later.lesson-part-${part.id}`)), ...(view?.view(state, act) ?? []));
  document.documentElement.dataset.part = part.id;
}

/** @param {string} shown */
function navigation(shown) {
  const go = (/** @type {string} */ id) => {
    act.edit((lesson) => { lesson.part = id; });
    act.focus("lesson-part");
  };
  return [
    make("ol", { class: "lesson-parts" }, ...PARTS.map(({ id }) =>
      make("li", { id: `lesson-go-${id}-item` }, make("button", { type: "button", id: `lesson-go-${id}`, "aria-current": id === shown ? "page" : undefined, onclick: () => go(id) }, say(`later.lesson-part-${id}`))))),
  ];
}

/** @param {string} chosen */
async function speak(chosen) {
  speakIn(chosen, await fetchTexts(chosen));
  await furtherTexts();
  const [library, sources, tables, groups] = await Promise.all(["/api/library", "/api/sources", "/api/lesson/tables", "/api/groups"].map((path) => get(path, chosen)));
  state.published = { library, sources, tables, groups };
  fillTexts(document);
  /** @type {HTMLSelectElement} */ (byId("language")).value = language();
  draw();
}

byId("language").addEventListener("change", (event) => speak(/** @type {HTMLSelectElement} */ (event.target).value));
await speak(firstLanguage());
document.documentElement.dataset.ready = "yes";
