import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type AppliedProduct, appliedName, constraintsOf } from "#domain/mixing/applied-product";
import { type StaysDry, type WateringNeed } from "#domain/mixing/watering-bounds";
import { unknownHours, type WateringHours } from "#domain/mixing/watering-hours";

/**
 * A watering fact that nobody read leaves the time undecided, and so does rain that spoils where anything wants water;
 * the hold for it is that of all unread facts.
 */
export function isUnread({ label, wateredInAtEpochMilliseconds: at }: AppliedProduct, needs: readonly WateringNeed[]): boolean {
  const isWateringInUnread = label.facts["watering-in"] === "unknown" && typeof at !== "number";
  const isRainUnread = label.facts["rain-that-spoils"] === "unknown" && needs.length > 0;
  return label.facts["watering-not-before"] === "unknown" || isWateringInUnread || isRainUnread;
}

/** What was to be watered in before the visit, which wants care: nobody has said that it was. */
export function overdueFindings(needs: readonly WateringNeed[], timeZone: string): readonly Finding[] {
  return needs
    .filter(({ isOverdue }) => isOverdue)
    .map(({ applied, constraint }) =>
      takeCare({
        rule: "watering-in-overdue",
        source: constraint.basis,
        what: `${appliedName(applied, timeZone)} was to be watered in before this visit, and nobody has said that it was.`,
        toDo: "Ask the customer, and have it watered in as soon as the other products allow.",
        citation: constraint.source,
        about: [applied.label.productName],
      }),
    );
}

/** Holds for what nobody has put on file and the time of a watering hangs on: whether there was water, drying times, hours. */
export function missingFindings(
  { products, hours, timeZone }: { readonly products: readonly AppliedProduct[]; readonly hours: WateringHours; readonly timeZone: string },
  needs: readonly WateringNeed[],
  dry: readonly StaysDry[],
): readonly Finding[] {
  const unsaid = constraintsOf(
    products.filter(({ wateredInAtEpochMilliseconds: at }) => at === "unknown"),
    "watering-in",
  ).map(({ applied }) =>
    hold("office", {
      rule: "watered-in-not-known",
      source: "house",
      what: `It is not on file whether ${appliedName(applied, timeZone)} has been watered in.`,
      toDo: "Ask the customer and put it on file.",
      about: [applied.label.productName],
    }),
  );
  if (needs.length === 0) return unsaid;
  const unguessed = dry
    .filter(({ end }) => end.atEpochMilliseconds === null)
    .map(({ applied, constraint }) =>
      hold("office", {
        rule: "drying-estimate-missing",
        source: "house",
        what: `${appliedName(applied, timeZone)} must not be watered until dry, and no estimate of that is on file.`,
        toDo: "Put an estimate of the drying time on file.",
        citation: constraint.source,
        about: [applied.label.productName],
      }),
    );
  return [...unsaid, ...unguessed, ...unknownHours(hours)];
}
