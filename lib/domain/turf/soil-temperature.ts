import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type DatePeriod, type Dated, unbrokenDays } from "#domain/turf/daily-series";
import { READABLE_TEMPERATURE_C, refuseOutOfRange } from "#domain/turf/physical-range";
import { fahrenheitFromCelsius } from "#domain/turf/temperature-scale";

/** A day's soil temperature, at the depth and of the kind (mean, lowest at night) that the series is made of. */
export interface SoilDay extends Dated {
  readonly soilTemperatureF: number;
}

/** A published range of soil temperature in °F, with the depth it was measured at and how long it must hold. */
export interface SoilTemperatureWindow {
  readonly purpose: string;
  readonly lowestF: number;
  /** Whether a soil just at the lowest temperature counts: not where the source says "above". */
  readonly lowestCounts: boolean;
  /** Left out where the source gives only a beginning. */
  readonly highestF?: number;
  readonly depth: string;
  /** Days in a row that the soil must hold; 1 where the source says nothing. */
  readonly consecutiveDays: number;
  readonly source: string;
  readonly reading: "read" | "read-second-hand";
}

/**
 * Soil temperatures printed for crabgrass and goosegrass. They differ in depth, so they are not one rule. Each names
 * its source.
 */
export const PUBLISHED_SOIL_WINDOWS = {
  crabgrassPreEmergent: {
    purpose: "pre-emergent against crabgrass",
    lowestF: 50,
    lowestCounts: true,
    highestF: 55,
    depth: "0 to 2 in",
    consecutiveDays: 1,
    source: "University of Wisconsin crabgrass timer",
    reading: "read",
  },
  crabgrassRuleOfThumb: {
    purpose: "crabgrass: rule of thumb, nights above 50 °F",
    lowestF: 50,
    lowestCounts: false,
    depth: "not printed",
    consecutiveDays: 3,
    source: "Kent County Extension (Delaware) 2009",
    reading: "read",
  },
  crabgrassEmergence: {
    purpose: "crabgrass emergence begins",
    lowestF: 55,
    lowestCounts: true,
    highestF: 58,
    depth: "4 in",
    consecutiveDays: 4,
    source: "Virginia Tech, January 2007, quoted by Kent County Extension (Delaware), March 2008",
    reading: "read-second-hand",
  },
  crabgrassMostGermination: {
    purpose: "80 % of crabgrass germination",
    lowestF: 60,
    lowestCounts: true,
    highestF: 70,
    depth: "0 to 2 in",
    consecutiveDays: 1,
    source: "Michigan State University, Timing crabgrass preemergence applications in spring",
    reading: "read",
  },
  crabgrassGerminationBegins: {
    purpose: "crabgrass germination begins",
    lowestF: 57,
    lowestCounts: true,
    highestF: 64,
    depth: "1 in",
    consecutiveDays: 1,
    source: "Purdue University, When will crabgrass germinate",
    reading: "read",
  },
  crabgrassGermination: {
    purpose: "crabgrass germinates",
    lowestF: 53,
    lowestCounts: true,
    highestF: 58,
    depth: "4 in",
    consecutiveDays: 1,
    source: "Murphy, University of Georgia, six steps for preemergence",
    reading: "read",
  },
  goosegrassGermination: {
    purpose: "goosegrass germinates",
    lowestF: 60,
    lowestCounts: true,
    highestF: 65,
    depth: "4 in",
    consecutiveDays: 1,
    source: "Murphy, University of Georgia, six steps for preemergence",
    reading: "read",
  },
} as const satisfies Readonly<Record<string, SoilTemperatureWindow>>;

/** How a soil stands to a window: the date is the last of the days in a row that decided it. */
export type SoilWindowState =
  | { readonly kind: "before" }
  | { readonly kind: "open"; readonly openedOn: CalendarDate }
  | { readonly kind: "past"; readonly openedOn: CalendarDate; readonly closedOn: CalendarDate };

/**
 * Says whether the soil has held a window's lowest temperature for its days in a row, and whether it has
 * since held more than its highest for as long. Once opened, a window is not undone by a cold night.
 *
 * Refuses a series with a gap (naming the day), a reading that is not a soil temperature, and a number of
 * days that is not a whole number above zero.
 */
export function stateOfSoilWindow(
  series: readonly SoilDay[],
  period: DatePeriod,
  window: Pick<SoilTemperatureWindow, "lowestF" | "lowestCounts" | "highestF" | "consecutiveDays">,
): Outcome<SoilWindowState> {
  const { lowestF, lowestCounts, highestF, consecutiveDays } = window;
  if (!Number.isInteger(consecutiveDays) || consecutiveDays < 1) {
    return badInput(
      "consecutiveDays",
      String(consecutiveDays),
      "1 or more",
      "The days in a row must be a whole number, 1 or more.",
    );
  }
  const days = unbrokenDays(series, period);
  if (!days.ok) return days;
  const unreadable = refuseOutOfRange(
    days.value.map(({ date, soilTemperatureF }) => ({
      field: `${date} soilTemperatureF`,
      words: `The soil temperature of ${date}`,
      value: soilTemperatureF,
      lowest: fahrenheitFromCelsius(READABLE_TEMPERATURE_C.lowest),
      highest: fahrenheitFromCelsius(READABLE_TEMPERATURE_C.highest),
      unit: "°F",
    })),
  );
  if (unreadable !== undefined) return unreadable;
  const openedOn = firstHeld(
    days.value,
    consecutiveDays,
    (degreesF) => degreesF > lowestF || (lowestCounts && degreesF === lowestF),
  );
  if (openedOn === undefined) return accept({ kind: "before" });
  const closedOn =
    highestF === undefined ? undefined : firstHeld(days.value, consecutiveDays, (degreesF) => degreesF > highestF);
  return accept(closedOn === undefined ? { kind: "open", openedOn } : { kind: "past", openedOn, closedOn });
}

function firstHeld(
  days: readonly SoilDay[],
  consecutiveDays: number,
  isHeld: (degreesF: number) => boolean,
): CalendarDate | undefined {
  let daysInARow = 0;
  for (const { date, soilTemperatureF } of days) {
    daysInARow = isHeld(soilTemperatureF) ? daysInARow + 1 : 0;
    if (daysInARow === consecutiveDays) return date;
  }
  return undefined;
}
