import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addPersonSchema } from "#application/people/add-person.schema";
import { useCase } from "#application/use-case";

/** Adds someone to the crew's books. An account comes by invitation, if at all. */
export const addPerson = useCase("people/add-person", addPersonSchema, async (work, form) => {
  const personId = work.newId();
  await work.tx.person.create({ data: { companyId: work.company.companyId, personId, ...form, createdAt: work.now } });
  await writeDeed(work, personId, { deed: "person-added", details: { name: form.name } });
  return accept({ personId });
});
