import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { changeRoleSchema } from "#application/people/change-role.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes what a member may do, from their next click on. A company never loses its last owner. */
export const changeRole = useCase("people/change-role", changeRoleSchema, async (work, { personId, role }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const membership = await work.tx.membership.findFirst({ where: { companyId, personId, endedAt: null } });
  if (membership === null) return notFound("member");
  if (membership.role === "owner" && role !== "owner") {
    const owners = await work.tx.membership.count({ where: { companyId, role: "owner", endedAt: null } });
    if (owners === 1) return conflict("This is the only owner. Make someone else an owner first.");
  }
  await work.tx.membership.updateMany({ where: { companyId, personId, endedAt: null }, data: { role } });
  await writeDeed(work, personId, { deed: "role-changed", details: { before: membership.role, after: role } });
  return accept(null);
});
