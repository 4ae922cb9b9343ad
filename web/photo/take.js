// @ts-check
/** Takes what was read from a photo over to its plate: one step of the sheet. */

import { make } from "../dom.js";
import { button, tick } from "../entry.js";
import { faultAt } from "../faults.js";
import { plain } from "../numbers.js";
import { lines, typedMm } from "../sheet/geometry.js";
import { addLane, findPlate, freeId, labelReading, readingsOf } from "../sheet/sheet.js";
import { say } from "../texts.js";
import { flatSize } from "./course.js";
import { keepPicture } from "./kept.js";
import { between, inOrder, meanLines, spotsIn } from "./marks.js";
import { namesOfPlaces } from "./naming.js";
import { picture } from "./reader.js";
import { drawing } from "./store.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("../sheet/sheet.js").Sheet} Sheet @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Marks} Marks */

/** @param {State} state @param {State} wrong @param {Act} act @param {Photo} photo */
export function takeView(state, wrong, act, photo) {
  const marks = /** @type {Marks} */ (photo.marks);
  const count = marks.spots.length;
  const number = state.sheet.plates.findIndex(({ id }) => id === photo.plate) + 1;
  const plate = findPlate(state.sheet, photo.plate);
  const before = readingsOf(plate).length;
  const notKept = faultAt(wrong, "photo-keep");
  const isTaken = photo.taken?.marks === marks && photo.taken.lanes === JSON.stringify(plate.lanes);
  const again = isTaken ? "later.photo-taken" : before > 0 ? (before === 1 ? "later.photo-replaces-one" : "later.photo-replaces") : "later.photo-sets";
  return make(
    "div",
    { class: "photo-next", id: "photo-taking" },
    button({
      id: "photo-take",
      label: say(count === 1 ? "later.photo-take-one" : "later.photo-take", { count, number }),
      kind: "main",
      disabled: count === 0 || photo.waiting === "keeping",
      press: () => take(state, act, photo),
    }),
    count > 0 && make("p", { class: "aside", id: "photo-replaces" }, say(again, { count: before, number })),
    tick({ id: "photo-keep", label: say("later.photo-keep"), ticked: photo.keep, changed: (keep) => { photo.keep = keep; drawing.again(); } }),
    notKept.told,
    notKept.told && button({ id: "photo-keep-again", label: say("later.photo-keep-again"), disabled: photo.waiting === "keeping", press: () => keepAgain(state, act, photo) }),
  );
}

/** @param {State} state @param {Act} act @param {Photo} photo */
async function take(state, act, photo) {
  const marks = /** @type {Marks} */ (photo.marks);
  const size = flatSize(photo);
  const { study, plate, light } = photo;
  photo.faults.delete("photo-keep");
  const kept = photo.keep ? await keep(photo) : undefined;
  if (state.sheet.id !== study || !state.sheet.plates.some(({ id }) => id === plate)) return; // the plate is gone meanwhile
  act.rest();
  act.edit((sheet) => {
    takeOver(sheet, plate, marks, size, light);
    if (kept) findPlate(sheet, plate).photo = { sha256: kept, light };
  });
  photo.taken = { marks, lanes: JSON.stringify(findPlate(state.sheet, plate).lanes) };
  if (photo.keep && !kept) {
    drawing.again();
    act.focus("photo-keep-again");
    return;
  }
  if (state.looking.photo !== plate) return;
  act.look({ photo: undefined, reading: undefined });
  act.focus(`photo-${plate}`);
  document.getElementById(`plate-${plate}`)?.scrollIntoView({ block: "start" });
}

/** @param {State} state @param {Act} act @param {Photo} photo */
async function keepAgain(state, act, photo) {
  const kept = await keep(photo);
  if (!kept || state.sheet.id !== photo.study) return;
  act.rest();
  act.edit((sheet) => {
    const plate = sheet.plates.find(({ id }) => id === photo.plate);
    if (plate) plate.photo = { sha256: kept, light: photo.light };
  });
  act.focus("photo-take");
}

/** The name of the kept picture, none where it could not be kept. @param {Photo} photo @returns {Promise<string | undefined>} */
async function keep(photo) {
  photo.waiting = "keeping";
  drawing.again();
  try {
    const kept = await keepPicture(photo.study, await picture(photo));
    photo.faults.delete("photo-keep");
    return kept;
  } catch {
    photo.faults.set("photo-keep", { code: "not-kept" });
    return undefined;
  } finally {
    photo.waiting = "";
    drawing.again();
  }
}

/**
 * Puts spots on a plate in place of what stood there: heights as on a plate with straight lines, so that each Rf stays what it was
 * between the lines where it lies; its error and size are stretched as its run is.
 * @param {Sheet} sheet @param {string} id of the plate @param {Marks} marks @param {import("./marks.js").Size} size of the plate that was straightened [mm] @param {string} light
 */
export function takeOver(sheet, id, marks, size, light) {
  const plate = findPlate(sheet, id);
  const higher = lines(plate).height / size.height;
  const mean = meanLines(marks);
  plate.startMm = typedMm(higher * mean.start);
  plate.frontMm = typedMm(higher * mean.front);
  const [start, front] = [Number(plate.startMm), Number(plate.frontMm)];
  plate.lanes = [];
  const seen = inOrder(marks).flatMap((lane) => spotsIn(marks, lane.id).map((spot) => ({ spot, lane: lane.id, ...between(marks, size, spot) })));
  const names = namesOfPlaces(sheet, plate, seen);
  for (const lane of inOrder(marks)) {
    const into = addLane(sheet, plate);
    for (const [i, { spot, rf, run }] of seen.entries()) {
      if (spot.lane !== lane.id) continue;
      const longer = (front - start) / run;
      const reading = { id: freeId(sheet, "r"), spots: [], by: /** @type {const} */ ("mm"), typed: typedMm(start + rf * (front - start)) };
      into.readings.push({ ...reading, sizeMm: hundredth(longer * spot.sizeMm), errorMm: hundredth(longer * spot.errorMm), shape: spot.shape, seen: light });
      labelReading(sheet, reading.id, names[i]);
    }
  }
}

/** @param {number} mm */
const hundredth = (mm) => Math.max(0.01, Number(plain(mm, 2)));
