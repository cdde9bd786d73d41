import { afterAll, beforeAll, expect, test } from "vitest";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { previewTemperatures } from "#application/temperatures/preview-temperatures";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { temperaturesForm } from "../../support/temperatures";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("says which days are new, which replace others and which are kept already, and writes nothing", async () => {
  valueOf(await keepTemperatures(house, company.owner.key, temperaturesForm(house)));
  const before = await house.books();
  const form = temperaturesForm(house, { days: "2026-03-06, 50, 30\n2026-03-02, 61, 35\n2026-03-03, 70, 50" });
  const understood = valueOf(await previewTemperatures(house, company.owner.key, form));
  expect(understood).toMatchObject({
    source: "Millbrook airfield",
    inUse: "Millbrook airfield",
    period: { from: "2026-03-02", through: "2026-03-06" },
    added: [{ date: "2026-03-06", highTenths: 500, lowTenths: 300 }],
    replaced: [{ before: { date: "2026-03-02", highTenths: 600 }, after: { highTenths: 610 } }],
    same: [{ date: "2026-03-03" }],
    gaps: [{ from: "2026-03-04", through: "2026-03-05" }],
  });
  expect(understood.given.map(({ date }) => date)).toEqual(["2026-03-02", "2026-03-03", "2026-03-06"]);
  expect(await house.books()).toEqual(before);
});

test("refuses what keeping would refuse, at the field", async () => {
  for (const days of ["2026-03-01, 40, 65", "2026-03-01, 65, 40"]) {
    expect(await previewTemperatures(house, company.owner.key, temperaturesForm(house, { days }))).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { days: expect.any(String) as string } } });
  }
});
