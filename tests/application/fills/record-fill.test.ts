import { expect, test } from "vitest";
import { recordFill } from "#application/fills/record-fill";
import { of } from "#domain/quantities/quantity";
import { trailOf, valueOf } from "../../support/crew";
import { aFedVisit, fillForm } from "../../support/crew-day";
import { unbalanced } from "../../support/ledger";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { balancesOf } from "../../support/shed";

allOnACrewDay("not-known");

const record = (change: Parameters<typeof fillForm>[3] = {}) => recordFill(house, company.owner.key, fillForm(house, day, [], change));

test("product goes from the truck into the tank, with one deed; pressed twice the first fill is answered", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const form = fillForm(house, day, [visitId]);
  const fill = valueOf(await recordFill(house, company.owner.key, form));
  expect(fill).toMatchObject({ number: 1, findings: [] });
  expect(valueOf(await recordFill(house, company.owner.key, form))).toEqual(fill);
  expect((await balancesOf(house, day.ironId))["tank"]).toBe(of("fl oz", "30").amount.toString());
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "fill-recorded", subject_id: fill.fillId });
  expect(await unbalanced(house)).toEqual([]);
});

test("more than the books have goes in all the same and asks for a count by the product's name", async () => {
  const { findings } = valueOf(await record({ products: { [day.ironId]: "6 gal" } }));
  expect(findings).toMatchObject([{ rule: "count-it", what: expect.stringMatching(/^More Ironside \d+ was used than the books had/u) as string }]);
  expect(await unbalanced(house)).toEqual([]);
});

test("is refused for what is no fill", async () => {
  const fields = async (change: Parameters<typeof fillForm>[3]) => {
    const answer = await record(change);
    return !answer.ok && answer.refusal.kind === "bad-input" ? Object.keys(answer.refusal.fields) : answer;
  };
  expect(await fields({ equipmentId: day.spreaderId })).toEqual(["equipmentId"]);
  expect(await fields({ filledAt: "9:01" })).toEqual(["filledAt"]);
  expect(await fields({ products: {} })).toEqual(["products"]);
  expect(await fields({ products: { [day.ironId]: "3 lb" } })).toEqual([`products.${day.ironId}`]);
  expect(await fields({ visitIds: [house.newId()] })).toEqual(["visitIds"]);
  expect(await fields({ from: `vehicle:${house.newId()}` })).toEqual(["from"]);
  expect(await record({ equipmentId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
