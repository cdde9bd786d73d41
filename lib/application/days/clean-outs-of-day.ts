import { type Work } from "#application/use-case";

interface FillOfDay {
  readonly equipment_id: string;
  /** Of its visits those of the day that nobody has recorded. */
  readonly open_visit_ids: readonly string[];
  readonly is_after_clean_out: boolean;
}

/**
 * By sprayer, the visits of a day before which a clean-out is on file although visits of an earlier fill are still to be
 * recorded: where the crew filled, cleaned out and filled again, the plan would else ask for that clean-out once more. The
 * visit is the first one that the later fill was made for. Where the earlier fill's visits come later on the route or are
 * recorded, what the tank holds says it all, and no visit is named.
 * @param visitIdsOfDay in the order of the route
 */
export async function cleanOutsOfDay(work: Work, visitIdsOfDay: readonly string[]): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
  const { companyId } = work.company;
  const fills = await work.tx.$queryRaw<FillOfDay[]>`
    WITH own AS (
      SELECT f.*, lag(f.filled_at) OVER (PARTITION BY f.equipment_id ORDER BY f.filled_at, f.number) AS before
      FROM fill f WHERE f.company_id = ${companyId}::uuid)
    SELECT o.equipment_id,
      ARRAY(SELECT v.visit_id FROM visit v WHERE v.company_id = o.company_id AND v.visit_id = ANY(o.planned_visit_ids) AND v.state = 'planned') AS open_visit_ids,
      EXISTS (SELECT FROM clean_out c WHERE c.company_id = o.company_id AND c.equipment_id = o.equipment_id
        AND c.cleaned_at <= o.filled_at AND c.cleaned_at > o.before) AS is_after_clean_out
    FROM own o WHERE o.planned_visit_ids && ${[...visitIdsOfDay]}::uuid[] ORDER BY o.equipment_id, o.filled_at, o.number`;
  const placeOf = new Map(visitIdsOfDay.map((visitId, place) => [visitId, place]));
  const named = new Map<string, Set<string>>();
  const firstOpenOf = new Map<string, number>();
  for (const { equipment_id: equipmentId, open_visit_ids: openVisitIds, is_after_clean_out: isAfterCleanOut } of fills) {
    const place = Math.min(...openVisitIds.flatMap((visitId) => placeOf.get(visitId) ?? []));
    const earlier = firstOpenOf.get(equipmentId) ?? Infinity;
    const visitId = visitIdsOfDay[place];
    if (isAfterCleanOut && earlier < place && visitId !== undefined) named.set(equipmentId, new Set([...(named.get(equipmentId) ?? []), visitId]));
    firstOpenOf.set(equipmentId, Math.min(earlier, place));
  }
  return named;
}
