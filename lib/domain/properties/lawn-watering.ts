import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { clockWords } from "#domain/foundation/clock-words";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";

/** Where the water came from: labels count rain and sprinklers apart. */
export const WATERED_BY = ["sprinklers", "rain"] as const;
export type WateredBy = (typeof WATERED_BY)[number];

/** Whose word it is. */
export const WATER_TOLD_BY = ["crew", "customer"] as const;
export type WaterToldBy = (typeof WATER_TOLD_BY)[number];

/** A statement that a lawn was watered in: when the water was done, and how much it was where somebody knows. */
export interface LawnWatering {
  readonly wateredAtEpochMilliseconds: number;
  readonly wateredBy: WateredBy;
  readonly depth: Quantity<"length"> | "not-stated";
  readonly toldBy: WaterToldBy;
}

/** A watering with the local day and minute that its words need. */
export interface WateringToSay extends Pick<LawnWatering, "wateredBy" | "depth" | "toldBy"> {
  readonly wateredOn: CalendarDate;
  readonly minuteOfDay: number;
}

/** A watering in one sentence: "Watered in by sprinklers on Apr 14, 2026, 6 pm, with ¼ in, as the customer told." */
export function wateringWords({ wateredBy, wateredOn, minuteOfDay, depth, toldBy }: WateringToSay): string {
  const much = depth === "not-stated" ? "" : `, with ${formatQuantityIn(depth, "in")}`;
  const whose = toldBy === "customer" ? ", as the customer told" : "";
  return `Watered in by ${wateredBy} on ${formatShortDate(wateredOn)}, ${clockWords(minuteOfDay)}${much}${whose}.`;
}
