// @ts-check
/** Systems of reference spots and ways of seeing, as the server has them; fetched once in each language. */

import { later } from "../later.js";
import { get } from "../server.js";
import { language } from "../texts.js";

/** @param {import("../state.js").Act} act @returns {{hrfSystems: any[], ways: any[]}} none as long as they are not here */
export const tables = (act) => later(`check-tables-${language()}`, () => get("/api/checks/tables"), act) ?? { hrfSystems: [], ways: [] };
