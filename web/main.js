// @ts-check
/** Puts the sheet together: entries, the question, the answer. */

import { showAnswer, showChanged, showInstead, showNoAnswer } from "./answer.js";
import { emptySheet, inventedExample, keep, left } from "./draft.js";
import { byId } from "./dom.js";
import { clearFaults, tellFaults } from "./faults.js";
import { addPlate, addSpot, drawForm } from "./form.js";
import { requestOf } from "./request.js";
import { Refused, get, post } from "./server.js";
import { fillTexts, loadTexts, say } from "./texts.js";

await loadTexts();
fillTexts(document);

let sheet = left();
const published = Promise.all([get("/api/library"), get("/api/sources"), get("/api/accuracy")]);
let asked = 0;

function changed() {
  if (sheet.example) {
    sheet.example = false;
    byId("example-mark").setAttribute("hidden", "");
  }
  keep(sheet);
  showChanged();
}

function draw() {
  drawForm(sheet, changed);
  keep(sheet);
}

async function ask() {
  const { body, entries } = requestOf(sheet);
  const setting = sheet.setting;
  const mine = ++asked;
  clearFaults();
  try {
    const answer = await post("/api/advice", body);
    const [library, sources, accuracy] = await published;
    if (mine !== asked) return;
    showAnswer(answer, setting, { library, sources, accuracy }, runThis);
    bringIntoView(byId("jar"));
  } catch (failure) {
    if (mine !== asked) return;
    showNoAnswer();
    if (failure instanceof Refused) tellFaults(failure.faults, entries);
    else showInstead(say("page.out-of-reach"));
  }
}

/** Where the answer stands below the fold, as on a telephone. @param {HTMLElement} element */
function bringIntoView(element) {
  const top = element.getBoundingClientRect().top;
  if (top > window.innerHeight / 2) element.scrollIntoView();
}

/** @param {string} ratio */
function runThis(ratio) {
  addPlate(sheet, ratio.replace(":", " : "));
  sheet.example = false;
  draw();
  showChanged();
  byId(`rf-${sheet.plates.length - 1}-${sheet.spots[0].id}`).focus();
}

/** @param {string} id @param {() => void} act */
function onClick(id, act) {
  byId(id).addEventListener("click", act);
}

onClick("add-spot", () => {
  addSpot(sheet);
  draw();
  changed();
  byId(`spot-${sheet.spots[sheet.spots.length - 1].id}`).focus();
});
onClick("add-plate", () => {
  addPlate(sheet, "");
  draw();
  changed();
  byId(`eluent-${sheet.plates.length - 1}`).focus();
});
onClick("example", () => {
  sheet = inventedExample();
  draw();
  clearFaults();
  showNoAnswer();
});
onClick("clear", () => {
  sheet = emptySheet();
  draw();
  clearFaults();
  showNoAnswer();
});
byId("ask").addEventListener("submit", (event) => {
  event.preventDefault();
  ask();
});

draw();
showNoAnswer();
get("/api/version").then((version) => {
  byId("local").textContent = say("page.local", version);
});
document.documentElement.dataset.ready = "yes";
