import { type Finding } from "#domain/foundation/finding";
import { type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { type Working } from "#domain/foundation/working";
import { type WrittenQuantity } from "#domain/quantities/format-quantity";

/** What was typed into a worksheet, by the name of the field; an empty field is empty text. */
export type Typed<Name extends string> = Readonly<Record<Name, string>>;

/** All that is wrong with what was typed, in the order of the fields. */
export type Refusals = readonly [InputRefusal, ...InputRefusal[]];

/** One figure that the worksheet was asked for, with what it is of. */
export interface WorksheetAnswer extends WrittenQuantity {
  readonly of: string;
}

/** Figures that stand in rows: what goes into each tank, the hours of a day. Every row has a cell for each column. */
export interface WorksheetTable {
  readonly caption: string;
  readonly columns: readonly { readonly head: string; readonly align: "word" | "figure" }[];
  readonly rows: readonly (readonly string[])[];
}

/** A worksheet that came out: its figures, how they were worked out, and what to watch. */
export interface WorkedWorksheet {
  readonly answers: readonly WorksheetAnswer[];
  readonly working: Working;
  readonly findings: readonly Finding[];
  readonly tables: readonly WorksheetTable[];
}

/** A worksheet that came out, or all that is wrong with what was typed. */
export type WorksheetOutcome<Worked extends WorkedWorksheet = WorkedWorksheet> = Outcome<Worked, Refusals>;

/** Entries to try a worksheet with, and where they come from: a published worked example where there is one. */
export interface WorksheetExample<Name extends string> {
  readonly typed: Typed<Name>;
  readonly from: string;
}
