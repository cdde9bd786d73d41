// Limits that pages advise for sprays and that labels print, read by the label's readers and held against hours, days and
// aftercare.
import { expect } from "vitest";
import { readReachBack, readUntils } from "#domain/label/label-time";
import { readHeavyRain, readRainfast, readTemperature, readTemperatureAhead, readWind } from "#domain/label/label-weather";
import { readWateringIn } from "#domain/label/label-water";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { careInHeat } from "#domain/mixing/heat-care";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { toNumber } from "#domain/quantities/rational";
import { judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { VARIABLE_BELOW_WIND_MPH, DEFAULT_SPRAY_WEATHER_SETTINGS, type WeatherLimits } from "#domain/weather/spray-limits";
import { judgeSprayDay } from "#domain/weather/spray-hours";
import { type WeatherHour } from "#domain/weather/spray-reasons";
import { aftercareQuestion, appliedOf, labelOf, rowOf, says } from "../../support/aftercare-builders";
import { day, readAs, valueOf } from "../../support/domain-answers";
import { releasing, slow } from "../../support/feeds";
import { type PublishedStatement } from "../../support/published-check";
import { fairHours, label, mixOf, questionOf } from "../../support/spray-builders";
import { IRON, QUESTION } from "../../support/ticket";

const ON = day("2026-05-01");
const NOON = 12;

/** How the hour from noon is judged for a product with these limits, on a fair day that is changed from then on. */
function atNoon(limits: Partial<WeatherLimits>, change: (index: number) => Partial<WeatherHour>): string | undefined {
  const [mix] = valueOf(judgeSprayDay(questionOf(ON, { mixes: [mixOf(limits)], hours: fairHours(ON, "America/New_York", change) })));
  return mix?.hours.at(NOON)?.verdict;
}

/** Whether a day with this high, and these on the days after, holds for a product with these limits. */
function dayHolds(limits: Partial<WeatherLimits>, forecastHighF: number, ...followingHighsF: number[]): boolean {
  const [judged] = valueOf(judgeDayByForecastHigh({ date: ON, forecastHighF, followingHighsF }, [mixOf(limits)]));
  return judged?.verdict === "hold";
}

const IOWA = "Iowa State Ext., https://hortnews.extension.iastate.edu/faq/what-proper-way-apply-broadleaf-herbicides-lawn";
const broadleaf = {
  highestWind: { ...readAs(readWind("5 mph", "highest")), ...label },
  rainfast: { ...readAs(readRainfast("24 hours")), ...label },
  highestTemperatureAhead: { ...readAs(readTemperatureAhead("not above 85 °F within 24 hours")), ...label },
} satisfies Partial<WeatherLimits>;

const ofBroadleaf: readonly PublishedStatement[] = [
  {
    row: "spray-window.10",
    says: "a broadleaf herbicide is not sprayed above 5 mph",
    source: IOWA,
    status: "seen",
    holds: () => expect([5, 5.1].map((windMph) => atNoon({ highestWind: broadleaf.highestWind }, () => ({ windMph, gustMph: windMph })))).toEqual(["open", "closed"]),
  },
  {
    row: "spray-window.10",
    says: "nor where more than 85 °F come within 24 h, by the hour and by the highs of the day and the next",
    source: IOWA,
    status: "seen",
    holds: () => {
      const { highestTemperatureAhead } = broadleaf;
      const inHours = (after: number, temperatureF: number) => atNoon({ highestTemperatureAhead }, (index) => (index === NOON + after ? { temperatureF } : {}));
      expect([inHours(20, 85), inHours(20, 86), inHours(30, 86)]).toEqual(["open", "closed", "open"]);
      expect([dayHolds({ highestTemperatureAhead }, 80, 84), dayHolds({ highestTemperatureAhead }, 80, 86), dayHolds({ highestTemperatureAhead }, 86, 80)]).toEqual([false, true, true]);
    },
  },
  {
    row: "spray-window.10",
    says: "nor where it rains within 24 h",
    source: IOWA,
    status: "seen",
    holds: () => {
      const rainAfter = (after: number) => atNoon({ rainfast: broadleaf.rainfast }, (index) => (index === NOON + after ? { rainInches: 0.1 } : {}));
      expect([rainAfter(1), rainAfter(24), rainAfter(30)]).toEqual(["closed", "closed", "open"]);
    },
  },
  {
    row: "spray-window.10",
    says: "not mowed in the 2 days before and the 3 after",
    source: IOWA,
    status: "seen",
    holds: () => {
      const before = says("mowing-before", { within: readAs(readReachBack("2 days")) });
      const after = says("mowing-after", { untilLaterOf: readAs(readUntils("3 days")) });
      // The work of the builder is on May 1, 2026 from 3 to 4 pm in Chicago.
      const { steps } = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(labelOf("Weedaway", { ...before, ...after }))])));
      expect(rowOf(steps, "mowing")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-04T21:00"]]);
    },
  },
];

