import { accept } from "#domain/foundation/outcome";
import { calendarDayOrNone, dayOrNone } from "#application/stored-day";
import { writeDeed } from "#application/audit-trail";
import { changePersonSchema } from "#application/people/change-person.schema";
import { badField, conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes a person's name, phone, or the day they left, which waits until their access has ended. The loser of a race is told, not overwritten. */
export const changePerson = useCase("people/change-person", changePersonSchema, async (work, { personId, version, ...form }) => {
  const key = { companyId: work.company.companyId, personId };
  const before = await work.tx.person.findUnique({ where: { companyId_personId: key } });
  if (before === null) return notFound("person");
  if (form.leftOn !== null && (await work.tx.membership.count({ where: { ...key, endedAt: null } })) > 0) {
    return badField("leftOn", `${before.name} can still sign in. End their access first, under Access.`);
  }
  const { count } = await work.tx.person.updateMany({
    where: { ...key, version },
    data: { ...form, leftOn: dayOrNone(form.leftOn), version: { increment: 1 } },
  });
  if (count === 0) return conflict("Someone else has changed this person since you opened the page. Load it again to see both.");
  await writeDeed(work, personId, {
    deed: "person-changed",
    details: { before: { name: before.name, phone: before.phone, leftOn: calendarDayOrNone(before.leftOn) }, after: form },
  });
  return accept({ version: version + 1 });
});
