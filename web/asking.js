// @ts-check
/** Asks for advice whenever the sheet has changed, one question at a time, and again while the server does not answer. */

import { faultsOf, unreadEluents } from "./faults.js";
import { requestOf } from "./request.js";
import { Refused, post } from "./server.js";
import { canSpeak } from "./texts.js";

/** How long after a change it is asked, in ms: longer while somebody types, for half a number is a fault to nobody. */
const PAUSE = 120;
const TYPING_PAUSE = 600;
/** After this long without an answer, in ms, the page says that it is counting. */
const LONG = 400;
/** How soon again where the server does not answer, in ms. */
const AGAIN = 2000;

/**
 * @param {import("./sheet/history.js").History} history
 * @param {import("./state.js").State} state gets the answer, or what was refused
 * @param {() => void | Promise<void>} heard told after each
 */
export function asking(history, state, heard) {
  let asked = 0;
  let timer = 0;
  /** Whether the server is at a question, and whether another one came meanwhile. @type {"idle" | "busy" | "busy and asked again"} */
  let server = "idle";

  /** @param {number} pause */
  function soon(pause) {
    clearTimeout(timer);
    timer = window.setTimeout(now, pause);
  }

  async function now() {
    clearTimeout(timer);
    timer = 0;
    if (!canSpeak()) return; // it is asked once there are words for the answer
    if (server !== "idle") {
      server = "busy and asked again";
      return;
    }
    server = "busy";
    const counting = window.setTimeout(tellCounting, LONG);
    try {
      await answer();
    } finally {
      clearTimeout(counting);
      const again = server === "busy and asked again";
      server = "idle";
      if (again) now();
    }
  }

  function tellCounting() {
    if (state.standing !== "waiting") return;
    state.standing = "counting";
    heard();
  }

  async function answer() {
    const sheet = history.sheet;
    const { body, entries, places, runs, waiting } = requestOf(sheet);
    const mine = asked;
    const outcome = await post("/api/advice", body).catch((failure) => failure);
    if (mine !== asked || sheet.id !== history.sheet.id) return; // nobody waits for it any more
    const current = sheet === history.sheet;
    if (outcome instanceof Refused) {
      if (!current) return; // mended meanwhile, perhaps
      state.standing = "refused";
      state.faults = new Map([...unreadEluents(sheet), ...faultsOf(outcome.faults, entries)]);
    } else if (outcome instanceof Error) {
      state.standing = "unreachable";
      state.faults = unreadEluents(sheet);
      soon(AGAIN);
    } else {
      state.answered = { answer: outcome, sheet, places, runs };
      state.faults = current ? unreadEluents(sheet) : new Map();
      state.standing = current ? "current" : state.standing;
    }
    state.waiting = waiting;
    await heard();
  }

  // once whatever changed the sheet has put the focus where it goes on
  history.onChange(() => queueMicrotask(() => soon(isTyping() ? TYPING_PAUSE : PAUSE)));
  document.addEventListener("focusout", () => {
    if (timer && ["waiting", "counting"].includes(state.standing)) soon(PAUSE);
  });
  return {
    /** Asks now; what is under way is answered to nobody. */
    anew: () => {
      asked++;
      return now();
    },
  };
}

function isTyping() {
  const at = document.activeElement;
  return at instanceof HTMLInputElement && at.type === "text";
}
