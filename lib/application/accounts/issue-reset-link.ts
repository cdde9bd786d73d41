import { emailsOfMembers, issuePasswordReset } from "#adapters/postgres/accounts";
import { hashOfSecret } from "#adapters/link-secret";
import { accept } from "#domain/foundation/outcome";
import { issueResetLinkSchema } from "#application/accounts/issue-reset-link.schema";
import { writeDeed } from "#application/audit-trail";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

export const RESET_LINK_HOURS = 24;

/**
 * Makes a one-time link by which a member sets a new password. The owner sees it once and hands it over. Not for
 * an account that belongs to another company too: its owner could walk in there with the link.
 */
export const issueResetLink = useCase("accounts/issue-reset-link", issueResetLinkSchema, async (work, { personId }) => {
  const membership = await work.tx.membership.findFirst({ where: { companyId: work.company.companyId, personId, endedAt: null } });
  if (membership === null) return notFound("member");
  const secret = work.newSecret();
  const expiresAt = new Date(work.now.getTime() + RESET_LINK_HOURS * 3_600_000);
  const link = { linkId: work.newId(), secretHash: hashOfSecret(secret), now: work.now, expiresAt, isFromTerminal: false };
  const issue = await issuePasswordReset(work.tx, membership.accountId, link);
  if (issue === "not-a-member") return conflict("This person's membership has just ended, so no link was made.");
  if (issue === "in-other-companies") {
    return conflict("This account is not only this company's. Whoever runs the installation makes a link with: npm run company -- reset EMAIL");
  }
  const email = (await emailsOfMembers(work.tx)).get(membership.accountId) ?? "";
  await writeDeed(work, personId, { deed: "reset-link-issued", details: { email } });
  return accept({ secret, email, expiresAt });
});
