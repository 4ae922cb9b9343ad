// @ts-check
/** One, two or three jars at once: which plates together leave the best chance for the next one, beside going straight and a habit. */

import { millilitres } from "../answer/outcome.js";
import { list, make } from "../dom.js";
import { button } from "../entry.js";
import { styled } from "../later.js";
import { requestOf } from "../request.js";
import { Refused, post } from "../server.js";
import { additivePour } from "../sheet/additive.js";
import { addPlate, findPlate, readingsOf } from "../sheet/sheet.js";
import { furtherTexts, language, say, sayWith } from "../texts.js";
import { askable } from "../where/origin.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act */

/**
 * @typedef {object} Scouted
 * @property {number} jars
 * @property {"counting" | "told" | "refused" | "unreachable"} standing
 * @property {any} [answer] of /api/scouting
 * @property {string} question what it was the answer to
 */

await Promise.all([styled(new URL("./scout.css", import.meta.url)), furtherTexts()]);

const JARS = [1, 2, 3];

/** @param {State} state @param {Act} act @returns {Element[]} */
export function scoutView(state, act) {
  const { scouted } = state.looking;
  const old = scouted !== undefined && scouted.question !== questionOf(state);
  return [
    make("p", { id: "scout-words" }, say("later.scout-words")),
    make(
      "div",
      { class: "chips", id: "scout-jars", role: "group", "aria-label": say("later.scout-jars") },
      ...JARS.map((jars) =>
        button({
          id: `scout-${jars}`,
          label: say(`later.scout-${jars}`),
          pressed: scouted?.jars === jars && !old,
          press: () => ask(state, act, jars),
        }),
      ),
    ),
    make("div", { id: "scout-said", "aria-live": "polite" }, ...said(state, act, old)),
  ];
}

/** @param {State} state */
const questionOf = ({ sheet }) => `${language()} ${JSON.stringify({ ...requestOf(sheet).body, curves: false })}`;

/** Asked on demand only, for it takes a while. @param {State} state @param {Act} act @param {number} jars */
async function ask(state, act, jars) {
  const question = questionOf(state);
  const { body } = requestOf(state.sheet);
  const mine = { jars, question };
  act.look({ scouted: { ...mine, standing: "counting" } });
  /** @type {Scouted} */
  let outcome;
  try {
    outcome = { ...mine, standing: "told", answer: await post("/api/scouting", { ...body, curves: false, jars }) };
  } catch (failure) {
    outcome = { ...mine, standing: failure instanceof Refused ? "refused" : "unreachable" };
  }
  const now = state.looking.scouted;
  if (now?.jars === jars && now.question === question && now.standing === "counting") act.look({ scouted: outcome });
}

/** What to say in place of an outcome. @type {Record<string, string>} */
const INSTEAD = { counting: "page.counting", refused: "page.faults", unreachable: "page.out-of-reach" };

/** @param {State} state @param {Act} act @param {boolean} old whether the sheet was changed meanwhile */
function said(state, act, old) {
  const { scouted } = state.looking;
  if (!scouted) return [];
  if (old) return [make("p", { class: "aside", id: "scout-old" }, say("later.scout-old"))];
  if (scouted.standing !== "told") return [make("p", { class: "decisive", id: "scout-instead" }, say(INSTEAD[scouted.standing]))];
  const { answer } = scouted;
  const ratio = spaced(answer.straight.ratio);
  const count = answer.jars.length;
  const isStraight = count === 1 && answer.jars[0].ratio === answer.straight.ratio;
  const scout = answer.worth === "scout";
  const several = [
    jars(state, answer.jars),
    button({ id: "scout-run", label: say(count === 1 ? "later.scout-run-one" : "later.scout-run"), kind: scout ? "main" : undefined, press: () => run(state, act, answer.jars) }),
  ];
  return [
    make("p", { class: "verdict", id: "scout-verdict" }, scout ? say(`later.scout-worth-${count}`) : say("later.scout-straight")),
    ...(scout ? several : [...straight(state, act, answer.straight), !isStraight && make("details", { id: "scout-several" }, make("summary", {}, say("later.scout-several")), ...several)]),
    make("h3", { id: "scout-compare" }, say("later.scout-compare")),
    make(
      "ul",
      { class: "compared", "aria-labelledby": "scout-compare" },
      !isStraight && compared("these", say(`later.scout-${count}`), answer.chance),
      compared("straight", say("later.scout-straight-name", { ratio }), answer.straight.chance),
      answer.habit && compared("habit", say("later.scout-habit"), answer.habit.chance),
    ),
    make("div", { id: "scout-reasons" }, list(answer.reasons.map((/** @type {any} */ reason) => reason.text))),
  ];
}

