import { isOverArea, type SprayRate, type UseRate } from "#domain/label/label-facts";
import { rateTimes } from "#domain/mixing/spray-mix";
import { conversionLine, inUnit, perGallon, THOUSAND_SQ_FT, timesIn, unitOf } from "#domain/mixing/ticket-working-words";
import { canonicalAmountOf, type ExactQuantity, fromExactAmount, isNothing, type Measure, multiplyExact, sumExact } from "#domain/quantities/exact-quantity";
import { formatCompound } from "#domain/quantities/format-compound";
import { formatPercentByVolume } from "#domain/quantities/format-rate";
import { of, type Quantity } from "#domain/quantities/quantity";
import { type Rate, times } from "#domain/quantities/rate";
import { rational, subtractRational } from "#domain/quantities/rational";
import { isByAcre } from "#domain/worksheets/figure-words";

// The arithmetic of a tank mix, line by line. Output and rates meet on the ground that the sprayer's output was typed
// for: an acre or 1,000 sq ft.

type Amount = ExactQuantity<"mass"> | ExactQuantity<"volume">;

/** Full tanks, and the part of one that is left; the spray is both together. */
export interface Fills {
  readonly spray: ExactQuantity<"volume">;
  readonly full: bigint;
  readonly part: ExactQuantity<"volume">;
}

/** A product with what goes into a full tank, into the part tank and into all. */
export interface MixLine {
  readonly name: string;
  readonly rate: UseRate;
  readonly typedRate: string;
  readonly concentration: SprayRate;
  readonly inFull: Amount;
  readonly inPart: Amount;
  readonly total: Amount;
}

/** A piece of ground that a rate is over. */
interface Ground {
  readonly size: Quantity<"area">;
  readonly unit: "acre" | "sq ft";
  readonly words: string;
  readonly per: string;
}

const ACRE: Ground = { size: of("acre", 1n), unit: "acre", words: "1 acre", per: "acre" };
const THOUSAND: Ground = { size: THOUSAND_SQ_FT, unit: "sq ft", words: "1,000 sq ft", per: "1,000 sq ft" };

function groundOf(isAcre: boolean): Ground {
  return isAcre ? ACRE : THOUSAND;
}

/** Ounces by weight or by volume: all amounts of a product are worked out in them. */
function ounces(amount: Amount): string {
  return amount.dimension === "volume" ? inUnit(amount, "fl oz") : inUnit(amount, "oz wt");
}

/** A product's rate as it goes in: over the ground that it was typed for, in percent, or in a gallon of spray. */
export function mixRateWords(rate: UseRate, typed: string): string {
  if (isOverArea(rate)) {
    const ground = groundOf(isByAcre(typed));
    const amount = rateTimes(rate, ground.size);
    return `${inUnit(amount, unitOf(amount))} per ${ground.per}`;
  }
  if (rate.basis === "product-volume-per-spray-volume" && typed.includes("%")) return formatPercentByVolume(rate, 5);
  return `${perGallon(rate)} per gal`;
}

/** From the rate as it was typed to what is in a gallon of spray. */
function concentrationLines({ name, rate, typedRate, concentration }: MixLine, carrier: Rate<"carrier-volume-per-area">, ground: Ground): readonly string[] {
  const inSpray = `${perGallon(concentration)} in a gallon of spray`;
  if (!isOverArea(rate)) return typedRate.includes("%") ? [`${name}: ${mixRateWords(rate, typedRate)} × 128 fl oz = ${inSpray}.`] : [];
  const own = groundOf(isByAcre(typedRate));
  const [typedAmount, amount] = [rateTimes(rate, own.size), rateTimes(rate, ground.size)];
  const unit = unitOf(typedAmount);
  const inOunces = unit === "gal" ? "128 fl oz" : "16 oz wt";
  return [
    ...(unit === "gal" || unit === "lb" ? [`${name}, in ounces: ${inUnit(typedAmount, unit)} × ${inOunces} = ${ounces(typedAmount)} per ${own.per}.`] : []),
    ...(own === ground ? [] : [`${name}, over the same ground as the spray: ${ounces(typedAmount)} ÷ ${inUnit(own.size, "sq ft")} × ${inUnit(ground.size, "sq ft")} = ${ounces(amount)} per ${ground.per}.`]),
    `${name}: ${ounces(amount)} ÷ ${inUnit(times(carrier, ground.size), "gal")} = ${inSpray}.`,
  ];
}

interface Tank {
  /** As a line names it; a table begins it with a capital. */
  readonly name: "full tank" | "part tank" | "whole job" | "the tank";
  readonly spray: Measure<"volume">;
  readonly amountOf: (line: MixLine) => Amount;
}

/**
 * What amounts are told for: a full tank, the part tank where one is left, and the whole job; of a job that fills no tank
 * just the tank that it takes, since nobody is to measure out a full one.
 */
