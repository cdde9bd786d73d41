import { type Finding, takeCare } from "#domain/foundation/finding";
import { type Outcome } from "#domain/foundation/outcome";
import { parseNumber } from "#domain/quantities/parse-number";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { multiplyRational, rational, roundToWhole } from "#domain/quantities/rational";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { type ProductAmount, type SprayMix } from "#domain/mixing/spray-mix";
import { drawFromFill, type FillOnRecord } from "#domain/mixing/tank-fill";
import { type LotAtPlace, takeDown } from "#domain/register/put-down";
import { type MeasuredBy } from "#domain/register/record-content";
import { badField, type UseCaseRefusal } from "#application/refusal";

/** What a form said of one mix. */
export interface MixEntered {
  readonly measuredBy: MeasuredBy;
  readonly amount: string;
  readonly fillId: string | null;
}

/** A fill as it stands, with its tank and the product of each of its lots. */
export interface FillAtHand extends FillOnRecord {
  readonly fillId: string;
  readonly number: number;
  readonly mixingPlace: string;
  readonly tankLocationId: string;
  readonly productOfLot: ReadonlyMap<string, string>;
}

/** What was really used of one product, and where it came from. */
export interface ReallyUsed {
  readonly line: number;
  readonly total: ProductAmount;
  readonly lots: readonly { readonly lotId: string; readonly from: string; readonly amount: bigint }[];
  readonly draw: { readonly fill: FillAtHand; readonly sprayed: Quantity<"volume"> } | null;
}

export interface UsedOfMix {
  readonly used: readonly ReallyUsed[];
  readonly findings: readonly Finding[];
}

type UsedOutcome = Outcome<UsedOfMix, UseCaseRefusal>;

interface ProductOfLine {
  readonly productId: string;
  readonly productName: string;
  readonly dimension: "mass" | "volume";
}

/** What one mix really used, from a fill or from bags and jugs. `lotsOf` gives the lots of a product place by place. */
export function reallyUsed(
  mix: GranularMix | SprayMix,
  entered: MixEntered,
  fill: FillAtHand | undefined,
  productOf: (line: number) => ProductOfLine,
  lotsOf: (productId: string) => readonly (readonly (LotAtPlace & { readonly containerSize?: bigint })[])[],
): UsedOutcome {
  const key = `mixes.${String(mix.kind === "granular" ? mix.line : (mix.products[0]?.line ?? 0))}.amount`;
  if (mix.kind === "spray") {
    const sprayed = volumeOf(entered, mix.finished, key);
    if (!sprayed.ok) return sprayed;
    return { ok: true, value: fill === undefined ? fromJugs(mix, sprayed.value, productOf, lotsOf) : fromFill(mix, sprayed.value, fill, productOf) };
  }
  const product = productOf(mix.line);
  const total = massOf(entered, mix.total, lotsOf(product.productId), key);
  if (!total.ok) return total;
  const { taken, findings } = takeDown(product.productName, total.value, lotsOf(product.productId));
  const lots = taken.map(({ lotId, stockLocationId, amount }) => ({ lotId, from: stockLocationId, amount }));
  return { ok: true, value: { used: [{ line: mix.line, total: total.value, lots, draw: null }], findings } };
}

function volumeOf({ measuredBy, amount }: MixEntered, planned: Quantity<"volume">, key: string): Outcome<Quantity<"volume">, UseCaseRefusal> {
  if (measuredBy === "as-planned-not-measured") return { ok: true, value: planned };
  if (measuredBy === "bags" || measuredBy === "weight") return badField(key, "A spray is measured in gallons, or it is as planned.");
  const read = parseQuantity(amount, { field: key, dimensions: ["volume"], unitWhenNone: "gal" });
  return read.ok ? { ok: true, value: read.value.quantity } : badField(key, read.refusal.sentence);
}