const volatile = { highestTemperature: { ...readAs(readTemperature("under 85 °F", "highest")), ...label } } satisfies Partial<WeatherLimits>;
const ninety = { highestTemperature: { ...readAs(readTemperature("not above 90 °F", "highest")), ...label } } satisfies Partial<WeatherLimits>;
const postEmergence = {
  lowestTemperature: { ...readAs(readTemperature("at least 65 °F", "lowest")), ...label },
  highestTemperature: { ...readAs(readTemperature("up to 85 °F", "highest")), ...label },
} satisfies Partial<WeatherLimits>;
const hoursOf = (limits: Partial<WeatherLimits>, ...temperatures: number[]) => temperatures.map((temperatureF) => atNoon(limits, () => ({ temperatureF })));

const NEBRASKA = "Nebraska Ext. MG 15 Sep 2023 (chadronradio.com)";
const ofHeat: readonly PublishedStatement[] = [
  {
    row: "weather-limits.2",
    says: "2,4-D and dicamba: a day of which 85 °F is forecast holds, and by the hour they go as soon as it falls below",
    source: "Kent Co. Coop. Ext. (Delaware) 24 May 2008, http://kentcoopextension.blogspot.com/2008/05/",
    status: "seen",
    holds: () => {
      expect([dayHolds(volatile, 84), dayHolds(volatile, 85)]).toEqual([false, true]);
      expect(hoursOf(volatile, 84, 85)).toEqual(["open", "closed"]);
    },
  },
  {
    row: "weather-limits.1",
    says: "2,4-D and dicamba: not above 85 °F, and with a wind of 2 to 10 mph",
    source: "Univ. of Delaware (VanGessel) via Rutgers, https://cumberland.njaes.rutgers.edu/2026/05/29/herbicide-drift-and-temperature/",
    status: "seen",
    holds: () => {
      const limits = {
        highestTemperature: { ...readAs(readTemperature("not above 85 °F", "highest")), ...label },
        lowestWind: { ...readAs(readWind("at least 2 mph", "lowest")), ...label },
        highestWind: { ...readAs(readWind("10 mph", "highest")), ...label },
      };
      expect(hoursOf(limits, 85, 86)).toEqual(["open", "closed"]);
      expect([1.9, 10, 10.1].map((windMph) => atNoon(limits, () => ({ windMph, gustMph: windMph, sky: "cloudy" })))).toEqual(["closed", "open", "closed"]);
    },
  },
  {
    row: "spray-window.11",
    says: "\"do not apply above 90 °F\" leaves 90 itself by the hour; a day whose high alone is known holds from 90 on",
    source: "McCullough, UGA, https://ugaurbanag.com/?p=3524",
    status: "seen",
    holds: () => {
      expect(hoursOf(ninety, 90, 91)).toEqual(["open", "closed"]);
      expect([dayHolds(ninety, 89), dayHolds(ninety, 90)]).toEqual([false, true]);
    },
  },
  {
    row: "weather-limits.3",
    says: "herbicides after emergence: open from 65 to 85 °F",
    source: "NDSU, https://www.ndsu.edu/agriculture/ag-hub/ag-topics/crop-production/diseases-pests-and-weeds/weeds/temperature-and-herbicide",
    status: "seen",
    holds: () => expect(hoursOf(postEmergence, 64, 65, 85, 86)).toEqual(["closed", "open", "open", "closed"]),
  },
  {
    row: "spray-window.9",
    says: "wind of 3 to 10 mph: below, its direction can't be relied on; above, nothing is sprayed",
    source: NEBRASKA,
    status: "seen",
    holds: () => {
      expect([VARIABLE_BELOW_WIND_MPH, DEFAULT_SPRAY_WEATHER_SETTINGS.highestWind.limitMph]).toEqual([3, 10]);
      expect([10, 10.1].map((windMph) => atNoon({}, () => ({ windMph, gustMph: windMph })))).toEqual(["open", "closed"]);
    },
  },
  {
    row: "spray-window.9",
    says: "80 to 90 °F, entered as a label's limits: open from 80 to 90",
    source: NEBRASKA,
    status: "seen",
    holds: () => {
      const limits = {
        lowestTemperature: { ...readAs(readTemperature("at least 80 °F", "lowest")), ...label },
        highestTemperature: { ...readAs(readTemperature("up to 90 °F", "highest")), ...label },
      };
      expect(hoursOf(limits, 79.9, 80, 90, 90.1)).toEqual(["closed", "open", "open", "closed"]);
    },
  },
  {
    row: "spray-window.8",
    says: "wind of 3 to 8 mph, entered as a label's limits: open from 3 to 8",
    source: "National Pesticide Stewardship",
    status: "seen",
    holds: () => {
      const limits = { lowestWind: { ...readAs(readWind("at least 3 mph", "lowest")), ...label }, highestWind: { ...readAs(readWind("8 mph", "highest")), ...label } };
      expect([2.9, 3, 8, 8.1].map((windMph) => atNoon(limits, () => ({ windMph, gustMph: windMph })))).toEqual(["closed", "open", "open", "closed"]);
    },
  },
];

