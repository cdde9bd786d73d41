import { type CalendarDate, addDays, formatShortDate } from "#domain/foundation/calendar-date";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { type RangeCheck, refuseOutOfRange } from "#domain/turf/physical-range";
import { type Authority, type TemperatureAheadLimit, type TemperatureLimit, type WeatherLimits, type WeatherMix, stated } from "#domain/weather/spray-limits";
import { mustNotSee, passesTemperature } from "#domain/weather/product-hour";
import { type HourReason, closedBy, shown, shownApart, undecidedBy, unreadLimit } from "#domain/weather/spray-reasons";

/** A high of a day that somebody entered, or did not. */
export type EnteredHigh = number | "not-entered";

/** A day's forecast high, with the highs of the days after it as far as they were entered, in order and from the next day on. */
export interface ForecastHighs {
  readonly date: CalendarDate;
  readonly forecastHighF: number;
  readonly followingHighsF: readonly EnteredHigh[];
}

/**
 * What a day's forecast high, without hourly values, says of a mix. It can hold a day and never open one: wind,
 * rain and the rest stay unknown.
 */
export interface DayByForecastHigh {
  readonly date: CalendarDate;
  readonly mixId: string;
  readonly verdict: "hold" | "no-hold-by-temperature";
  readonly reasons: readonly HourReason[];
}

const ONE_DAY_HOURS = 24;

/**
 * Holds a mix for a day when a product's highest temperature is at or under the forecast high: somewhere in the day the
 * limit may be met, and nothing says when; a high that only reaches a limit which may be reached
 * says so. A highest temperature that nobody has read holds too. A limit on the hours
 * that follow is held against the days after as well: the work may end as late as midnight, so 24 h reach through the
 * next day. A lowest temperature that not even the high reaches holds. A day in its reach whose high is not known
 * holds, undecided, and is named. With hourly values for the day the hours decide instead (judgeSprayDay). Refuses what
 * is no temperature of outdoor air (`forecastHighF`, `followingHighsF`).
 */
export function judgeDayByForecastHigh(highs: ForecastHighs, mixes: readonly WeatherMix[]): Outcome<readonly DayByForecastHigh[]> {
  const refusal = refuseOutOfRange([
    highRange("forecastHighF", "The forecast high", highs.forecastHighF),
    ...highs.followingHighsF.flatMap((highF, index) => (highF === "not-entered" ? [] : [highRange("followingHighsF", `The forecast high of ${dateAfter(highs, index)}`, highF)])),
  ]);
  if (refusal !== undefined) return refusal;
  return accept(
    mixes.map((mix) => {
      const reasons = mix.products.flatMap((product) => reasonsOf(product, highs));
      return { date: highs.date, mixId: mix.mixId, verdict: reasons.length > 0 ? "hold" : "no-hold-by-temperature", reasons };
    }),
  );
}

/**
 * A high, or what a high is held against, in °F: to be refused outside what outdoor air may be, -60 to 140 °F (common
 * practice).
 */
export function highRange(field: string, words: string, value: number): RangeCheck {
  return { field, words, value, lowest: -60, highest: 140, unit: "°F" };
}

function dateAfter({ date }: ForecastHighs, index: number): string {
  return formatShortDate(addDays(date, index + 1));
}

function reasonsOf({ productName, lowestTemperature, highestTemperature, highestTemperatureAhead }: WeatherLimits, highs: ForecastHighs): readonly HourReason[] {
  const limits = [highestTemperature, highestTemperatureAhead];
  const unread = limits.includes("unknown") ? [unreadLimit("temperature-high", productName, "highest temperature")] : [];
  const passed = limits
    .flatMap((limit) => stated(limit))
    .filter(({ limitF }) => limitF <= highs.forecastHighF)
    .map((limit) => {
      const [high, allowed] = shownApart(highs.forecastHighF, limit.limitF);
      return closedBy("temperature-high", limit, `The forecast high is ${high} °F${againstLimit(productName, limit, highs.forecastHighF, allowed)}`, productName);
    });
  const ahead = stated(highestTemperatureAhead)
    .filter(({ limitF }) => limitF > highs.forecastHighF)
    .flatMap((limit) => reasonsAhead(productName, limit, highs));
  const cold = stated(lowestTemperature)
    .filter((limit) => passesTemperature("temperature-low", limit, highs.forecastHighF))
    .map((limit) => {
      const [high, least] = shownApart(highs.forecastHighF, limit.limitF);
      const sentence = `The forecast high is ${high} °F; the lowest temperature for ${productName} is ${least} °F, and no hour of the day reaches it.`;
      return closedBy("temperature-low", limit, sentence, productName);
    });
  return [...unread, ...passed, ...ahead, ...cold];
}

/**
 * A high that only equals a limit which may be reached passes nothing, and still holds: nothing says that no hour gets
 * warmer. The sentence says that.
 */
function againstLimit(productName: string, { limitF, reaching }: TemperatureLimit, highF: number, allowed: string): string {
  if (highF !== limitF) return `; the highest temperature for ${productName} is ${allowed} °F.`;
  return reaching === "forbidden" ? `; ${productName} must stay below ${allowed} °F.` : `, the highest temperature for ${productName}; ${MAY_BE_WARMER}`;
}

const MAY_BE_WARMER = "the day may turn out warmer than forecast.";

/** How many days after its own a limit on the hours afterwards reaches into: the work may end at midnight. */
export function daysAheadOf({ withinHours }: Pick<TemperatureAheadLimit, "withinHours">): number {
  return Math.ceil(withinHours / ONE_DAY_HOURS);
}

/** What the days after say of a limit that the day itself leaves open. */
function reasonsAhead(productName: string, limit: TemperatureAheadLimit & Authority, highs: ForecastHighs): readonly HourReason[] {
  const reached = Array.from({ length: daysAheadOf(limit) }, (_, index) => highs.followingHighsF[index] ?? "not-entered");
  const hot = reached.findIndex((highF) => highF !== "not-entered" && limit.limitF <= highF);
  const hotF = reached[hot];
  if (typeof hotF === "number") {
    const [high, allowed] = shownApart(hotF, limit.limitF);
    const isJustReached = hotF === limit.limitF && limit.reaching === "allowed";
    const rule = isJustReached ? `, the most that ${productName} may see within ${shown(limit.withinHours)} h; ${MAY_BE_WARMER}` : `; ${mustNotSee(productName, limit, allowed)}`;
    return [closedBy("temperature-ahead", limit, `The forecast high of ${dateAfter(highs, hot)} is ${high} °F${rule}`, productName)];
  }
  const missing = reached.indexOf("not-entered");
  if (missing === -1) return [];
  return [undecidedBy("temperature-ahead", limit, `The forecast high of ${dateAfter(highs, missing)} is not known; ${mustNotSee(productName, limit, shown(limit.limitF))}`, productName)];
}
