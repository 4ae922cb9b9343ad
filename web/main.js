// @ts-check
/** Puts the page together: the sheet, the question it asks, the answer, and all that shows them. */

import { COLUMN, SWAP, fetchColumn, fetchSwap, isColumnOpen } from "./answer/another.js";
import { jarView, ratioText, reachView } from "./answer/jar.js";
import { whyView } from "./answer/why.js";
import { asking } from "./asking.js";
import { cardView } from "./card/card.js";
import { followLooking } from "./charts/charts.js";
import { byId, patch } from "./dom.js";
import { later } from "./later.js";
import { advisedInside, photoOpen, platesView } from "./plate/plates.js";
import { get } from "./server.js";
import { emptySheet, findReading, inventedExample } from "./sheet/sheet.js";
import { WHAT, fetchWhat } from "./sheet/identity.js";
import { exampleWords, sampleView } from "./sheet/sample.js";
import { followAddress, left } from "./study/address.js";
import { CHECKS, fetchChecks, headView, isChecksOpen, isNews, newsText, studiesKept, studiesView } from "./study/head.js";
import { Keeper } from "./study/keeping.js";
import { recordAdvice } from "./study/record.js";
import { studyTold } from "./study/told.js";
import { fetchTexts, fillTexts, firstLanguage, language, say, speakIn } from "./texts.js";
import { closeOrigin, hearAsked, originView } from "./where/origin.js";

const history = left();
const keeper = new Keeper(history, () => drawStudy());
const told = studyTold(keeper, history, () => drawStudy());

/** @type {import("./state.js").State} */
const state = {
  sheet: history.sheet,
  study: told.now,
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
  undo: () => history.undo(),
  look: (looking) => {
    Object.assign(state.looking, looking);
    if (Object.keys(looking).every((key) => FOLLOWING.includes(key))) drawFollowing();
    else draw();
  },
  focus: (id) => document.getElementById(id)?.focus(),
  begin,
  save: () => keeper.insist(),
  open: told.open,
  archive: (archived) => history.amend({ archived }),
  saved: () => keeper.allSaved(),
  seen: told.seen,
};

function draw() {
  state.sheet = history.sheet;
  if (!state.published.version) return; // nothing can be said yet
  told.look(); // what is told of the study before is none of this one
  document.documentElement.dataset.standing = state.standing;
  state.can = { undo: history.canUndo, redo: history.canRedo };
  byId("undo").toggleAttribute("disabled", !state.can.undo);
  byId("redo").toggleAttribute("disabled", !state.can.redo);
  byId("example-bar").toggleAttribute("hidden", state.sheet.example === "no");
  byId("example-mark").textContent = exampleWords(state.sheet);
  patch(byId("sample"), ...sampleView(state, act));
  drawWhat();
  patch(byId("plates"), ...platesView(state, act));
  show("photo", photoOpen(state, act));
  patch(byId("jar"), ...jarView(state, act));
  drawSwap();
  patch(byId("why"), ...whyView(state, act));
  patch(byId("card"), ...cardView(state, act));
  const column = isColumnOpen(state) ? later(COLUMN, fetchColumn, act) : undefined;
  show("column", column?.columnView(state, act));
  const checks = isChecksOpen(state) ? later(CHECKS, fetchChecks, act) : undefined;
  show("checks", checks?.checksView(state, act));
  patch(byId("reach"), ...(checks?.reachView(state, act) ?? reachView(state, act, state.looking.at && column?.reachOf(state))));
  patch(byId("origin"), ...originView(state, act));
  closeOrigin(state);
  drawStudy();
  if (state.published.version) byId("local").textContent = say("page.local", state.published.version);
}

/** What the study is called and how it is kept; drawn by itself after each save. */
function drawStudy() {
  if (!state.published.version) return;
  told.look();
  patch(byId("study"), ...headView(state, act));
  patch(byId("example-kept"), ...(state.sheet.example === "yes" ? studiesKept(state.study, act) : []));
  if (isNews(state)) byId("spoken").textContent = newsText();
  const view = studiesView(state, act);
  show("studies", view);
  const advised = document.getElementById("advised-inside");
  if (advised) patch(advised, ...advisedInside(state, act));
}

/** Says of one compound what it is; open only while somebody does. */
function drawWhat() {
  const spot = state.sheet.spots.find((each) => each.id === state.looking.what);
  const view = spot && later(WHAT, fetchWhat, act)?.whatView(state, act, spot);
  show("what", view);
}

/** What is shown only while somebody looks at it. @param {string} id @param {Element[]} [view] */
function show(id, view) {
  patch(byId(id), ...(view ?? []));
  byId(id).toggleAttribute("hidden", !view);
}

