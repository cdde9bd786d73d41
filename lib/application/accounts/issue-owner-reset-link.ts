import { accountForSignIn, companiesOfAccount, issuePasswordReset } from "#adapters/postgres/accounts";
import { asGuest } from "#adapters/postgres/company-work";
import { hashOfSecret } from "#adapters/link-secret";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { RESET_LINK_HOURS } from "#application/accounts/issue-reset-link";
import { writeDeedOf } from "#application/audit-trail";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { type House } from "#application/use-case";

/**
 * Makes a reset link for an owner who is locked out, or for a member of several companies. Only a command at the
 * terminal of the installation does this; other members get theirs from the owner, in Crew.
 */
export async function issueOwnerResetLink(
  house: House,
  email: string,
): Promise<Outcome<{ readonly secret: string; readonly expiresAt: Date; readonly companyName: string }, UseCaseRefusal>> {
  const account = await accountForSignIn(house.client, email);
  if (account === undefined) return conflict(`No account has the email address ${email}.`);
  const companies = await companiesOfAccount(house.client, account.accountId);
  const company = companies.find(({ role }) => role === "owner") ?? (companies.length > 1 ? companies[0] : undefined);
  if (company === undefined) return conflict(`${email} owns no company here. The owner makes this person a link in Crew.`);
  const secret = house.newSecret();
  const now = house.now();
  const expiresAt = new Date(now.getTime() + RESET_LINK_HOURS * 3_600_000);
  return asGuest(house.client, company.companyId, async (tx) => {
    const link = { linkId: house.newId(), secretHash: hashOfSecret(secret), now, expiresAt, isFromTerminal: true };
    if ((await issuePasswordReset(tx, account.accountId, link)) !== "issued") return conflict("The membership has just ended, so no link was made.");
    const doer = { accountId: null, personName: "the terminal of the installation" };
    await writeDeedOf(tx, company.companyId, { now, newId: house.newId }, doer, null, { deed: "reset-link-issued", details: { email } });
    return accept({ secret, expiresAt, companyName: company.companyName });
  });
}
