import { type HouseSettings } from "#domain/company/house-settings";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { compareExact, exactly, type Measure } from "#domain/quantities/exact-quantity";
import { parseQuantity } from "#domain/quantities/parse-quantity";

/** The settings that are whole numbers. */
export type WholeSetting = {
  [Name in keyof HouseSettings]: HouseSettings[Name] extends number ? Name : never;
}[keyof HouseSettings];

interface WholeRange {
  readonly least: number;
  readonly most: number;
  /** After the number: "days". */
  readonly unit: string;
}

/** Between which figures each of them may stand: wide enough for any house, and never so far that a check says nothing any more. A house rule. */
export const WHOLE_SETTING_RANGES: Readonly<Record<WholeSetting, WholeRange>> = {
  calibrationValidDays: { least: 1, most: 1096, unit: "days" },
  samePressureWithinPsi: { least: 0, most: 20, unit: "psi" },
  heatCautionFromF: { least: 50, most: 110, unit: "\u00B0F" },
  heatCautionWarmFromF: { least: 50, most: 120, unit: "\u00B0F" },
  minutesPerStop: { least: 0, most: 240, unit: "minutes" },
  minutesPerThousandSquareFeet: { least: 1, most: 60, unit: "minutes" },
};

/**
 * Reads a setting that is a whole number; refuses, at its own name, what is none and what lies outside
 * WHOLE_SETTING_RANGES.
 */
export function readWholeSetting(name: WholeSetting, text: string): Outcome<number> {
  const { least, most, unit } = WHOLE_SETTING_RANGES[name];
  const allowed = `${String(least)} to ${most.toLocaleString("en-US")} ${unit}`;
  const typed = text.trim();
  const value = /^\d{1,5}$/u.test(typed.replace(/^(\d),(\d{3})$/u, "$1$2")) ? Number(typed.replace(",", "")) : Number.NaN;
  if (value >= least && value <= most) return accept(value);
  return badInput(name, typed === "" ? "nothing" : typed, allowed, `Give a whole number, ${allowed}.`);
}

const LEAST_TANK_MARK = exactly("fl oz", "1");
const MOST_TANK_MARK = exactly("gal", "10");

/**
 * Reads the mark of a tank's gauge or meter: a volume with its unit, from 1 fl oz to 10 gal. Refused at `tankMark`:
 * what parseQuantity refuses, and a volume outside that.
 */
export function readTankMark(text: string): Outcome<Measure<"volume">> {
  const field = "tankMark";
  const read = parseQuantity(text, { field, dimensions: ["volume"] });
  if (!read.ok) return read;
  const mark = read.value.exact;
  if (compareExact(mark, LEAST_TANK_MARK) >= 0 && compareExact(mark, MOST_TANK_MARK) <= 0) return accept(mark);
  return badInput(field, text.trim(), "1 fl oz to 10 gal", "Give the mark as a volume from 1 fl oz to 10 gal, for example 0.1 gal.");
}
