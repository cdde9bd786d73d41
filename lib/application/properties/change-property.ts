import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { WEEKDAYS, weekdayDigits } from "#domain/properties/weekday";
import { writeDeed } from "#application/audit-trail";
import { positionColumns, propertyAt } from "#application/properties/add-property";
import { changePropertySchema } from "#application/properties/change-property.schema";
import { badField, conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Midnight at the end of hours is the end of their day; a time field sends it as the start of one. */
const DAY_MINUTES = 1440;

/** What the audit trail keeps of a property. It says that a gate code changed and never which it is. */
function forTheTrail(row: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const { gateCode: _gateCode, ...rest } = row;
  return Object.fromEntries(Object.entries(rest).map(([name, value]) => [name, typeof value === "bigint" ? String(value) : value]));
}

/** Changes what is on file of a property: address, access, dog, mowing, watering hours. The loser of a race is told. */
export const changeProperty = useCase("properties/change-property", changePropertySchema, async (work, { propertyId, version, ...form }) => {
  await lockCompany(work.tx);
  const key = { companyId: work.company.companyId, propertyId };
  const before = await work.tx.property.findUnique({ where: { companyId_propertyId: key } });
  if (before === null) return notFound("property");
  if ((await propertyAt(work, form, propertyId)) !== undefined) return badField("street", `${form.street} is on file already.`);
  const { wateringFrom, wateringUntil, wateringBy, wateringOn, position, ...plain } = form;
  const weekdays = weekdayDigits(WEEKDAYS.filter((weekday) => wateringOn[String(weekday)] === true));
  const columns = {
    ...plain,
    wateringFromMinute: wateringFrom,
    wateringUntilMinute: wateringUntil === 0 ? DAY_MINUTES : wateringUntil,
    wateringWeekdays: weekdays === "" ? null : weekdays,
    wateringDates: wateringBy,
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
