// The form of a published row that this project knows: its words, where it is printed, how it was read, and where it is not
// checked, why not.

/** One published row. A row without an omission is held by a check that names it. */
export interface ReferenceRow {
  /** The section and the place in it, as in "fertilizer.6". A row keeps its number. */
  readonly id: string;
  readonly words: string;
  readonly source: string;
  /**
   * `seen`: read at the place named. `seen-2nd`: read in a text that quotes the publication. `memory`: not read.
   * `calc`: worked out from a stated formula, so no published answer. `unmarked`: a formula of the trade.
   */
  readonly status: "seen" | "seen-2nd" | "memory" | "calc" | "unmarked";
  /** Why no check holds it. */
  readonly omission?: string;
}

export const STATEMENT = "a statement: nothing is computed from it";
export const ADVICE = "advice: the office enters it with a label or as a setting, and no number of the code holds it";
export const SETTING = "sources differ: the office enters its own";
export const LABEL = "a fact of a label, entered with the product";
export const PROGRAM = "the calendar of one region: the office enters its rounds";
export const TESTED = "the rates of a study: only their conversions, in the rows beside it, are computed";
export const PROCEDURE = "how a test is carried out by hand: nothing is computed from it";
export const FARM = "law for farms and nurseries, not for lawns";
export const HARVEST = "nothing is harvested from a lawn: the product knows no such interval";
export const NOTREAD = "not read: nothing is built on it";
export const NOTFOUND = "no published number was found, so that there is none to check";
export const NOINPUTS = "formula not covered: its inputs are not printed";
export const NOUNIT = "formula not covered: no quantity of the product has this unit";
export const FORMULA = "formula not covered: no use of the product asks for it";
export const NOPACK = "the product brings no rules of this state: the figures stand in the tests alone, where what a rule of such figures does is held";
export const NOWINDOW = "formula not covered: a window of the soil asks for one temperature, not for a lowest and a mean";
export const GLOBE = "formula not covered: corners are measured on a flat grid and not on the globe";
export const MOWING = "formula not covered: heights of cut";
export const AERATION = "formula not covered: holes of an aerator";
export const GYPSUM = "formula not covered: gypsum for sodium";
export const MISPRINT = "misprint: nothing that is computed here could repeat it";
