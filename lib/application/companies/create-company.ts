import { type BindAddress, consumeFirstRunLink, setBindAddress, standingLink } from "#adapters/postgres/accounts";
import { asGuest, type CompanyTransaction } from "#adapters/postgres/company-work";
import { hashOfSecret } from "#adapters/link-secret";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { accountOfGuest, keepAccountOfGuest } from "#application/accounts/account-of-guest";
import { dayOf } from "#application/stored-day";
import { writeDeedOf } from "#application/audit-trail";
import { createCompanySchema, type NewCompany } from "#application/companies/create-company.schema";
import { secretField } from "#application/field.schema";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { checkInput, type House, refusalOf, rollBack } from "#application/use-case";

const NO_LONGER = "This link was used already or has run out. Print a new one in the terminal with: npm run company";

export interface CreatedCompany {
  readonly companyId: string;
  readonly accountId: string;
  readonly ownerPersonId: string;
  readonly licenseId: string;
}

/** True while a first-run link can still be used. */
export async function isFirstRunLink(house: House, secret: unknown): Promise<boolean> {
  const checked = checkInput(secretField, secret);
  if (!checked.ok) return false;
  return (await standingLink(house.client, "first-run", hashOfSecret(checked.value), house.now())) !== undefined;
}

/** Creates a company by a one-time link from the terminal, once however often the button is pressed. */
export async function createCompanyByLink(house: House, secret: unknown, input: unknown): Promise<Outcome<CreatedCompany, UseCaseRefusal>> {
  const link = checkInput(secretField, secret);
  // Without a standing link nothing below is reached: neither what it says about an email address, nor its hashing.
  if (!link.ok || !(await isFirstRunLink(house, link.value))) return conflict(NO_LONGER);
  return createCompany(house, input, { isDemonstration: false }, async (tx) => {
    if (!(await consumeFirstRunLink(tx, hashOfSecret(link.value), house.now()))) rollBack({ kind: "conflict", sentence: NO_LONGER });
  });
}

/**
 * Creates a company, its owner and the owner's license. An email address that has an account already keeps
 * it and its password: the form's password must be that one. `admit` runs first in the same transaction.
 */
export async function createCompany(
  house: House,
  input: unknown,
  kind: { readonly isDemonstration: boolean },
  admit: (tx: CompanyTransaction) => Promise<void>,
): Promise<Outcome<CreatedCompany, UseCaseRefusal>> {
  const checked = checkInput(createCompanySchema, input);
  if (!checked.ok) return checked;
  const form = checked.value;
  const account = await accountOfGuest(house, form, "This email address has an account already: give its present password.");
  if (!account.ok) return account;
  const companyId = house.newId();
  try {
    return await asGuest(house.client, companyId, async (tx) => {
      await admit(tx);
      const justTaken = "This email address has just got an account. Try again with its password.";
      const accountId = await keepAccountOfGuest(tx, account.value, { now: house.now(), newId: house.newId }, justTaken);
      await setBindAddress(tx, form.bindAddress satisfies BindAddress);
      return accept(await writeCompany(house, tx, { companyId, accountId }, form, kind.isDemonstration));
    });
  } catch (error) {
    return refusalOf(error);
  }
}

async function writeCompany(
  house: House,
  tx: CompanyTransaction,
  ids: { readonly companyId: string; readonly accountId: string },
  form: NewCompany,
  isDemonstration: boolean,
): Promise<CreatedCompany> {
  const now = house.now();
  const { companyId, accountId } = ids;
  const ownerPersonId = house.newId();
  const licenseId = house.newId();
  const { companyName: name, state, timeZone, ownerName, license } = form;
  await tx.company.create({ data: { companyId, name, state, timeZone, isDemonstration, createdAt: now } });
  await tx.person.create({ data: { companyId, personId: ownerPersonId, name: ownerName, createdAt: now } });
  await tx.membership.create({ data: { companyId, accountId, personId: ownerPersonId, role: "owner", createdAt: now } });
  await tx.license.create({
    data: { companyId, licenseId, personId: ownerPersonId, ...license, expiresOn: dayOf(license.expiresOn), createdAt: now },
  });
  const trail = { now, newId: house.newId };
  const doer = { accountId, personName: ownerName };
  await writeDeedOf(tx, companyId, trail, doer, companyId, { deed: "company-created", details: { name, state, timeZone } });
  await writeDeedOf(tx, companyId, trail, doer, licenseId, {
    deed: "license-added",
    details: { kind: license.kind, state: license.state, number: license.number, expiresOn: license.expiresOn },
  });
  return { companyId, accountId, ownerPersonId, licenseId };
}
