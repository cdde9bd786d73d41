import { lockCompany } from "#adapters/postgres/company-work";
import { type Prisma } from "#adapters/postgres/generated/client";
import { accept, refuse } from "#domain/foundation/outcome";
import { customerKey, type CustomerRow } from "#domain/properties/customer-row";
import { mowingColumnsOf } from "#domain/properties/mowing-day";
import { writeDeed } from "#application/audit-trail";
import { positionColumns } from "#application/properties/add-property";
import { judgeRows } from "#application/properties/check-customer-list";
import { importCustomersSchema } from "#application/properties/customer-list.schema";
import { useCase, type Work } from "#application/use-case";

interface NewRows {
  readonly clients: Prisma.ClientCreateManyInput[];
  readonly properties: Prisma.PropertyCreateManyInput[];
  readonly zones: Prisma.ZoneCreateManyInput[];
}

/** The customers on file by what makes two of them one. */
async function clientsByKey(work: Work): Promise<Map<string, string>> {
  const rows = await work.tx.client.findMany({ where: { companyId: work.company.companyId }, select: { clientId: true, name: true, phone: true } });
  return new Map(
    rows.flatMap(({ clientId, name, phone }) => {
      const key = customerKey(name, phone);
      return key === undefined ? [] : [[key, clientId] as const];
    }),
  );
}

function addRow(work: Work, into: NewRows, clientIds: Map<string, string>, row: CustomerRow): void {
  const { companyId } = work.company;
  const key = customerKey(row.name, row.phone);
  let clientId = key === undefined ? undefined : clientIds.get(key);
  if (clientId === undefined) {
    clientId = work.newId();
    if (key !== undefined) clientIds.set(key, clientId);
    into.clients.push({ companyId, clientId, name: row.name, phone: row.phone, email: row.email, createdAt: work.now });
  } else {
    const client = into.clients.find((each) => each.clientId === clientId);
    if (client !== undefined) client.email ??= row.email;
  }
  const propertyId = work.newId();
  const { street, city, state, zip, gate } = row;
  into.properties.push({
    ...{ companyId, propertyId, clientId, street, city, state, zip, ...positionColumns(zip) },
    ...{ accessNote: gate.words, gateCode: gate.code, narrowestGate: gate.width?.amount ?? null, dogNote: row.dogNote },
    ...{ ...mowingColumnsOf(row.mowingDay), lotArea: row.lotArea?.amount ?? null, note: row.note, createdAt: work.now },
  });
  if (row.lawn === null) return;
  const { area, grasses } = row.lawn;
  into.zones.push({
    ...{ companyId, zoneId: work.newId(), propertyId, letter: "A", name: "Whole lawn", grasses: [...grasses.grasses] },
    ...{ grassesAssumed: grasses.assumed, pieces: [], area: area.amount, areaOrigin: "imported", createdAt: work.now },
  });
}

/**
 * Imports a list of customers, all of it or nothing. Lines of the same name and phone are one customer with several
 * properties. The same list sent twice is imported once, and the second answer is the first one again.
 */
export const importCustomers = useCase("properties/import-customers", importCustomersSchema, async (work, { listId, rows }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const done = await work.tx.auditEvent.findFirst({ where: { companyId, subjectId: listId, deed: "customers-imported" } });
  if (done !== null) return accept(done.details as { customers: number; properties: number; lawns: number });
  const verdicts = await judgeRows(work, rows);
  const faults = verdicts.filter((verdict) => verdict.kind === "complaints");
  if (faults.length > 0) {
    const fields = faults.flatMap(({ number, complaints }) => complaints.map(({ column, sentence }) => [`${String(number)}.${column}`, sentence] as const));
    const sentence = `Nothing was imported. ${faults.length === 1 ? "One row needs" : `${String(faults.length)} rows need`} another look.`;
    return refuse({ kind: "bad-input", sentence, fields: Object.fromEntries(fields) });
  }
  const into: NewRows = { clients: [], properties: [], zones: [] };
  const clientIds = await clientsByKey(work);
  for (const verdict of verdicts) if (verdict.kind === "good") addRow(work, into, clientIds, verdict.row);
  await work.tx.client.createMany({ data: into.clients });
  await work.tx.property.createMany({ data: into.properties });
  await work.tx.zone.createMany({ data: into.zones });
  const counts = { customers: into.clients.length, properties: into.properties.length, lawns: into.zones.length };
  await writeDeed(work, listId, { deed: "customers-imported", details: counts });
  return accept(counts);
});
