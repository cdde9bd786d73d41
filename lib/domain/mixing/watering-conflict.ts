import { type Finding, hold } from "#domain/foundation/finding";
import { appliedName, weakestAuthority } from "#domain/mixing/applied-product";
import { listWords } from "#domain/foundation/list-words";
import { type StationRun } from "#domain/mixing/irrigation-run";
import { localWords } from "#domain/mixing/local-words";
import { type StaysDry, type WateringNeed } from "#domain/mixing/watering-bounds";
import { authoritiesOfHours, hoursWords, type WateringHours } from "#domain/mixing/watering-hours";

/** The product that must stay dry the longest, and the one whose water is due first. */
export interface TightestPair {
  readonly dry: (StaysDry & { readonly untilEpochMilliseconds: number }) | undefined;
  readonly due: (WateringNeed & { readonly byEpochMilliseconds: number }) | undefined;
}

/** Finds the two that leave the least time between them. Of equal ones the first of the list counts. */
export function tightestPair(staysDry: readonly StaysDry[], needs: readonly WateringNeed[]): TightestPair {
  let dry: TightestPair["dry"];
  for (const one of staysDry) {
    const until = one.end.atEpochMilliseconds;
    if (until !== null && (dry === undefined || until > dry.untilEpochMilliseconds)) {
      dry = { ...one, untilEpochMilliseconds: until };
    }
  }
  let due: TightestPair["due"];
  for (const one of needs) {
    const by = one.dueAtEpochMilliseconds;
    if (by !== null && (due === undefined || by < due.byEpochMilliseconds)) due = { ...one, byEpochMilliseconds: by };
  }
  return { dry, due };
}

function pairFigure({ dry, due }: TightestPair, timeZone: string): string {
  const parts = [
    ...(dry === undefined
      ? []
      : [`${appliedName(dry.applied, timeZone)}: no water until ${localWords(dry.untilEpochMilliseconds, timeZone, "end")}${rainWords(dry)}`]),
    ...(due === undefined
      ? []
      : [`${appliedName(due.applied, timeZone)}: watered in by ${localWords(due.byEpochMilliseconds, timeZone, "due")}`]),
  ];
  return parts.length === 0 ? "" : `${parts.join("; ")}.`;
}

/** Why water is kept off where the label speaks of rain only. */
function rainWords({ constraint }: StaysDry): string {
  return constraint.kind === "rain-that-spoils" ? ", since rain before then spoils it and so does as much water" : "";
}

function namesOf({ dry, due }: TightestPair): readonly string[] {
  const names = [dry, due].flatMap((one) => (one === undefined ? [] : [one.applied.label.productName]));
  return [...new Set(names)];
}

/**
 * The hold where the labels of two products leave no time for water at all. Advises to split the visit. A dry time that
 * is over before the due time is not at odds with it: then the visit itself takes too long.
 */
export function noCommonTime(found: TightestPair, timeZone: string): Finding {
  const { due } = found;
  const isAtOdds = found.dry !== undefined && due !== undefined && found.dry.untilEpochMilliseconds >= due.byEpochMilliseconds;
  const pair = isAtOdds ? found : { dry: undefined, due };
  const constraints = [pair.dry, pair.due].flatMap((one) => (one === undefined ? [] : [one.constraint]));
  const { source, answerableBy, citation } = weakestAuthority(constraints);
  const [dryName = "", dueName = ""] = [pair.dry, pair.due].map((one) =>
    one === undefined ? undefined : appliedName(one.applied, timeZone),
  );
  const isOneProduct = dryName === dueName || dryName === "";
  return hold(answerableBy, {
    rule: "no-common-watering-time",
    source,
    what: isOneProduct
      ? `${dueName} can't be watered in: its time is over before ${isAtOdds ? "it may be watered" : "the visit ends"}.`
      : `${dryName} must stay dry longer than ${dueName} can wait for water.`,
    figure: pairFigure(pair, timeZone),
    toDo: isOneProduct ? toDoAlone(isAtOdds) : `Split the visit: put ${dryName} and ${dueName} down on different days.`,
    citation,
    about: namesOf(pair),
  });
}

function toDoAlone(isAtOdds: boolean): string {
  return isAtOdds ? "Read its label again; its own times are at odds." : "Put it down last, or split the visit.";
}

/**
 * The hold where the labels leave some time, but less than the stations need one at a time, whatever the hours. The
 * office may answer it, since how the water is run is the plan's own.
 */
export function timeTooShort(
  pair: TightestPair,
  context: { readonly timeZone: string; readonly elapsedMinutes: number },
): Finding {
  return hold("office", {
    rule: "watering-time-too-short",
    source: "house",
    what: "The labels leave less time for watering in than the stations need one at a time.",
    figure: `${pairFigure(pair, context.timeZone)} The stations need ${context.elapsedMinutes} min.`.trim(),
    toDo: "Run stations at the same time where there is water enough, or split the visit.",
    about: namesOf(pair),
  });
}

/**
 * The hold where no whole minute of a station keeps within what the labels ask for. The office may answer it, since with
 * what the lawn is watered is the plan's own.
 */
export function minutesKeepNoDepth(runs: readonly StationRun[], needs: readonly WateringNeed[]): readonly Finding[] {
  const off = runs.filter(({ kind }) => kind === "no-minutes");
  if (off.length === 0) return [];
  const withDepth = needs.filter(({ constraint }) => constraint.depth !== "not-stated");
  return [
    hold("office", {
      rule: "station-minutes-miss-depth",
      source: "house",
      what: `No whole minutes of ${listWords(off.map(({ stationName }) => stationName))} put down what the labels ask for.`,
      figure: off.map(({ sentence }) => sentence).join(" "),
      toDo: "Water that part with a slower sprinkler that was tested, or have the station refitted and tested again.",
      citation: [...new Set(withDepth.map(({ constraint }) => constraint.source))].join("; "),
      about: [...new Set(withDepth.map(({ applied }) => applied.label.productName))],
    }),
  ];
}

/**
 * The hold where watering hours leave none of the time that the labels leave, or less than the stations need, whole
 * stations on different days included. The hours may change where they are not law, so the weakest authority says who
 * answers.
 */
export function hoursLeaveNoTime(
  pair: TightestPair,
  hours: WateringHours,
  needs: readonly WateringNeed[],
  context: { readonly timeZone: string; readonly elapsedMinutes: number | null },
): Finding {
  const { timeZone, elapsedMinutes } = context;
  const wants = (pair.due === undefined ? needs : [pair.due]).map(({ constraint }) => constraint);
  const dry = pair.dry === undefined ? [] : [pair.dry.constraint];
  const { source, answerableBy, citation } = weakestAuthority([...wants, ...dry, ...authoritiesOfHours(hours)]);
  const about = pair.due === undefined ? needs.map(({ applied }) => applied.label.productName) : namesOf(pair);
  const runs = elapsedMinutes === null ? "" : `The stations need ${elapsedMinutes} min one at a time.`;
  return hold(answerableBy, {
    rule: "watering-hours-leave-no-time",
    source,
    what: "The hours in which this property may be watered leave no time, or too little, for watering in.",
    figure: [pairFigure(pair, timeZone), hoursWords(hours), runs].filter((words) => words !== "").join(" "),
    toDo: `Put the product down on a day before a watering day, ${hours.controller === "none" ? "" : "set the controller anew within the town's rule, "}or split the visit.`,
    citation,
    about: [...new Set(about)],
  });
}
