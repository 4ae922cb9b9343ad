// @ts-check
/** Asks the worker that reads pictures. It is begun when first asked, ended when the view is closed and nothing waits, and told again what it forgot. */

/** @typedef {import("./store.js").Photo} Photo @typedef {import("./store.js").Point} Point @typedef {import("./store.js").Fault} Fault @typedef {import("./store.js").Marks} Marks */

/** What the worker could not do, and why. */
export class Unread extends Error {
  /** @param {Fault} fault */
  constructor(fault) {
    super(fault.code);
    this.fault = fault;
  }
}

/** @type {Worker | undefined} */
let worker;
let asked = 0;
/** @type {Map<number, {done: (answer: any) => void, failed: (fault: Unread) => void}>} */
const waiting = new Map();
/** The picture the worker holds, and how it straightened it last. */
const holds = { /** @type {Blob | undefined} */ file: undefined, flat: "" };
/** What is asked is asked one after another: each may have to tell the worker first what it forgot. @type {Promise<unknown>} */
let line = Promise.resolve();
let inLine = 0;
let isClosed = false;
let latestRead = 0;

/** @param {string} what @param {object} said @returns {Promise<any>} */
function ask(what, said) {
  const mine = (worker ??= begun());
  const id = ++asked;
  return new Promise((done, failed) => {
    waiting.set(id, { done, failed });
    mine.postMessage({ id, ask: what, ...said });
  });
}

function begun() {
  const mine = new Worker(new URL("./reading/worker.js", import.meta.url), { type: "module" });
  mine.onmessage = ({ data: { id, answer, fault } }) => {
    const one = waiting.get(id);
    waiting.delete(id);
    if (fault) one?.failed(new Unread(fault));
    else one?.done(answer);
  };
  // a worker that broke down holds nothing any more, and whoever waits for it waits in vain
  mine.onerror = mine.onmessageerror = (event) => {
    event.preventDefault();
    end();
  };
  return mine;
}

function end() {
  worker?.terminate();
  worker = undefined;
  holds.file = undefined;
  holds.flat = "";
  for (const { failed } of waiting.values()) failed(new Unread({ code: "broken" }));
  waiting.clear();
}

/** @template T @param {() => Promise<T>} work @returns {Promise<T>} */
function inTurn(work) {
  isClosed = false;
  inLine++;
  const mine = line.then(work).finally(() => {
    inLine--;
    if (isClosed && inLine === 0) end();
  });
  line = mine.catch(() => undefined);
  return mine;
}

/** Nobody looks any more: what waits is still answered, then the worker ends. */
export function close() {
  isClosed = true;
  if (inLine === 0) end();
}

/** @param {Blob} file */
async function hold(file) {
  if (holds.file === file && worker) return undefined;
  holds.file = undefined;
  holds.flat = "";
  const answer = await ask("open", { file });
  holds.file = file;
  return answer;
}

/** @typedef {{corners: Point[], widthMm: number, heightMm: number, light?: string}} Wish how a picture is to be straightened */

/** @param {Photo} photo @param {Wish} wish */
async function holdFlat(photo, { corners, widthMm, heightMm, light }) {
  await hold(/** @type {Blob} */ (photo.file));
  const said = { corners, widthMm, heightMm, ...(light ? { light } : {}) };
  const words = JSON.stringify(said);
  if (holds.flat === words) return undefined;
  holds.flat = "";
  const answer = await ask("straighten", said);
  holds.flat = words;
  return answer;
}

/** How the flat plate of a photo was straightened, to do it again. @param {Photo} photo @returns {Wish} */
const wishOf = ({ flat, light, lightBy }) => {
  const { corners, widthMm, heightMm } = /** @type {import("./store.js").Flat} */ (flat);
  return { corners, widthMm, heightMm, ...(lightBy === "hand" ? { light } : {}) };
};

/** @param {Blob} file @returns {Promise<any>} */
export const open = (file) =>
  inTurn(() => {
    holds.file = undefined;
    return hold(file);
  });

/** @param {Photo} photo @param {Wish} wish @returns {Promise<any>} */
export const straighten = (photo, wish) =>
  inTurn(() => {
    holds.flat = "";
    return holdFlat(photo, wish);
  });

/** Spots in lanes; only the latest of those that wait is read. @param {Photo} photo @param {Marks} marks @param {"these" | "anew"} lanes @returns {Promise<any>} */
export function read(photo, marks, lanes) {
  const mine = ++latestRead;
  return inTurn(async () => {
    if (mine !== latestRead) throw new Unread({ code: "overtaken" });
    await holdFlat(photo, wishOf(photo));
    return ask("read", { ...saidOf(photo, marks), lanes: lanes === "these" ? barely(marks) : null });
  });
}

/** One spot where a person points. @param {Photo} photo @param {Marks} marks @param {number} lane its index @param {number} mm @returns {Promise<any>} */
export const measure = (photo, marks, lane, mm) =>
  inTurn(async () => {
    await holdFlat(photo, wishOf(photo));
    return ask("spot", { ...saidOf(photo, marks), lanes: barely(marks), lane, mm });
  });

/** The flat plate as a small JPEG. @param {Photo} photo @returns {Promise<Blob>} */
export const picture = (photo) =>
  inTurn(async () => {
    await holdFlat(photo, wishOf(photo));
    return (await ask("picture", { quality: 0.85 })).blob;
  });

/** @param {Photo} photo @param {Marks} marks */
const saidOf = ({ light }, { start, front }) => ({ start, front, light });

/** @param {Marks} marks */
const barely = ({ lanes }) => lanes.map(({ startXMm, frontXMm, widthMm }) => ({ startXMm, frontXMm, widthMm }));
