// @ts-check
/** Puts the page together: the sheet, the question it asks, the answer, and all that shows them. */

import { jarView, ratioText, reachView } from "./answer/jar.js";
import { whyView } from "./answer/why.js";
import { cardView } from "./card/card.js";
import { followLooking } from "./charts/charts.js";
import { byId, patch } from "./dom.js";
import { faultsOf } from "./faults.js";
import { platesView } from "./plate/plates.js";
import { requestOf } from "./request.js";
import { Refused, get, post } from "./server.js";
import { exampleWords } from "./sheet/example.js";
import { keep, left } from "./sheet/draft.js";
import { emptySheet, inventedExample } from "./sheet/sheet.js";
import { sampleView } from "./sheet/sample.js";
import { fillTexts, language, loadTexts, say, setLanguage } from "./texts.js";
import { hearAsked, originView, showOrigin } from "./where/origin.js";

/** How long after the last change the server is asked, and how soon again where it does not answer, in ms. */
const PAUSE = 120;
const AGAIN = 2000;

const history = left();
keep(history);

/** @type {import("./state.js").State} */
const state = {
  sheet: history.sheet,
  published: { library: undefined, sources: undefined, accuracy: undefined, version: undefined },
  answered: undefined,
  standing: "waiting",
  faults: new Map(),
  waiting: [],
  looking: { percent: undefined, locked: undefined, reading: undefined, asked: undefined, taken: undefined },
  can: { undo: false, redo: false },
};

/** @type {import("./state.js").Act} */
const act = {
  edit: (change, together) => history.edit(change, together),
  rest: () => history.rest(),
  look: (looking) => {
    Object.assign(state.looking, looking);
    if (Object.keys(looking).every((key) => FOLLOWING.includes(key))) drawFollowing();
    else draw();
  },
  focus: (id) => document.getElementById(id)?.focus(),
};

function draw() {
  state.sheet = history.sheet;
  document.documentElement.dataset.standing = state.standing;
  state.can = { undo: history.canUndo, redo: history.canRedo };
  byId("undo").toggleAttribute("disabled", !state.can.undo);
  byId("redo").toggleAttribute("disabled", !state.can.redo);
  byId("example-bar").toggleAttribute("hidden", state.sheet.example === "no");
  byId("example-mark").textContent = exampleWords(state.sheet);
  patch(byId("sample"), ...sampleView(state, act));
  patch(byId("plates"), ...platesView(state, act));
  patch(byId("jar"), ...jarView(state, act));
  patch(byId("reach"), ...reachView(state));
  patch(byId("why"), ...whyView(state, act));
  patch(byId("card"), ...cardView(state, act));
  patch(byId("origin"), ...originView(state, act));
  showOrigin(state);
}

/** What the slider over the ratios moves: only that is drawn anew, so that nothing lags behind the finger. */
const FOLLOWING = ["percent", "locked"];

function drawFollowing() {
  patch(byId("jar"), ...jarView(state, act));
  followLooking(state);
}

let asked = 0;
let timer = 0;

/** @param {number} [pause] */
function askSoon(pause = PAUSE) {
  clearTimeout(timer);
  timer = window.setTimeout(ask, pause);
}

async function ask() {
  const sheet = history.sheet;
  const { body, entries, places, waiting } = requestOf(sheet);
  const mine = ++asked;
  state.waiting = waiting;
  try {
    const answer = await post("/api/advice", body);
    if (mine !== asked) return;
    state.answered = { answer, sheet, places };
    state.faults = new Map();
    state.standing = "current";
    if (!state.published.library) await loadPublished();
  } catch (failure) {
    if (mine !== asked) return;
    state.standing = failure instanceof Refused ? "refused" : "unreachable";
    state.faults = failure instanceof Refused ? faultsOf(failure.faults, entries) : new Map();
    if (state.standing === "unreachable") askSoon(AGAIN);
  }
  draw();
  announce();
}

/** Says the outcome to whoever does not see it. */
function announce() {
  const told = state.standing === "current" && state.answered ? state.answered.answer.advice : undefined;
  byId("spoken").textContent = told
    ? say("page.in-reach", { ratio: ratioText(told), count: told.probabilityInWords.args.count })
    : "";
}

async function loadPublished() {
  const [library, sources, accuracy, version] = await Promise.all(
    ["/api/library", "/api/sources", "/api/accuracy", "/api/version"].map(get),
  );
  state.published = { library, sources, accuracy, version };
  byId("local").textContent = say("page.local", version);
}

history.onChange(() => {
  state.standing = "waiting";
  if (state.looking.reading && !JSON.stringify(history.sheet).includes(`"${state.looking.reading}"`)) {
    state.looking.reading = undefined;
  }
  state.looking.percent = undefined;
  state.looking.taken = undefined;
  if (state.sheet.weak !== history.sheet.weak || state.sheet.strong !== history.sheet.strong) state.looking.locked = undefined;
  draw();
  askSoon();
});

byId("undo").addEventListener("click", () => history.undo());
byId("redo").addEventListener("click", () => history.redo());
byId("clear").addEventListener("click", startEmpty);
byId("clear-example").addEventListener("click", startEmpty);
byId("example").addEventListener("click", () => history.replace(inventedExample()));
byId("language").addEventListener("change", (event) => {
  speak(/** @type {HTMLSelectElement} */ (event.target).value);
});

function startEmpty() {
  history.replace(emptySheet());
  act.focus(`eluent-${history.sheet.plates[0].id}`);
}

document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key === "z" || key === "y") {
    event.preventDefault();
    if (key === "y" || event.shiftKey) history.redo();
    else history.undo();
  }
});

/** Shows everything in a language. @param {string} chosen */
async function speak(chosen) {
  document.documentElement.dataset.standing = state.standing = "waiting"; // the answer shown is in the other language
  setLanguage(chosen);
  await loadTexts();
  fillTexts(document);
  /** @type {HTMLSelectElement} */ (byId("language")).value = language();
  await loadPublished();
  await ask();
}

hearAsked(act);
await loadTexts();
fillTexts(document);
/** @type {HTMLSelectElement} */ (byId("language")).value = language();
await loadPublished().catch(() => undefined);
draw();
await ask();
document.documentElement.dataset.ready = "yes";
