import { accountForSignIn } from "#adapters/postgres/accounts";
import { asGuest, type CompanyTransaction } from "#adapters/postgres/company-work";
import { hashOfSecret } from "#adapters/link-secret";
import { type Role } from "#domain/crew/role";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { accountOfGuest, keepAccountOfGuest } from "#application/accounts/account-of-guest";
import { writeDeedOf } from "#application/audit-trail";
import { acceptInvitationSchema } from "#application/people/accept-invitation.schema";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { checkInput, type House, refusalOf, rollBack } from "#application/use-case";

const NO_LONGER = "This invitation was used already, was withdrawn, or has run out. Ask the owner of the company for a new one.";

export interface StandingInvitation {
  readonly email: string;
  readonly personName: string;
  readonly companyName: string;
  readonly role: Role;
  /** True: the address has an account, and its present password is asked for. */
  readonly hasAccount: boolean;
}

function partsOf(link: string): { readonly companyId: string; readonly secretHash: Uint8Array<ArrayBuffer> } {
  const [companyId = "", secret = ""] = link.split(".");
  return { companyId, secretHash: hashOfSecret(secret) };
}

async function standing(tx: CompanyTransaction, companyId: string, secretHash: Uint8Array<ArrayBuffer>, now: Date) {
  const invitation = await tx.invitation.findFirst({
    where: { companyId, secretHash, acceptedAt: null, withdrawnAt: null, expiresAt: { gt: now } },
  });
  if (invitation === null) return null;
  const person = await tx.person.findUniqueOrThrow({ where: { companyId_personId: { companyId, personId: invitation.personId } } });
  // Inviting someone who has left is refused, and so is an invitation from before they left.
  if (person.leftOn !== null) return null;
  const company = await tx.company.findUniqueOrThrow({ where: { companyId } });
  return { invitation, person, company };
}

/** What an invitation's link offers, while it stands. */
export async function readInvitation(house: House, link: unknown): Promise<Outcome<StandingInvitation, UseCaseRefusal>> {
  const checked = checkInput(acceptInvitationSchema.shape.link, link);
  if (!checked.ok) return conflict(NO_LONGER);
  const { companyId, secretHash } = partsOf(checked.value);
  const found = await asGuest(house.client, companyId, (tx) => standing(tx, companyId, secretHash, house.now()));
  if (found === null) return conflict(NO_LONGER);
  const account = await accountForSignIn(house.client, found.invitation.email);
  return accept({
    email: found.invitation.email,
    personName: found.person.name,
    companyName: found.company.name,
    role: found.invitation.role as Role,
    hasAccount: account !== undefined,
  });
}

/** Accepts an invitation once: makes the account, or joins the one that the address has, and the membership. */
export async function acceptInvitation(house: House, input: unknown): Promise<Outcome<{ readonly email: string }, UseCaseRefusal>> {
  const checked = checkInput(acceptInvitationSchema, input);
  if (!checked.ok) return checked;
  const offered = await readInvitation(house, checked.value.link);
  if (!offered.ok) return offered;
  const { email, personName, role } = offered.value;
  const { companyId, secretHash } = partsOf(checked.value.link);
  const account = await accountOfGuest(house, { email, password: checked.value.password }, "This is not the password of your account.");
  if (!account.ok) return account;
  const now = house.now();
  try {
    return await asGuest(house.client, companyId, async (tx) => {
      const { count } = await tx.invitation.updateMany({
        where: { companyId, secretHash, acceptedAt: null, withdrawnAt: null, expiresAt: { gt: now } },
        data: { acceptedAt: now },
      });
      if (count === 0) rollBack({ kind: "conflict", sentence: NO_LONGER });
      const { personId } = await tx.invitation.findFirstOrThrow({ where: { companyId, secretHash } });
      const justTaken = "This email address has just got an account. Open the link again.";
      const accountId = await keepAccountOfGuest(tx, account.value, { now, newId: house.newId }, justTaken);
      await joinCompany(tx, { companyId, accountId, personId, role, now });
      await writeDeedOf(tx, companyId, { now, newId: house.newId }, { accountId, personName }, personId, {
        deed: "invitation-accepted",
        details: { email, role },
      });
      return accept({ email });
    });
  } catch (error) {
    return refusalOf(error);
  }
}

/** A person who comes back with the same account takes up the membership that ended. */
async function joinCompany(
  tx: CompanyTransaction,
  join: { readonly companyId: string; readonly accountId: string; readonly personId: string; readonly role: Role; readonly now: Date },
): Promise<void> {
  const { now, ...membership } = join;
  const { companyId, accountId, personId, role } = membership;
  const { count } = await tx.membership.updateMany({
    where: { companyId, accountId, personId, endedAt: { not: null } },
    data: { endedAt: null, role },
  });
  if (count > 0) return;
  const taken = await tx.membership.findFirst({ where: { companyId, OR: [{ accountId }, { personId }] } });
  if (taken !== null) {
    rollBack({
      kind: "conflict",
      sentence: "This account or this person belongs to the company already, each to another. Ask the owner to look at Crew.",
    });
  }
  await tx.membership.create({ data: { ...membership, createdAt: now } });
}
