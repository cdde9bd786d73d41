import { type Rational, toDecimalString } from "#domain/quantities/rational";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { formatRateRange, percentRangeWords } from "#domain/quantities/format-rate-range";
import { compareRates, type Rate } from "#domain/quantities/rate";
import { shareWords } from "#domain/quantities/share";
import { type Concentration } from "#domain/quantities/active-ingredient";
import { densityIn } from "#domain/quantities/density";
import { stated, type TemperatureLimit } from "#domain/weather/spray-limits";
import {
  AT_ONCE_MINUTES,
  type AwaitedState,
  type ConstraintOf,
  type DueReach,
  type Reach,
  type ReachAnchor,
  type ReachBack,
  type SignDownTrigger,
  statedConstraint,
  type Until,
} from "#domain/label/aftercare-constraint";
import { type KeptApart, type LabelFacts, type LabelUse, type UseRate } from "#domain/label/label-facts";
import { limitsInWords } from "#domain/label/droplet-class";
import { type DistanceToWater } from "#domain/label/label-distance";
import { readKeptApartWords } from "#domain/label/kept-apart-words";
import { type GeneralField, type UseField } from "#domain/label/label-fields";
import { type MowingCount, mowedTimes } from "#domain/label/mowing-count";

function figure(value: Rational): string {
  return toDecimalString(value, 4, "nearest").replace(/\.?0+$/u, "");
}

function counted(count: number, unit: string): string {
  return `${String(count)} ${unit}${count === 1 ? "" : "s"}`;
}

function minutesInWords(minutes: number): string {
  return minutes % 60 === 0 ? counted(minutes / 60, "hour") : counted(minutes, "minute");
}

/** What customers and crews call what a label calls the application. */
type Work = "application" | "work";

function anchorWords(anchor: ReachAnchor, work: Work = "application"): string {
  return { "application-start": `the ${work} starts`, "application-end": `the ${work} ends`, posting: "the sign is up" }[anchor];
}

/** "2 days (48 hours)", or without the hours where nobody counts in them any more. */
function daysAndHours(days: number, unit: string): string {
  return days <= 7 ? `${counted(days, unit)} (${counted(days * 24, "hour")})` : counted(days, unit);
}

/** "12 hours after the application ends", "2 full days (48 hours) after the work ends". */
export function reachInWords(reach: Reach, work: Work = "application"): string {
  switch (reach.anchor) {
    case "days": {
      const from = reach.from === "not-said" ? "application-end" : reach.from;
      return `${daysAndHours(reach.days, "full day")} after ${anchorWords(from, work)}`;
    }
    case "calendar-day":
      return `${counted(reach.days, "day")} after the day of the ${work}`;
    case "calendar-month":
      return `${counted(reach.months, "month")} after the day of the ${work}`;
    case "application-start":
    case "application-end":
    case "posting":
      return `${minutesInWords(reach.durationMinutes)} after ${anchorWords(reach.anchor, work)}`;
  }
}

/** "by 2 days (48 hours) after the application starts": days that do not say from when are due by the earlier. */
function dueInWords(reach: DueReach): string {
  switch (reach.anchor) {
    case "at-once":
      return `at once, taken as within ${minutesInWords(AT_ONCE_MINUTES)} after the application ends`;
    case "days": {
      const from = reach.from === "not-said" ? "application-start" : reach.from;
      return `by ${daysAndHours(reach.days, "day")} after ${anchorWords(from)}`;
    }
    case "calendar-day":
      if (reach.days < 2) return `by the end of the day ${reach.days === 0 ? "of" : "following"} the application`;
      return `by the end of day ${String(reach.days)} after the application`;
    case "application-start":
    case "application-end":
    case "posting":
      return `by ${reachInWords(reach)}`;
  }
}

function backInWords(reach: ReachBack): string {
  if (reach.anchor === "application-start") return minutesInWords(reach.durationMinutes);
  return counted(reach.days, "whole day");
}

function seedUntilInWords(until: Reach | MowingCount): string {
  return until.anchor === "mowings" ? `it has been ${mowedTimes(until)}` : reachInWords(until);
}

