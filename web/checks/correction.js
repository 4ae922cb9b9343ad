// @ts-check
/** Corrects a hundredfold Rf by reference spots run beside it, so that it can be compared with printed values; folded until asked for. */

import { draw, make } from "../dom.js";
import { button, choice, typedField } from "../entry.js";
import { decimal } from "../numbers.js";
import { say } from "../texts.js";
import { askSign } from "../where/origin.js";
import { cited } from "../where/sources.js";
import { askSoon, askedOf, isTold, number, withFaults } from "./ask.js";
import { checksOf, editChecks, freeCheckId } from "./sheet.js";
import { cautionsFold, fromBefore, sentences, spoken, standing } from "./standing.js";
import { tables } from "./tables.js";

/** @typedef {import("../state.js").State} State @typedef {import("../state.js").Act} Act @typedef {import("./sheet.js").Hrf} Hrf */

/** More spots than a plate holds. */
const MOST_SPOTS = 20;
const SIDE = 200;
const EDGE = 34;

/** The unknown is the first; it has a name of its own only in what is asked. @param {Hrf} hrf */
const spotsOf = ({ spots }) => (spots.length ? spots : [{ id: "h1", name: "", hrf: "" }]);

/** @param {{name: string}} spot @param {number} i */
const nameOf = ({ name }, i) => name.trim() || (i === 0 ? say("later.checks-lane-unknown") : say("later.checks-hrf-spot", { number: i + 1 }));

/** @param {State} state @returns {import("./ask.js").Question} */
export function hrfQuestion(state) {
  const { hrf } = checksOf(state);
  const standards = Object.entries(hrf.measured).filter(([, typed]) => typed.trim() !== "");
  const measured = spotsOf(hrf).map((spot, i) => ({ ...spot, name: nameOf(spot, i) })).filter((spot) => spot.hrf.trim() !== "");
  const entries = new Map([["system", "hrf-system"], ["standards", "hrf-system"], ["measured", "hrf-add"]]);
  standards.forEach(([name], i) => entries.set(`standards[${i}]`, standardId(name)));
  measured.forEach(({ id }, i) => entries.set(`measured[${i}]`, `hrf-${id}`));
  const askable = hrf.system !== "" && standards.length > 0 && measured.length > 0;
  const body = { system: hrf.system, standards: standards.map(([name, typed]) => ({ name, measured: number(typed) })), measured: measured.map(({ name, hrf: typed }) => ({ name, hrf: number(typed) })) };
  return { check: "hrf", body: askable ? body : undefined, entries };
}

/** The corrected value of the unknown, where it was given. @param {State} state @returns {number | undefined} */
export function unknownHrf(state) {
  const question = hrfQuestion(state);
  if (!state.sheet.checks?.hrf || spotsOf(state.sheet.checks.hrf)[0].hrf.trim() === "" || !isTold(state, question)) return undefined;
  return askedOf(state, question)?.answer.corrected[0]?.hrf;
}

/** @param {string} name of a standard */
const standardId = (name) => `standard-${[...name].map((letter) => (/[a-z0-9]/i.test(letter) ? letter.toLowerCase() : "-")).join("")}`;

/** @param {State} state @param {Act} act */
export function correctionView(state, act) {
  const open = state.sheet.checks?.hrf !== undefined || state.looking.hrf === "open";
  return make(
    "details",
    { id: "check-hrf", open, ontoggle: (event) => event.target.open && !open && act.look({ hrf: "open" }) },
    make("summary", {}, say("later.checks-hrf")),
    ...(open ? inside(state, act) : []),
  );
}

