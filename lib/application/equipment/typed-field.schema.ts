import { z } from "zod";
import { isWritable } from "#application/field.schema";
import { readBagSettings } from "#domain/equipment/bag-settings";
import { readTipDroplets } from "#domain/equipment/tip-droplets";
import { readAmount, readLines, readMinutes, readPressure, readSeconds, readSpeed } from "#domain/equipment/typed-test";
import { type Outcome } from "#domain/foundation/outcome";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { isZero } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";

// Fields that keep what was typed and complain in the domain's own words when it can't be read.

const LONGEST_LINE = 60;
const LONGEST_LIST = 2000;

function typedField(what: string, longest: number, isOptional: boolean, read: (text: string) => Outcome<unknown>) {
  const ask = isOptional ? `Give ${what}, or leave it empty.` : `Give ${what}.`;
  return z
    .string(ask)
    .trim()
    .max(longest, `At most ${String(longest)} characters.`)
    .check((context) => {
      const text = context.value;
      if (text === "" && isOptional) return;
      if (!isWritable(text, "lines")) {
        context.issues.push({ code: "custom", input: text, message: "Leave out control characters." });
        return;
      }
      const outcome = text === "" ? undefined : read(text);
      if (outcome?.ok === true) return;
      context.issues.push({ code: "custom", input: text, message: outcome?.refusal.sentence ?? ask });
    });
}

/** An amount with its unit, above nothing. */
export function typedAmount(what: string, dimension: Dimension) {
  return typedField(what, LONGEST_LINE, false, (text) => readAmount(what, text, dimension));
}

/** An amount with its unit, above nothing, or empty where nobody knows. */
export function optionalAmount(what: string, dimension: Dimension) {
  return typedField(what, LONGEST_LINE, true, (text) => readAmount(what, text, dimension));
}

/** An amount with its unit, zero included, or empty where nobody measured it. */
export function optionalAmountOrZero(what: string, dimension: Dimension) {
  return typedField(what, LONGEST_LINE, true, (text) => parseQuantity(text, { field: what, dimensions: [dimension] }));
}

/** One mark of a measuring tool: an amount of mass or volume above nothing. */
export function typedMark(what: string) {
  return typedField(what, LONGEST_LINE, false, (text) => {
    const read = parseQuantity(text, { field: what, dimensions: ["mass", "volume"] });
    return read.ok && isZero(read.value.quantity) ? readAmount(what, text, read.value.quantity.dimension) : read;
  });
}

/** Amounts with their units, one to a line. */
export function typedAmounts(what: string, dimension: Dimension) {
  return typedField(what, LONGEST_LIST, false, (text) => readLines(what, text, (line) => readAmount(what, line, dimension)));
}

/** One time by the watch, in seconds. */
export function typedSeconds(what: string) {
  return typedField(what, LONGEST_LINE, false, (text) => readSeconds(what, text));
}

/** Times by the watch in seconds, one to a line. */
export function typedSecondsList(what: string) {
  return typedField(what, LONGEST_LIST, false, (text) => readLines(what, text, (line) => readSeconds(what, line)));
}

/** A pressure in psi. */
export function typedPressure(what: string) {
  return typedField(what, LONGEST_LINE, false, (text) => readPressure(what, text));
}

/** A pressure in psi, or empty where nobody knows. */
export function optionalPressure(what: string) {
  return typedField(what, LONGEST_LINE, true, (text) => readPressure(what, text));
}

/** A speed in mph, or empty. */
export function optionalSpeed(what: string) {
  return typedField(what, LONGEST_LINE, true, (text) => readSpeed(what, text));
}

/** Minutes by the watch, or empty. */
export function optionalMinutes(what: string) {
  return typedField(what, LONGEST_LINE, true, (text) => readMinutes(what, text));
}

/** Settings that bags state, one to a line, or empty. */
export function optionalBagSettings(what: string) {
  return typedField(what, LONGEST_LIST, true, (text) => readBagSettings(what, text));
}

/** Droplet classes of tips at pressures, one to a line, or empty. */
export function optionalTipDroplets(what: string) {
  return typedField(what, LONGEST_LIST, true, (text) => readTipDroplets(what, text));
}
