import { accept, type Outcome } from "#domain/foundation/outcome";
import { groupedBy } from "#domain/foundation/grouping";
import { type AftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { type RecordContent } from "#domain/register/record-content";
import { type Span } from "#domain/weather/local-hours";
import { timeZoneDataVersion } from "#adapters/time-zone-data";
import { type LawnFacts, lawnsWithPast } from "#application/visits/ticket-facts";
import { aftercareOfVisit, type LineApplied } from "#application/visits/visit-aftercare";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";

/** From when until when the work of a record was really done. */
export function spanOfRecord({ startedAt, endedAt }: Pick<RecordContent, "startedAt" | "endedAt">): Span {
  return { fromEpochMilliseconds: Date.parse(startedAt), untilEpochMilliseconds: Date.parse(endedAt) };
}

/**
 * The aftercare of a visit as its record has it: the products that really went down on the lawns that really got them, at
 * the real times, by their labels as they are on file, after what was put down before. What was left out has none, and a sign
 * that was never put up is not to be left up.
 */
export async function aftercareOfRecord(work: Work, visit: VisitRow, done: Span): Promise<Outcome<readonly AftercareOfLawns[]>> {
  const { lawnsByProperty } = await lawnsWithPast(work, [visit.property.propertyId]);
  const lawns = lawnsByProperty.get(visit.property.propertyId) ?? [];
  const setting = { timeZone: work.company.timeZone, zoneDataVersion: timeZoneDataVersion(), span: done };
  return lawns.length === 0 ? accept([]) : aftercareOfVisit(visit, lawns, appliedByRecord(visit, lawns), setting);
}

/** What the record of a visit put down, line by line, with the lawns that got it. */
function appliedByRecord({ visitId }: VisitRow, lawns: readonly LawnFacts[]): readonly LineApplied[] {
  const own = lawns.flatMap(({ lawn: { zoneId }, putDown }) => putDown.filter((one) => one.visitId === visitId).map((one) => ({ ...one, zoneId })));
  return [...groupedBy(own, ({ line }) => line).values()].flatMap((parts) => {
    const [first] = parts;
    return first === undefined ? [] : [{ line: first.line, label: first.label, application: first.application, hasSign: first.signIsUp, zoneIds: parts.map(({ zoneId }) => zoneId) }];
  });
}
