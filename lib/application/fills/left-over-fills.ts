import { leftBy } from "#domain/mixing/tank-books";
import { amountOfMarks } from "#domain/quantities/rounding";
import { houseSettingsOf } from "#application/companies/house-settings";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { type Work } from "#application/use-case";

interface LeftOverRow {
  readonly fill_id: string;
  readonly equipment_id: string;
  readonly filled_at: Date;
}

/** A fill whose own visits are over, with something left for others. */
export interface LeftOverFill {
  readonly fill: FillOfTank;
  /** What was filled on top of it since, used up or not, in the order in which it was made: under another mix it can't be had. */
  readonly onTop: readonly FillOfTank[];
}

/**
 * What is left over in the tanks: the fills that were not cleaned out and have a mark of the gauge or more left by the books, in
 * the order in which they were made. While a visit that a fill was made for is not recorded, what is left of it is that
 * visit's, unless the tank was measured on the visit's day or later. The number of queries does not hang on that of fills.
 * @param missingSince also those of which something was missing when their tank was measured or cleaned out at or after this
 *   moment, and no record has explained it since: a visit from before may have taken it; null: none of them
 */
export async function leftOverFills(work: Work, missingSince: Date | null): Promise<readonly LeftOverFill[]> {
  const { companyId, timeZone } = work.company;
  const mark = amountOfMarks((await houseSettingsOf(work)).tankMark, 1n).amount;
  const read = await work.tx.$queryRaw<LeftOverRow[]>`
    WITH settled AS (
      SELECT DISTINCT ON (fill_id) fill_id, remaining, (settled_at AT TIME ZONE ${timeZone})::date AS settled_on
      FROM fill_rest WHERE company_id = ${companyId}::uuid ORDER BY fill_id, settled_at DESC, (clean_out_id IS NOT NULL) DESC)
    SELECT f.fill_id, f.equipment_id, f.filled_at FROM fill f LEFT JOIN settled s ON s.fill_id = f.fill_id
    WHERE f.company_id = ${companyId}::uuid
      AND ((coalesce(s.remaining, f.finished_volume - (SELECT coalesce(sum(d.volume), 0) FROM fill_draw d WHERE d.company_id = f.company_id AND d.fill_id = f.fill_id)) >= ${mark}
          AND NOT EXISTS (SELECT 1 FROM clean_out c WHERE c.company_id = f.company_id AND c.equipment_id = f.equipment_id AND c.cleaned_at > f.filled_at))
        OR EXISTS (SELECT 1 FROM fill_rest m WHERE m.company_id = f.company_id AND m.fill_id = f.fill_id AND m.settled_at >= ${missingSince}::timestamptz AND m.in_the_books > m.remaining))
      AND NOT EXISTS (
        SELECT 1 FROM visit v
        LEFT JOIN stop t ON t.company_id = v.company_id AND t.visit_id = v.visit_id
        LEFT JOIN route_day d ON d.company_id = t.company_id AND d.route_day_id = t.route_day_id
        WHERE v.company_id = f.company_id AND v.visit_id = ANY(f.planned_visit_ids) AND v.state = 'planned' AND (s.settled_on IS NULL OR d.date > s.settled_on))
    ORDER BY f.filled_at, f.number`;
  const [first] = read;
  if (first === undefined) return [];
  const rows = await work.tx.fill.findMany({ where: { companyId, equipmentId: { in: read.map((one) => one.equipment_id) }, filledAt: { gte: first.filled_at } }, orderBy: [{ filledAt: "asc" }, { number: "asc" }] });
  const fillOf = await fillsInBooks(work, rows);
  const inTurn = rows.flatMap(({ fillId }) => fillOf.get(fillId) ?? []);
  return read.flatMap((one) => {
    const fill = fillOf.get(one.fill_id);
    if (fill === undefined || (leftBy(fill, Infinity).amount < mark && !isMissingSince(fill, missingSince))) return [];
    return [{ fill, onTop: inTurn.slice(inTurn.indexOf(fill) + 1).filter(({ row }) => row.equipmentId === fill.row.equipmentId) }];
  });
}

function isMissingSince({ rests, draws }: FillOfTank, since: Date | null): boolean {
  return since !== null && rests.some(({ fillRestId, settledAt, inTheBooks, left }) => {
    const explained = draws.reduce((sum, draw) => sum + (draw.fillRestId === fillRestId ? draw.sprayed.amount : 0n), 0n);
    return settledAt >= since.getTime() && inTheBooks.amount - left.amount > explained;
  });
}
