import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { refuseOutOfRange } from "#domain/turf/physical-range";
import { type WeatherMix, stated } from "#domain/weather/spray-limits";
import { type HourReason, closedBy, shown, unreadLimit } from "#domain/weather/spray-reasons";

/**
 * What a day's forecast high, without hourly values, says of a mix. It can hold a day and never open one: wind,
 * rain and the rest stay unknown.
 */
export interface DayByForecastHigh {
  readonly date: CalendarDate;
  readonly mixId: string;
  readonly verdict: "hold" | "no-hold-by-heat";
  readonly reasons: readonly HourReason[];
}

/**
 * Holds a mix for a day when a product's highest temperature is at or under the forecast high: somewhere in
 * the day the limit may be met, and nothing says when. A highest temperature that nobody has read holds too.
 * With hourly values for the day the hours decide instead (judgeSprayDay).
 * Refuses what is no temperature of outdoor air.
 */
export function judgeDayByForecastHigh(
  day: { readonly date: CalendarDate; readonly forecastHighF: number },
  mixes: readonly WeatherMix[],
): Outcome<readonly DayByForecastHigh[]> {
  const refusal = refuseOutOfRange([
    {
      field: "forecastHighF",
      words: "The forecast high",
      value: day.forecastHighF,
      lowest: -60,
      highest: 140,
      unit: "°F",
    },
  ]);
  if (refusal !== undefined) return refusal;
  return accept(
    mixes.map((mix) => {
      const reasons = mix.products.flatMap((product) => {
        const { productName } = product;
        const limits = [product.highestTemperature, product.highestTemperatureAhead];
        const unread = limits.includes("unknown")
          ? [unreadLimit("temperature-high", productName, "highest temperature")]
          : [];
        const passed = limits
          .flatMap((limit) => stated(limit))
          .filter(({ limitF }) => limitF <= day.forecastHighF)
          .map((limit) => {
            const sentence = `The forecast high is ${shown(day.forecastHighF)} °F; the highest temperature for ${productName} is ${shown(limit.limitF)} °F.`;
            return closedBy("temperature-high", limit, sentence, productName);
          });
        return [...unread, ...passed];
      });
      return { date: day.date, mixId: mix.mixId, verdict: reasons.length > 0 ? "hold" : "no-hold-by-heat", reasons };
    }),
  );
}
