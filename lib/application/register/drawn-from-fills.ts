import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { drawFromFill, type FillOnRecord } from "#domain/mixing/tank-fill";
import { besideItsLine, productNotPlanned } from "#domain/register/product-not-planned";
import { type MeasuredBy } from "#domain/register/record-content";
import { type Grass } from "#domain/turf/grass";
import { type ProductPutDown } from "#application/register/record-plan";

/** Where in the ledger a fill's spray comes from: out of the tank, or out of what was missing when the tank was measured later. */
export interface SourceAtHand {
  readonly stockLocationId: string;
  /** So much at most; null: all that is asked. */
  readonly upTo: Quantity<"volume"> | null;
}

/** A fill as it stands for a visit, with the product and number of each of its lots. */
export interface FillAtHand extends FillOnRecord {
  readonly fillId: string;
  readonly number: number;
  readonly mixingPlace: string;
  /** One after the other; the last one has no limit. */
  readonly sources: readonly SourceAtHand[];
  /** Where the tank was measured or cleaned out after the visit: the rest in which what it took is missing already; else null. */
  readonly fillRestId: string | null;
  readonly productOfLot: ReadonlyMap<string, string>;
  readonly numberOfLot: ReadonlyMap<string, string>;
}

/** Finished spray out of a fill. */
export interface DrawOfFill {
  readonly fill: FillAtHand;
  readonly sprayed: Quantity<"volume">;
}

/** What of one product came out with a draw. */
export interface DrawOfProduct extends DrawOfFill {
  readonly product: ProductAmount;
}

/** What was really used of one product, and where it came from. */
export interface ReallyUsed {
  readonly line: number;
  readonly measuredBy: MeasuredBy;
  readonly total: ProductAmount;
  readonly lots: readonly { readonly lotId: string; readonly from: string; readonly amount: bigint }[];
  /** The draws that it came out with, in their order; none for what came out of bags and jugs. */
  readonly draws: readonly DrawOfProduct[];
}

export interface UsedOfMix {
  readonly used: readonly ReallyUsed[];
  /** Once for a mix, however many products it has: one for each fill that any of it came out of. */
  readonly draws: readonly DrawOfFill[];
  readonly findings: readonly Finding[];
}

/** What is on file of the products that came out of fills. */
export interface ProductsInFills {
  readonly treatmentOf: (line: number) => ProductPutDown;
  /** The lines of what the fills hold beyond what was planned to come out of them. */
  readonly beside: readonly number[];
  /** Whether the visit plans a product on all of these lawns, wherever it was to come out of. */
  readonly isPlannedOn: (productId: string, zoneIds: readonly string[]) => boolean;
  readonly grassesOf: (zoneIds: readonly string[]) => readonly Grass[];
}

/** A draw with what it takes of each lot. */
interface DrawTaken {
  readonly draw: DrawOfFill;
  readonly lots: ReturnType<typeof takenFrom>;
}

/**
 * Gallons times what their own fill holds, fill by fill: of what was planned, and of everything else that was in it, which
 * went down too. A fill that nothing came out of is left out, unless nothing came out of any.
 * @param lines of the planned products
 * @param asked each fill at most once, in the order in which they were drawn from
 */
export function fromFills(lines: readonly number[], asked: readonly DrawOfFill[], measuredBy: MeasuredBy, { treatmentOf, beside, isPlannedOn, grassesOf }: ProductsInFills): UsedOfMix {
  const drawn = asked.filter(({ sprayed }) => sprayed.amount > 0n);
  const draws = drawn.length === 0 ? asked.slice(0, 1) : drawn;
  const taken = draws.map((draw): DrawTaken => ({ draw, lots: takenFrom(draw.fill, draw.sprayed) }));
  const unplanned = beside.map((line) => usedOf(line, treatmentOf(line), measuredBy, taken)).filter(({ total }) => total.amount > 0n);
  const planned = lines.map(treatmentOf);
  const notPlannedIn = ({ fill: { number, fillId } }: DrawOfFill) =>
    unplanned.flatMap(({ line, draws: own }) => {
      const { productId, productName, label, lawns } = treatmentOf(line);
      const amount = own.find(({ fill }) => fill.fillId === fillId)?.product;
      if (amount === undefined || amount.amount === 0n) return [];
      const zoneIds = lawns.map((lawn) => lawn.zoneId);
      const inFill = { productName, label, amount, fillNumber: number, grasses: grassesOf(zoneIds) };
      return [isPlannedOn(productId, zoneIds) ? besideItsLine(inFill) : productNotPlanned(inFill)];
    });
  const findings = draws.flatMap((draw) => [...findingsOfDraw(draw, planned), ...notPlannedIn(draw)]);
  return { used: [...lines.map((line) => usedOf(line, treatmentOf(line), measuredBy, taken)), ...unplanned], draws, findings };
}

