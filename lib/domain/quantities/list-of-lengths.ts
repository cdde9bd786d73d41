import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { listParts } from "#domain/quantities/list-parts";
import { parseLength } from "#domain/quantities/parse-length";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { type UnitOf } from "#domain/quantities/units";

/** A field that takes several lengths, and the unit that it shows for a number alone. */
export interface LengthsField {
  readonly field: string;
  readonly unitWhenNone: UnitOf<"length">;
}

/** One number and what follows it: "9 m" and "9'", not "9 m 20 cm". */
const ONE_NUMBER = /^[\d.,/ -]+\D+$/u;

/** What one part says of units. An empty can or a pinched width, 0, is the same in every unit and says nothing. */
type PartUnit =
  | { readonly kind: "bare" }
  | { readonly kind: "nothing" }
  | { readonly kind: "named"; readonly unit: UnitOf<"length">; readonly isCompound: boolean }
  | { readonly kind: "unreadable" };

function unitOfPart(part: string, field: string): PartUnit {
  // A corner's distance may be west or south of another.
  const plain = plainCharacters(part).replace(/^- ?/u, "");
  const bare = parseNumber(field, plain);
  if (bare.ok) return { kind: bare.value.numerator === 0n ? "nothing" : "bare" };
  const read = parseLength(plain, { field });
  return read.ok ? { kind: "named", unit: read.value.unit, isCompound: !ONE_NUMBER.test(plain) } : { kind: "unreadable" };
}

/**
 * The parts of a list of lengths, each to be read alone. A unit after the last part only is everybody's: "2, 3, 2, 3 mm"
 * are four in mm. Where the units that are written are the field's own, numbers alone are in it as well. Refused: some
 * parts in another unit beside numbers alone, of which nobody can tell what they are in. A part that can't be read is left
 * as it is, for the reader to refuse.
 */
export function inOneUnit(parts: readonly string[], { field, unitWhenNone }: LengthsField): Outcome<readonly string[]> {
  const units = parts.map((part) => unitOfPart(part, field));
  const said = units.filter(({ kind }) => kind !== "nothing");
  const named = said.filter((each) => each.kind === "named");
  const isPlain = !said.some(({ kind }) => kind === "bare") || named.every(({ unit }) => unit === unitWhenNone);
  if (isPlain || said.some(({ kind }) => kind === "unreadable")) return accept(parts);
  const last = said.at(-1);
  if (named.length === 1 && last?.kind === "named" && !last.isCompound) {
    return accept(parts.map((part, place) => (units[place]?.kind === "bare" ? `${part} ${last.unit}` : part)));
  }
  const withUnit = parts.find((_part, place) => units[place]?.kind === "named") ?? "";
  const without = parts.find((_part, place) => units[place]?.kind === "bare") ?? "";
  return badInput(
    field,
    parts.join(", "),
    "a unit after each, or one after the last for all",
    `"${withUnit}" has a unit and "${without}" has none. Write a unit after each, or one after the last for all of them.`,
  );
}

/** The parts of a list of lengths as it was typed, parted as listParts does and each in its unit as {@link inOneUnit} has it. */
export function lengthParts(text: string, takes: LengthsField): Outcome<readonly string[]> {
  return inOneUnit(listParts(text), takes);
}
