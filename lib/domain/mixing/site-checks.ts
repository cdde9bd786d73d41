import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { ended } from "#domain/foundation/full-stop";
import { listWords } from "#domain/foundation/list-words";
import { citationOfUse, type LabelFacts, type LabelUse } from "#domain/label/label-facts";
import { notReadOnLabel } from "#domain/label/not-read";
import { DEFAULT_SPRAY_WEATHER_SETTINGS, limitsAskedOf, stated, type WeatherLimits } from "#domain/weather/spray-limits";
import { isSprayed, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * What only the crew sees on the day: wind and rain at the site against a label's limits, and what blooms there. A limit
 * that nobody has read holds; one that is stated is a note which the crew holds against the day, because no forecast of a
 * day's high says anything of it. The hours of a day with a forecast are judged elsewhere, hour by hour.
 */
export function checkSite({ treatments, lawns }: TicketQuestion): readonly Finding[] {
  return treatments.flatMap((treatment) => [
    ...checkWeatherRead(treatment),
    ...weatherOfDay(treatment),
    ...checkBloom(treatment, lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId))),
  ]);
}

/** The limits of the day that are not about its heat, with their words. */
const LIMITS_OF_DAY = {
  lowestWind: "the lowest wind",
  highestWind: "the highest wind",
  rainfast: "how long it must stay without rain",
  lowestTemperature: "the lowest temperature",
  heavyRain: "rain that would wash it away",
  soil: "on which soil it must not go",
} as const satisfies Partial<Record<keyof WeatherLimits, string>>;

const NAMES_OF_LIMITS = Object.keys(LIMITS_OF_DAY) as readonly (keyof typeof LIMITS_OF_DAY)[];

/** The limits that were not read and are asked of it: of what is spread neither wind nor a time without rain, as in {@link limitsAskedOf}. */
function checkWeatherRead(treatment: TicketTreatment): readonly Finding[] {
  const { label, use } = treatment;
  const asked = limitsAskedOf(use.weather, isSprayed(treatment) ? "spray" : "granular");
  const unread = NAMES_OF_LIMITS.filter((limit) => asked[limit] === "unknown").map((limit) => LIMITS_OF_DAY[limit]);
  if (unread.length === 0) return [];
  return [notReadOnLabel("weather-limits-not-read", label.productName, "what the weather must be", { figure: `Nobody has read ${listWords(unread)}.` })];
}

/** The stated limits in words, in the order in which a crew looks: thermometer, wind, rain. Sprays have the company's wind besides. */
function limitsInWords(treatment: TicketTreatment): readonly string[] {
  const { weather } = treatment.use;
  const cold = stated(weather.lowestTemperature).map(({ limitF, reaching }) => `${reaching === "allowed" ? "at least" : "above"} ${String(limitF)} °F`);
  const highestMph = [...stated(weather.highestWind), ...(isSprayed(treatment) ? [DEFAULT_SPRAY_WEATHER_SETTINGS.highestWind] : [])].map(({ limitMph }) => limitMph);
  const most = highestMph.length === 0 ? [] : [`wind at most ${String(Math.min(...highestMph))} mph`];
  const least = stated(weather.lowestWind).map(({ limitMph }) => `wind at least ${String(limitMph)} mph`);
  return [...cold, ...most, ...least, ...rainInWords(weather)];
}

function rainInWords(weather: WeatherLimits): readonly string[] {
  return [
    ...stated(weather.rainfast).map(({ minutes }) => (minutes % 60 === 0 ? `no rain for ${String(minutes / 60)} h after` : `no rain for ${String(minutes)} min after`)),
    ...stated(weather.heavyRain).map(({ inches, withinHours }) => `under ${String(inches)} in of rain within ${String(withinHours)} h`),
  ];
}

function weatherOfDay(treatment: TicketTreatment): readonly Finding[] {
  const words = limitsInWords(treatment);
  if (words.length === 0) return [];
  const { label, use } = treatment;
  const isLabel = [use.weather.lowestTemperature, use.weather.highestWind, use.weather.lowestWind, use.weather.rainfast, use.weather.heavyRain].some((limit) => typeof limit === "object");
  return [
    note({
      rule: "look-at-the-weather",
      source: isLabel ? "label" : "common-practice",
      what: `Look at wind and rain at the site before ${label.productName} goes down.`,
      figure: `It wants ${listWords(words)}.`,
      toDo: "Write down what the instrument shows; a station's reading is none of the site.",
      citation: isLabel ? citationOfUse(label.productName, use.useName) : DEFAULT_SPRAY_WEATHER_SETTINGS.highestWind.source,
      about: [label.productName],
    }),
  ];
}

/** What the check of flowers asks of a lawn. */
export type LawnInBloom = Pick<TicketLawn, "name" | "inBloom" | "bloomSeen">;

/** The form on which the crew writes down what it saw, as screens call it. */
export const LOOK_FORM = "Look at the lawns";

/** The rules that flowers make: a look answers them, and a record asks them anew by its own day. */
export const OF_FLOWERS: ReadonlySet<string> = new Set(["in-bloom", "bloom-not-looked-at"]);

/**
 * Whether flowers keep a product off some lawns. Pesticides alone are asked about bees. What blooms is seen at the gate,
 * so that not knowing it wants care and does not hold.
 */
export function checkBloom({ label, use }: { readonly label: LabelFacts; readonly use: Pick<LabelUse, "bloomAndBees" | "useName"> }, lawns: readonly LawnInBloom[]): readonly Finding[] {
  const { bloomAndBees } = use;
  if (bloomAndBees === "none") return [];
  const words = { source: "label", citation: citationOfUse(label.productName, use.useName) } as const;
  if (bloomAndBees === "unknown") {
    if (label.epaRegistrationNumber === "none") return [];
    return [notReadOnLabel("bloom-and-bees-not-read", label.productName, "what it says about bees and flowers", { citation: words.citation })];
  }
  return lawns.flatMap((lawn): readonly Finding[] => {
    if (lawn.inBloom === "no") return [];
    const labelSays = `The label: ${bloomAndBees.labelWords}`;
    const figures = { figure: lawn.bloomSeen === null ? labelSays : `${ended(labelSays)} ${lawn.bloomSeen}`, about: [label.productName, lawn.name] };
    if (lawn.inBloom === "yes") {
      return [
        hold("nobody", {
          ...words,
          ...figures,
          rule: "in-bloom",
          what: `${lawn.name} is in bloom, and ${label.productName} may not go on it.`,
          toDo: `Mow the flowers off first and write it down under "${LOOK_FORM}", or move the visit.`,
        }),
      ];
    }
    return [
      takeCare({
        ...words,
        ...figures,
        rule: "bloom-not-looked-at",
        what: `Whether anything blooms on ${lawn.name} is not known, and ${label.productName} may not go on flowers.`,
        toDo: `Look before it goes down and write it down under "${LOOK_FORM}"; mow the flowers off first.`,
      }),
    ];
  });
}
