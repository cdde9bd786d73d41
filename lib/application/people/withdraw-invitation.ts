import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { withdrawInvitationSchema } from "#application/people/withdraw-invitation.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Makes an invitation's link useless before it is used. */
export const withdrawInvitation = useCase("people/withdraw-invitation", withdrawInvitationSchema, async (work, { invitationId }) => {
  const { companyId } = work.company;
  const invitation = await work.tx.invitation.findUnique({ where: { companyId_invitationId: { companyId, invitationId } } });
  if (invitation === null) return notFound("invitation");
  const { count } = await work.tx.invitation.updateMany({
    where: { companyId, invitationId, acceptedAt: null, withdrawnAt: null },
    data: { withdrawnAt: work.now },
  });
  if (count === 0) return conflict("This invitation was accepted or withdrawn already.");
  await writeDeed(work, invitation.personId, { deed: "invitation-withdrawn", details: { email: invitation.email } });
  return accept(null);
});
