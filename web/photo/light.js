// @ts-check
/** The light a photo was taken in, as it was taken to be, and to be changed. */

import { make } from "../dom.js";
import { button } from "../entry.js";
import { say } from "../texts.js";
import { readLanes } from "./course.js";
import { drawing } from "./store.js";

/** @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Light} Light */

/** @type {Light[]} */
const LIGHTS = ["uv-254", "uv-366", "daylight"];

/** @param {Photo} photo */
export const lightView = (photo) =>
  make(
    "div",
    { class: "photo-light", id: "photo-light", role: "group", "aria-labelledby": "photo-light-words" },
    make("span", { id: "photo-light-words", class: "photo-words-of" }, say("later.photo-light")),
    make(
      "div",
      { class: "photo-buttons" },
      ...LIGHTS.map((light) => button({ id: `photo-light-${light}`, label: say(`later.photo-light-${light}`), pressed: photo.light === light, press: () => choose(photo, light) })),
    ),
  );

/** @param {Photo} photo @param {Light} light */
function choose(photo, light) {
  photo.light = light;
  photo.lightBy = "hand";
  if (photo.stage === "marks") readLanes(photo);
  else drawing.again();
}
