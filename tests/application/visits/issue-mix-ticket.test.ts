import { expect, test } from "vitest";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { aCompany, trailOf, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, aGround, aRecord, aVisitWith, feedAndIron } from "../../support/crew-day";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { labelForm } from "../../support/shed";

allOnACrewDay();

const issue = (visitId: string) => issueMixTicket(house, company.owner.key, { visitId });

test("issues what is worked out now, with a number of its own and one deed", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const issued = valueOf(await issue(visitId));
  const found = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect(found.issued).toMatchObject({ mixTicketId: issued.mixTicketId, number: issued.number, issuedBy: company.owner.name });
  expect(found.openHolds).toEqual([]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "mix-ticket-issued", subject_id: visitId });
});

test("issued again while nothing has changed, the first ticket stands; after a change of the day a second one is issued", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const first = valueOf(await issue(visitId));
  expect(valueOf(await issue(visitId))).toEqual(first);
  await house.ask("update visit_task set rate_amount = rate_amount * 9 / 10, rate_text = '2.25 lb' where visit_id = $1 and line = 1", [visitId]);
  expect(valueOf(await issue(visitId))).toMatchObject({ number: first.number + 1 });
});

test("after a label was entered anew that says something else to the crew, a second ticket is issued with what it says now", async () => {
  const apart = await aCompany(house, "New Label Turf");
  const own = await aCrewDay(house, apart);
  const { visitId } = await aFedVisit(house, apart, own);
  const issueApart = () => issueMixTicket(house, apart.owner.key, { visitId });
  const first = valueOf(await issueApart());
  const uses = A_WHOLE_IRON_TEXT.uses.map((use) => ({ ...use, stainsHardSurfaces: "no" }));
  const { labelEntryId } = valueOf(await enterLabel(house, apart.owner.key, { ...labelForm(own.ironId, { ...A_WHOLE_IRON_TEXT, uses }), basedOnNumber: 1 }));
  valueOf(await confirmLabel(house, apart.owner.key, { labelEntryId }));
  const rulesOf = async () => valueOf(await readVisit(house, apart.owner.key, { visitId })).issued?.snapshot.findings.map(({ rule }) => rule);
  expect(await rulesOf()).toContain("stains");
  expect(valueOf(await issueApart()).number).toBe(first.number + 1);
  expect(await rulesOf()).not.toContain("stains");
});

test("eight at once issue one ticket", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const answers = (await Promise.all(Array.from({ length: 8 }, () => issue(visitId)))).map(valueOf);
  expect(new Set(answers.map(({ mixTicketId }) => mixTicketId)).size).toBe(1);
});

test("is refused while a hold stands, without a ticket to work out, for what is over, and for another company's visit", async () => {
  const ground = await aGround(house, company);
  const onNoDay = await aVisitWith(house, company, ground, feedAndIron(day, ground));
  expect(await issue(onNoDay)).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: expect.stringMatching(/^No mix ticket while a hold stands\. The visit is on no truck.s day\./u) as string } });
  const look = await aVisitWith(house, company, ground, { "0": { productUse: "look", rate: "", reason: "grubs", lawns: { [ground.frontId]: "yes" } } });
  expect(await issue(look)).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: "No mix ticket: Nothing is planned to be put down." } });
  const fed = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, fed);
  expect(await issue(fed.visitId)).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  const other = await aCompany(house, "Other Turf");
  expect(await issueMixTicket(house, other.owner.key, { visitId: fed.visitId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
