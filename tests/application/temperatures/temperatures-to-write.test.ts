import { afterAll, beforeAll, expect, test } from "vitest";
import { inCompany } from "#adapters/postgres/company-work";
import { temperaturesToWrite } from "#application/temperatures/temperatures-to-write";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aSource, temperaturesForm } from "../../support/temperatures";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function toWrite(change: Parameters<typeof temperaturesForm>[1]) {
  const { key } = company.owner;
  const answer = await inCompany(house.client, key, (tx, member, facts) =>
    temperaturesToWrite(
      { tx, member, company: facts, sessionVersion: key.sessionVersion, now: house.now(), newId: house.newId, newSecret: house.newSecret },
      { ...temperaturesForm(house, change), scale: change?.scale ?? "fahrenheit" },
    ),
  );
  if (answer === "signed-out") throw new Error("The owner is signed out.");
  return answer;
}

test("the first days of all replace nothing and have no source in use", async () => {
  expect(valueOf(await toWrite({}))).toMatchObject({ inUse: null, kept: [], replaced: [], same: [], gaps: [], period: { from: "2026-03-01", through: "2026-03-03" } });
});

test("a gap is closed by what is kept already, and by nothing of another source", async () => {
  await aSource(house, company, "Yard");
  const ends = "2026-03-04, 60, 40\n2026-02-28, 60, 40";
  expect(valueOf(await toWrite({ source: "Yard", days: ends })).gaps).toEqual([]);
  expect(valueOf(await toWrite({ source: "Campus", days: ends })).gaps).toEqual([{ from: "2026-03-01", through: "2026-03-03" }]);
});

test("the same temperatures on the other scale are other figures", async () => {
  expect(valueOf(await toWrite({ source: "Yard", scale: "celsius", days: "2026-03-02, 16, 2" })).replaced).toHaveLength(1);
});

test("today is not over by the company's own clock, though it is the next day in universal time", async () => {
  // 11 pm in Indianapolis.
  house.pass(14 * 60);
  expect(await toWrite({ days: "2026-04-14, 60, 40" })).toMatchObject({ ok: false, refusal: { fields: { days: expect.stringContaining("2026-04-14 is not over") as string } } });
  house.pass(2 * 60);
  expect(await toWrite({ days: "2026-04-14, 60, 40" })).toMatchObject({ ok: true });
});