/** Going straight: one jar, with its millilitres. @param {State} state @param {Act} act @param {any} jar */
function straight(state, act, jar) {
  const advice = state.answered?.answer.advice;
  const { weak: weakMl, strong: strongMl } = advice ? millilitres(advice, state.sheet.setting, jar.percentStrong) : { weak: NaN, strong: NaN };
  const { weak, strong } = namesOf(state);
  return [
    make("p", { class: "jar-ratio", id: "scout-straight" }, spaced(jar.ratio)),
    advice && make("p", { id: "scout-straight-pour" }, ...poured(state, { weakMl, strongMl }, weak, strong)),
    button({ id: "scout-run-straight", label: say("later.scout-run-one"), kind: "main", press: () => run(state, act, [jar]) }),
  ];
}

/** @param {string} ratio */
const spaced = (ratio) => ratio.replace(":", " : ");

/** @param {State} state @param {any[]} all */
function jars(state, all) {
  const { weak, strong } = namesOf(state);
  return make(
    "ol",
    { class: "jars" },
    ...all.map((jar) =>
      make(
        "li",
        {},
        make("span", { class: "jar-ratio" }, spaced(jar.ratio)),
        make("span", { class: "jar-pour" }, ...poured(state, jar, weak, strong)),
      ),
    ),
  );
}

/** @param {State} state @param {{weakMl: number, strongMl: number}} jar @param {string} weak @param {string} strong @returns {(Node | string)[]} */
function poured({ sheet }, jar, weak, strong) {
  const added = additivePour(sheet.additive, jar.weakMl + jar.strongMl);
  return [askable("scout-ratio", pour(jar, weak, strong)), ...(added ? [" ", say("page.additive-plus", { added })] : [])];
}

/** @param {any} jar @param {string} weak @param {string} strong */
function pour({ weakMl, strongMl }, weak, strong) {
  if (!(strongMl > 0)) return say("page.pour-pure", { ml: weakMl, solvent: weak });
  if (!(weakMl > 0)) return say("page.pour-pure", { ml: strongMl, solvent: strong });
  return say("page.pour", { weakMl, strongMl, weak, strong });
}

/** @param {State} state */
function namesOf({ sheet, published }) {
  const named = (/** @type {string} */ id) => published.library?.solvents.find((/** @type {any} */ one) => one.id === id)?.name ?? id;
  return { weak: named(sheet.weak), strong: named(sheet.strong) };
}

/** A chance as a bar with its number. @param {string} id @param {string} name @param {number} chance */
function compared(id, name, chance) {
  const count = String(Math.min(99, Math.max(1, Math.round(100 * chance))));
  return make(
    "li",
    { id: `compared-${id}` },
    make("span", { class: "compared-name" }, name),
    make("meter", { min: 0, max: 1, value: chance, "aria-label": name }),
    make("span", {}, ...sayWith("later.scout-chance", { count }, { count: (shown) => askable("scout-chance", shown) })),
  );
}

/** Lays the plates on the sheet, empty, each with its eluent; the focus goes to the first. @param {State} state @param {Act} act @param {any[]} all */
function run(state, act, all) {
  /** @type {string[]} */
  const ids = [];
  act.edit((sheet) => {
    const free = sheet.plates.filter((plate) => plate.eluent.trim() === "" && readingsOf(plate).length === 0 && plate.notSeen.length === 0);
    for (const jar of all) {
      const plate = free.shift() ?? addPlate(sheet, "");
      Object.assign(findPlate(sheet, plate.id), { eluent: spaced(jar.ratio), weak: sheet.weak, strong: sheet.strong, additive: { ...sheet.additive } });
      ids.push(plate.id);
    }
  });
  document.getElementById(`add-${findPlate(state.sheet, ids[0]).lanes[0].id}`)?.focus({ preventScroll: true });
  document.getElementById(`plate-${ids[0]}`)?.scrollIntoView({ block: "start", inline: "start" });
}
