// @ts-check
/** What the server refused, in sentences, sorted to the entries they are about. */

import { make } from "./dom.js";
import { percentStrong } from "./numbers.js";
import { givenOn } from "./sheet/sheet.js";
import { say } from "./texts.js";

/** @typedef {import("./server.js").Fault} Fault */

/**
 * The sentences by the id of the entry each is about; a fault of something inside an entry, or of no entry at all, goes to the
 * nearest entry around it, or under "".
 * @param {Fault[]} faults
 * @param {Map<string, string>} entries from field to the id of its entry
 * @returns {Map<string, string[]>}
 */
export function faultsOf(faults, entries) {
  /** @type {Map<string, string[]>} */
  const told = new Map();
  for (const fault of faults) {
    const id = entryOf(fault.field, entries);
    told.set(id, [...new Set([...(told.get(id) ?? []), sentence(fault, id)])]); // two compounds in one spot tell the same twice
  }
  return told;
}

/** @param {string} field @param {Map<string, string>} entries */
function entryOf(field, entries) {
  for (let place = field; place; place = place.replace(/(\.[^.[]*|\[\d+\]|^[^.[]+)$/, "")) {
    const entry = entries.get(place);
    if (entry !== undefined) return entry;
  }
  return "";
}

/** What to say of a text where a number is wanted, by the beginning of the entry's id. @type {Record<string, string>} */
const UNREAD = {
  rf: "page.unread-rf",
  mm: "page.unread-mm",
  height: "page.unread-mm",
  width: "page.unread-mm",
  start: "page.unread-mm",
  front: "page.unread-mm",
  jar: "page.unread-mm",
  eluent: "page.unread-eluent",
  amount: "page.unread-amount",
  count: "page.unread-count",
  window: "page.unread-rf",
  minutes: "later.checks-reaction-unread",
};

/**
 * What is wrong with the eluent of a plate that nothing was read on: the server is not asked about it yet.
 * @param {import("./sheet/sheet.js").Sheet} sheet @returns {Map<string, string[]>} as `faultsOf`
 */
export function unreadEluents({ plates }) {
  const unread = plates.filter((plate) => plate.eluent.trim() !== "" && givenOn(plate).length === 0 && !isShare(percentStrong(plate.eluent)));
  return new Map(unread.map(({ id, eluent }) => [`eluent-${id}`, [say("page.unread-eluent", { came: eluent.trim() })]]));
}

/** @param {number | undefined} percent */
const isShare = (percent) => percent !== undefined && percent >= 0 && percent <= 100;

/** @param {Fault} fault @param {string} id */
function sentence(fault, id) {
  const unread = fault.code === "wrong-type" ? UNREAD[id.split("-")[0]] : undefined;
  if (unread) return say(unread, { came: fault.came });
  const interval = /^\[(\S+)[,;] (\S+)\](.*)$/.exec(fault.allowed);
  const told = !interval || [interval[1], interval[2]].every((end) => fault.message.match(/\d+(?:[.,]\d+)?/g)?.includes(end));
  const allowed = told ? "" : ` ${say("page.allowed", { from: interval[1], to: interval[2], unit: interval[3] })}`;
  return `${fault.message}${allowed} ${fault.todo}`;
}

/**
 * An entry with what is wrong with it, if anything: what to put after the entry, and what to set on it.
 * @param {import("./state.js").State} state
 * @param {string} id of the entry
 */
export function faultAt(state, id) {
  const sentences = state.faults.get(id) ?? [];
  return {
    attributes: sentences.length ? { "aria-invalid": "true", "aria-describedby": `${id}-fault` } : {},
    told: sentences.length ? make("p", { class: "fault", id: `${id}-fault` }, sentences.join(" ")) : undefined,
  };
}
