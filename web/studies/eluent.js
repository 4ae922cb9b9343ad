// @ts-check
/** What a plate ran in, in words that cannot be taken the wrong way round. */

import { handyRatio, shareText } from "../answer/shares.js";
import { solventNames } from "../plate/size.js";
import { additiveWords } from "../sheet/additive.js";
import { decimal } from "../numbers.js";
import { marked, say } from "../texts.js";

/** @typedef {import("../state.js").State} State @typedef {{weak: string, strong: string}} Pair ids of two solvents */

/** So far a share may lie from a simple ratio and be what that pours [%]: it is written with one decimal. */
const ROUNDED = 0.051;

/** "4 : 3 hexane : ethyl acetate (43 % ethyl acetate)", or the share alone where no simple ratio pours it. @param {State} state @param {Pair} pair @param {number} percent */
export function ratioWords(state, pair, percent) {
  const names = solventNames(state, /** @type {any} */ (pair));
  const handy = percent > 0 && percent < 100 ? handyRatio(percent) : undefined;
  if (!handy || Math.abs(handy.percent - percent) > ROUNDED) return shareWords(state, pair, percent);
  return say("later.ratio-of-pair", { ratio: `${handy.weak} : ${handy.strong}`, percent: shareText(percent), ...names });
}

/** "80 % ethyl acetate in hexane". @param {State} state @param {Pair} pair @param {number} percent */
export function shareWords(state, pair, percent) {
  const { weak, strong } = solventNames(state, /** @type {any} */ (pair));
  if (percent <= 0) return say("page.pure", { solvent: weak });
  if (percent >= 100) return say("page.pure", { solvent: strong });
  return say("later.share-in", { percent: marked(String(Number(percent.toFixed(1)))), weak, strong });
}

/**
 * What a plate ran in, and what a file says of it where that is not the same.
 * @param {State} state @param {any} plate of a study @param {string} [said] the file's own words, where they are known
 */
export function ranIn(state, { weak, strong, eluent, percentStrong: percent, additive }, said = eluent) {
  const added = additiveWords(additive);
  const withAdded = (/** @type {string} */ words) => (added ? say("page.eluent-with", { eluent: words, additive: added }) : words);
  const typed = said.trim();
  if (percent === undefined) {
    const pair = say("page.pair-option", solventNames(state, /** @type {any} */ ({ weak, strong })));
    return withAdded(typed ? say("later.eluent-unread", { pair, typed }) : say("later.pair-no-eluent", { pair }));
  }
  const words = withAdded(shareWords(state, { weak, strong }, percent));
  const same = !typed || decimal(typed.replace(/%\s*$/, "")) === percent;
  return same ? words : say("later.file-says", { words, typed });
}
