import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { canonicalAmountOf, type ExactQuantity, type Measure, multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { allocate, compare, type Quantity, sum } from "#domain/quantities/quantity";
import { concentrationInSpray, type Rate, times } from "#domain/quantities/rate";
import { divideRational, type Rational, rational, roundToWhole } from "#domain/quantities/rational";
import { FORMULATIONS, type ProductRate } from "#domain/label/label-facts";
import { belowFirstMark, measureOut, noTool } from "#domain/mixing/granular-mix";
import { type TicketSettings, type TicketSprayer, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type TreatedLawn } from "#domain/mixing/treated-area";

export type SprayTreatment = TicketTreatment & { readonly gear: TicketSprayer };
export type ProductAmount = Quantity<"mass"> | Quantity<"volume">;

/** One product in a spray, wherever an amount of it is said. */
export interface SprayedAmount {
  readonly line: number;
  readonly amount: ProductAmount;
  /** In marks of the tool; null where no tool measures it. */
  readonly marks: bigint | null;
}

export interface SprayedProduct {
  readonly line: number;
  readonly productName: string;
  readonly toolName: string | null;
  /** For the visit: the sum of the loads. */
  readonly total: ProductAmount;
  /** In the finished spray, exactly: what every filling of this mix keeps to. */
  readonly concentration: Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">;
}

/** One filling of the tank for this visit alone. */
export interface TankLoad {
  readonly number: number;
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedAmount[];
  /** Finished volume less what the liquid products take up. */
  readonly water: Quantity<"volume">;
}

/** What one lawn gets of a spray. */
export interface SprayedLawn extends TreatedLawn {
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedAmount[];
}

/** A tank of one or more products on the same lawns. */
export interface SprayMix {
  readonly kind: "spray";
  readonly gearName: string;
  readonly carrier: TicketSprayer["carrier"];
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedProduct[];
  readonly loads: readonly TankLoad[];
  readonly lawns: readonly SprayedLawn[];
  readonly steps: readonly string[];
}

/** In the order in which they go into the tank: by formulation, and by name where two are of one kind. */
export function inMixingOrder(treatments: readonly SprayTreatment[]): readonly SprayTreatment[] {
  const place = ({ label }: TicketTreatment) => FORMULATIONS.indexOf(label.formulation);
  return treatments.toSorted(
    (left, right) => place(left) - place(right) || left.label.productName.localeCompare(right.label.productName, "en"),
  );
}

function rateTimes(rate: ProductRate, area: Measure<"area">): ExactQuantity<"mass"> | ExactQuantity<"volume"> {
  return rate.basis === "product-mass-per-area" ? times(rate, area) : times(rate, area);
}

/** Marks of the tank's gauge in a number of loads as equal as marks go, or full tanks and a short one. */
function loadMarks(marks: bigint, mostMarks: bigint, how: TicketSettings["tankLoads"]): readonly bigint[] {
  const count = (marks + mostMarks - 1n) / mostMarks;
  if (how === "full-tanks-then-a-short-one") {
    return Array.from({ length: Number(count) }, (_unused, index) => (BigInt(index) < count - 1n ? mostMarks : marks - mostMarks * (count - 1n)));
  }
  const [least, more] = [marks / count, marks % count];
  return Array.from({ length: Number(count) }, (_unused, index) => (BigInt(index) < more ? least + 1n : least));
}

/**
 * Works a spray out for one visit: finished volume from the carrier rate and the treated area, to the nearest mark of
 * the tank's gauge; loads by the tank's size; each product of each load rounded by itself to its tool's mark, never above
 * the label's highest rate on the ground that the load covers. The loads add up to the visit and the lawns add up to it.
 * Throws when there is no treatment or no area.
 */
export function mixSpray(
  treatments: readonly SprayTreatment[],
  lawns: readonly TreatedLawn[],
  settings: TicketSettings,
): { readonly mix: SprayMix; readonly findings: readonly Finding[] } {
  const ordered = inMixingOrder(treatments);
  const gear = ordered[0]?.gear;
  const area = sum("area", lawns.map(({ treatedArea }) => treatedArea));
  invariant(gear !== undefined && area.amount > 0n, "a spray has products and ground");
  const mark = canonicalAmountOf(settings.tankMark);
  const marksOf = (volume: Measure<"volume">, mode: "nearest" | "down") => roundToWhole(divideRational(canonicalAmountOf(volume), mark), mode);
  const wantedMarks = marksOf(times(gear.carrier.rate, area), "nearest");
  const marks = wantedMarks === 0n ? 1n : wantedMarks;
  const volumeOfMarks = (count: bigint) => settle(multiplyExact(settings.tankMark, rational(count)), "nearest");
  const shares = loadMarks(marks, marksOf(gear.capacity, "down"), settings.tankLoads);
  const loads = shares.map((share, index) => tankLoad(ordered, { number: index + 1, finished: volumeOfMarks(share), part: rational(share, marks), area }));
  const finished = sum("volume", loads.map((load) => load.finished));
  const products = ordered.map((treatment) => sprayedProduct(treatment, gear, loads));
  const weights = lawns.map(({ treatedArea }) => treatedArea.amount);
  const volumes = allocate(finished, weights);
  const perLawn = products.map(({ total }) => allocate<"mass" | "volume">(total, weights));
  const mix: SprayMix = {
    kind: "spray",
    gearName: gear.name,
    carrier: gear.carrier,
    finished,
    products,
    loads,
    lawns: lawns.map((lawn, index) => ({
      ...lawn,
      finished: volumes[index] ?? { dimension: "volume", amount: 0n },
      products: products.map(({ line }, product) => ({
        line,
        amount: (perLawn[product]?.[index] ?? { dimension: "volume", amount: 0n }),
        marks: null,
      })),
    })),
    steps: mixingSteps(ordered),
  };
  return { mix, findings: sprayFindings(ordered, mix, gear) };
}

interface LoadShare {
  readonly number: number;
  readonly finished: Quantity<"volume">;
  /** What part of the visit this load is. */
  readonly part: Rational;
  readonly area: Quantity<"area">;
}

function tankLoad(treatments: readonly SprayTreatment[], { number, finished, part, area }: LoadShare): TankLoad {
  const ground = multiplyExact(area, part);
  const products = treatments.map(({ line, rate, use, tool }): SprayedAmount => {
    const wanted = rateTimes(rate, ground);
    const most = use.rates.basis === rate.basis ? rateTimes(use.rates.high, ground) : wanted;
    const fitting = tool !== "none" && tool.mark.dimension === wanted.dimension ? tool : undefined;
    const measured = measureOut<"mass" | "volume">(wanted, most, fitting);
    return { line, amount: measured.amount, marks: measured.marks };
  });
  const liquid = products.reduce((total, { amount }) => total + (amount.dimension === "volume" ? amount.amount : 0n), 0n);
  invariant(liquid <= finished.amount, "the products of a load fit into its finished volume");
  return { number, finished, products, water: { dimension: "volume", amount: finished.amount - liquid } };
}

function sprayedProduct(treatment: SprayTreatment, gear: TicketSprayer, loads: readonly TankLoad[]): SprayedProduct {
  const { line, label, rate, tool } = treatment;
  const amounts = loads.map(({ products }) => products.find((product) => product.line === line)?.amount);
  const amount = amounts.reduce((total, part) => total + (part?.amount ?? 0n), 0n);
  const isMass = rate.basis === "product-mass-per-area";
  return {
    line,
    productName: label.productName,
    toolName: tool === "none" ? null : tool.name,
    total: isMass ? { dimension: "mass", amount } : { dimension: "volume", amount },
    concentration: isMass ? concentrationInSpray(rate, gear.carrier.rate) : concentrationInSpray(rate, gear.carrier.rate),
  };
}

/** The order of the tank in sentences. Common practice (half the water first, agitation); a label's own order wins. */
function mixingSteps(treatments: readonly SprayTreatment[]): readonly string[] {
  return [
    "Fill the tank half full with water and start the agitation.",
    ...treatments.map(({ label }) => `Add ${label.productName} (${label.formulation}); let it mix in before the next.`),
    "Fill up with water to the finished volume; keep the agitation on until the tank is empty.",
  ];
}

function sprayFindings(treatments: readonly SprayTreatment[], mix: SprayMix, gear: TicketSprayer): readonly Finding[] {
  const findings: Finding[] = [];
  for (const { line, label, tool } of treatments) {
    const marks = mix.loads.map(({ products }) => products.find((product) => product.line === line)?.marks);
    if (tool === "none") findings.push(noTool(label.productName, "a cup or scale"));
    else if (marks.includes(null)) findings.push(belowFirstMark(label.productName, "a load", tool.name));
  }
  if (gear.holdUp === "unknown") {
    findings.push(
      takeCare({
        rule: "hold-up-not-measured",
        source: "house",
        what: `What pump and hose of ${gear.name} hold is not known.`,
        toDo: "Measure the hose once: the next lawn gets the last mix first.",
        about: [gear.name],
      }),
    );
  } else if (gear.holdUp.amount > 0n) {
    const isMore = compare(gear.holdUp, mix.finished) >= 0;
    const words = {
      rule: "hold-up",
      source: "handbook",
      what: `Pump and hose of ${gear.name} hold ${formatQuantity(gear.holdUp, "us")}: this lawn gets the last mix first.`,
      ...(isMore ? { figure: `That is all of the ${formatQuantity(mix.finished, "us")} of this visit.` } : {}),
      toDo: "Make sure that the mix in the hose may go on this lawn.",
      about: [gear.name],
    } as const;
    findings.push(isMore ? takeCare(words) : note(words));
  }
  return findings;
}
