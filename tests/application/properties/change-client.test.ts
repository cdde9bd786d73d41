import { afterAll, beforeAll, expect, test } from "vitest";
import { changeClient } from "#application/properties/change-client";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aClient } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("writes the fields and the standing, counts the version, and the trail keeps before and after", async () => {
  const { clientId } = await aClient(house, company);
  const form = { clientId, version: 1, name: "Avery Dale", phone: "", email: "avery@dale.example", standing: "paused" } as const;
  expect(await changeClient(house, company.owner.key, form)).toEqual({ ok: true, value: { version: 2 } });
  expect(await house.ask("select name, phone, email, standing, version from client where client_id = $1", [clientId])).toEqual([
    { name: "Avery Dale", phone: null, email: "avery@dale.example", standing: "paused", version: 2 },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "client-changed",
    details: { before: { name: "Avery Thorn", standing: "current" }, after: { name: "Avery Dale", standing: "paused" } },
  });
});

test("of two changes at once one is made and the other is told", async () => {
  const { clientId } = await aClient(house, company);
  const change = (name: string) => changeClient(house, company.owner.key, { clientId, version: 1, name, phone: "", email: "", standing: "current" });
  const answers = await Promise.all([change("One"), change("Other")]);
  expect(answers.map((answer) => (answer.ok ? "changed" : answer.refusal.kind)).sort()).toEqual(["changed", "conflict"]);
  valueOf(await changeClient(house, company.owner.key, { clientId, version: 2, name: "Third", phone: "", email: "", standing: "left" }));
});