/** Other solvents of equal strength; open only while somebody looks for one. */
function drawSwap() {
  const view = state.looking.swap === "open" ? later(SWAP, fetchSwap, act)?.swapView(state, act) : undefined;
  show("swap", view);
}

/** Opens what a fault is folded away in. */
function unfoldFaults() {
  for (const told of document.querySelectorAll("details:not([open]) .fault")) {
    for (let at = told.closest("details:not([open])"); at; at = at.closest("details:not([open])")) at.setAttribute("open", "");
  }
}

/** What the slider over the ratios moves: only that is drawn anew, so that nothing lags behind the finger. */
const FOLLOWING = ["percent", "locked"];

function drawFollowing() {
  patch(byId("jar"), ...jarView(state, act));
  followLooking(state);
}

const question = asking(history, state, async () => {
  if (state.standing === "current" && state.answered && keeper.isOwn) recordAdvice(history, state.answered, state.published.version?.version ?? "");
  draw();
  if (state.standing === "refused") unfoldFaults();
  announce();
});

/** Says the outcome to whoever does not see it. */
function announce() {
  const told = state.standing === "current" && state.answered ? state.answered.answer.advice : undefined;
  byId("spoken").textContent = state.standing === "refused" ? say("page.faults") : told
    ? say("page.in-reach", { ratio: ratioText(told), count: told.probabilityInWords.args.count })
    : "";
}

/** @param {string} [inLanguage] @returns {Promise<import("./state.js").Published>} */
async function fetchPublished(inLanguage) {
  const [library, sources, accuracy, version] = await Promise.all(
    ["/api/library", "/api/sources", "/api/accuracy", "/api/version"].map((path) => get(path, inLanguage)),
  );
  return { library, sources, accuracy, version };
}

history.onChange(() => {
  if (state.sheet.id !== history.sheet.id) showAnother();
  state.standing = "waiting";
  if (state.looking.reading && !findReading(history.sheet, state.looking.reading)) state.looking.reading = undefined;
  state.looking.percent = undefined;
  state.looking.taken = undefined;
  if (state.sheet.weak !== history.sheet.weak || state.sheet.strong !== history.sheet.strong) state.looking.locked = undefined;
  draw();
});

/** Another study is shown: nothing that was answered to the one before may stand beside it. */
function showAnother() {
  state.answered = undefined;
  state.faults = new Map();
  state.waiting = [];
  Object.assign(state.looking, { photo: undefined, what: undefined, swap: "folded", swapWish: undefined, swapped: undefined, swapTook: undefined, scouted: undefined, column: undefined, planned: undefined, pooled: undefined, judged: undefined, tube: undefined, checks: undefined, checked: undefined, hrf: undefined, mark: undefined, grade: undefined, assumed: undefined, whatFrom: undefined });
}

byId("undo").addEventListener("click", () => history.undo());
byId("redo").addEventListener("click", () => history.redo());
history.onAmend(draw);

byId("clear").addEventListener("click", startEmpty);
byId("clear-example").addEventListener("click", startEmpty);
byId("example").addEventListener("click", () => begin(inventedExample()));
byId("language").addEventListener("change", (event) => {
  speak(/** @type {HTMLSelectElement} */ (event.target).value);
});

/** @param {import("./sheet/sheet.js").Sheet} sheet */
function begin(sheet) {
  told.begun(history.sheet);
  history.replace(sheet);
}

function startEmpty() {
  begin(emptySheet());
  act.focus(`what-${history.sheet.spots[0].id}`);
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

let spoken = 0;
/** How soon the first words are asked for again where the server does not answer [ms]. */
const AGAIN = 2000;

/** Shows everything in a language; a later choice overtakes an earlier one. @param {string} chosen */
async function speak(chosen) {
  const mine = ++spoken;
  state.standing = "waiting"; // the answer shown is in the other language
  try {
    const [texts, published] = await Promise.all([fetchTexts(chosen), fetchPublished(chosen)]);
    if (mine !== spoken) return;
    speakIn(chosen, texts);
    state.published = published;
    fillTexts(document);
  } catch {
    if (mine !== spoken) return;
    if (!state.published.version) window.setTimeout(() => speak(chosen), AGAIN); // nothing can be shown yet
  }
  /** @type {HTMLSelectElement} */ (byId("language")).value = language();
  draw();
  await question.anew();
}

hearAsked(act);
await followAddress(history, keeper, told.opened);
await speak(firstLanguage());
told.begin();
document.documentElement.dataset.ready = "yes";