const STATE_WORDS: Readonly<Record<AwaitedState, string>> = {
  dry: "it is dry",
  "dust-settled": "the dust has settled",
  "watered-in": "it is watered in",
  "watered-in-and-dry": "it is watered in and dry again",
};

function untilInWords(untils: readonly Until[]): string {
  const words = untils.map((until) => (until.anchor === "state" ? STATE_WORDS[until.state] : reachInWords(until)));
  return words.length > 1 ? `${words.join(" and ")}, whichever is later` : words.join("");
}

/** A range with its ends rounded inward where they can't be written whole, and as labels write it beside it. */
function rangeInWords<Basis extends UseRate["basis"] | "carrier-volume-per-area">(low: Rate<Basis>, high: Rate<Basis>): string {
  const { from, to, isExact, otherwise } = formatRateRange(low, high, "us");
  if (compareRates(low, high) === 0) return isExact ? `Exactly ${to}.` : otherwise === undefined ? `About ${to}.` : `Exactly ${otherwise}, about ${to}.`;
  return `From ${from} to ${to}.${otherwise === undefined ? "" : ` That is ${otherwise}.`}`;
}

/** The rates with the strength in percent by volume where that is one, and what the label says beside them. */
function ratesInWords({ rates, besideRates }: LabelUse): string {
  const said = [rangeInWords<UseRate["basis"]>(rates.low, rates.high)];
  if (rates.basis === "product-volume-per-spray-volume") {
    said.push(`That is ${percentRangeWords(rates.low, rates.high)} of the finished spray.`);
  } else if (rates.basis === "product-mass-per-spray-volume") said.push("That is in the finished spray.");
  if (besideRates?.mostOnArea !== undefined) said.push(`At most ${formatRate<UseRate["basis"]>(besideRates.mostOnArea, "us")} of ground.`);
  if (besideRates?.mostSpotShareBasisPoints !== undefined) said.push(`Only on spots, at most ${shareWords(besideRates.mostSpotShareBasisPoints)} of a lawn.`);
  if (besideRates?.isToWet === true) said.push("Sprayed to wet.");
  return said.join(" ");
}

function hottest({ limitF, reaching }: TemperatureLimit): string {
  const limit = `${String(limitF)} \u00B0F`;
  return reaching === "forbidden" ? `Only under ${limit}: ${limit} itself is too hot` : `Up to ${limit}, and ${limit} itself is allowed`;
}

function coldest({ limitF, reaching }: TemperatureLimit): string {
  const limit = `${String(limitF)} \u00B0F`;
  return reaching === "forbidden" ? `Only above ${limit}: ${limit} itself is too cold` : `From ${limit} up, and ${limit} itself is allowed`;
}

function wateringInWords({ by, depth, rain }: ConstraintOf<"watering-in">): string {
  const most = depth !== "not-stated" && depth.most !== "none" ? ` and at most ${formatQuantityIn(depth.most, "in")}` : "";
  const much = depth === "not-stated" ? "The label does not say how much" : `At least ${formatQuantityIn(depth.least, "in")} of water${most}`;
  const due = by === "not-stated" ? "and not by when" : dueInWords(by);
  const fromTheSky = { counts: "Rain counts.", "does-not-count": "Rain does not count.", "not-stated": "The label does not say whether rain counts." }[rain];
  return `${much}, ${due}. ${fromTheSky}`;
}

function downInWords(down: SignDownTrigger): string {
  const later = down.trigger !== "no-time-required" && down.orReentryIfLater ? ", or when people may come back, if that is later" : "";
  switch (down.trigger) {
    case "elapsed":
      return `${minutesInWords(down.durationMinutes)} after ${anchorWords(down.anchor)}${later}`;
    case "day-following":
      return `on the day following${later}`;
    case "days-after-completion":
      return `${daysAndHours(down.daysAfter, "full day")} after the work is done${later}`;
    case "sunset-of-day-following":
      return `at sunset of the day following${later}`;
    case "state":
      return `once ${STATE_WORDS[down.state]}${later}`;
    case "no-time-required":
      return "at any time";
  }
}

