// Holds the rows of a timeline against what each product says of each minute.
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { type DrawnVisit } from "./aftercare-arbitraries";
import { keptOff, seedKeptOff, signStands } from "./label-by-the-minute";
import { DAY, MINUTE } from "./wall-clock";
import { waterKeptOff, waterPutDown } from "./watering-by-the-minute";

export const ROWS = ["people-and-pets", "watering", "mowing", "seeding", "sign"] as const satisfies readonly AftercareStep["row"][];

type Says = (instant: number) => boolean | undefined;

/** What each product says of a row, from the start of its own work on. */
function saidOf(row: AftercareStep["row"], { ground, products }: DrawnVisit, water: number | undefined): readonly Says[] {
  return products.map((product): Says => {
    const rows: Readonly<Record<AftercareStep["row"], () => Says>> = {
      "people-and-pets": () => keptOff(product, "people-and-pets", ground),
      watering: () => waterKeptOff(product, water, ground),
      mowing: () => keptOff(product, "mowing-after", ground),
      seeding: () => seedKeptOff(product, ground.zone),
      sign: () => signStands(product, ground),
    };
    const says = rows[row]();
    const from = row === "sign" ? -Infinity : product.application.startsAtEpochMilliseconds;
    return (instant) => (instant >= from ? says(instant) : false);
  });
}

/** Each fifth minute for a week, each hour for ten more, and each minute around where the timeline says that something begins or ends. */
function minutesOf({ ground }: DrawnVisit, steps: readonly AftercareStep[]): readonly number[] {
  const start = ground.visitFrom;
  const week = Array.from({ length: (7 * DAY) / (5 * MINUTE) }, (_, index) => start + index * 5 * MINUTE);
  const weeks = Array.from({ length: 70 * 24 }, (_, index) => start + 7 * DAY + index * 60 * MINUTE);
  const edges = steps.flatMap(({ startsAtEpochMilliseconds, endsAtEpochMilliseconds }) => [startsAtEpochMilliseconds, endsAtEpochMilliseconds ?? start]);
  const near = edges.flatMap((edge) => Array.from({ length: 11 }, (_, index) => Math.floor(edge / MINUTE) * MINUTE + (index - 5) * MINUTE));
  return [...week, ...weeks, ...near].filter((instant) => instant >= start);
}

function forbids(steps: readonly AftercareStep[], instant: number): boolean {
  return steps.some(({ startsAtEpochMilliseconds: from, endsAtEpochMilliseconds: until }) => from <= instant && (until === null || instant < until));
}

/**
 * The first minute at which a row lets what some product forbids, or forbids what none does even when read at its
 * longest; undefined where there is none. At its longest is the same where nothing else is given.
 */
export function firstDifference(row: AftercareStep["row"], steps: readonly AftercareStep[], visit: DrawnVisit, longest = visit): string | undefined {
  const own = steps.filter((step) => step.row === row && step.kind === "may-not");
  const water = waterPutDown(visit.products, visit.stations, visit.ground);
  const said = saidOf(row, visit, water);
  const saidAtLongest = longest === visit ? said : saidOf(row, longest, water);
  for (const instant of minutesOf(visit, own)) {
    const isForbidden = forbids(own, instant);
    // Within minutes of a sunset either is right.
    const isLetWrongly = !isForbidden && said.some((says) => says(instant) === true);
    if (isLetWrongly) return `${new Date(instant).toISOString()} is forbidden by a label and free on the row`;
    const isForbiddenWrongly = isForbidden && saidAtLongest.every((says) => says(instant) === false);
    if (isForbiddenWrongly) return `${new Date(instant).toISOString()} is forbidden on the row and by no label`;
  }
  return undefined;
}
