import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { mowingColumnsOf } from "#domain/properties/mowing-day";
import { writeDeed } from "#application/audit-trail";
import { positionColumns, propertyAt } from "#application/properties/add-property";
import { changePropertySchema } from "#application/properties/change-property.schema";
import { wateringColumns } from "#application/properties/watering-on-file";
import { badField, conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** What the audit trail keeps of a property. It says that a gate code changed and never which it is. */
function forTheTrail(row: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const { gateCode: _gateCode, ...rest } = row;
  return Object.fromEntries(Object.entries(rest).map(([name, value]) => [name, typeof value === "bigint" ? String(value) : value]));
}

/** Changes what is on file of a property: address, access, dog, mowing, the town's watering rule, the controller. The loser of a race is told. */
export const changeProperty = useCase("properties/change-property", changePropertySchema, async (work, { propertyId, version, ...form }) => {
  await lockCompany(work.tx);
  const key = { companyId: work.company.companyId, propertyId };
  const before = await work.tx.property.findUnique({ where: { companyId_propertyId: key } });
  if (before === null) return notFound("property");
  if ((await propertyAt(work, form, propertyId)) !== undefined) return badField("street", `${form.street} is on file already.`);
  const { townRule, controller, mowingDay, position, ...plain } = form;
  const columns = {
    ...plain,
    ...mowingColumnsOf(mowingDay),
    ...wateringColumns({ townRule, controller }),
    ...{ latitude: null, longitude: null, positionOrigin: null },
    ...(position === null ? positionColumns(form.zip) : { ...position, positionOrigin: "entered" }),
  };
  const { count } = await work.tx.property.updateMany({ where: { ...key, version }, data: { ...columns, version: { increment: 1 } } });
  if (count === 0) return conflict("Someone else has changed this property since you opened the page. Load it again to see both.");
  const was = Object.fromEntries(Object.keys(columns).map((name) => [name, before[name as keyof typeof before]]));
  const codeChanged = before.gateCode === form.gateCode ? {} : { gateCode: "changed" };
  await writeDeed(work, propertyId, { deed: "property-changed", details: { before: forTheTrail(was), after: { ...forTheTrail(columns), ...codeChanged } } });
  return accept({ version: version + 1 });
});