const FLORIDA = "UF/IFAS NW District, August 26, 2021, https://nwdistrict.ifas.ufl.edu/hort/2021/08/26/timing-is-everything-when-controlling-lawn-weeds/";
/** The usual words of a lawn label, figure by figure; its wind is the company's own start, held with the spray's weather. */
const ofUsualLabel: readonly PublishedStatement[] = [
  {
    row: "weather-limits.4",
    says: "not above 90 °F, and on St. Augustinegrass not above 85 °F",
    source: FLORIDA,
    status: "seen",
    holds: () => {
      const notAbove = (degrees: string) => ({ highestTemperature: { ...readAs(readTemperature(`not above ${degrees} °F`, "highest")), ...label } });
      expect([hoursOf(notAbove("90"), 90, 90.1), hoursOf(notAbove("85"), 85, 85.1)]).toEqual([["open", "closed"], ["open", "closed"]]);
    },
  },
  {
    row: "weather-limits.4",
    says: "a wind of 10 mph or less",
    source: FLORIDA,
    status: "seen",
    holds: () => {
      const highestWind = { ...readAs(readWind("10 mph or less", "highest")), ...label };
      expect([10, 10.1].map((windMph) => atNoon({ highestWind }, () => ({ windMph, gustMph: windMph })))).toEqual(["open", "closed"]);
    },
  },
  {
    row: "weather-limits.4",
    says: "no rain forecast for 24 h",
    source: FLORIDA,
    status: "seen",
    holds: () => {
      const rainfast = { ...readAs(readRainfast("24 hours")), ...label };
      expect([24, 25].map((after) => atNoon({ rainfast }, (index) => (index === NOON + after ? { rainInches: 0.1 } : {})))).toEqual(["closed", "open"]);
    },
  },
  {
    row: "weather-limits.4",
    says: "no watering for 12 h",
    source: FLORIDA,
    status: "seen",
    holds: () => {
      const dry = says("watering-not-before", { untilLaterOf: readAs(readUntils("12 hours")) });
      // The work of the builder ends on May 1, 2026 at 4 pm in Chicago.
      const { steps } = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(labelOf("Weedaway", dry))])));
      expect(rowOf(steps, "watering")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-02T09:00"]]);
    },
  },
];

