// @ts-check
/** A chart as a file of its own: what it looks like is written into it, on light paper whatever the page is shown on. */

import { byId, draw } from "../dom.js";
import { say } from "../texts.js";
import { HEIGHT, WIDTH } from "./frame.js";

/** @typedef {import("./numbers.js").Taken} Taken */

/** Pixels of a saved drawing for each unit of the chart, and pixels of a picture for each of those. */
const SIZE = 2;
const SHARPNESS = 2;

/** Heights of the title above the chart and of each line below it, and how many characters such a line takes. */
const HEAD = 40;
const LINE = 14;
const CHARACTERS = 58;

/** What decides how an element looks. */
const OF_SHAPES = ["fill", "fill-opacity", "stroke", "stroke-width", "stroke-opacity", "stroke-dasharray", "stroke-linecap", "stroke-linejoin", "opacity"];
const OF_TEXT = ["fill", "fill-opacity", "stroke", "stroke-width", "stroke-linejoin", "paint-order", "opacity", "font-family", "font-size", "font-weight", "font-style", "text-anchor"];

/** @param {Taken} taken */
export function saveDrawing(taken) {
  download(new Blob([drawingOf(taken).text], { type: "image/svg+xml" }), `${nameOf(taken)}.svg`);
}

/** @param {Taken} taken */
export async function savePicture(taken) {
  const { text, width, height } = drawingOf(taken);
  const address = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [width * SHARPNESS, height * SHARPNESS];
    const pen = canvas.getContext("2d");
    if (!pen) throw new Error("The browser gives no canvas.");
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    const picture = await new Promise((done) => canvas.toBlob(done, "image/png"));
    if (!picture) throw new Error("The browser makes no PNG.");
    download(picture, `${nameOf(taken)}.png`);
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** @param {Taken} taken */
const nameOf = ({ file, data }) => (data ? `midplate-${file}-${data.advice.weak.id}-${data.advice.strong.id}` : `midplate-${file}`);

/** @param {Blob} blob @param {string} name */
function download(blob, name) {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000); // some browsers read it only after a question where to
}

/** The chart as text of an SVG file, with its size in pixels. @param {Taken} taken */
function drawingOf(taken) {
  const lines = taken.words.flatMap(folded);
  const units = HEAD + HEIGHT + LINE * lines.length + 14;
  const svg = /** @type {SVGSVGElement} */ (byId(`${taken.id}-drawing`).cloneNode(true));
  for (const gone of svg.querySelectorAll(".chart-pointed")) gone.remove();
  const paper = /** @type {Element} */ (svg.querySelector(".chart-paper"));
  for (const [name, value] of Object.entries({ y: -HEAD, height: units })) paper.setAttribute(name, String(value));
  svg.append(
    draw("text", { class: "chart-heading", x: 12, y: -HEAD + 20 }, taken.title),
    draw("text", { class: "chart-aside", x: 12, y: -HEAD + 36 }, aboutOf(taken)),
    ...lines.map((line, i) => draw("text", { class: "chart-aside", x: 12, y: HEIGHT + 14 + LINE * i }, line)),
  );
  onLightPaper(svg, () => writeLook(svg));
  svg.prepend(draw("title", { id: "title" }, taken.title), draw("desc", { id: "desc" }, taken.words.join(" ")));
  const [width, height] = [WIDTH * SIZE, units * SIZE];
  for (const [name, value] of Object.entries({ xmlns: "http://www.w3.org/2000/svg", width, height, viewBox: `0 ${-HEAD} ${WIDTH} ${units}`, role: "img", "aria-labelledby": "title", "aria-describedby": "desc" })) {
    svg.setAttribute(name, String(value));
  }
  return { text: `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(svg)}\n`, width, height };
}

/** What it is a chart of. @param {Taken} taken */
function aboutOf({ data, of }) {
  if (!data) return of ?? "";
  const { weak, strong, sorbent } = data.advice;
  return say("page.chart-of", { weak: weak.name, strong: strong.name, sorbent: say(`page.sorbent-${sorbent}`) });
}

/** A sentence in lines. @param {string} sentence */
function folded(sentence) {
  const lines = [""];
  for (const word of sentence.split(" ")) {
    const last = lines[lines.length - 1];
    if (last && last.length + 1 + word.length > CHARACTERS) lines.push(word);
    else lines[lines.length - 1] = last ? `${last} ${word}` : word;
  }
  return lines;
}

/**
 * Does something while a drawing lies, out of sight, where the page's colours are those of daylight.
 * @param {Element} drawing @param {() => void} something
 */
function onLightPaper(drawing, something) {
  const sheet = document.createElement("div");
  sheet.className = "chart chart-aside-sheet";
  for (const [name, value] of lightColours()) sheet.style.setProperty(name, value);
  sheet.append(drawing);
  document.body.append(sheet);
  try {
    something();
  } finally {
    sheet.remove();
  }
}

/** The page's own colours as they are before any medium changes them. */
function lightColours() {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
  const roots = rules.filter((rule) => rule instanceof CSSStyleRule && rule.selectorText === ":root");
  return roots.flatMap((rule) => {
    const { style } = /** @type {CSSStyleRule} */ (rule);
    return [...style].filter((name) => name.startsWith("--")).map((name) => [name, style.getPropertyValue(name)]);
  });
}

/** Writes how each element looks into it, and takes off what only the page understands. @param {Element} svg */
function writeLook(svg) {
  const looks = [...svg.querySelectorAll("*")].map((element) => {
    const computed = getComputedStyle(element);
    const wanted = element.tagName === "g" ? [] : element.tagName === "text" ? OF_TEXT : OF_SHAPES;
    return { element, look: wanted.map((name) => [name, computed.getPropertyValue(name).replace(/(\d)px/g, "$1")]) };
  });
  for (const { element, look } of looks) {
    for (const [name, value] of look) if (value !== "") element.setAttribute(name, value);
  }
  for (const element of [svg, ...svg.querySelectorAll("*")]) {
    for (const { name } of [...element.attributes]) if (name === "class" || name === "id" || name === "style") element.removeAttribute(name);
  }
}
