import { latestOfEach } from "#domain/mixing/tank-contents";
import { type FilledBefore, type FilledMix } from "#domain/mixing/tank-plan-question";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { mixAlone, type MixedForVisit, mixedForVisits } from "#application/fills/mixed-for-visits";
import { type LabelsRead, labelsOfProducts } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

/** A fill with what its tank held when it was made. */
export interface FilledOnto {
  readonly equipmentId: string;
  readonly filled: FilledMix;
  /** What was in the tank then since its last clean-out. */
  readonly onto: FilledBefore;
}

/** What a tank was filled with, in the words and by the labels of today. */
export function filledMixOf({ number, finished, products }: FillOfTank, labels: LabelsRead): FilledMix {
  return {
    name: `fill ${String(number)}`,
    finished,
    products: products.map(({ productId, name, amount }) => ({ productId, productName: name, label: labels.get(productId)?.confirmed?.facts ?? "unknown", amount })),
  };
}

/** The fills that a fill went on top of, by id, and since when the tank is known to have been clean before them. */
export interface FillsBelow {
  readonly equipmentId: string;
  /** Milliseconds since 1970. */
  readonly filledAt: number;
  readonly fillIds: readonly string[];
  /** The last clean-out before it, in milliseconds since 1970; null where none is on file. */
  readonly cleanedAt: number | null;
}

interface BelowFill {
  readonly fill_id: string;
  readonly equipment_id: string;
  readonly filled_at: Date;
  readonly below_ids: readonly string[] | null;
  readonly cleaned_at: Date | null;
}

/**
 * Reads what fills were in the tank when each of some fills was made, the latest first: since the last clean-out of that
 * sprayer, of each product the latest fill that had it. A clean-out in the minute of a fill came before it. In one query,
 * however many fills there are; the fills are in the order in which they were made.
 */
export async function fillsBelow({ tx, company: { companyId } }: Work, fillIds: readonly string[]): Promise<ReadonlyMap<string, FillsBelow>> {
  if (fillIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<BelowFill[]>`
    WITH asked AS (
      SELECT f.fill_id, f.equipment_id, f.filled_at, f.number,
        (SELECT max(c.cleaned_at) FROM clean_out c WHERE c.company_id = f.company_id AND c.equipment_id = f.equipment_id AND c.cleaned_at <= f.filled_at) AS cleaned_at
      FROM fill f WHERE f.company_id = ${companyId}::uuid AND f.fill_id = ANY(${[...fillIds]}::uuid[]))
    SELECT a.fill_id, a.equipment_id, a.filled_at, a.cleaned_at,
      (SELECT array_agg(latest.fill_id ORDER BY latest.filled_at DESC, latest.number DESC) FROM (
        SELECT DISTINCT f.fill_id, f.filled_at, f.number FROM (
          SELECT DISTINCT ON (l.product_id) b.fill_id, b.filled_at, b.number
          FROM fill b
          JOIN stock_entry e ON e.company_id = b.company_id AND e.stock_posting_id = b.stock_posting_id
          JOIN lot l ON l.company_id = e.company_id AND l.lot_id = e.lot_id
          WHERE b.company_id = ${companyId}::uuid AND b.equipment_id = a.equipment_id
            AND (b.filled_at, b.number) < (a.filled_at, a.number) AND (a.cleaned_at IS NULL OR b.filled_at >= a.cleaned_at)
          ORDER BY l.product_id, b.filled_at DESC, b.number DESC) f) latest) AS below_ids
    FROM asked a ORDER BY a.filled_at, a.number`;
  return new Map(
    rows.map((row) => [row.fill_id, { equipmentId: row.equipment_id, filledAt: row.filled_at.getTime(), fillIds: row.below_ids ?? [], cleanedAt: row.cleaned_at?.getTime() ?? null }]),
  );
}

/** What the books know of mixes: fills by id, what was mixed for visits alone with the latest first, and labels. */
export interface MixesOnFile {
  readonly fillOf: ReadonlyMap<string, FillOfTank>;
  readonly alone: readonly MixedForVisit[];
  readonly labels: LabelsRead;
}

/**
 * What a fill went onto, the latest first: fills and what was mixed for visits alone, of each product the latest that had it.
 * Unknown stands below them where no clean-out is on file. A clean-out in the minute in which a visit ended came after it.
 * @param below undefined: nothing is on file before it
 */
export function filledBeforeOf(below: FillsBelow | undefined, { fillOf, alone, labels }: MixesOnFile): FilledBefore {
  if (below === undefined) return ["unknown"];
  const { equipmentId, filledAt, cleanedAt, fillIds } = below;
  const fills = fillIds.flatMap((fillId) => {
    const fill = fillOf.get(fillId);
    return fill === undefined ? [] : [{ at: fill.filledAt, mix: filledMixOf(fill, labels) }];
  });
  const before = alone
    .filter((one) => one.equipmentId === equipmentId && one.endedAt <= filledAt && (cleanedAt === null || one.endedAt > cleanedAt))
    .map((one) => ({ at: one.endedAt, mix: mixAlone(one, labels) }));
  const mixes = latestOfEach([...fills, ...before].toSorted((one, other) => other.at - one.at).map(({ mix }) => mix));
  return cleanedAt === null ? [...mixes, "unknown"] : mixes;
}

/** The earliest of some moments, from which on what was mixed for visits alone is asked for; null where there is none. */
export function earliestOf(moments: readonly (number | null)[]): Date | null {
  const known = moments.flatMap((moment) => moment ?? []);
  return known.length === 0 ? null : new Date(Math.min(...known));
}

/** All products of some fills and of what was mixed for visits alone. */
export function productsOfMixes({ fillOf, alone }: Omit<MixesOnFile, "labels">): readonly string[] {
  return [...new Set([...fillOf.values(), ...alone].flatMap(({ products }) => products.map(({ productId }) => productId)))];
}

/** Reads what some fills went onto, by fill, in the order in which they were made. */
export async function filledOntoOf(work: Work, fillIds: readonly string[]): Promise<ReadonlyMap<string, FilledOnto>> {
  const before = await fillsBelow(work, fillIds);
  if (before.size === 0) return new Map();
  const { companyId } = work.company;
  const rows = await work.tx.fill.findMany({ where: { companyId, fillId: { in: [...new Set([...before].flatMap(([fillId, below]) => [fillId, ...below.fillIds]))] } } });
  const fillOf = await fillsInBooks(work, rows);
  const alone = await mixedForVisits(work, earliestOf([...before.values()].map(({ cleanedAt }) => cleanedAt)));
  const labels = await labelsOfProducts(work.tx, companyId, productsOfMixes({ fillOf, alone }));
  return new Map(
    [...before].flatMap(([fillId, below]): readonly (readonly [string, FilledOnto])[] => {
      const fill = fillOf.get(fillId);
      return fill === undefined ? [] : [[fillId, { equipmentId: fill.row.equipmentId, filled: filledMixOf(fill, labels), onto: filledBeforeOf(below, { fillOf, alone, labels }) }]];
    }),
  );
}