export function tanksOf(tank: Measure<"volume">, { spray, full, part }: Fills): readonly Tank[] {
  if (full === 0n) return [{ name: "the tank", spray, amountOf: ({ total }) => total }];
  return [
    { name: "full tank", spray: tank, amountOf: ({ inFull }) => inFull },
    ...(isNothing(part) ? [] : [{ name: "part tank", spray: part, amountOf: ({ inPart }: MixLine) => inPart } as const]),
    { name: "whole job", spray, amountOf: ({ total }) => total },
  ];
}

/** As it is measured out, where that is in two units. */
function compoundWords(amount: Amount): string {
  const compound = formatCompound(amount, 2);
  return /gal|lb/u.test(compound) ? `, which is ${compound}` : "";
}

function amountLine(tank: Tank, line: MixLine): string {
  const amount = tank.amountOf(line);
  return `${line.name}, ${tank.name}: ${inUnit(tank.spray, "gal")} × ${perGallon(line.concentration)} = ${ounces(amount)}${compoundWords(amount)}.`;
}

/** Liquids take the room of water; what is weighed is counted as none. */
function waterLines(tank: Tank, lines: readonly MixLine[]): readonly string[] {
  const liquids = lines.map(tank.amountOf).filter((amount): amount is ExactQuantity<"volume"> => amount.dimension === "volume");
  if (liquids.length === 0) return [`Water, ${tank.name}: ${inUnit(tank.spray, "gal")}, since nothing liquid goes in.`];
  const all = sumExact("volume", liquids);
  const water = fromExactAmount("volume", subtractRational(canonicalAmountOf(tank.spray), canonicalAmountOf(all)));
  return [
    ...(liquids.length === 1 ? [] : [`Liquids, ${tank.name}: ${liquids.map(ounces).join(" + ")} = ${ounces(all)}.`]),
    `Liquids, ${tank.name}: ${conversionLine(all, "fl oz", "gal")}.`,
    `Water, ${tank.name}: ${inUnit(tank.spray, "gal")} − ${inUnit(all, "gal")} = ${inUnit(water, "gal")}.`,
  ];
}

function tankLines(spray: Measure<"volume">, tank: Measure<"volume">, { full, part }: Fills): readonly string[] {
  const fullGallons = inUnit(multiplyExact(tank, rational(full)), "gal");
  return [
    `Tanks: ${timesIn(spray, tank, "gal")}.`,
    ...(full === 0n ? [] : [`Full tanks, ${String(full)}: ${inUnit(tank, "gal")} × ${String(full)} = ${fullGallons}.`]),
    ...(full === 0n || isNothing(part) ? [] : [`Part tank: ${inUnit(spray, "gal")} − ${fullGallons} = ${inUnit(part, "gal")}.`]),
  ];
}

interface TankMix {
  readonly tank: Measure<"volume">;
  readonly carrier: Rate<"carrier-volume-per-area">;
  readonly area: Measure<"area">;
  readonly fills: Fills;
  readonly perTank: Measure<"area">;
  readonly lines: readonly MixLine[];
  readonly isCarrierByAcre: boolean;
  readonly isAreaByAcre: boolean;
}

/** How far a tank goes, what the job takes, and each product and the water of each tank; with the output in words. */
export function tankMixLines({ tank, carrier, area, fills, perTank, lines, isCarrierByAcre, isAreaByAcre }: TankMix) {
  const ground = groundOf(isCarrierByAcre);
  const output = inUnit(times(carrier, ground.size), "gal");
  const inAcres = (one: Measure<"area">) => conversionLine(one, "sq ft", "acre");
  const inSquareFeet = (one: Measure<"area">) => `${inUnit(one, "acre")} × 43,560 sq ft = ${inUnit(one, "sq ft")}`;
  const tanks = tanksOf(tank, fills);
  return {
    carrierWords: `${output} per ${ground.per}`,
    steps: [
      `Area per tank: ${inUnit(tank, "gal")} ÷ ${output} × ${ground.words} = ${inUnit(perTank, ground.unit)}.`,
      `The same in ${isCarrierByAcre ? `square feet: ${inSquareFeet(perTank)}` : `acres: ${inAcres(perTank)}`}.`,
      ...(isAreaByAcre === isCarrierByAcre ? [] : [`The area: ${isCarrierByAcre ? inAcres(area) : inSquareFeet(area)}.`]),
      `Spray for the job: ${inUnit(area, ground.unit)} ÷ ${ground.words} × ${output} = ${inUnit(fills.spray, "gal")}.`,
      ...tankLines(fills.spray, tank, fills),
      ...lines.flatMap((line) => [...concentrationLines(line, carrier, ground), ...tanks.map((one) => amountLine(one, line))]),
      ...tanks.flatMap((one) => waterLines(one, lines)),
    ],
  };
}
