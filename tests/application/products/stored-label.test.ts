import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest } from "#adapters/postgres/company-work";
import { labelsOfProducts, labelTextOf } from "#application/products/stored-label";
import { enterLabel } from "#application/products/enter-label";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_PREVENTER_TEXT, aFeedText } from "../../support/label-texts";
import { aConfirmedLabel, aFeed, aLabelEntry, labelForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a field that came later than the entry has been read by nobody, and a column that is no label throws", () => {
  const { rates: _rates, ...use } = A_PREVENTER_TEXT.uses[0] ?? {};
  expect(labelTextOf({ ...A_PREVENTER_TEXT, uses: [use] }).uses[0]?.rates).toBe("");
  expect(() => labelTextOf({})).toThrow();
});

test("the labels of several products at once: latest, confirmed, and none", async () => {
  const [bare, typed, confirmed, anew] = [await aFeed(house, company), await aFeed(house, company), await aFeed(house, company), await aFeed(house, company)];
  await aLabelEntry(house, company, typed);
  await aConfirmedLabel(house, company, confirmed, A_PREVENTER_TEXT);
  await aConfirmedLabel(house, company, anew);
  valueOf(await enterLabel(house, company.owner.key, { ...labelForm(anew, aFeedText({ signalWord: "CAUTION" })), basedOnNumber: 1 }));
  const labels = await asGuest(house.client, company.companyId, (tx) => labelsOfProducts(tx, company.companyId, [bare, typed, confirmed, anew]));
  const numbers = [bare, typed, confirmed, anew].map((id) => [labels.get(id)?.latest?.number, labels.get(id)?.confirmed?.number]);
  expect(numbers).toEqual([[undefined, undefined], [1, undefined], [1, 1], [2, 1]]);
  expect(labels.get(confirmed)?.confirmed?.facts.uses[0]?.useName).toBe("Crabgrass, spring");
});

test("an entry from before a stricter reading counts as read by nobody where it is refused today", async () => {
  const productId = await aFeed(house, company);
  const { labelEntryId } = await aLabelEntry(house, company, productId);
  const facts = JSON.stringify(aFeedText({}, { seasonLimits: "2,4-D; 2 lb per acre; season; 1 lb at once" }));
  await house.ask(
    `insert into label_entry (company_id, label_entry_id, product_id, number, facts, person_id, entered_at)
     select company_id, $2, product_id, 2, $3::jsonb, person_id, entered_at from label_entry where label_entry_id = $1`,
    [labelEntryId, house.newId(), facts],
  );
  const labels = await asGuest(house.client, company.companyId, (tx) => labelsOfProducts(tx, company.companyId, [productId]));
  const latest = labels.get(productId)?.latest;
  expect(latest).toMatchObject({ number: 2, text: { uses: [{ seasonLimits: "2,4-D; 2 lb per acre; season; 1 lb at once" }] }, facts: { uses: [{ seasonLimits: "unknown" }] } });
  expect(Object.keys(latest?.complaints ?? {})).toEqual(["uses.0.seasonLimits"]);
});