/** @param {State} state @param {Act} act */
function inside(state, act) {
  const { hrf } = checksOf(state);
  const { hrfSystems } = tables(act);
  const question = hrfQuestion(state);
  queueMicrotask(() => askSoon(state, act, question));
  const wrong = withFaults(state, question);
  const system = hrfSystems.find((each) => each.id === hrf.system);
  const edit = (/** @type {(mine: Hrf) => void} */ change, /** @type {string} */ together = "") => editChecks(state, act, "hrf", change, together || undefined);
  return [
    make("p", { class: "aside", id: "hrf-why" }, say("later.checks-hrf-why")),
    make(
      "div",
      { class: "same-sides", id: "hrf-sides" },
      make(
        "div",
        { id: "hrf-entry" },
        inEnglish(choice(wrong, {
          id: "hrf-system",
          label: say("later.checks-hrf-system"),
          value: hrf.system,
          options: [{ value: "", text: say("later.checks-hrf-none") }, ...hrfSystems.map((each) => ({ value: each.id, text: systemWords(each) }))],
          chosen: (id) => edit((mine) => Object.assign(mine, { system: id })),
        })),
        system && make("p", { class: "aside", id: "hrf-conditions", lang: "en" }, text(system.conditions)),
        system && standards(wrong, act, hrf, system, edit),
        system && spots(wrong, act, hrf, edit),
      ),
      make("div", { id: "hrf-told" }, spoken("hrf", isTold(state, question) && askedOf(state, question)?.answer.corrected.map((/** @type {any} */ one) => say("later.checks-hrf-corrected", one)).join(" ")), ...(system ? standing(wrong, question) : []), told(state, question, hrf)),
    ),
  ];
}

/** The systems are told in the words of the published table. @param {Element} entry */
function inEnglish(entry) {
  for (const option of entry.querySelectorAll("option")) if (option.value) option.lang = "en";
  return entry;
}

/** A sentence of the server, or plain words. @param {any} said */
const text = (said) => said?.text ?? said ?? "";

/** @param {any} system */
const systemWords = ({ id, eluent }) => say("later.checks-hrf-option", { id, eluent: text(eluent) });

/** @param {State} wrong @param {Act} act @param {Hrf} hrf @param {any} system @param {(change: (mine: Hrf) => void, together?: string) => void} edit */
function standards(wrong, act, hrf, system, edit) {
  return make(
    "fieldset",
    { class: "plain", id: "hrf-standards" },
    make("legend", {}, say("later.checks-hrf-standards")),
    make(
      "div",
      { class: "two" },
      ...system.standards.map((/** @type {any} */ { name, hrf: published }) =>
        typedField(wrong, {
          id: standardId(name),
          label: say("later.checks-hrf-standard", { name, published }),
          value: hrf.measured[name] ?? "",
          mode: "decimal",
          typed: (typed) => edit((mine) => { mine.measured[name] = typed; }, standardId(name)),
          left: act.rest,
        }),
      ),
    ),
  );
}

/** @param {State} wrong @param {Act} act @param {Hrf} hrf @param {(change: (mine: Hrf) => void, together?: string) => void} edit */
function spots(wrong, act, hrf, edit) {
  const all = spotsOf(hrf);
  const change = (/** @type {number} */ i, /** @type {object} */ what, /** @type {string} */ together) =>
    edit((mine) => {
      mine.spots = structuredClone(spotsOf(mine));
      Object.assign(mine.spots[i], what);
    }, together);
  return make(
    "div",
    { id: "hrf-spots" },
    ...all.map((spot, i) =>
      make(
        "div",
        { class: "hrf-spot", id: `hrf-line-${spot.id}` },
        typedField(wrong, { id: `hrf-name-${spot.id}`, label: say(i === 0 ? "later.checks-hrf-unknown" : "later.checks-candidate-name"), value: spot.name, typed: (name) => change(i, { name }, `hrf-name-${spot.id}`), left: act.rest }),
        typedField(wrong, { id: `hrf-${spot.id}`, label: say("later.checks-hrf-measured"), value: spot.hrf, mode: "decimal", typed: (typed) => change(i, { hrf: typed }, `hrf-${spot.id}`), left: act.rest }),
      ),
    ),
    button({
      id: "hrf-add",
      label: say("later.checks-hrf-add"),
      disabled: all.length >= MOST_SPOTS,
      press: () => {
        const id = freeCheckId(all, "h");
        edit((mine) => { mine.spots = [...structuredClone(spotsOf(mine)), { id, name: "", hrf: "" }]; });
        act.focus(`hrf-name-${id}`);
      },
    }),
  );
}