function massOf(
  { measuredBy, amount }: MixEntered,
  planned: Quantity<"mass">,
  places: readonly (readonly { readonly containerSize?: bigint }[])[],
  key: string,
): Outcome<Quantity<"mass">, UseCaseRefusal> {
  if (measuredBy === "as-planned-not-measured") return { ok: true, value: planned };
  if (measuredBy === "meter") return badField(key, "What is spread is measured in bags or weighed, or it is as planned.");
  if (measuredBy === "weight") {
    const read = parseQuantity(amount, { field: key, dimensions: ["mass"], unitWhenNone: "lb" });
    return read.ok ? { ok: true, value: read.value.quantity } : badField(key, read.refusal.sentence);
  }
  const bags = parseNumber(key, amount.replace(/\s*bags?$/iu, ""));
  if (!bags.ok) return badField(key, "Say how many bags were used, such as 1½ or 0.25.");
  const size = places.flat().find(({ containerSize }) => containerSize !== undefined)?.containerSize;
  if (size === undefined) return badField(key, "What a bag holds is not on file. Weigh it instead.");
  return { ok: true, value: fromAmount("mass", roundToWhole(multiplyRational(bags.value, rational(size)), "nearest")) };
}

function fromFill(mix: SprayMix, sprayed: Quantity<"volume">, fill: FillAtHand, productOf: (line: number) => ProductOfLine): UsedOfMix {
  const drawn = drawFromFill(fill, sprayed, `fill ${String(fill.number)}`);
  const planned = new Set(mix.products.map(({ line }) => productOf(line).productId));
  const others = drawn.lots.some(({ lotId, amount }) => amount > 0n && !planned.has(fill.productOfLot.get(lotId) ?? ""));
  const used = mix.products.map(({ line }, index): ReallyUsed => {
    const { productId, dimension } = productOf(line);
    const lots = drawn.lots.filter(({ lotId, amount }) => amount > 0n && fill.productOfLot.get(lotId) === productId);
    const amount = lots.reduce((total, lot) => total + lot.amount, 0n);
    return {
      line,
      total: { dimension, amount },
      lots: lots.map((lot) => ({ lotId: lot.lotId, from: fill.tankLocationId, amount: lot.amount })),
      draw: index === 0 ? { fill, sprayed } : null,
    };
  });
  const missing = used.filter(({ total }) => total.amount === 0n).map(({ line }) => productOf(line).productName);
  return { used, findings: [...drawn.findings, ...(others || missing.length > 0 ? [otherMix(fill, missing)] : [])] };
}

function otherMix({ number }: FillAtHand, missing: readonly string[]): Finding {
  return takeCare({
    rule: "fill-of-another-mix",
    source: "stock",
    what: `Fill ${String(number)} is not the mix that was planned here.`,
    ...(missing.length === 0 ? { figure: "It holds more than was planned." } : { figure: `It holds none of ${missing.join(" and ")}.` }),
    toDo: "Tell the license holder, and look at the label of what really went down.",
    about: missing,
  });
}

/** Mixed at the site for this lawn alone: each product in the planned proportion of what was sprayed. */
function fromJugs(
  mix: SprayMix,
  sprayed: Quantity<"volume">,
  productOf: (line: number) => ProductOfLine,
  lotsOf: (productId: string) => readonly (readonly LotAtPlace[])[],
): UsedOfMix {
  const findings: Finding[] = [];
  const used = mix.products.map(({ line, total }): ReallyUsed => {
    const { productId, productName } = productOf(line);
    const amount = roundToWhole(multiplyRational(rational(total.amount), rational(sprayed.amount, mix.finished.amount)), "nearest");
    const taken = takeDown(productName, { dimension: total.dimension, amount }, lotsOf(productId));
    findings.push(...taken.findings);
    return {
      line,
      total: { dimension: total.dimension, amount },
      lots: taken.taken.map((lot) => ({ lotId: lot.lotId, from: lot.stockLocationId, amount: lot.amount })),
      draw: null,
    };
  });
  return { used, findings };
}
