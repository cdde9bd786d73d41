import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { type WorkingInput } from "#domain/foundation/working";
import { type ExactQuantity, multiplyExact, sumExact } from "#domain/quantities/exact-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { shareWords } from "#domain/quantities/share";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { inUnit, sumLine } from "#domain/mixing/ticket-working-words";

type Mass = ExactQuantity<"mass">;

/** What one treatment brings a lawn of an ingredient or nutrient. */
export interface BroughtByLine {
  readonly line: number;
  /** The product's. */
  readonly name: string;
  readonly mass: Mass;
}

/** One area of a lawn on which something goes, with what of it goes there. */
export interface Ground {
  readonly area: Quantity<"area">;
  /** After "of Front, ". */
  readonly from: string;
  /** Product by product. */
  readonly parts: readonly Mass[];
  readonly total: Mass;
}

/**
 * The areas on which something goes, each with what goes there: of the products that bring it and of no others, since ground
 * that another product covers takes nothing off theirs. Spot work counts on its spots, as labels and laws limit it; over the lawn
 * that they are a share of it is counted in the year's ledger alone.
 */
export function groundsOf(brought: readonly BroughtByLine[], mixes: MixTicket["mixes"], zoneId: string): readonly Ground[] {
  const placed = brought.flatMap((one) => {
    const lawn = lawnOf(one.line, mixes, zoneId);
    if (lawn === undefined) return [];
    const { spot, treatedArea } = lawn;
    return [{ ...one, area: treatedArea, share: spot?.shareBasisPoints ?? null }];
  });
  const groups = groupedBy(placed.filter(({ area }) => area.amount > 0n), ({ area, share }) => `${String(area.amount)} ${String(share)}`);
  return [...groups.values()].flatMap((own): readonly Ground[] => {
    const [first] = own;
    if (first === undefined) return [];
    const names = [...new Set(own.map(({ name }) => name))];
    const parts = own.map(({ mass }) => mass);
    const from = first.share === null ? `where ${listWords(names)} ${names.length === 1 ? "goes" : "go"}` : `spot work on ${shareWords(first.share)} of it`;
    return [{ area: first.area, from, parts, total: sumExact("mass", parts) }];
  });
}

function lawnOf(line: number, mixes: MixTicket["mixes"], zoneId: string) {
  const mix = mixes.find((one) => (one.kind === "granular" ? one.line === line : one.products.some((product) => product.line === line)));
  return mix?.lawns.find((lawn) => lawn.zoneId === zoneId);
}

/** The areas as figures to start from. */
export function groundInputs(grounds: readonly Ground[], lawnName: string): readonly WorkingInput[] {
  return grounds.map(({ area, from }) => ({ name: "Treated area", figure: inUnit(area, "sq ft"), from: `of ${lawnName}, ${from}` }));
}

/**
 * From what goes on each area to what that is on so much ground, added up over the areas: smaller ones lie within the larger, as
 * what is kept clear beside water does, and spots within the lawn, so that some ground gets all of it.
 */
export function groundLines(grounds: readonly Ground[], per: Quantity<"area">): { readonly lines: readonly string[]; readonly total: Mass } {
  const each = grounds.map((ground) => ({ ...ground, onEach: multiplyExact(ground.total, rational(per.amount, ground.area.amount)) }));
  const onEach = each.map((ground) => ground.onEach);
  const total = sumExact("mass", onEach);
  const lines = each.flatMap((ground) => [
    ...(ground.parts.length > 1 ? [sumLine(ground.parts, ground.total, "lb")] : []),
    `${inUnit(ground.total, "lb")} ÷ ${inUnit(ground.area, "sq ft")} × ${inUnit(per, "sq ft")} = ${inUnit(ground.onEach, "lb")}`,
  ]);
  return { lines: onEach.length > 1 ? [...lines, sumLine(onEach, total, "lb")] : lines, total };
}
