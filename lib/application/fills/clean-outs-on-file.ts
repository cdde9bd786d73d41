import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { type RinsateWent, rinsateWords } from "#domain/mixing/clean-out";
import { type Work } from "#application/use-case";

/** A clean-out of a sprayer as it was written down. */
export interface CleanOutOnFile {
  readonly cleanOutId: string;
  readonly cleanedOn: CalendarDate;
  readonly cleanedAt: Date;
  readonly doneBy: string;
  readonly how: string;
  /** "into the shop's rinsate tank" */
  readonly rinsate: string;
}

interface CleanOutRow {
  readonly equipment_id: string;
  readonly clean_out_id: string;
  readonly cleaned_at: Date;
  readonly how: string;
  readonly rinsate_went: string;
  readonly rinsate_where: string | null;
  readonly done_by: string;
  readonly street: string | null;
}

/** The latest clean-out of each sprayer that has one on file, by equipment. One query, which picks them. */
export async function latestCleanOuts(work: Work): Promise<ReadonlyMap<string, CleanOutOnFile>> {
  const { companyId, timeZone } = work.company;
  const rows = await work.tx.$queryRaw<CleanOutRow[]>`
    SELECT c.equipment_id, c.clean_out_id, c.cleaned_at, c.how, c.rinsate_went, c.rinsate_where, who.name AS done_by, p.street
    FROM (SELECT DISTINCT ON (equipment_id) * FROM clean_out WHERE company_id = ${companyId}::uuid ORDER BY equipment_id, cleaned_at DESC, entered_at DESC) c
    JOIN person who ON who.company_id = c.company_id AND who.person_id = c.done_by_id
    LEFT JOIN visit v ON v.company_id = c.company_id AND v.visit_id = c.rinsate_visit_id
    LEFT JOIN property p ON p.company_id = v.company_id AND p.property_id = v.property_id
    ORDER BY c.equipment_id`;
  return new Map(
    rows.map((row) => [
      row.equipment_id,
      {
        cleanOutId: row.clean_out_id,
        cleanedAt: row.cleaned_at,
        cleanedOn: calendarDateIn(timeZone, row.cleaned_at.getTime()),
        doneBy: row.done_by,
        how: row.how,
        rinsate: rinsateWords(row.rinsate_went as RinsateWent, row.rinsate_where ?? row.street ?? ""),
      },
    ]),
  );
}