/** What of one product came out of the fills that hold it; where none does, nothing of it came out of any of them. */
function usedOf(line: number, { productId, countedBy }: ProductPutDown, measuredBy: MeasuredBy, taken: readonly DrawTaken[]): ReallyUsed {
  const holding = taken.filter(({ draw: { fill } }) => holds(fill, productId));
  const parts = (holding.length === 0 ? taken : holding).map(({ draw, lots }) => {
    const own = lots.filter(({ lotId, amount }) => amount > 0n && draw.fill.productOfLot.get(lotId) === productId);
    const product: ProductAmount = { dimension: countedBy, amount: own.reduce((total, { amount }) => total + amount, 0n) };
    return { lots: own, draw: { ...draw, product } };
  });
  const draws = parts.map(({ draw }) => draw);
  return { line, measuredBy, total: { dimension: countedBy, amount: draws.reduce((total, { product }) => total + product.amount, 0n) }, lots: parts.flatMap(({ lots }) => lots), draws };
}

function holds({ lots, productOfLot }: FillAtHand, productId: string): boolean {
  return lots.some(({ lotId }) => productOfLot.get(lotId) === productId);
}

function findingsOfDraw({ fill, sprayed }: DrawOfFill, planned: readonly ProductPutDown[]): readonly Finding[] {
  const names = planned.filter(({ productId }) => !holds(fill, productId)).map(({ productName }) => productName);
  return [
    ...drawFromFill(fill, sprayed, `fill ${String(fill.number)}`).findings,
    ...(fill.fillRestId === null ? [] : [settledSince(fill)]),
    ...(names.length > 0 ? [otherMix(fill, names)] : []),
  ];
}

/** How much of a draw comes from each source, one after the other. */
function partsOfDraw(sources: FillAtHand["sources"], sprayed: Quantity<"volume">): readonly (SourceAtHand & { readonly part: bigint })[] {
  let rest = sprayed.amount;
  return sources.map((source) => {
    const part = source.upTo === null || source.upTo.amount > rest ? rest : source.upTo.amount;
    rest -= part;
    return { ...source, part };
  });
}

/** What a draw takes of each lot, source after source. */
function takenFrom(fill: FillAtHand, sprayed: Quantity<"volume">): readonly { readonly lotId: string; readonly from: string; readonly amount: bigint }[] {
  let drawn = fill.drawn.amount;
  return partsOfDraw(fill.sources, sprayed).flatMap(({ stockLocationId, part }) => {
    const { lots } = drawFromFill({ ...fill, drawn: { dimension: "volume", amount: drawn } }, fromAmount("volume", part), "");
    drawn += part;
    return lots.map(({ lotId, amount }) => ({ lotId, from: stockLocationId, amount }));
  });
}

/** The fill as it stands for the next draw of the same visit. */
export function lessDrawn({ fill, sprayed }: DrawOfFill): FillAtHand {
  const sources = partsOfDraw(fill.sources, sprayed).map(
    ({ stockLocationId, upTo, part }): SourceAtHand => ({ stockLocationId, upTo: upTo === null ? null : fromAmount("volume", upTo.amount - part) }),
  );
  return { ...fill, sources, drawn: { dimension: "volume", amount: fill.drawn.amount + sprayed.amount } };
}

function settledSince({ number }: FillAtHand): Finding {
  return note({
    rule: "fill-settled-since",
    source: "stock",
    what: `The tank of fill ${String(number)} was measured or cleaned out after this visit.`,
    figure: "What was sprayed here was missing from it then, so it is taken from there and no more out of the tank.",
    about: [],
  });
}

function otherMix({ number }: FillAtHand, missing: readonly string[]): Finding {
  return takeCare({
    rule: "fill-of-another-mix",
    source: "stock",
    what: `Fill ${String(number)} is not the mix that was planned here.`,
    figure: `It holds none of ${missing.join(" and ")}.`,
    toDo: "Tell the license holder, and look at the label of what really went down.",
    about: missing,
  });
}
