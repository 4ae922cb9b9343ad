// @ts-check
/** Shows the compounds of the sheet as a lesson: hands them over, and goes there. */

import { button } from "../entry.js";
import { saidOf } from "../request.js";
import { say } from "../texts.js";
import { whatOf } from "./sheet.js";

/** What is handed over, read once by the lesson. */
const HANDED = "midplate-lesson-handed";
/** More are not told apart on a plate. */
const MOST = 6;

/** What to press where it was said of some compound what it is. @param {import("../state.js").State} state */
export function asLesson({ sheet }) {
  const known = sheet.spots.filter((spot) => Object.keys(saidOf(spot)).length > 0).slice(0, MOST);
  if (known.length === 0) return undefined;
  return button({
    id: "as-lesson",
    label: say("page.as-lesson"),
    kind: "small",
    press: () => {
      const compounds = known.map((spot, i) => ({ id: `c${i + 1}`, name: spot.name, ...whatOf(spot) }));
      const { weak, strong, setting } = sheet;
      try {
        sessionStorage.setItem(HANDED, JSON.stringify({ compounds, weak, strong, setting }));
      } catch {
        // a browser that keeps nothing shows the lesson with its own sample
      }
      location.assign("lesson.html");
    },
  });
}
