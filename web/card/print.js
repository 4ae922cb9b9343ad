// @ts-check
/** Prints the card: a class on the root element says on what paper, and card.css does the rest. */

import { button } from "../entry.js";
import { say } from "../texts.js";

const PAPERS = ["a4", "letter"];

/** One button for each size of paper. */
export const printButtons = () =>
  PAPERS.map((paper) => button({ id: `print-${paper}`, label: say(`page.print-${paper}`), press: () => print(paper) }));

/** @param {string} paper */
function print(paper) {
  document.documentElement.classList.remove(...PAPERS.map((each) => `on-${each}`));
  document.documentElement.classList.add(`on-${paper}`);
  window.print();
}
