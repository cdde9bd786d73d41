import { lockCompany } from "#adapters/postgres/company-work";
import { positionOfZip } from "#adapters/zip-codes";
import { type UsState } from "#domain/company/us-state";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { addressKey } from "#domain/properties/customer-row";
import { writeDeed } from "#application/audit-trail";
import { addPropertySchema } from "#application/properties/add-property.schema";
import { badField, notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

export interface Address {
  readonly street: string;
  readonly city: string;
  readonly state: UsState;
  readonly zip: string;
}

/** Where a property lies as far as its ZIP code tells; the columns of a row. */
export function positionColumns(zip: string) {
  const position = positionOfZip(zip);
  return position === undefined ? {} : { ...position, positionOrigin: "zip-centroid" };
}

/** The property that stands at an address already, if one does, other than the one that is asked for. */
export async function propertyAt(work: Work, { street, zip }: Pick<Address, "street" | "zip">, exceptPropertyId?: string) {
  const near = await work.tx.property.findMany({
    where: { companyId: work.company.companyId, zip: { gte: zip.slice(0, 5), lte: `${zip.slice(0, 5)}-9999` } },
    select: { propertyId: true, street: true, zip: true },
  });
  return near.find((each) => each.propertyId !== exceptPropertyId && addressKey(each.street, each.zip) === addressKey(street, zip));
}

/** Writes a property, in a transaction that holds the company's row. Refused where the address is on file already. */
export async function createProperty(work: Work, clientId: string, address: Address): Promise<Outcome<string, UseCaseRefusal>> {
  if ((await propertyAt(work, address)) !== undefined) return badField("street", `${address.street} is on file already.`);
  const propertyId = work.newId();
  await work.tx.property.create({
    data: { companyId: work.company.companyId, propertyId, clientId, ...address, ...positionColumns(address.zip), createdAt: work.now },
  });
  return accept(propertyId);
}

/** Adds another property of a customer; it lies at its ZIP code's middle until somebody says better. */
export const addProperty = useCase("properties/add-property", addPropertySchema, async (work, { clientId, ...address }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const client = await work.tx.client.findUnique({ where: { companyId_clientId: { companyId, clientId } } });
  if (client === null) return notFound("customer");
  const property = await createProperty(work, clientId, address);
  if (!property.ok) return property;
  await writeDeed(work, property.value, { deed: "property-added", details: { street: address.street, city: address.city } });
  return accept({ propertyId: property.value });
});
