import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { keepTemperatures, refuseNothingNew } from "#application/temperatures/keep-temperatures";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { temperaturesForm } from "../../support/temperatures";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

type Change = Parameters<typeof temperaturesForm>[1];
const keep = (change: Change = {}) => keepTemperatures(house, company.owner.key, temperaturesForm(house, change));
const rows = (source: string) =>
  house.ask<{ date: string; entry_number: number; high_tenths: number; low_tenths: number; scale: string }>(
    "select date::text, entry_number, high_tenths, low_tenths, scale from daily_temperature where source = $1 order by date, entry_number",
    [source],
  );
const inUse = async () => (await house.ask<{ temperature_source: string | null }>("select temperature_source from company where company_id = $1", [company.companyId]))[0]?.temperature_source;
async function complaint(change: Change) {
  const answer = await keep(change);
  return !answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer;
}

test("each day is one entry with who and when, one deed for all, and the first source is in use until another is chosen", async () => {
  expect(await inUse()).toBeNull();
  expect(valueOf(await keep())).toEqual({ days: 3 });
  expect(await rows("Millbrook airfield")).toEqual([
    { date: "2026-03-01", entry_number: 1, high_tenths: 650, low_tenths: 400, scale: "fahrenheit" },
    { date: "2026-03-02", entry_number: 1, high_tenths: 600, low_tenths: 350, scale: "fahrenheit" },
    { date: "2026-03-03", entry_number: 1, high_tenths: 700, low_tenths: 500, scale: "fahrenheit" },
  ]);
  expect(await house.ask("select distinct figures_from, person_id, entered_at from daily_temperature")).toEqual([
    { figures_from: "Its own monthly page, read by hand", person_id: company.owner.personId, entered_at: house.now() },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "temperatures-kept",
    details: { source: "Millbrook airfield", from: "2026-03-01", through: "2026-03-03", days: 3, replaced: [] },
  });
  expect(await inUse()).toBe("Millbrook airfield");
  valueOf(await keep({ source: "Campus" }));
  expect(await inUse()).toBe("Millbrook airfield");
});

test("other figures of a day are a further entry, the same figures are none, and the first stays", async () => {
  const source = "Second entries";
  valueOf(await keep({ source }));
  expect(valueOf(await keep({ source, days: "2026-03-03, 70, 50\n2026-03-02, 61.5, 35\n2026-03-04, 10, -2.5" }))).toEqual({ days: 2 });
  expect((await rows(source)).map(({ date, entry_number, high_tenths, low_tenths }) => [date, entry_number, high_tenths, low_tenths])).toEqual([
    ["2026-03-01", 1, 650, 400],
    ["2026-03-02", 1, 600, 350],
    ["2026-03-02", 2, 615, 350],
    ["2026-03-03", 1, 700, 500],
    ["2026-03-04", 1, 100, -25],
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { days: 2, replaced: ["2026-03-02"] } });
  expect(valueOf(await keep({ source, scale: "celsius", days: "2026-03-02, 16.4, 1.7" }))).toEqual({ days: 1 });
  expect((await rows(source)).find(({ entry_number }) => entry_number === 3)).toMatchObject({ scale: "celsius", high_tenths: 164, low_tenths: 17 });
});

test("pressed twice, and twice at once, it is written once; with other figures it says so", async () => {
  const source = "Twice";
  const pressed = temperaturesForm(house, { source });
  const both = await Promise.all([keepTemperatures(house, company.owner.key, pressed), keepTemperatures(house, company.owner.key, pressed)]);
  expect(both.map((answer) => valueOf(answer))).toEqual([{ days: 3 }, { days: 3 }]);
  const before = await house.books();
  for (const change of [{ days: `${pressed.days}\n2026-03-04, 60, 40` }, { days: "2026-03-01, 64, 40" }, { source: "Thrice" }, { figuresFrom: "Elsewhere" }]) {
    expect(await keepTemperatures(house, company.owner.key, { ...pressed, ...change }), JSON.stringify(change)).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  }
  expect(await house.books()).toEqual(before);
});

describe("nothing is written", () => {
  test("for days that are kept already with the same figures", async () => {
    valueOf(await keep({ source: "Same" }));
    expect(await complaint({ source: "Same" })).toEqual({ days: "Every one of these days is kept already, with the same figures." });
    expect(refuseNothingNew({ added: [], replaced: [], same: [] })).toMatchObject({ ok: false });
  });

  test.each([
    ["2026-03-01, 40, 65", "The low of 2026-03-01, 65 °F, is above its high, 40 °F."],
    ["2026-03-01, 650, 40", "it takes from -60 to 135 °F"],
    ["2026-03-01, 65, 40\n2026-03-01, 65, 40", "The day 2026-03-01 stands twice."],
    ["2026-04-14, 65, 40", "The day 2026-04-14 is not over"],
    ["2026-03-01, 65.25, 40", "kept to a tenth of a degree"],
    ["65, 40", "A line has no date."],
    ["date, high, low", "Give the days, one to a line"],
  ])("for %s", async (days, words) => {
    const before = await house.books();
    expect(await complaint({ days })).toEqual({ days: expect.stringContaining(words) as string });
    expect(await house.books()).toEqual(before);
  });

  test("for a form with an empty field or a scale of its own", async () => {
    expect(Object.keys((await complaint({ source: " ", figuresFrom: "", days: " " })) as object)).toEqual(["source", "figuresFrom", "days"]);
    expect(Object.keys((await complaint({ scale: "kelvin" as "celsius" })) as object)).toEqual(["scale"]);
  });
});

test("what is written can't be changed or taken out, by the owner of the tables either", async () => {
  for (const sql of ["update daily_temperature set high_tenths = 0", "delete from daily_temperature", "truncate daily_temperature"]) await expect(house.ask(sql)).rejects.toThrow("append-only");
});

test("the database takes no upside-down day, no other scale and no empty words, whoever asks", async () => {
  const insert = ([high, low, scale, source = "Door"]: readonly [number, number, string, string?]) =>
    house.ask("insert into daily_temperature values ($1, $2, '2026-03-01', 1, $3, $4, $5, $6, 'By hand', now(), $7)", [company.companyId, source, house.newId(), scale, high, low, company.owner.personId]);
  const wrong = [[100, 101, "celsius"], [751, 0, "celsius"], [1671, 0, "fahrenheit"], [10, 0, "kelvin"], [10, 0, "celsius", " "]] as const;
  for (const day of wrong) await expect(insert(day)).rejects.toThrow("check constraint");
  await insert([750, -900, "celsius"]);
});
