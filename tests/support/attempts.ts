// Every use case of a signed-in member with an input that it accepts: tests of what holds for all of them walk this.
import { type SessionKey } from "#adapters/postgres/company-work";
import { changePassword } from "#application/accounts/change-password";
import { issueResetLink } from "#application/accounts/issue-reset-link";
import { changeCompany } from "#application/companies/change-company";
import { readCompany } from "#application/companies/read-company";
import { addLicense } from "#application/people/add-license";
import { addPerson } from "#application/people/add-person";
import { changePerson } from "#application/people/change-person";
import { changeRole } from "#application/people/change-role";
import { endMembership } from "#application/people/end-membership";
import { invitePerson } from "#application/people/invite-person";
import { listPeople } from "#application/people/list-people";
import { readPerson } from "#application/people/read-person";
import { withdrawInvitation } from "#application/people/withdraw-invitation";
import { withdrawLicense } from "#application/people/withdraw-license";
import { addProduct } from "#application/products/add-product";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { listProducts } from "#application/products/list-products";
import { readProduct } from "#application/products/read-product";
import { retireProduct } from "#application/products/retire-product";
import { listMovements } from "#application/stock/list-movements";
import { listStock } from "#application/stock/list-stock";
import { moveStock } from "#application/stock/move-stock";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { type UseCaseName } from "#application/permission";
import { type UseCaseRefusal } from "#application/refusal";
import { type House, type UseCase } from "#application/use-case";
import { type Outcome } from "#domain/foundation/outcome";
import { aMember, aPerson, anInvitation, PASSWORD, type TestCompany, valueOf } from "./crew";
import { type TestHouse } from "./house";
import { aDelivery, aFeed, aLabelEntry, aTruck, deliveryForm, labelForm, lotOf, moveForm, productForm } from "./shed";

export interface Attempt {
  readonly useCaseName: UseCaseName;
  /** An input that is accepted now, once; what it needs has been written to the company's books. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Calls the use case with anything, as a browser may. */
  readonly run: (house: House, key: SessionKey, input: unknown) => Promise<Outcome<unknown, UseCaseRefusal>>;
}

function attempt<Input extends Readonly<Record<string, unknown>>, Answer>(useCase: UseCase<Input, Answer>, input: Input): Attempt {
  return { useCaseName: useCase.useCaseName, input, run: (house, key, anything) => useCase(house, key, anything as Input) };
}

type Prepare = (house: TestHouse, company: TestCompany) => Attempt | Promise<Attempt>;

let members = 0;
const aPasserBy = (house: TestHouse, company: TestCompany) => aMember(house, company, "technician", `Passer-by ${String((members += 1))}`);

/** The license form, filled in; each number is used once. */
export function licenseForm(personId: string) {
  const number = `L-${String((members += 1))}`;
  return { personId, kind: "registered-technician", state: "IN", number, category: "3b Turf", issuedOn: "2026-01-02", expiresOn: "2026-12-31" } as const;
}

/** The company form, as it is filled in when nobody has changed the company yet. */
export const COMPANY_CHANGE = {
  version: 1,
  name: "Foxtail Turf and Trees",
  state: "IL",
  timeZone: "America/Chicago",
  phone: "317 555 0142",
  address: "12 Clover Court, Millbrook, IN",
  businessLicenseNumber: "B-77",
  businessLicenseExpiresOn: "2026-12-31",
  insuranceExpiresOn: "2026-09-30",
} as const;

/** One for each use case that the permissions name: the compiler asks for the missing one. */
export const ATTEMPTS: Readonly<Record<UseCaseName, Prepare>> = {
  "accounts/change-password": () => attempt(changePassword, { present: PASSWORD, next: "five other words in a row" }),
  "accounts/issue-reset-link": async (house, company) =>
    attempt(issueResetLink, { personId: (await aPasserBy(house, company)).personId }),
  "companies/change-company": () => attempt(changeCompany, COMPANY_CHANGE),
  "companies/read-company": () => attempt(readCompany, {}),
  "people/add-license": async (house, company) => attempt(addLicense, licenseForm(await aPerson(house, company))),
  "people/add-person": () => attempt(addPerson, { name: "Robin Vale", phone: "317 555 0100" }),
  "people/change-person": async (house, company) =>
    attempt(changePerson, { personId: await aPerson(house, company), version: 1, name: "Robin Dale", phone: "", leftOn: "2026-04-01" }),
  "people/change-role": async (house, company) =>
    attempt(changeRole, { personId: (await aPasserBy(house, company)).personId, role: "office" }),
  "people/end-membership": async (house, company) => attempt(endMembership, { personId: (await aPasserBy(house, company)).personId }),
  "people/invite-person": async (house, company) =>
    attempt(invitePerson, { personId: await aPerson(house, company), email: "robin@vale.example", role: "applicator" }),
  "people/list-people": () => attempt(listPeople, {}),
  "people/read-person": (_house, company) => attempt(readPerson, { personId: company.owner.personId }),
  "people/withdraw-invitation": async (house, company) => {
    const { invitationId } = await anInvitation(house, company, await aPerson(house, company), "someone@vale.example");
    return attempt(withdrawInvitation, { invitationId });
  },
  "people/withdraw-license": async (house, company) => {
    const license = await addLicense(house, company.owner.key, licenseForm(await aPerson(house, company)));
    return attempt(withdrawLicense, { licenseId: valueOf(license).licenseId });
  },
  "products/add-product": () => attempt(addProduct, productForm()),
  "products/confirm-label": async (house, company) =>
    attempt(confirmLabel, { labelEntryId: (await aLabelEntry(house, company, await aFeed(house, company))).labelEntryId }),
  "products/enter-label": async (house, company) => attempt(enterLabel, labelForm(await aFeed(house, company))),
  "products/list-products": () => attempt(listProducts, {}),
  "products/read-product": async (house, company) => attempt(readProduct, { productId: await aFeed(house, company) }),
  "products/retire-product": async (house, company) => attempt(retireProduct, { productId: await aFeed(house, company), version: 1 }),
  "stock/list-movements": async (house, company) => attempt(listMovements, { productId: await aFeed(house, company) }),
  "stock/list-stock": () => attempt(listStock, {}),
  "stock/move-stock": async (house, company) => {
    const productId = await aFeed(house, company);
    await aDelivery(house, company, productId);
    const lotId = await lotOf(house, productId);
    return attempt(moveStock, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), lotId });
  },
  "stock/receive-delivery": async (house, company) => attempt(receiveDelivery, deliveryForm(house, await aFeed(house, company))),
};

/** The names of all use cases of a member. */
export const USE_CASE_NAMES = Object.keys(ATTEMPTS) as readonly UseCaseName[];

/** Those that only read. */
export const READING: ReadonlySet<UseCaseName> = new Set([
  "companies/read-company", "people/list-people", "people/read-person",
  "products/list-products", "products/read-product", "stock/list-movements", "stock/list-stock",
]);
