import { afterAll, beforeAll, expect, test } from "vitest";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { readTemperatures } from "#application/temperatures/read-temperatures";
import { parseCalendarDate } from "#domain/foundation/calendar-date";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { pastedDays, temperaturesForm } from "../../support/temperatures";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const keep = async (change: Parameters<typeof temperaturesForm>[1]) => valueOf(await keepTemperatures(house, company.owner.key, temperaturesForm(house, change)));
const read = async (asked: Parameters<typeof readTemperatures>[2] = {}) => valueOf(await readTemperatures(house, company.owner.key, asked));
const december = valueOf(parseCalendarDate("date", "2025-12-01"));

test("where nothing is kept there is no source and no year", async () => {
  expect(await read()).toEqual({ sources: [], shown: null });
});

test("every source with its gaps and years, the one in use first; its newest year day by day, the latest entry of each", async () => {
  await keep({ source: "Yard" });
  await keep({ source: "Airfield", days: "2026-03-01, 60, 40" });
  await keep({ source: "Yard", days: "2026-03-02, 61.5, 35\n2026-03-06, 50, 30", figuresFrom: "Read again" });
  await keep({ source: "Yard", days: pastedDays(december, 31) });
  const { sources, shown } = await read();
  expect(sources).toEqual([
    { source: "Yard", isInUse: true, days: 35, period: { from: "2025-12-01", through: "2026-03-06" }, gaps: [{ from: "2026-01-01", through: "2026-02-28" }, { from: "2026-03-04", through: "2026-03-05" }], years: [2026, 2025] },
    { source: "Airfield", isInUse: false, days: 1, period: { from: "2026-03-01", through: "2026-03-01" }, gaps: [], years: [2026] },
  ]);
  expect(shown).toMatchObject({ source: "Yard", year: 2026 });
  expect(shown?.days.map(({ date, entryNumber, highTenths, figuresFrom, enteredBy }) => [date, entryNumber, highTenths, figuresFrom === "Read again", enteredBy])).toEqual([
    ["2026-03-01", 1, 650, false, company.owner.name],
    ["2026-03-02", 2, 615, true, company.owner.name],
    ["2026-03-03", 1, 700, false, company.owner.name],
    ["2026-03-06", 1, 500, true, company.owner.name],
  ]);
  expect(shown?.months.every(({ kind }) => kind === "too-few-days")).toBe(true);
});

test("another source and year as asked; what is not kept shows the newest", async () => {
  expect((await read({ source: "Yard", year: "2025" })).shown).toMatchObject({ year: 2025, months: { 11: { kind: "mean", daysKept: 31 } } });
  expect((await read({ source: "Airfield" })).shown).toMatchObject({ source: "Airfield", year: 2026 });
  expect((await read({ source: "Nowhere", year: "1999" })).shown).toMatchObject({ source: "Yard", year: 2026 });
});

test("another company's days are not seen", async () => {
  const other = await aCompany(house, "Other Turf");
  expect(valueOf(await readTemperatures(house, other.owner.key, { source: "Yard" }))).toEqual({ sources: [], shown: null });
});