/** @param {State} state @param {import("./ask.js").Question} question @param {Hrf} hrf */
function told(state, question, hrf) {
  const answer = question.body && askedOf(state, question)?.answer;
  if (!answer) return question.body === undefined && hrf.system !== "" && make("p", { class: "aside", id: "hrf-wanting" }, say("later.checks-hrf-wanting"));
  return make(
    "div",
    { id: "hrf-answer", class: isTold(state, question) ? undefined : "old" },
    fromBefore(isTold(state, question)),
    ...answer.corrected.map((/** @type {any} */ one) => make("p", { class: "hrf-value" }, make("strong", {}, say("later.checks-hrf-corrected", { name: one.name, hrf: one.hrf, low: one.low, high: one.high })))),
    make("p", {}, text(answer.text), " ", askSign("check-hrf", say("later.checks-hrf"))),
    lines(answer, hrf),
    sentences("hrf-warnings", say("later.checks-warnings"), answer.warnings),
    cautionsFold("hrf-cautions", answer.cautions),
    answer.system && make("p", { class: "aside" }, cited(state, { source: answer.system.source, basis: answer.system.standards[0]?.basis ?? "memory" })),
  );
}

/** Straight lines from standard to standard: what was measured across, what is published upwards. @param {any} answer @param {Hrf} hrf */
function lines(answer, hrf) {
  const published = answer.system?.standards ?? [];
  const pairs = published.flatMap((/** @type {any} */ one) => {
    const measured = decimal(hrf.measured[one.name] ?? "");
    return measured === undefined ? [] : [[measured, Number(one.hrf)]];
  });
  const all = [[0, 0], ...pairs.sort((/** @type {number[]} */ a, /** @type {number[]} */ b) => a[0] - b[0]), [100, 100]];
  const x = (/** @type {number} */ value) => EDGE + (value / 100) * SIDE;
  const y = (/** @type {number} */ value) => 6 + SIDE - (value / 100) * SIDE;
  const spots = spotsOf(hrf).flatMap((spot, i) => {
    const one = answer.corrected.find((/** @type {any} */ each) => each.name === nameOf(spot, i));
    const measured = decimal(spot.hrf);
    return one && measured !== undefined ? [[measured, Number(one.hrf)]] : [];
  });
  return draw(
    "svg",
    { class: "hrf-lines", viewBox: `0 0 ${SIDE + EDGE + 12} ${SIDE + 42}`, role: "img", "aria-label": say("later.checks-hrf-lines", { count: pairs.length }) },
    draw("path", { class: "gap-axis", d: `M${x(0)} ${y(100)}V${y(0)}H${x(100)}` }),
    ...[0, 50, 100].flatMap((value) => [
      draw("text", { class: "gap-number", x: x(value), y: y(0) + 15, "text-anchor": "middle" }, String(value)),
      draw("text", { class: "gap-number", x: x(0) - 5, y: y(value) + 4, "text-anchor": "end" }, String(value)),
    ]),
    draw("text", { class: "gap-number", x: x(50), y: y(0) + 31, "text-anchor": "middle" }, say("later.checks-hrf-across")),
    draw("path", { class: "hrf-line", d: `M${all.map(([across, up]) => `${x(across)} ${y(up)}`).join("L")}` }),
    ...pairs.map((/** @type {number[]} */ [across, up]) => draw("circle", { class: "hrf-standard", cx: x(across), cy: y(up), r: 3.5 })),
    ...spots.flatMap(([across, up]) => [draw("path", { class: "hrf-read", d: `M${x(across)} ${y(0)}V${y(up)}H${x(0)}` }), draw("circle", { class: "gap-value", cx: x(across), cy: y(up), r: 4 })]),
  );
}
