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
  first?.scrollIntoView({ block: "center" });
}

/** What to say of a text where a number is wanted, by the beginning of the entry's id. @type {Record<string, string>} */
const UNREAD = { rf: "page.unread-rf", eluent: "page.unread-eluent", amount: "page.unread-amount" };

/** @param {import("./server.js").Fault} fault */
function sentence(fault) {
  const interval = /^\[(\S+), (\S+)\](.*)$/.exec(fault.allowed);
  const told = !interval || [interval[1], interval[2]].every((end) => fault.message.match(/[\d.]+/g)?.includes(end));
  const allowed = told ? "" : ` ${say("page.allowed", { from: interval[1], to: interval[2], unit: interval[3] })}`;
  return `${fault.message}${allowed} ${fault.todo}`;
}

/** @param {HTMLElement} entry @param {import("./server.js").Fault} fault */
function beside(entry, fault) {
  const id = `${entry.id}-fault`;
  const already = document.getElementById(id);
  if (already) {
    already.append(` ${sentence(fault)}`);
    return;
  }
  const unread = fault.code === "wrong-type" ? UNREAD[entry.id.split("-")[0]] : undefined;
  const told = unread ? say(unread, { came: fault.came }) : sentence(fault);
  entry.after(make("p", { class: "fault", id }, told));
  entry.setAttribute("aria-invalid", "true");
  entry.setAttribute("aria-describedby", id);
}
