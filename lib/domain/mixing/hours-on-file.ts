import { namedClockWords } from "#domain/foundation/clock-words";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { type WateringDays, type WateringHours, type WateringPeriods, wateringPeriods } from "#domain/mixing/watering-hours";
import { oddOrEven } from "#domain/properties/watering-dates";
import { passesMidnight, type PastMidnight, type TownRule, type WateringDaysOnFile, type WateringFact, type WateringOfProperty, type WateringOnFile, WHOLE_DAY } from "#domain/properties/watering-fact";
import { type Authority, type OnFile } from "#domain/weather/spray-limits";

/** A property with when water may run there, as it is on file; its street has the house number that a rule may go by. */
export interface WateringAtProperty extends WateringOfProperty {
  readonly street: string;
}

const WEEK_DAYS = 7;
const EVERY_DAY: WateringDays = { weekdays: [0, 1, 2, 3, 4, 5, 6] };
const TOWN_RULE: Authority = { basis: "law", source: "the town's watering rule, as it is on file for the property" };
const CONTROLLER: Authority = { basis: "house", source: "the controller's days and hours, as they are on file for the property" };

/**
 * The hours in which a property may be watered: by the town's rule, which is law, and by its controller, which is only set so.
 * What is not on file leaves every hour or every day; {@link hoursMissing} says what that is.
 */
export function hoursOnFile({ townRule, controller, street }: WateringAtProperty): WateringHours {
  return {
    localRules: limited(townRule, street, pastMidnightOf(townRule), TOWN_RULE),
    controller: limited(controller, street, "next-morning", CONTROLLER),
  };
}

function limited(fact: WateringFact, street: string, pastMidnight: PastMidnight | "not-said", authority: Authority): OnFile<WateringPeriods> {
  if (fact === "none" || fact === "unknown") return "none";
  const { fromMinute, untilMinute } = fact.hours ?? WHOLE_DAY;
  return { periods: wateringPeriods(daysOf(fact.days, street) ?? EVERY_DAY, { fromMinuteOfDay: fromMinute, untilMinuteOfDay: untilMinute }, pastMidnight), ...authority };
}

function pastMidnightOf(townRule: TownRule): PastMidnight | "not-said" {
  return (typeof townRule === "object" ? townRule.hours?.pastMidnight : undefined) ?? "not-said";
}

/** Undefined where no days are on file, or where they go by a house number that the street does not have. */
function daysOf(days: WateringDaysOnFile | null, street: string): WateringDays | undefined {
  if (days === null) return undefined;
  if ("weekdays" in days) return { weekdays: days.weekdays.map((weekday) => weekday % WEEK_DAYS) };
  const datesOfMonth = oddOrEven(days.dates, street);
  return datesOfMonth === undefined ? undefined : { datesOfMonth };
}

/**
 * Says what of the two facts is not on file, and what is taken in its place: each that nobody has said anything of, both in
 * one where that is both, the missing half of each that is on file by halves, and of which morning the town's hours past
 * midnight are.
 */
export function hoursMissing({ townRule, controller, street }: WateringAtProperty): readonly Finding[] {
  if (townRule === "unknown" && controller === "unknown") {
    return [
      takeCare({
        rule: "watering-hours-not-on-file",
        source: "law",
        what: "When this property may be watered is not on file, neither the town's rule nor the controller's days and hours.",
        figure: "Every hour is taken as allowed.",
        toDo: "Look up the town's rule, ask for the controller's days and hours, and enter them, or that there are none.",
        about: [street],
      }),
    ];
  }
  return [...missingOf(townRule, street, TOWN_WORDS), ...morningMissing(townRule, street), ...missingOf(controller, street, CONTROLLER_WORDS)];
}

interface FactWords {
  readonly rule: string;
  readonly source: Authority["basis"];
  readonly name: string;
  /** What is said where nobody has said anything of it, and what to do then. */
  readonly unknown: { readonly what: string; readonly toDo: string };
  /** How a missing half is found out: "Look up the days". */
  readonly findOut: string;
}

const TOWN_WORDS: FactWords = {
  rule: "watering-hours-of-town",
  source: "law",
  name: "The town's watering rule",
  unknown: { what: "The town's watering rule is not on file.", toDo: "Look it up and enter it, or that there is none." },
  findOut: "Look up",
};

const CONTROLLER_WORDS: FactWords = {
  rule: "watering-hours-of-controller",
  source: "house",
  name: "The controller",
  unknown: { what: "The controller's days and hours are not on file.", toDo: "Ask for them and enter them, or that there is no controller." },
  findOut: "Ask for",
};

function missingOf(fact: WateringFact, street: string, words: FactWords): readonly Finding[] {
  if (fact === "none") return [];
  const said = { source: words.source, about: [street] };
  if (fact !== "unknown") return halvesMissing(fact, street, words).map((half) => takeCare({ ...said, ...half }));
  const figure = words.source === "law" ? "Every hour of the controller is taken as allowed." : "Every hour that the town leaves is taken as allowed.";
  return [takeCare({ ...said, ...words.unknown, rule: `${words.rule}-not-on-file`, figure })];
}

/** What is missing of a fact of which only days or only hours are on file. */
function halvesMissing({ days, hours }: WateringOnFile, street: string, { rule, name, findOut }: FactWords) {
  const everyDay = { rule: `${rule}-without-days`, figure: "Every day is taken as allowed." };
  const daysMissing =
    days === null
      ? [{ ...everyDay, what: `${name} has its hours on file and not its days.`, toDo: `${findOut} the days and enter them, all seven where it is every day.` }]
      : daysOf(days, street) === undefined
        ? [{ ...everyDay, what: `${name} goes by the house number, and the street begins with none.`, toDo: "Choose odd or even dates for the property." }]
        : [];
  if (hours !== null) return daysMissing;
  const what = `${name} has its days on file and not its hours.`;
  const toDo = `${findOut} the hours and enter them, midnight to midnight where it is every hour.`;
  return [...daysMissing, { rule: `${rule}-without-hours`, figure: "Every hour of those days is taken as allowed.", what, toDo }];
}

/** Says that it is not on file which morning the town's hours past midnight are of, where its days are not all of the week. */
function morningMissing(townRule: TownRule, street: string): readonly Finding[] {
  if (typeof townRule !== "object" || townRule.hours === null || !passesMidnight(townRule.hours) || pastMidnightOf(townRule) !== "not-said") return [];
  const days = daysOf(townRule.days, street);
  if (days === undefined || ("weekdays" in days && days.weekdays.length === WEEK_DAYS)) return [];
  const { fromMinute, untilMinute } = townRule.hours;
  const hours = `${namedClockWords(fromMinute)} to ${namedClockWords(untilMinute)}`;
  return [
    takeCare({
      rule: "watering-hours-of-town-past-midnight",
      source: "law",
      what: `The town's watering rule has ${hours} on file, and not whether those are the early and late hours of the same day or run into the next morning.`,
      figure: "Only hours that are allowed either way are taken as allowed.",
      toDo: "Look up which it is and choose it for the property.",
      about: [street],
    }),
  ];
}
