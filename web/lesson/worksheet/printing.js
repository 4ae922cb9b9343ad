// @ts-check
/** Prints the worksheet: a class on the root element says on what paper, and the style sheet does the rest. */

export const PAPERS = ["a4", "letter"];

/** @param {string} paper */
export function print(paper) {
  const root = document.documentElement.classList;
  root.remove(...PAPERS.map((each) => `on-${each}`));
  root.add(`on-${paper}`);
  window.print();
}
