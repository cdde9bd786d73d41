import { accept } from "#domain/foundation/outcome";
import { type LocationKind, type PostingKind } from "#domain/stock/posting";
import { listMovementsSchema } from "#application/stock/list-movements.schema";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** So much of a lot that came to a location in one posting, with where it came from. */
export interface Movement {
  readonly stockPostingId: string;
  readonly line: number;
  readonly kind: PostingKind;
  readonly happenedAt: Date;
  readonly enteredAt: Date;
  readonly personName: string;
  readonly note: string | null;
  readonly lotNumber: string;
  /** Above zero. */
  readonly amount: bigint;
  readonly to: string;
  readonly toKind: LocationKind;
  readonly from: string;
}

const MOST = 100;

interface MovementRow {
  readonly stock_posting_id: string;
  readonly line: number;
  readonly kind: string;
  readonly happened_at: Date;
  readonly entered_at: Date;
  readonly person_name: string;
  readonly note: string | null;
  readonly lot_number: string;
  readonly amount: bigint;
  readonly to_name: string;
  readonly to_kind: string;
  readonly from_names: string | null;
}

/** What moved of a product, the newest first, at most a hundred lines. */
export const listMovements = useCase("stock/list-movements", listMovementsSchema, async (work, { productId }) => {
  const { companyId } = work.company;
  if ((await work.tx.product.count({ where: { companyId, productId } })) === 0) return notFound("product");
  const rows = await work.tx.$queryRaw<MovementRow[]>`
    SELECT p.stock_posting_id, e.line, p.kind, p.happened_at, p.entered_at, who.name AS person_name, p.note, l.number AS lot_number,
      e.amount, s.name AS to_name, s.kind AS to_kind,
      (SELECT string_agg(DISTINCT fs.name, ', ' ORDER BY fs.name) FROM stock_entry f
       JOIN stock_location fs ON fs.company_id = f.company_id AND fs.stock_location_id = f.stock_location_id
       WHERE f.company_id = e.company_id AND f.stock_posting_id = e.stock_posting_id AND f.lot_id = e.lot_id AND f.amount < 0) AS from_names
    FROM stock_entry e
    JOIN lot l ON l.company_id = e.company_id AND l.lot_id = e.lot_id
    JOIN stock_posting p ON p.company_id = e.company_id AND p.stock_posting_id = e.stock_posting_id
    JOIN stock_location s ON s.company_id = e.company_id AND s.stock_location_id = e.stock_location_id
    JOIN person who ON who.company_id = p.company_id AND who.person_id = p.person_id
    WHERE e.company_id = ${companyId}::uuid AND l.product_id = ${productId}::uuid AND e.amount > 0
    ORDER BY p.happened_at DESC, p.entered_at DESC, e.line
    LIMIT ${MOST}`;
  const movements = rows.map((row): Movement => ({
    stockPostingId: row.stock_posting_id,
    line: row.line,
    kind: row.kind as PostingKind,
    happenedAt: row.happened_at,
    enteredAt: row.entered_at,
    personName: row.person_name,
    note: row.note,
    lotNumber: row.lot_number,
    amount: row.amount,
    to: row.to_name,
    toKind: row.to_kind as LocationKind,
    from: row.from_names ?? "",
  }));
  return accept({ movements });
});
