import { addDays, type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { type UsState, US_STATES } from "#domain/company/us-state";
import { type LawnSeeding, newLawns } from "#domain/properties/lawn-seeding";
import { type Grade } from "#domain/turf/nutrients";
import { NOT_ON_FILE, type PackFact, type PhosphorusRule, RULE_WORDS, type RuleName, type RulePack } from "#domain/rules/rule-pack";

/** What a laboratory said of a lawn's phosphorus, and when the sample was taken. */
export interface SoilTestFact {
  readonly sampledOn: CalendarDate;
  readonly phosphorus: "deficient" | "sufficient" | "not-tested";
}

/** A lawn, as far as nutrient law asks about it. */
export interface LawnUnderLaw {
  readonly name: string;
  readonly soilTests: readonly SoilTestFact[];
  /** Seed and sod, done and planned. Only a new lawn that was made is one to the law. */
  readonly seedings: readonly LawnSeeding[];
}

/** A product, as far as nutrient law asks about it. "unknown": nobody has read the analysis. */
export interface ProductUnderLaw {
  readonly name: string;
  readonly grade: Grade | "none" | "unknown";
}

/** A product and the lawns on which it goes down: what the law asks of one lawn it does not ask of another. */
export interface ProductOnLawns extends ProductUnderLaw {
  readonly lawns: readonly LawnUnderLaw[];
}

/** What a state's law on fertilizers is asked about. */
export interface NutrientLawQuestion {
  readonly state: UsState;
  readonly pack: RulePack | undefined;
  readonly on: CalendarDate;
  readonly products: readonly ProductOnLawns[];
  /** Whether the ground is frozen or saturated; the crew sees it on the day. */
  readonly frozenOrSaturated: "yes" | "no" | "not-looked-at";
}

/** The rules that ask about fertilizer, whatever its grade. */
const FERTILIZER_RULES: readonly RuleName[] = [
  "phosphorus",
  "phosphate-per-application",
  "phosphate-per-year",
  "distance-to-water",
  "frozen-or-saturated-ground",
  "hard-surfaces",
  "nitrogen-per-application",
  "quick-nitrogen-per-application",
  "nitrogen-per-year",
  "slow-release-share",
  "blackout-dates",
];

/** True for a product that brings nutrients. One whose analysis nobody has read is taken for a fertilizer. */
export function isFertilizer({ grade }: ProductUnderLaw): boolean {
  return grade !== "none";
}

/**
 * What the law on file says to fertilizers on these lawns on that day. A rule that nobody read says so and points to
 * where to look; a state without a pack says so of all of them.
 */
export function checkNutrientLaw(question: NutrientLawQuestion): readonly Finding[] {
  const fertilizers = question.products.filter(isFertilizer);
  if (fertilizers.length === 0) return [];
  const facts = question.pack?.facts;
  return [
    ...fertilizers.flatMap((product) => checkPhosphorus(product, question)),
    ...checkGround(fertilizers, question),
    ...checkBlackout(fertilizers, question),
    ...(facts?.["hard-surfaces"].onFile === true ? [hardSurfaces(fertilizers, facts["hard-surfaces"].citation)] : []),
    ...notOnFile(fertilizers, question),
  ];
}

function namesOf(products: readonly ProductUnderLaw[]): readonly string[] {
  return [...new Set(products.map(({ name }) => name))];
}

function checkPhosphorus(product: ProductOnLawns, question: NutrientLawQuestion): readonly Finding[] {
  const rule = question.pack?.facts.phosphorus;
  if (rule?.onFile !== true || product.grade === "none") return [];
  if (product.grade === "unknown") {
    return [
      hold("office", {
        rule: "analysis-not-read",
        source: "house",
        what: `The analysis of ${product.name} is not on file.`,
        toDo: "Enter the three numbers from the bag; whether it has phosphate decides what the law asks.",
        about: [product.name],
      }),
    ];
  }
  if (product.grade.phosphatePercent.numerator === 0n) return [];
  return product.lawns.flatMap((lawn) => judgePhosphorus(product, lawn, question.on, rule));
}

function judgePhosphorus(
  product: ProductUnderLaw,
  lawn: LawnUnderLaw,
  on: CalendarDate,
  rule: Extract<PackFact<PhosphorusRule>, { onFile: true }>,
): readonly Finding[] {
  const { testWithinMonths, newLawnGrowingSeasons } = rule.value;
  const asNew = newLawns(lawn.seedings).filter(({ date }) => isInItsTime(date, on, newLawnGrowingSeasons));
  if (asNew.some(({ standing }) => standing === "done")) return [];
  const latest = latestOnPhosphorus(lawn.soilTests.filter(({ sampledOn }) => sampledOn <= on && monthsBefore(on, testWithinMonths) <= sampledOn));
  if (latest?.phosphorus === "deficient") return [];
  const figure =
    latest === undefined
      ? `No soil test of the last ${testWithinMonths} months shows a need on ${lawn.name}.`
      : `The soil test of ${formatShortDate(latest.sampledOn)} shows enough phosphorus on ${lawn.name}.`;
  return [
    hold("license-holder", {
      rule: "phosphorus-without-need",
      source: "law",
      what: `${product.name} has phosphate, and the law asks for a test that shows a need.`,
      figure,
      toDo: `Take a product without phosphate, or test the soil first.${asNew[0] === undefined ? "" : ` ${lawn.name} is planned as a new lawn for ${formatShortDate(asNew[0].date)}: that counts once it is entered as done.`}`,
      citation: rule.citation,
      about: [product.name, lawn.name],
    }),
  ];
}

/** Of the tests that looked at phosphorus the latest; of two of one day the one that shows no need. */
function latestOnPhosphorus(tests: readonly SoilTestFact[]): SoilTestFact | undefined {
  return tests
    .filter(({ phosphorus }) => phosphorus !== "not-tested")
    .reduce<SoilTestFact | undefined>((latest, test) => {
      if (latest === undefined || test.sampledOn > latest.sampledOn) return test;
      return test.sampledOn === latest.sampledOn && test.phosphorus === "sufficient" ? test : latest;
    }, undefined);
}

/** Growing seasons are counted by calendar year, the year of seeding or sodding the first: a reading of the house. */
function isInItsTime(made: CalendarDate, on: CalendarDate, seasons: number): boolean {
  const age = Number(on.slice(0, 4)) - Number(made.slice(0, 4));
  return made <= on && age < seasons;
}

/** The day so many months before another; a day that the month does not have is its last. */
export function monthsBefore(date: CalendarDate, months: number): CalendarDate {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  const index = year * 12 + (month - 1) - months;
  const lastDay = Number(addDays(firstOfMonth(index + 1), -1).slice(8));
  return addDays(firstOfMonth(index), Math.min(day, lastDay) - 1);
}

/** The first day of a month that is counted from January of the year 0. */
function firstOfMonth(index: number): CalendarDate {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${String(Math.floor(index / 12))}-${two((index % 12) + 1)}-01` as CalendarDate;
}

function checkGround(fertilizers: readonly ProductUnderLaw[], question: NutrientLawQuestion): readonly Finding[] {
  const rule = question.pack?.facts["frozen-or-saturated-ground"];
  if (rule?.onFile !== true || question.frozenOrSaturated === "no") return [];
  if (question.frozenOrSaturated === "yes") {
    return [
      hold("office", {
        rule: "frozen-or-saturated-ground",
        source: "law",
        what: "The ground is frozen or saturated.",
        figure: "No fertilizer goes on such ground.",
        toDo: "Move the visit to another day.",
        citation: rule.citation,
        about: namesOf(fertilizers),
      }),
    ];
  }
  return [
    note({
      rule: "look-at-the-ground",
      source: "law",
      what: "Look at the ground first: no fertilizer on frozen or saturated ground.",
      citation: rule.citation,
      about: namesOf(fertilizers),
    }),
  ];
}

/** Days of the year on which the law lets no fertilizer down, whose end may be in the next year. */
function checkBlackout(fertilizers: readonly ProductUnderLaw[], { pack, on }: NutrientLawQuestion): readonly Finding[] {
  const rule = pack?.facts["blackout-dates"];
  if (rule?.onFile !== true) return [];
  const day = on.slice(5);
  const found = rule.value.find(({ from, until }) => (from <= until ? from <= day && day <= until : from <= day || day <= until));
  if (found === undefined) return [];
  return [
    hold("license-holder", {
      rule: "blackout-dates",
      source: "law",
      what: "On this day of the year no fertilizer may go down.",
      figure: `The law's days are from ${found.from} to ${found.until}, month and day.`,
      toDo: "Move the visit to another day.",
      citation: rule.citation,
      about: namesOf(fertilizers),
    }),
  ];
}

function hardSurfaces(fertilizers: readonly ProductUnderLaw[], citation: string): Finding {
  return note({
    rule: "hard-surfaces",
    source: "law",
    what: "Blow or sweep what falls on walks, drives and the street back onto the lawn at once.",
    citation,
    about: namesOf(fertilizers),
  });
}

function notOnFile(fertilizers: readonly ProductUnderLaw[], { pack, state }: NutrientLawQuestion): readonly Finding[] {
  const missing = FERTILIZER_RULES.filter((rule) => pack?.facts[rule].onFile !== true);
  if (missing.length === 0) return [];
  return [
    takeCare({
      rule: "nutrient-law-not-on-file",
      source: "law",
      what: `${US_STATES[state].name}: ${NOT_ON_FILE}.`,
      figure: `No text was read on ${missing.map((rule) => RULE_WORDS[rule]).join(", ")}.`,
      toDo: "Ask the state's lead agency, and the county and town, before you rely on this ticket.",
      about: namesOf(fertilizers),
    }),
  ];
}
