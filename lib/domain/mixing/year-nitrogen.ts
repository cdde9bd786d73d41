import { NO_NUTRIENT_RATE } from "#domain/turf/nutrients";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { addRates, type Rate } from "#domain/quantities/rate";
import { broughtInYear, historyOfYear, uncountedOf } from "#domain/mixing/nutrient-caps";
import { nutrientRatesOf, overWholeLawn } from "#domain/mixing/delivered";
import { type NutrientRates, type TicketLawn, type TicketTreatment } from "#domain/mixing/ticket-question";

/** Nitrogen on an area. */
export type NitrogenRate = Rate<"nutrient-mass-per-area">;

/** Nitrogen by how fast it works. What a label does not state is kept by itself and counts as quick where a limit asks. */
export interface NitrogenByRelease {
  readonly quick: NitrogenRate;
  readonly slow: NitrogenRate;
  readonly notStated: NitrogenRate;
}

/** None of any kind. */
export const NO_NITROGEN: NitrogenByRelease = { quick: NO_NUTRIENT_RATE, slow: NO_NUTRIENT_RATE, notStated: NO_NUTRIENT_RATE };

/** The nitrogen among some nutrients, by release. */
export function nitrogenByRelease({ nitrogen, quickNitrogen, slowNitrogen }: NutrientRates): NitrogenByRelease {
  if (quickNitrogen === "not-stated" || slowNitrogen === "not-stated") return { ...NO_NITROGEN, notStated: nitrogen };
  return { quick: quickNitrogen, slow: slowNitrogen, notStated: NO_NUTRIENT_RATE };
}

/** The sum, kind by kind. */
export function addNitrogen(left: NitrogenByRelease, right: NitrogenByRelease): NitrogenByRelease {
  return { quick: addRates(left.quick, right.quick), slow: addRates(left.slow, right.slow), notStated: addRates(left.notStated, right.notStated) };
}

/** All of it. */
export function wholeNitrogen({ quick, slow, notStated }: NitrogenByRelease): NitrogenRate {
  return addRates(addRates(quick, slow), notStated);
}

/** What counts as quick: also what no label states the release of. */
export function countedAsQuick({ quick, notStated }: NitrogenByRelease): NitrogenRate {
  return addRates(quick, notStated);
}

/** Nitrogen on one lawn. What could not be counted is named and makes the sum a lowest one. */
export interface CountedNitrogen {
  readonly nitrogen: NitrogenByRelease;
  readonly missing: readonly string[];
}

/** What some products bring together. */
export function countNitrogen(brought: readonly PastNutrients[]): CountedNitrogen {
  const nitrogen = brought.reduce((sum, each) => (each.ok ? addNitrogen(sum, nitrogenByRelease(each.value)) : sum), NO_NITROGEN);
  return { nitrogen, missing: uncountedOf(brought) };
}

type PastNutrients = TicketLawn["history"][number]["nutrients"];

/** What a treatment brings, on each of its lawns the same. */
export interface BroughtByTreatment {
  readonly zoneIds: readonly string[];
  readonly nutrients: PastNutrients;
}

/** What each treatment of a visit brings, worked out once for all lawns. */
export function broughtByTreatments(treatments: readonly TicketTreatment[]): readonly BroughtByTreatment[] {
  return treatments.map(({ zoneIds, label, rate }) => ({ zoneIds, nutrients: nutrientRatesOf(label, rate) }));
}

/** What the treatments of a visit put on one lawn. */
export function nitrogenOfVisit({ zoneId }: TicketLawn, brought: readonly BroughtByTreatment[]): CountedNitrogen {
  return countNitrogen(brought.filter(({ zoneIds }) => zoneIds.includes(zoneId)).map(({ nutrients }) => nutrients));
}

/** What a lawn got in the calendar year of a day, by its history. */
export function nitrogenOfYear(lawn: TicketLawn, on: CalendarDate): CountedNitrogen {
  return countNitrogen(broughtInYear(lawn, on));
}

/** What a lawn got in the calendar year of a day, with a visit of that day; what went on spots is counted over the whole lawn. */
export function nitrogenOverLawn(lawn: TicketLawn, treatments: readonly TicketTreatment[], on: CalendarDate): NitrogenByRelease {
  const before = historyOfYear(lawn, on).map(({ nutrients, spot }) => overWholeLawn(nutrients, spot));
  const now = treatments.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)).map(({ label, rate, spot }) => overWholeLawn(nutrientRatesOf(label, rate), spot));
  return countNitrogen([...before, ...now]).nitrogen;
}
