import { type Working } from "#domain/foundation/working";
import { type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type SprayedLawn, type SprayMix, type SprayRest } from "#domain/mixing/spray-mix";
import { placeOf } from "#domain/mixing/ticket-working-area";
import { inUnit, sumLine, unitOf } from "#domain/mixing/ticket-working-words";

/** A part of a product that is in a spray. */
export interface Shared {
  /** The product's. */
  readonly name: string;
  readonly share: Measure<"mass" | "volume">;
  /** All that is in the loads. */
  readonly whole: Measure<"mass" | "volume">;
}

/** What is left of the finished spray when every lawn has what it takes. */
export function leftWorking(mix: SprayMix, rest: SprayRest): Working {
  const unit = unitOf(rest.finished);
  const taken = mix.lawns.map(({ finished }) => finished);
  const drawn = { dimension: "volume", amount: taken.reduce((total, { amount }) => total + amount, 0n) } as const;
  const [all, ground] = [inUnit(mix.finished, unit), inUnit(drawn, unit)];
  return {
    title: "Finished spray that is left",
    formula: "left = finished spray in all − what the ground takes",
    inputs: [
      { name: "Finished spray in all", figure: all, from: "to a mark of the gauge" },
      ...mix.lawns.map((lawn) => ({ name: placeOf(lawn), figure: inUnit(lawn.finished, unit), from: "takes" })),
    ],
    steps: [...(taken.length > 1 ? [sumLine(taken, drawn, unit)] : []), `${all} − ${ground} = ${inUnit(rest.finished, unit)}`],
    result: formatQuantity(rest.finished, "us"),
    source: "common practice",
  };
}

/** What of a product is in the spray that is left: by volume, since all of it is of one strength. */
export function leftOfProductWorking(mix: SprayMix, rest: SprayRest, shared: Shared): Working {
  return byVolume(mix, { title: `${shared.name} that is left`, formula: "left = in all × finished spray that is left ÷ finished spray in all", volume: rest.finished, of: "that is left" }, shared);
}

/** What a lawn gets of a product out of a tank of which some is left: by the spray that it takes. */
export function drawnWorking(mix: SprayMix, lawn: SprayedLawn, shared: Shared): Working {
  return byVolume(mix, { title: `${shared.name} for ${placeOf(lawn)}`, formula: "a lawn’s share = in all × its finished spray ÷ finished spray in all; the rest is left", volume: lawn.finished, of: `of ${placeOf(lawn)}` }, shared);
}

interface Part {
  readonly title: string;
  readonly formula: string;
  readonly volume: Measure<"volume">;
  readonly of: string;
}

function byVolume(mix: SprayMix, { title, formula, volume, of }: Part, { share, whole }: Shared): Working {
  const [unit, gallons] = [unitOf(share), unitOf(volume)];
  const [own, all] = [inUnit(volume, gallons), inUnit(mix.finished, gallons)];
  return {
    title,
    formula,
    inputs: [
      { name: "In all", figure: inUnit(whole, unit) },
      { name: "Finished spray", figure: own, from: of },
      { name: "Finished spray in all", figure: all },
    ],
    steps: [`${inUnit(whole, unit)} × ${own} ÷ ${all} = ${inUnit(share, unit)}`],
    result: formatQuantity(share, "us"),
    source: "common practice",
  };
}
