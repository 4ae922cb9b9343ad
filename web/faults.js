// @ts-check
/** Tells each fault beside the entry it is about. */

import { byId, make } from "./dom.js";
import { say } from "./texts.js";

/** Takes all told faults away. */
export function clearFaults() {
  for (const told of document.querySelectorAll(".fault")) told.remove();
  for (const entry of document.querySelectorAll("[aria-invalid]")) {
    entry.removeAttribute("aria-invalid");
    entry.removeAttribute("aria-describedby");
  }
  byId("general-faults").replaceChildren();
}

/**
 * @param {import("./server.js").Fault[]} faults
 * @param {Map<string, string>} entries from field to the id of its entry
 */
export function tellFaults(faults, entries) {
  /** @type {HTMLElement | undefined} */
  let first;
  const general = [];
  for (const fault of faults) {
    const entry = document.getElementById(entries.get(fault.field) ?? "");
    if (entry) {
      beside(entry, fault);
      first ??= entry;
    } else {
      general.push(make("p", { class: "fault" }, sentence(fault)));
    }
  }
  byId("general-faults").replaceChildren(...(first ? [make("p", {}, say("page.faults"))] : []), ...general);
  first?.focus();
}

/** @param {import("./server.js").Fault} fault */
const sentence = (fault) => `${fault.message} ${fault.todo}`;

/** @param {HTMLElement} entry @param {import("./server.js").Fault} fault */
function beside(entry, fault) {
  const id = `${entry.id}-fault`;
  const already = document.getElementById(id);
  if (already) {
    already.append(` ${sentence(fault)}`);
    return;
  }
  entry.after(make("p", { class: "fault", id }, sentence(fault)));
  entry.setAttribute("aria-invalid", "true");
  entry.setAttribute("aria-describedby", id);
}
