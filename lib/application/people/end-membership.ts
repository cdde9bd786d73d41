import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { endMembershipSchema } from "#application/people/end-membership.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Ends a member's access, from their next click on. What they did stays; the person stays in the books. */
export const endMembership = useCase("people/end-membership", endMembershipSchema, async (work, { personId }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const membership = await work.tx.membership.findFirst({ where: { companyId, personId, endedAt: null } });
  if (membership === null) return notFound("member");
  if (membership.role === "owner") {
    const owners = await work.tx.membership.count({ where: { companyId, role: "owner", endedAt: null } });
    if (owners === 1) return conflict("This is the only owner. Make someone else an owner first.");
  }
  await work.tx.membership.updateMany({ where: { companyId, personId, endedAt: null }, data: { endedAt: work.now } });
  await writeDeed(work, personId, { deed: "membership-ended", details: { role: membership.role } });
  return accept(null);
});
