import { afterAll, beforeAll, expect, test } from "vitest";
import { inCompany } from "#adapters/postgres/company-work";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { dayOfRow, keptTemperatures, sourceInUse } from "#application/temperatures/kept-temperatures";
import { type Work } from "#application/use-case";
import { type CalendarDate, parseCalendarDate } from "#domain/foundation/calendar-date";
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

async function working<Answer>(body: (work: Work) => Promise<Answer>): Promise<Answer> {
  const { key } = company.owner;
  const answer = await inCompany(house.client, key, (tx, member, facts) =>
    body({ tx, member, company: facts, sessionVersion: key.sessionVersion, now: house.now(), newId: house.newId, newSecret: house.newSecret }),
  );
  if (answer === "signed-out") throw new Error("The owner is signed out.");
  return answer;
}

const day = (text: string): CalendarDate => valueOf(parseCalendarDate("date", text));

test("no source is in use before any day is kept, and the first one is then", async () => {
  expect(await working(sourceInUse)).toBeNull();
  valueOf(await keepTemperatures(house, company.owner.key, temperaturesForm(house)));
  expect(await working(sourceInUse)).toBe("Millbrook airfield");
});

test("of each day within the period the latest entry counts, with who entered it and from where", async () => {
  house.pass(60);
  valueOf(await keepTemperatures(house, company.owner.key, temperaturesForm(house, { days: "2026-03-02, 61, 35", figuresFrom: "The radio" })));
  const kept = await working((work) => keptTemperatures(work, "Millbrook airfield", { from: day("2026-03-02"), through: day("2026-03-03") }));
  expect(kept).toEqual([
    { date: "2026-03-02", scale: "fahrenheit", highTenths: 610, lowTenths: 350, entryNumber: 2, figuresFrom: "The radio", enteredAt: house.now(), enteredBy: company.owner.name },
    expect.objectContaining({ date: "2026-03-03", highTenths: 700, entryNumber: 1 }),
  ]);
  expect(await working((work) => keptTemperatures(work, "Campus", { from: day("2026-03-01"), through: day("2026-03-31") }))).toEqual([]);
});

test("a stored day is a day of the calendar with its figures", () => {
  expect(dayOfRow({ date: new Date("2026-03-01T00:00:00Z"), scale: "celsius", highTenths: 183, lowTenths: -4 })).toEqual({ date: "2026-03-01", scale: "celsius", highTenths: 183, lowTenths: -4 });
});
