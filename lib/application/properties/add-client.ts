import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addClientSchema } from "#application/properties/add-client.schema";
import { createProperty } from "#application/properties/add-property";
import { useCase } from "#application/use-case";

/** Adds a customer with the first of their properties. Refused where the property is on file already. */
export const addClient = useCase("properties/add-client", addClientSchema, async (work, { name, phone, email, ...address }) => {
  await lockCompany(work.tx);
  const clientId = work.newId();
  await work.tx.client.create({ data: { companyId: work.company.companyId, clientId, name, phone, email, createdAt: work.now } });
  const property = await createProperty(work, clientId, address);
  if (!property.ok) return property;
  await writeDeed(work, clientId, { deed: "client-added", details: { name, street: address.street } });
  return accept({ clientId, propertyId: property.value });
});
