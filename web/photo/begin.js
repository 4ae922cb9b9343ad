// @ts-check
/** Where a photo comes in: dropped, chosen, taken or pasted. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { faultAt } from "../faults.js";
import { say } from "../texts.js";
import { openFile } from "./course.js";
import { drawing } from "./store.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./store.js").Photo} Photo */

/** @param {State} state @param {State} wrong with the faults of this view @param {Photo} photo */
export function beginView(state, wrong, photo) {
  const { attributes, told } = faultAt(wrong, "photo-file");
  const described = attributes["aria-describedby"];
  const busy = photo.waiting === "opening";
  return [
    make(
      "div",
      { id: "photo-begin", class: photo.over ? "photo-drop over" : "photo-drop", onclick: (event) => event.target.closest("button, input") ?? document.getElementById("photo-choose-file")?.click() },
      busy && make("p", { class: "photo-big", id: "photo-opening" }, say("later.photo-opening")),
      !busy && make("p", { class: "photo-big photo-drop-words", id: "photo-drop-words" }, say("later.photo-drop")),
      make(
        "div",
        { class: "photo-ways" },
        way(state, photo, { id: "photo-take-picture", label: say("later.photo-take-picture"), kind: "main photo-camera", described, camera: true }),
        way(state, photo, { id: "photo-choose", label: say("later.photo-choose"), kind: "main photo-file", described, camera: false }),
      ),
      told,
    ),
    make("p", { class: "photo-caution", id: "photo-caution" }, make("span", { class: "caution-sign", "aria-hidden": "true" }, "!"), say("later.photo-caution")),
    make("p", { id: "photo-how" }, say("later.photo-how")),
    make("p", { class: "aside", id: "photo-stays" }, say("later.photo-stays")),
  ];
}

/** A button, and the entry of a file behind it. @param {State} state @param {Photo} photo @param {{id: string, label: string, kind: string, described?: string, camera: boolean}} wanted */
function way(state, photo, { id, label, kind, described, camera }) {
  const press = button({ id, label, kind, press: () => document.getElementById(`${id}-file`)?.click() });
  if (described) press.setAttribute("aria-describedby", described);
  return make(
    "div",
    { class: camera ? "photo-camera" : undefined },
    press,
    make("input", {
      id: `${id}-file`,
      type: "file",
      accept: "image/*",
      ...(camera ? { capture: "environment" } : {}),
      hidden: true, // what a browser writes on it is in a language of its own
      onchange: (event) => {
        const [file] = event.target.files;
        event.target.value = ""; // the same file, mended, can be chosen again
        if (file) openFile(state, photo, file);
      },
    }),
  );
}

/** A file held over the view, and let go there. @param {State} state @param {Photo} photo */
export const dropHandlers = (state, photo) => ({
  ondragover: (/** @type {DragEvent} */ event) => {
    event.preventDefault();
    over(photo, true);
  },
  ondragleave: (/** @type {any} */ event) => {
    if (!event.currentTarget.contains(event.relatedTarget)) over(photo, false);
  },
  ondrop: (/** @type {DragEvent} */ event) => {
    event.preventDefault();
    over(photo, false);
    const [file] = event.dataTransfer?.files ?? [];
    if (file) openFile(state, photo, file);
  },
});

/** @param {Photo} photo @param {boolean} is */
function over(photo, is) {
  if (photo.over === is) return;
  photo.over = is;
  drawing.again();
}

/** A picture in the clipboard; whatever else is pasted goes where it goes. @param {State} state @param {Photo} photo @param {ClipboardEvent} event */
export function pasted(state, photo, event) {
  const file = [...(event.clipboardData?.files ?? [])].find(({ type }) => type.startsWith("image/"));
  if (!file) return;
  event.preventDefault();
  openFile(state, photo, file);
}
