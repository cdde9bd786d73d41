import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { changeClientSchema } from "#application/properties/change-client.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes a customer's name, phone, email or standing. The loser of a race is told, not overwritten. */
export const changeClient = useCase("properties/change-client", changeClientSchema, async (work, { clientId, version, ...form }) => {
  const key = { companyId: work.company.companyId, clientId };
  const before = await work.tx.client.findUnique({ where: { companyId_clientId: key } });
  if (before === null) return notFound("customer");
  const { count } = await work.tx.client.updateMany({ where: { ...key, version }, data: { ...form, version: { increment: 1 } } });
  if (count === 0) return conflict("Someone else has changed this customer since you opened the page. Load it again to see both.");
  const { name, phone, email, standing } = before;
  await writeDeed(work, clientId, { deed: "client-changed", details: { before: { name, phone, email, standing }, after: form } });
  return accept({ version: version + 1 });
});
