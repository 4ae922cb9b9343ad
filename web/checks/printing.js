// @ts-check
/** Before it is printed: what is printed where nobody pressed a button, and in which size of letters it fits on one page. */

import { byId } from "../dom.js";

/** What the style sheets print by. */
const OF_CHECKS = "of-checks";

/** What fits on a page within its margins [mm], with a little to spare: on A4, else on Letter, which is lower. */
const A4_MM = 274;
const LETTER_MM = 256;
/** Sizes of letters [pt], from the largest on; below the small one what can be spared goes first, below the smallest nobody reads them. */
const LARGEST_PT = 10;
const SMALL_PT = 7.5;
const SMALLEST_PT = 6;
const STEP_PT = 0.25;
const PX_PER_MM = 96 / 25.4;

const root = document.documentElement;

/** Whether it was this that chose what is printed. @type {"here" | "elsewhere"} */
let chosen = "elsewhere";

window.addEventListener("beforeprint", () => {
  if (!root.dataset.printing && isInView()) {
    chosen = "here";
    root.classList.add(OF_CHECKS);
  }
  if (root.classList.contains(OF_CHECKS)) fit();
});

window.addEventListener("afterprint", () => {
  if (chosen === "here") root.classList.remove(OF_CHECKS);
  chosen = "elsewhere";
});

function isInView() {
  const { top, bottom } = byId("checks").getBoundingClientRect();
  const middle = window.innerHeight / 2;
  return top < middle && middle < bottom && document.getElementById("checks-paper") !== null;
}

/** Brings back each of what was left out that there is still room for. @param {Element[]} spare @param {() => boolean} fits */
function bringBack(spare, fits) {
  for (const each of spare) {
    each.classList.remove("gone");
    if (!fits()) each.classList.add("gone");
  }
}

/** Makes the letters as large as one page allows; where small ones are too large, what can be spared is left out, from the end on and no more than needed, and that is said. */
export function fit() {
  const paper = document.getElementById("checks-paper");
  if (!paper) return;
  const most = root.classList.contains("on-a4") ? A4_MM : LETTER_MM;
  const fits = (/** @type {number} */ pt) => {
    paper.style.fontSize = `${pt}pt`;
    return paper.getBoundingClientRect().height <= most * PX_PER_MM;
  };
  const largest = (/** @type {number} */ least) => {
    let pt = LARGEST_PT;
    while (pt > least && !fits(pt)) pt -= STEP_PT;
    return fits(pt);
  };
  const spare = [...paper.querySelectorAll(".may-go")];
  for (const each of spare) each.classList.remove("gone");
  paper.classList.remove("short", "shorter");
  paper.classList.add("fitting");
  if (!largest(SMALL_PT)) {
    paper.classList.add("short");
    for (const each of spare.reverse()) {
      if (fits(SMALL_PT)) break;
      each.classList.add("gone");
    }
    if (!fits(SMALL_PT)) paper.classList.add("shorter");
    bringBack(spare.reverse(), () => fits(SMALL_PT));
    largest(SMALLEST_PT);
    const chosen = Number.parseFloat(paper.style.fontSize); // a line's width jumps with the size of letters, so there may be room left
    bringBack(spare, () => fits(chosen));
  }
  paper.classList.remove("fitting");
}
