import { afterEach, beforeEach, expect, test } from "vitest";
import { acceptInvitation, readInvitation } from "#application/people/accept-invitation";
import { withdrawInvitation } from "#application/people/withdraw-invitation";
import { aCompany, anInvitation, aPerson, PASSWORD, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
let invitation: { readonly invitationId: string; readonly link: string };
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
  invitation = await anInvitation(house, company, await aPerson(house, company), "robin@vale.example");
});
afterEach(() => house.close());

const withdraw = () => withdrawInvitation(house, company.owner.key, { invitationId: invitation.invitationId });
const withdrawals = async () => (await trailOf(house, company.companyId)).filter(({ deed }) => deed === "invitation-withdrawn");

test("the link is useless from then on, and the audit trail says whose it was", async () => {
  expect(await withdraw()).toEqual({ ok: true, value: null });
  expect(await readInvitation(house, invitation.link)).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await withdrawals()).toMatchObject([{ account_id: company.owner.key.accountId, details: { email: "robin@vale.example" } }]);
});

test("one that was accepted or withdrawn is not withdrawn again", async () => {
  valueOf(await acceptInvitation(house, { link: invitation.link, password: PASSWORD }));
  expect(await withdraw()).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await withdrawals()).toHaveLength(0);
});

test("of several presses at once one withdraws", async () => {
  const answers = await Promise.all([withdraw(), withdraw(), withdraw()]);
  expect(answers.map((answer) => (answer.ok ? "withdrawn" : answer.refusal.kind)).sort()).toEqual(["conflict", "conflict", "withdrawn"]);
  expect(await withdrawals()).toHaveLength(1);
});