/** Whether feed or iron is for care on cool-season turf on a day with this high and cool days after. */
function wantsCare(treatment: TicketTreatment, forecastHighF: number): boolean {
  return careInHeat({ ...QUESTION, on: ON, treatments: [treatment] }, { date: ON, forecastHighF, followingHighsF: [60, 60, 60] }).length > 0;
}

const ofFeed: readonly PublishedStatement[] = [
  {
    row: "spray-window.12",
    says: "quick nitrogen is for care at 86 °F, slow nitrogen is not",
    source: "Purdue AY-22, https://www.agry.purdue.edu/turfnew/pubs/ay22.htm",
    status: "seen",
    holds: () => expect([wantsCare(releasing(slow("0")), 86), wantsCare(releasing(slow("100")), 86)]).toEqual([true, false]),
  },
  {
    row: "weather-limits.8",
    says: "foliar iron goes at 60 to 70 °F and is for care from 80 on",
    source: "a sulfate supplier's page only; common practice",
    status: "memory",
    holds: () => expect([60, 70, 79, 80].map((high) => wantsCare(IRON, high))).toEqual([false, false, false, true]),
  },
];

const MISSOURI = "Univ. of Missouri (Warmund) 28 Mar 2018, https://ipm.missouri.edu/meg/2018/3/rainfastness_pesticides/";
const ofRain: PublishedStatement = {
  row: "weather-limits.9",
  says: "1 in of rain within 24 h leaves many products at work, 2 in call for another",
  source: MISSOURI,
  status: "seen",
  holds: () => {
    const heavyRain = { ...readAs(readHeavyRain("2 in within 24 hours")), ...label };
    const rained = (inches: number) => atNoon({ heavyRain }, (index) => (index === NOON + 6 || index === NOON + 9 ? { rainInches: inches / 2 } : {}));
    expect([rained(1), rained(2)]).toEqual(["open", "closed"]);
  },
};

/** Depths to water in, as pages have them, in the words of a label: least and most in inches. */
const ofDepths = (
  [
    ["water.37", "lawn fertilizer, with a quarter inch at most", "0.1 to 0.25 in", 0.1, 0.25, "Suffolk Co.", "seen"],
    ["water.38", "winterizer", "1/8 to 1/4 in", 0.125, 0.25, "Illinois", "seen"],
    ["water.39", "grub insecticides and pre-emergents", "0.5 in", 0.5, undefined, "from memory", "memory"],
    ["weather-limits.14", "pre-emergent", "1/4 to 1/2 in", 0.25, 0.5, "Junction City (Kansas) Union 12 Mar 2022, column, author not shown", "seen"],
    ["weather-limits.16", "granular nitrogen", "1/2 in", 0.5, undefined, "http://akingpm.com/article_5bb48f5e-5b29-11ef-8a95-c73783b69a07.html", "seen"],
  ] as const
).map(([row, what, words, least, most, source, status]): PublishedStatement => ({
  row,
  says: `watering in ${what}: ${words}`,
  source,
  status,
  holds: () => {
    const { depth } = readAs(readWateringIn(words));
    if (depth === "not-stated") throw new Error("the depth is written");
    const inches = [depth.least, depth.most].map((length) => (length === "none" ? undefined : toNumber(measureInUnit(length, "in"))));
    expect(inches).toEqual([least, most]);
  },
}));

export const LABEL_LIMIT_CHECKS: readonly PublishedStatement[] = [...ofBroadleaf, ...ofHeat, ...ofUsualLabel, ...ofFeed, ofRain, ...ofDepths];
