import { invariant } from "#domain/foundation/invariant";
import { type Quantity, ratio, subtract, sum } from "#domain/quantities/quantity";
import { toNumber } from "#domain/quantities/rational";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type FillStop, fillStopOf, type PlannedFill, planFill, visitsThatShare } from "#domain/mixing/tank-fill";
import { isSprayed, type TicketSprayer, type TicketTreatment } from "#domain/mixing/ticket-question";

/** What one stop of a route puts down. */
export interface TreatedStop {
  readonly visitId: string;
  readonly mixes: MixTicket["mixes"];
  readonly treatments: readonly TicketTreatment[];
}

/** One filling of a tank on a truck's route. */
export interface FillOfRoute extends PlannedFill {
  /** A, B, C in the order in which the tanks are filled; AA after Z. */
  readonly letter: string;
  readonly gear: TicketSprayer;
  /** What each visit takes of it, in the order of the route. */
  readonly parts: readonly { readonly visitId: string; readonly finished: Quantity<"volume"> }[];
  /** Finished volume less what the liquid products take up. */
  readonly water: Quantity<"volume">;
}

/** What the fullest tank holds when the truck comes to a stop. */
export interface AboardAtStop {
  readonly visitId: string;
  /** Finished spray in the tank over what the tank holds, 0 to 1; null where the truck has no spray to put down. */
  readonly share: number | null;
  /** The fills that begin with this stop. */
  readonly letters: readonly string[];
}

interface Part {
  readonly gear: TicketSprayer;
  readonly stop: FillStop;
}

/**
 * The fills of a truck's day: a tank is filled for the stops that follow one another with the same mix, until the next
 * one has another mix or does not fit any more. One tank holds one mix, so the same mix after another is a new fill. A
 * visit that takes several loads by itself shares its last one with the next stop.
 */
export function fillsOfRoute(stops: readonly TreatedStop[]): readonly FillOfRoute[] {
  const open = new Map<string, Part[]>();
  const runs: Part[][] = [];
  for (const part of stops.flatMap(partsOf)) {
    const run = open.get(part.gear.equipmentId);
    if (run !== undefined && goesInto(run, part)) {
      run.push(part);
      continue;
    }
    const fresh = [part];
    open.set(part.gear.equipmentId, fresh);
    runs.push(fresh);
  }
  const treatments = stops.flatMap((stop) => stop.treatments);
  return runs.map((run, index) => fillOf(run, letterOf(index), treatments));
}

/** One part for each load of each spray. */
function partsOf({ visitId, mixes, treatments }: TreatedStop): readonly Part[] {
  return mixes.flatMap((mix): readonly Part[] => {
    if (mix.kind !== "spray") return [];
    const whole = fillStopOf(visitId, mix, (line) => treatmentOn(treatments, line).productId);
    const gear = gearOf(mix, treatments);
    return mix.loads.map(({ finished }) => ({ gear, stop: { ...whole, finished } }));
  });
}

function treatmentOn(treatments: readonly TicketTreatment[], line: number): TicketTreatment {
  const treatment = treatments.find((one) => one.line === line);
  invariant(treatment !== undefined, "a mix is made of treatments of its visit");
  return treatment;
}

function gearOf(mix: SprayMix, treatments: readonly TicketTreatment[]): TicketSprayer {
  const [first] = mix.products;
  invariant(first !== undefined, "a spray has a product");
  const treatment = treatmentOn(treatments, first.line);
  invariant(isSprayed(treatment), "what is in a spray is sprayed");
  return treatment.gear;
}

function goesInto(run: readonly Part[], part: Part): boolean {
  const stops = [...run, part].map(({ stop }) => stop);
  if (visitsThatShare(stops).length > 1) return false;
  return sum("volume", stops.map(({ finished }) => finished)).amount <= part.gear.capacity.amount;
}

function fillOf(run: readonly Part[], letter: string, treatments: readonly TicketTreatment[]): FillOfRoute {
  const [first] = run;
  invariant(first !== undefined, "a fill is for a stop");
  const toolOf = (productId: string) => {
    const tool = treatments.find((one) => one.productId === productId)?.tool;
    return tool === "none" ? undefined : tool;
  };
  const planned = planFill(run.map(({ stop }) => stop), first.gear, toolOf);
  invariant(planned.ok, "the stops of a fill share one mix");
  const liquid = planned.value.products.reduce((total, { amount }) => total + (amount.dimension === "volume" ? amount.amount : 0n), 0n);
  return {
    ...planned.value,
    visitIds: [...new Set(planned.value.visitIds)],
    letter,
    gear: first.gear,
    parts: run.map(({ stop }) => ({ visitId: stop.visitId, finished: stop.finished })),
    water: subtract(planned.value.finished, { dimension: "volume", amount: liquid }),
  };
}

const LETTERS = 26;

function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % LETTERS));
  return index < LETTERS ? last : `${letterOf(Math.floor(index / LETTERS) - 1)}${last}`;
}

/** What is in the fullest tank at each stop, a fill that begins there included, before anything is put down there. */
export function aboardAtStops(stops: readonly TreatedStop[], fills: readonly FillOfRoute[]): readonly AboardAtStop[] {
  const placeOf = new Map(stops.map(({ visitId }, index) => [visitId, index]));
  const beginsAt = (fill: FillOfRoute) => Math.min(...fill.parts.map(({ visitId }) => placeOf.get(visitId) ?? Infinity));
  const gearIds = [...new Set(fills.map(({ gear }) => gear.equipmentId))];
  return stops.map(({ visitId }, index) => {
    const shares = gearIds.flatMap((gearId) => {
      const own = fills.filter(({ gear }) => gear.equipmentId === gearId);
      const current = own.find((fill) => beginsAt(fill) === index) ?? own.findLast((fill) => beginsAt(fill) < index);
      if (current === undefined) return [];
      const used = current.parts.filter((part) => (placeOf.get(part.visitId) ?? 0) < index).map(({ finished }) => finished);
      return [Math.min(1, toNumber(ratio(subtract(current.finished, sum("volume", used)), current.gear.capacity)))];
    });
    const letters = fills.filter((fill) => beginsAt(fill) === index).map(({ letter }) => letter);
    return { visitId, share: shares.length === 0 ? null : Math.max(...shares), letters };
  });
}
