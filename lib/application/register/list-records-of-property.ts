import { accept } from "#domain/foundation/outcome";
import { listRecordsOfPropertySchema } from "#application/register/list-records-of-property.schema";
import { recordOf } from "#application/register/read-record";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** So many records of one property are looked back upon: ten years of a full program. */
const MOST_RECORDS = 100;

/** What was put down on a property, the newest record first. */
export const listRecordsOfProperty = useCase("register/list-records-of-property", listRecordsOfPropertySchema, async (work, { propertyId }) => {
  const { companyId } = work.company;
  const property = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } }, select: { propertyId: true } });
  if (property === null) return notFound("property");
  const visits = await work.tx.visit.findMany({ where: { companyId, propertyId }, select: { visitId: true } });
  const rows = await work.tx.registerEntry.findMany({
    where: { companyId, kind: "record", visitId: { in: visits.map(({ visitId }) => visitId) } },
    orderBy: [{ startedAt: "desc" }, { number: "desc" }],
    take: MOST_RECORDS,
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  return accept({ records: rows.map((row) => recordOf({ ...row, person: { name: nameOf.get(row.personId) ?? "" } })) });
});