/** The aftercare of a use as it is understood. */
function aftercareSentences({ aftercare }: LabelUse): Partial<Record<UseField, string>> {
  const said = <Kind extends ConstraintOf<Parameters<typeof statedConstraint>[1]>["kind"]>(kind: Kind, say: (one: ConstraintOf<Kind>) => string) =>
    statedConstraint(aftercare, kind).map((one) => say(one))[0];
  const sentences: Partial<Record<UseField, string | undefined>> = {
    peopleAndPets: said("people-and-pets", ({ untilLaterOf }) => `Nobody on it until ${untilInWords(untilLaterOf)}.`),
    wateringNotBefore: said("watering-not-before", ({ untilLaterOf }) => `No water until ${untilInWords(untilLaterOf)}.`),
    wateringIn: said("watering-in", wateringInWords),
    rainThatSpoils: said("rain-that-spoils", ({ within, from }) =>
      `${from === "any" ? "Any rain" : `${formatQuantityIn(from, "in")} of rain or more`} up to ${reachInWords(within)} spoils it.`,
    ),
    leafAtApplication: said("leaf-at-application", ({ state }) => `It goes onto a ${state} leaf.`),
    soilAtApplication: said("soil-at-application", ({ state }) => `It goes onto ${state} soil.`),
    mowingBefore: said("mowing-before", ({ within }) => `Not mowed in the ${backInWords(within)} before.`),
    mowingAfter: said("mowing-after", ({ untilLaterOf }) => `Not mowed until ${untilInWords(untilLaterOf)}.`),
    seedingBefore: said("seeding-before", ({ within }) =>
      within.anchor === "mowings" ? `Not on new seed until it has been ${mowedTimes(within)}.` : `Not within ${backInWords(within)} after seeding.`,
    ),
    seedingAfter: said("seeding-after", ({ intervals }) =>
      intervals.map(({ method, until }) => `No ${method === "any" ? "" : `${method} `}seed until ${seedUntilInWords(until)}.`).join(" "),
    ),
    postingSign: said("posting-sign", ({ upBy, mayComeDown }) => `Up ${upBy.replaceAll("-", " ")}; down ${downInWords(mayComeDown)}.`),
  };
  return withoutUnsaid(sentences);
}

function withoutUnsaid<Field extends string>(sentences: Partial<Record<Field, string | undefined>>): Partial<Record<Field, string>> {
  return Object.fromEntries(Object.entries(sentences).filter(([, sentence]) => sentence !== undefined)) as Partial<Record<Field, string>>;
}

function distanceInWords({ withDeflector, otherwise }: DistanceToWater): string {
  const [shielded, open] = [formatQuantityIn(withDeflector, "ft"), formatQuantityIn(otherwise, "ft")];
  return shielded === open ? `At least ${open} clear of water.` : `At least ${open} clear of water; ${shielded} with a spreader that has a deflector.`;
}

const PERIOD_WORDS = { "calendar-year": "in a calendar year", "12-months": "in any 12 months", season: "in a season or year without dates, counted by calendar year" } as const;

