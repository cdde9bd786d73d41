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
