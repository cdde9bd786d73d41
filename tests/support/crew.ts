// Builders: companies and people as the use cases themselves make them.
import { type SessionKey } from "#adapters/postgres/company-work";
import { createCompany } from "#application/companies/create-company";
import { acceptInvitation } from "#application/people/accept-invitation";
import { addPerson } from "#application/people/add-person";
import { invitePerson } from "#application/people/invite-person";
import { type Role } from "#domain/crew/role";
import { type TestHouse } from "./house";

export const PASSWORD = "four words in a row";

export interface TestMember {
  readonly personId: string;
  readonly name: string;
  readonly email: string;
  readonly key: SessionKey;
}

export interface TestCompany {
  readonly companyId: string;
  readonly owner: TestMember;
  readonly licenseId: string;
}

/** The value of an answer that must be yes. */
export function valueOf<Value>(answer: { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly refusal: unknown }): Value {
  if (!answer.ok) throw new Error(`Refused: ${JSON.stringify(answer.refusal)}`);
  return answer.value;
}

/** The first-run form, filled in as a person would. */
export function companyForm(name = "Foxtail Turf") {
  const owner = name.toLowerCase().replace(/[^a-z]+/g, "-");
  return {
    companyName: name,
    state: "IN",
    timeZone: "America/Indiana/Indianapolis",
    bindAddress: "127.0.0.1",
    ownerName: `Owner of ${name}`,
    email: `owner@${owner}.example`,
    password: PASSWORD,
    license: { kind: "certified-applicator", state: "IN", number: `C-${owner}`, category: "3b Turf", expiresOn: "2026-12-31" },
  };
}

/** A company with its owner and the owner's license. */
export async function aCompany(house: TestHouse, name?: string): Promise<TestCompany> {
  const form = companyForm(name);
  const made = valueOf(await createCompany(house, form, { isDemonstration: false }, () => Promise.resolve()));
  const { companyId, accountId, ownerPersonId, licenseId } = made;
  const key = { accountId, companyId, sessionVersion: 1 };
  return { companyId, licenseId, owner: { personId: ownerPersonId, name: form.ownerName, email: form.email, key } };
}

/** Someone in the books, without an account. */
export async function aPerson(house: TestHouse, company: TestCompany, name = "Robin Vale"): Promise<string> {
  return valueOf(await addPerson(house, company.owner.key, { name, phone: "" })).personId;
}

/** The link that invites a person. */
export async function anInvitation(house: TestHouse, company: TestCompany, personId: string, email: string, role: Role = "technician") {
  return valueOf(await invitePerson(house, company.owner.key, { personId, email, role }));
}

/** A member of a company in a role, come by invitation. */
export async function aMember(house: TestHouse, company: TestCompany, role: Role, name: string = role): Promise<TestMember> {
  const personId = await aPerson(house, company, name);
  const email = `${name.toLowerCase().replace(/[^a-z0-9]+/g, "-")}@${company.companyId.slice(-4)}.example`;
  const { link } = await anInvitation(house, company, personId, email, role);
  valueOf(await acceptInvitation(house, { link, password: PASSWORD }));
  const [row] = await house.ask<{ account_id: string }>("select account_id from account where email = $1", [email]);
  if (row === undefined) throw new Error(`No account was made for ${email}.`);
  return { personId, name, email, key: { accountId: row.account_id, companyId: company.companyId, sessionVersion: 1 } };
}

/** What the audit trail of a company says, oldest first. */
export async function trailOf(house: TestHouse, companyId: string) {
  return house.ask<{ deed: string; account_id: string | null; person_name: string; subject_id: string | null; details: unknown; at: Date }>(
    "select deed, account_id, person_name, subject_id, details, at from audit_event where company_id = $1 order by at, audit_event_id",
    [companyId],
  );
}
