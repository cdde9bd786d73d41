import { PAST_MIDNIGHT, type PastMidnight, type TownRule, type WateringFact, type WateringOfProperty } from "#domain/properties/watering-fact";
import { wateringDatesOf } from "#domain/properties/watering-dates";
import { weekdayDigits, weekdaysOf } from "#domain/properties/weekday";

// The town's watering rule and the controller of a property as its columns have them.

/** The columns of both facts. */
export interface WateringColumns {
  readonly townRule: string | null;
  readonly townRuleFromMinute: number | null;
  readonly townRuleUntilMinute: number | null;
  readonly townRuleWeekdays: string | null;
  readonly townRuleDates: string | null;
  readonly townRulePastMidnight: string | null;
  readonly controller: string | null;
  readonly controllerFromMinute: number | null;
  readonly controllerUntilMinute: number | null;
  readonly controllerWeekdays: string | null;
  readonly controllerDates: string | null;
}

interface FactColumns {
  readonly standing: string | null;
  readonly fromMinute: number | null;
  readonly untilMinute: number | null;
  readonly weekdays: string | null;
  readonly dates: string | null;
}

function factOf({ standing, fromMinute, untilMinute, weekdays, dates }: FactColumns): WateringFact {
  if (standing !== "on-file") return standing === "none" ? "none" : "unknown";
  const ofMonth = wateringDatesOf(dates);
  return {
    days: ofMonth !== null ? { dates: ofMonth } : weekdays === null ? null : { weekdays: weekdaysOf(weekdays) },
    hours: fromMinute === null || untilMinute === null ? null : { fromMinute, untilMinute },
  };
}

function isPastMidnight(text: string | null): text is PastMidnight {
  return (PAST_MIDNIGHT as readonly (string | null)[]).includes(text);
}

function townRuleOf(row: WateringColumns): TownRule {
  const fact = factOf({ standing: row.townRule, fromMinute: row.townRuleFromMinute, untilMinute: row.townRuleUntilMinute, weekdays: row.townRuleWeekdays, dates: row.townRuleDates });
  if (typeof fact === "string" || fact.hours === null || !isPastMidnight(row.townRulePastMidnight)) return fact;
  return { ...fact, hours: { ...fact.hours, pastMidnight: row.townRulePastMidnight } };
}

/** Both facts as they are on file. */
export function wateringOf(row: WateringColumns): WateringOfProperty {
  return {
    townRule: townRuleOf(row),
    controller: factOf({ standing: row.controller, fromMinute: row.controllerFromMinute, untilMinute: row.controllerUntilMinute, weekdays: row.controllerWeekdays, dates: row.controllerDates }),
  };
}

function columnsOf(fact: WateringFact): FactColumns {
  if (fact === "none" || fact === "unknown") return { standing: fact === "none" ? "none" : null, fromMinute: null, untilMinute: null, weekdays: null, dates: null };
  const { days, hours } = fact;
  return {
    standing: "on-file",
    fromMinute: hours?.fromMinute ?? null,
    untilMinute: hours?.untilMinute ?? null,
    weekdays: days !== null && "weekdays" in days ? weekdayDigits(days.weekdays) : null,
    dates: days !== null && "dates" in days ? days.dates : null,
  };
}

/** Both facts as they are stored. */
export function wateringColumns({ townRule, controller }: WateringOfProperty): WateringColumns {
  const [town, own] = [columnsOf(townRule), columnsOf(controller)];
  return {
    ...{ townRule: town.standing, townRuleFromMinute: town.fromMinute, townRuleUntilMinute: town.untilMinute, townRuleWeekdays: town.weekdays, townRuleDates: town.dates },
    townRulePastMidnight: (typeof townRule === "object" ? townRule.hours?.pastMidnight : undefined) ?? null,
    ...{ controller: own.standing, controllerFromMinute: own.fromMinute, controllerUntilMinute: own.untilMinute, controllerWeekdays: own.weekdays, controllerDates: own.dates },
  };
}