/** What a use was understood to say, field by field: the facts that have a figure or a direction which could be misread. */
export function sentencesOfUse(use: LabelUse): Partial<Record<UseField, string>> {
  const { weather } = use;
  return withoutUnsaid<UseField>({
    rates: ratesInWords(use),
    carrier: stated(use.carrier).map(({ low, high }) => rangeInWords(low, high))[0],
    droplets: stated(use.droplets).map((limits) => `Droplets: ${limitsInWords(limits)}.`)[0],
    leastDaysBetween: stated(use.leastDaysBetween).map(({ days }) => `At least ${counted(days, "day")} from one application to the next.`)[0],
    mostApplications: stated(use.mostApplications).map(({ count, period }) => `At most ${counted(count, "application")} ${PERIOD_WORDS[period]}.`)[0],
    seasonLimits: stated(use.seasonLimits).map(({ limits }) =>
      limits
        .map(({ activeIngredient, most, period }) => `At most ${formatRate(most, "us")} of ${activeIngredient} ${PERIOD_WORDS[period]}.`)
        .join(" "),
    )[0],
    lowestTemperature: stated(weather.lowestTemperature).map((limit) => `${coldest(limit)}.`)[0],
    highestTemperature: stated(weather.highestTemperature).map((limit) => `${hottest(limit)}.`)[0],
    highestTemperatureAhead: stated(weather.highestTemperatureAhead).map((limit) => `${hottest(limit)}, for ${counted(limit.withinHours, "hour")} afterwards.`)[0],
    lowestWind: stated(weather.lowestWind).map(({ limitMph }) => `Not in wind under ${String(limitMph)} mph.`)[0],
    highestWind: stated(weather.highestWind).map(({ limitMph }) => `Not in wind above ${String(limitMph)} mph.`)[0],
    rainfast: stated(weather.rainfast).map(({ minutes }) => `No rain for ${minutesInWords(minutes)} after the application ends.`)[0],
    heavyRain: stated(weather.heavyRain).map(({ inches, withinHours }) => `Not with ${String(inches)} in of rain or more due within ${counted(withinHours, "hour")}.`)[0],
    soil: stated(weather.soil).map(({ closedWhen }) => `Not on soil that is ${closedWhen.join(" or ")}.`)[0],
    keptApart: stated(use.keptApart).map(({ from }) =>
      from.map((one) => (one.apart === "tank" ? `Not in one tank with ${meantBy(one)}.` : `Not on the same ground within ${counted(one.apart.days, "day")} of ${meantBy(one)}.`)).join(" "),
    )[0],
    distanceToWater: stated(use.distanceToWater).map(distanceInWords)[0],
    bloomAndBees: stated(use.bloomAndBees).map(() => "Not while weeds, clover or other plants on the lawn bloom.")[0],
    ...aftercareSentences(use),
  });
}

/** A name is read back as one, so that a class that was mistyped is seen to be none. */
function meantBy({ from }: KeptApart): string {
  return readKeptApartWords(from)?.kind === "name" ? `what has "${from}" in its name or ingredients` : from;
}

function concentrationInWords(concentration: Concentration): string {
  if (concentration.kind === "mass-in-volume") return `${figure(densityIn(concentration.massInVolume, "lb per gal"))} lb in a gallon`;
  return `${figure({ numerator: concentration.part.numerator * 100n, denominator: concentration.part.denominator })} % of the weight`;
}

/** What the general part was understood to say, where it has figures. */
export function sentencesOfLabel(label: Omit<LabelFacts, "uses">): Partial<Record<GeneralField, string>> {
  const { analysis, density, activeIngredients } = label;
  const grade = typeof analysis === "string" ? undefined : analysis.grade;
  const release = typeof analysis === "string" ? undefined : analysis.release;
  return withoutUnsaid<GeneralField>({
    grade:
      grade === undefined
        ? undefined
        : `${figure(grade.nitrogenPercent)} % nitrogen, ${figure(grade.phosphatePercent)} % phosphate, ${figure(grade.potashPercent)} % potash, ${
            grade.ironPercent === "not-stated" ? "iron not stated" : `${figure(grade.ironPercent)} % iron`
          }.`,
    nitrogenRelease:
      release === undefined || release.kind === "not-stated"
        ? undefined
        : `Slow: ${figure(release.percent)} % of ${release.kind === "slow-percent-of-product" ? "the product's weight" : "the nitrogen"}.`,
    density: density === "unknown" ? undefined : `One gallon weighs ${figure(densityIn(density, "lb per gal"))} lb.`,
    activeIngredients:
      activeIngredients === "unknown" || activeIngredients.length === 0
        ? undefined
        : activeIngredients
            .map(({ name, concentration, acid }) => `${name}: ${concentrationInWords(concentration)}${acid === undefined ? "" : `; as ${acid.name} ${concentrationInWords(acid.equivalent)}`}.`)
            .join(" "),
  });
}
