import { invariant } from "#domain/foundation/invariant";
import { type Quantity, sum } from "#domain/quantities/quantity";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type FillStop, fillStopOf, mixKeyOf, productsOfAll } from "#domain/mixing/tank-fill";
import { type TreatedStop } from "#domain/mixing/tank-plan-question";
import { isSprayed, type TicketSprayer, type TicketTreatment } from "#domain/mixing/ticket-question";

/** What one stop takes of a mix. */
export interface DrawOfStop {
  /** Its place in the route, from 0. */
  readonly stopIndex: number;
  readonly visitId: string;
  /** What its ground takes, before any mark of a gauge. */
  readonly finished: Quantity<"volume">;
  /** What it goes on. */
  readonly ground: Quantity<"area">;
  /** What is sprayed there of it, as the stop's ticket has it. */
  readonly treatments: readonly TicketTreatment[];
}

/** The stops that follow one another with one mix out of one tank. */
export interface RunOfMix {
  readonly gear: TicketSprayer;
  readonly key: string;
  /** Each no stronger than every stop of the run lets it be. */
  readonly products: FillStop["products"];
  readonly draws: readonly DrawOfStop[];
}

interface OpenRun {
  readonly gear: TicketSprayer;
  readonly key: string;
  readonly stops: FillStop[];
  readonly draws: DrawOfStop[];
}

interface Sprayed {
  readonly gear: TicketSprayer;
  readonly stop: FillStop;
  readonly ground: Quantity<"area">;
  readonly treatments: readonly TicketTreatment[];
}

/**
 * The runs of each sprayer of a truck, the sprayers in the order in which they are first used. One tank holds one mix: the
 * same mix after another one is a run of its own.
 */
export function runsOfTanks(stops: readonly TreatedStop[]): ReadonlyMap<string, readonly RunOfMix[]> {
  const tanks = new Map<string, OpenRun[]>();
  for (const [stopIndex, treated] of stops.entries()) {
    for (const { gear, stop, ground, treatments } of spraysOf(treated)) {
      const runs = tanks.get(gear.equipmentId) ?? [];
      tanks.set(gear.equipmentId, runs);
      const draw: DrawOfStop = { stopIndex, visitId: treated.visitId, finished: stop.finished, ground, treatments };
      const key = mixKeyOf(stop);
      const last = runs.at(-1);
      if (last?.key === key) {
        last.stops.push(stop);
        last.draws.push(draw);
      } else runs.push({ gear, key, stops: [stop], draws: [draw] });
    }
  }
  return new Map([...tanks].map(([equipmentId, runs]) => [equipmentId, runs.map(({ gear, key, stops: own, draws }) => ({ gear, key, draws, products: productsOfAll(own) }))]));
}

function spraysOf({ visitId, mixes, treatments }: TreatedStop): readonly Sprayed[] {
  return mixes.flatMap((mix): readonly Sprayed[] => {
    if (mix.kind !== "spray") return [];
    const own = mix.products.map(({ line }) => treatmentOn(treatments, line));
    const stop = fillStopOf(visitId, mix, (line) => treatmentOn(treatments, line));
    return [{ gear: gearOf(mix, own), stop, ground: sum("area", mix.lawns.map(({ treatedArea }) => treatedArea)), treatments: own }];
  });
}

/**
 * The treatment that a mix has on one of its lines, by the line's number. Throws where the visit has none: a mix is
 * made of its treatments.
 */
export function treatmentOn(treatments: readonly TicketTreatment[], line: number): TicketTreatment {
  const treatment = treatments.find((one) => one.line === line);
  invariant(treatment !== undefined, "a mix is made of treatments of its visit");
  return treatment;
}

function gearOf(mix: SprayMix, treatments: readonly TicketTreatment[]): TicketSprayer {
  const [first] = treatments;
  invariant(first !== undefined, "a spray has a product");
  invariant(isSprayed(first), `what is in ${mix.gearName} is sprayed`);
  return first.gear;
}
