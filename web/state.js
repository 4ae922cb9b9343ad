// @ts-check
/** What the page shows: the sheet, the latest answer to it, and what the person is looking at. */

/**
 * @typedef {import("./sheet/sheet.js").Sheet} Sheet
 * @typedef {{library: any, sources: any, accuracy: any, version: any}} Published
 *
 * @typedef {object} Looking what is looked at; no part of the sheet, gone after a reload
 * @property {number | undefined} percent the ratio tried out by the slider, % strong
 * @property {number | undefined} locked a ratio held beside it, % strong
 * @property {string | undefined} reading id of the reading that is open for correction
 * @property {string[]} [fellow] ids of the compounds that are pointed at, to be marked on all plates
 * @property {string} [photo] id of the plate whose photo is read
 * @property {string} [what] id of the compound of which it is being said what it is
 * @property {string} [group] id of the group that is pointed at, to be marked in the drawing
 * @property {"all" | "usual"} [offered] which groups are offered
 * @property {string} [find] what a group is searched by
 * @property {"open" | "folded"} [scout] whether several jars at once are thought of
 * @property {import("./scout/scouting.js").Scouted} [scouted] what came of asking for several jars at once
 * @property {"open" | "folded"} [swap] whether other solvents are thought of
 * @property {import("./swap/ask.js").Swapped} [swapped] what came of asking for them
 * @property {import("./swap/ask.js").Wish} [swapWish] how they are wanted
 * @property {{weak: string, strong: string}} [swapTook] the pair that was made that of the next plate there
 * @property {"open" | "folded"} [column] whether the column is thought of; undefined where nobody opened or closed it
 * @property {"open" | "folded"} [checks] whether same, pure and done are thought of; undefined where nobody opened or closed them
 * @property {Record<string, import("./checks/ask.js").Asked>} [checked] what came of asking about each of them
 * @property {"open" | "folded"} [hrf] whether a correction by reference spots is thought of
 * @property {string} [mark] id of the spot of a lane that is open for correction
 * @property {import("./checks/reaction-sheet.js").ChosenMark} [grade] which compound on which plate of a reaction is chosen
 * @property {{spot: string, entry: string, words: string}} [whatFrom] from which entry, in which part, it was asked what a compound is, where that is not its own line
 * @property {string} [checkAt] which part of same, pure and done one is at
 * @property {import("./checks/reaction-sheet.js").Assumed} [assumed] what plates of a reaction show as on the plate before, until somebody looks
 * @property {"column"} [at] the part of the page one is at, where that is not the sheet
 * @property {import("./column/ask.js").Asked} [planned] what came of asking for its plan
 * @property {Record<string, import("./column/judge.js").Judged>} [judged] what a run says of the forecast, by its id
 * @property {Record<string, import("./column/ask.js").Asked>} [pooled] what came of asking about the fractions of a run, by its id
 * @property {import("./column/sheet.js").Chosen} [tube] which tubes are chosen
 * @property {"open" | "folded"} [where] whether it is looked at where the number comes from
 * @property {"open" | "folded"} [published] whether it is looked at what is published of the two solvents
 * @property {"open" | "folded"} [studies] whether all studies are looked at
 * @property {"open" | "folded"} [advised] whether it is looked at what came of the advices
 * @property {string} [came] what was fetched last
 * @property {string | undefined} asked the number whose origin is shown
 * @property {{chart: string, how: "copied" | "by-hand" | "no-picture"} | undefined} taken what came of the last chart taken away
 *
 * @typedef {object} Answered an answer with the sheet it was given to
 * @property {any} answer of /api/advice
 * @property {Sheet} sheet
 * @property {string[]} runs ids of the plates by their place among the runs
 * @property {Map<string, string>} places from "run.index" of a spot in the request to the id of its reading
 *
 * @typedef {object} State
 * @property {Sheet} sheet
 * @property {import("./study/told.js").StudyTold} study how it is kept
 * @property {Published} published
 * @property {Answered | undefined} answered
 * @property {"waiting" | "counting" | "current" | "refused" | "unreachable"} standing of the answer to the sheet as it is now; counting where it
 *     keeps somebody waiting
 * @property {Map<string, string[]>} faults sentences by the id of the entry they are about; those about none under ""
 * @property {import("./sheet/sheet.js").Plate[]} waiting plates left out because their eluent is not written yet
 * @property {Looking} looking
 * @property {{undo: boolean, redo: boolean}} can
 *
 * @typedef {object} Act what a view may do
 * @property {(change: (sheet: Sheet) => void, together?: string) => void} edit changes the sheet; edits with the same word in a row are one step
 * @property {() => void} rest ends such a row
 * @property {() => void} undo takes the last step back
 * @property {(looking: Partial<Looking>) => void} look
 * @property {(sheet: Sheet) => void} begin begins another study; the one before is kept, and an undo leads back to it
 * @property {() => void} save saves again, whatever stood in the way
 * @property {(id: string, title?: string) => Promise<"shown" | "unknown" | "gone">} open shows another study; its title is told where it is not to be had
 * @property {(archived: boolean) => void} archive puts the study shown away, or takes it out again
 * @property {() => Promise<void>} saved once all is saved, as far as it can be
 * @property {(what: "both" | "unknown" | "troubles") => void} seen takes down what was told of the study or the folder
 * @property {(id: string) => void} focus moves the focus to an element once all is drawn
 */

export {};
