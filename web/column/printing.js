// @ts-check
/** Printing without a button prints what one is at: the plan while the column is in the middle of the screen, else the card for the plate. */

import { byId } from "../dom.js";

/** What the style sheets print by. */
const OF_COLUMN = "of-column";

const root = document.documentElement;

/** Whether it was this that chose what is printed. @type {"here" | "elsewhere"} */
let chosen = "elsewhere";

window.addEventListener("beforeprint", () => {
  if (root.dataset.printing || root.classList.contains(OF_COLUMN) || !isPlanInView()) return;
  chosen = "here";
  root.classList.add(OF_COLUMN);
});

window.addEventListener("afterprint", () => {
  if (chosen === "here") root.classList.remove(OF_COLUMN);
  chosen = "elsewhere";
});

function isPlanInView() {
  const { top, bottom } = byId("column").getBoundingClientRect();
  const middle = window.innerHeight / 2;
  const plan = document.getElementById("column-plan");
  return top < middle && middle < bottom && plan !== null && !plan.hidden;
}
