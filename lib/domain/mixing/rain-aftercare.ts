import { canonicalAmountOf } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { notBefore } from "#domain/mixing/aftercare-instants";
import { type AftercareReason, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf } from "#domain/mixing/applied-product";
import { depthWords, exactText } from "#domain/mixing/irrigation-run";
import { localWords } from "#domain/mixing/local-words";

/** Rain that would spoil a product, and until when it would: for the crew's forecast and the second look. */
export interface SpoilingRain {
  readonly startsAtEpochMilliseconds: number;
  readonly endsAtEpochMilliseconds: number;
  /** The depth from which on it spoils, exact in 0.125 micrometers, or any rain. */
  readonly from: string;
  readonly words: string;
  readonly reason: AftercareReason;
}

/** The rain that would spoil what was put down, where that time still runs at an instant. */
export function spoilingRain(
  products: readonly AppliedProduct[],
  asOf: { readonly epochMilliseconds: number; readonly timeZone: string; readonly unitSystem: UnitSystem },
): readonly SpoilingRain[] {
  const { timeZone, unitSystem } = asOf;
  return constraintsOf(products, "rain-that-spoils").flatMap(({ applied, constraint }) => {
    const { atEpochMilliseconds: end } = notBefore(constraint.within, applied.application, timeZone);
    if (end === null || end <= asOf.epochMilliseconds) return [];
    const { from } = constraint;
    const name = appliedName(applied, timeZone);
    const amount = from === "any" ? "Any rain" : `Rain of ${depthWords(from, unitSystem)} or more`;
    return [
      {
        startsAtEpochMilliseconds: applied.application.startsAtEpochMilliseconds,
        endsAtEpochMilliseconds: end,
        from: from === "any" ? "any" : exactText(canonicalAmountOf(from)),
        words: `${amount} before ${localWords(end, timeZone, "end")} spoils ${name}.`,
        reason: reasonFor(name, constraint),
      },
    ];
  });
}
