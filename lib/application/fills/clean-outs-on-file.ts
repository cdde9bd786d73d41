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

/** The latest clean-out of each sprayer that has one on file, by equipment. */
export async function latestCleanOuts(work: Work): Promise<ReadonlyMap<string, CleanOutOnFile>> {
  const { companyId, timeZone } = work.company;
  const rows = await work.tx.cleanOut.findMany({
    where: { companyId },
    orderBy: [{ equipmentId: "asc" }, { cleanedAt: "desc" }, { enteredAt: "desc" }],
    distinct: ["equipmentId"],
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ doneById }) => doneById) } } });
  const visits = await work.tx.visit.findMany({ where: { companyId, visitId: { in: rows.flatMap(({ rinsateVisitId }) => rinsateVisitId ?? []) } } });
  const properties = await work.tx.property.findMany({ where: { companyId, propertyId: { in: visits.map(({ propertyId }) => propertyId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const streetOfProperty = new Map(properties.map(({ propertyId, street }) => [propertyId, street]));
  const streetOf = new Map(visits.map(({ visitId, propertyId }) => [visitId, streetOfProperty.get(propertyId) ?? ""]));
  return new Map(
    rows.map(({ equipmentId, cleanOutId, cleanedAt, doneById, how, rinsateWent, rinsateVisitId, rinsateWhere }) => [
      equipmentId,
      {
        ...{ cleanOutId, cleanedAt, how },
        cleanedOn: calendarDateIn(timeZone, cleanedAt.getTime()),
        doneBy: nameOf.get(doneById) ?? "",
        rinsate: rinsateWords(rinsateWent as RinsateWent, rinsateWhere ?? streetOf.get(rinsateVisitId ?? "") ?? ""),
      },
    ]),
  );
}
