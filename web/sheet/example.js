// @ts-check
/** Says of a sheet that it is the invented example, or began as that. */

import { say } from "../texts.js";

/** The sentence; empty for a sheet of a person's own. @param {import("./sheet.js").Sheet} sheet */
export function exampleWords({ example }) {
  if (example === "no") return "";
  return say(example === "yes" ? "page.example-shown" : "page.example-changed");
}
