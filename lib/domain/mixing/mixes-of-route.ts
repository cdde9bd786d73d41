import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { areaUnderLastMix } from "#domain/equipment/tank-hold-up";
import { settle } from "#domain/quantities/exact-quantity";
import { fromAmount } from "#domain/quantities/quantity";
import { amountOfMarks } from "#domain/quantities/rounding";
import { type MixInTank } from "#domain/mixing/mix-change";
import { hasWater, type SizedRun, strongestOf } from "#domain/mixing/sized-run";
import { amountIn } from "#domain/mixing/tank-fill";
import { type BeginOfMix, type CarryOver, type EndOfMix, type MixOfRoute, type TankPlan } from "#domain/mixing/tank-plan-answer";
import { checkMix } from "#domain/mixing/tank-plan-checks";
import { type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { placeRinsate, roomAtStop, type RunOnFirst, type SiteForRinsate } from "#domain/mixing/tank-rinse";

/** The runs of one sprayer. */
export interface RunsOfTank {
  readonly runs: readonly SizedRun[];
  /** By run, what of rinsed tanks rides along when it ends. */
  readonly rinsateAtEnds: readonly bigint[];
}

interface MixWithFindings {
  readonly mix: MixOfRoute;
  readonly found: TankPlan["found"];
}

/** The stops that each mix still has room at, and how far they are used up. */
interface Sites {
  readonly stops: readonly SiteForRinsate[];
  /** Past the last stop of the latest run: rinsate is not taken back along the route. */
  readonly cursor: { at: number };
  passed: number;
}

/**
 * Each mix of one sprayer's route with what lies before it and what is left of it: line, rinse, carry-over, and where the
 * rest goes. What is left may be sprayed at the last stop of the mix and at later stops that get the same mix again.
 */
export function mixesOfRoute(question: TankPlanQuestion, { runs, rinsateAtEnds }: RunsOfTank, lettersOf: ReadonlyMap<SizedRun, readonly string[]>): readonly MixWithFindings[] {
  const sitesOf = sitesByMix(runs);
  const names = new Map<MixInTank, string>();
  const named = (one: MixInTank): MixInTank => ({ ...one, name: names.get(one) ?? one.name });
  return runs.map((sized, index) => {
    const name = nameOf(sized, lettersOf.get(sized) ?? []);
    const heldName = sized.onHand !== null ? sized.restName : typeof sized.last === "string" ? null : sized.last.name;
    const last = typeof sized.last === "string" ? null : named(sized.last);
    const begin = beginOf(sized, last);
    const mix: MixOfRoute = {
      name: name === "" ? (heldName ?? "nothing") : name,
      gear: sized.run.gear,
      visitIds: [...new Set(sized.run.draws.map(({ visitId }) => visitId))],
      already: fromAmount("volume", sized.already),
      begin,
      end: { ...endOf(question, sized, runs[index + 1], sitesOf.get(sized.run.key)), rinsateAboard: fromAmount("volume", rinsateAtEnds[index] ?? 0n) },
    };
    names.set(sized.real, mix.name);
    return { mix, found: checkMix(question, sized, mix, { last, below: sized.below.map((one) => (one === "unknown" ? one : named(one))), before: runs[index - 1] }) };
  });
}

function sitesByMix(runs: readonly SizedRun[]): ReadonlyMap<string, Sites> {
  return new Map([...groupedBy(runs, ({ run }) => run.key)].map(([key, fills]) => [key, { stops: sitesOfMix(fills), cursor: { at: 0 }, passed: 0 }]));
}

/** All stops of one mix's runs, each with the room that it has for the strongest filling of that mix. */
function sitesOfMix(fills: readonly SizedRun[]): readonly SiteForRinsate[] {
  const strengths = strongestOf(fills.map(({ real }) => real));
  return fills.flatMap((sized) => sized.run.draws.map((draw, index) => ({ visitId: draw.visitId, room: roomAtStop(draw, strengths, index === 0 ? runOnFirst(sized) : null) })));
}

/** What the first stop of a run gets out of pump and hose before the run's own mix. */
function runOnFirst({ line, last, run: { gear: { holdUp } } }: SizedRun): RunOnFirst | null {
  return line !== "runs-on" || typeof last === "string" || holdUp === "unknown" ? null : { volume: holdUp.amount, strengths: strongestOf([last]) };
}

function nameOf({ noRoomAt }: SizedRun, letters: readonly string[]): string {
  if (noRoomAt !== null || letters.length === 0) return "";
  return letters.length === 1 ? `fill ${letters.join("")}` : `fills ${listWords(letters)}`;
}

function beginOf(sized: SizedRun, last: MixInTank | null): BeginOfMix {
  const { run, line, cleaning, rinse, rinsedAt, isCleanOutOnFile, restName, leftOfLast, under } = sized;
  const { holdUp } = run.gear;
  return {
    lastName: last?.name ?? null,
    cleaning,
    isCleanOutOnFile,
    line,
    rinse,
    rinsedAt,
    lineVolume: holdUp,
    waterBehind: fromAmount("volume", sized.waterBehind),
    carryOver: line === "runs-on" && last !== null ? carryOverOf(sized, last) : null,
    restName: restName ?? last?.name ?? null,
    leftOfLast: isCleanOutOnFile ? fromAmount("volume", 0n) : leftOfLast,
    under,
  };
}

function carryOverOf({ run }: SizedRun, last: MixInTank): CarryOver | null {
  const { holdUp, carrier } = run.gear;
  if (holdUp === "unknown" || holdUp.amount === 0n) return null;
  return {
    visitId: run.draws[0]?.visitId ?? "",
    mix: holdUp,
    ground: settle(areaUnderLastMix(holdUp, carrier.rate), "nearest"),
    // What may run on is of a strength that is known.
    products: last.products.flatMap(({ productId, productName, concentration }) =>
      concentration === "unknown" ? [] : [{ productId, productName, amount: settle<"mass" | "volume">(amountIn(concentration, holdUp), "nearest") }],
    ),
  };
}

function endOf({ stops, settings }: TankPlanQuestion, { run, pushOut, left, inLine }: SizedRun, next: SizedRun | undefined, sites: Sites | undefined): Omit<EndOfMix, "rinsateAboard"> {
  // What the next lawn gets first is no rest that has to go anywhere.
  const inLineToPlace = inLine === "unknown" || next?.line === "runs-on" ? 0n : inLine;
  if (sites !== undefined) {
    sites.passed += run.draws.length;
    sites.cursor.at = Math.max(sites.cursor.at, sites.passed - 1);
  }
  const way = placeRinsate(left + inLineToPlace, sites?.stops ?? [], sites?.cursor ?? { at: 0 });
  return {
    visitId: run.draws.at(-1)?.visitId ?? "",
    pushOut: fromAmount("volume", pushOut),
    waterAlong: fromAmount("volume", hasWater(stops[run.draws.at(-1)?.stopIndex ?? 0]) ? 0n : pushOut),
    left: fromAmount("volume", left),
    isLetOutFirst: pushOut > 0n && left >= amountOfMarks(settings.tankMark, 1n).amount,
    inLine: inLine === "unknown" ? "unknown" : fromAmount("volume", inLine),
    way,
    sitesWithoutWater: way.sites.map(({ visitId }) => visitId).filter((visitId) => !hasWater(stops.find((stop) => stop.visitId === visitId))),
  };
}
