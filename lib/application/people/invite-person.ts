import { hashOfSecret } from "#adapters/link-secret";
import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { invitePersonSchema } from "#application/people/invite-person.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

export const INVITATION_DAYS = 7;

/**
 * Makes a one-time link by which a person gets an account with a role. The owner sees it once and hands it
 * over. A newer invitation for the same person withdraws the older.
 */
export const invitePerson = useCase("people/invite-person", invitePersonSchema, async (work, { personId, email, role }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId } } });
  if (person === null) return notFound("person");
  if (person.leftOn !== null) return conflict(`${person.name} has left. Clear the day they left before inviting them.`);
  const membership = await work.tx.membership.findFirst({ where: { companyId, personId, endedAt: null } });
  if (membership !== null) return conflict(`${person.name} has an account already. Change the role instead.`);
  await work.tx.invitation.updateMany({
    where: { companyId, personId, acceptedAt: null, withdrawnAt: null },
    data: { withdrawnAt: work.now },
  });
  const secret = work.newSecret();
  const invitationId = work.newId();
  const expiresAt = new Date(work.now.getTime() + INVITATION_DAYS * 86_400_000);
  await work.tx.invitation.create({
    data: { companyId, invitationId, personId, email, role, secretHash: hashOfSecret(secret), createdAt: work.now, expiresAt },
  });
  await writeDeed(work, personId, { deed: "person-invited", details: { email, role } });
  // A guest's link carries its company, so that the guest's reading stands under the same policies.
  return accept({ invitationId, link: `${companyId}.${secret}`, expiresAt });
});
