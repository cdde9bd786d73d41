import { afterEach, beforeEach, expect, test } from "vitest";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { readHouseSettings } from "#application/companies/read-house-settings";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { HOUSE_SETTINGS_CHANGE } from "../../support/attempts-of-company";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

const settingsOf = async (of: TestCompany) => valueOf(await readHouseSettings(house, of.owner.key, {})).settings;

test("writes every setting, counts the version, and the audit trail keeps before and after; another company keeps its own", async () => {
  const other = await aCompany(house, "Second Crew");
  expect(await changeHouseSettings(house, company.owner.key, HOUSE_SETTINGS_CHANGE)).toEqual({ ok: true, value: { version: 2 } });
  expect(await settingsOf(company)).toMatchObject({ calibrationValidDays: 180, lineAtTheEnd: "left-as-it-is" });
  expect(await settingsOf(other)).toEqual(DEFAULT_HOUSE_SETTINGS);
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({
    deed: "house-settings-changed", subject_id: company.companyId,
    details: { before: { calibrationValidDays: 365, tankMark: "0.1 gal", lineAtTheEnd: "pushed-out-with-water" }, after: { calibrationValidDays: 180, tankMark: "0.5 gal", minutesPerStop: 10 } },
  });
  expect(await changeHouseSettings(house, company.owner.key, { ...HOUSE_SETTINGS_CHANGE, version: 2, minutesPerStop: "0" })).toEqual({ ok: true, value: { version: 3 } });
  expect(await settingsOf(company)).toMatchObject({ minutesPerStop: 0 });
});

test("whoever filled the form from an older version is told, and nothing is overwritten", async () => {
  valueOf(await changeHouseSettings(house, company.owner.key, HOUSE_SETTINGS_CHANGE));
  const before = await house.books();
  for (const version of [1, 3]) expect(await changeHouseSettings(house, company.owner.key, { ...HOUSE_SETTINGS_CHANGE, version, minutesPerStop: "20" })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});

test("of two changes at once one is made and the other is told", async () => {
  const answers = await Promise.all(["5", "6"].map((minutesPerStop) => changeHouseSettings(house, company.owner.key, { ...HOUSE_SETTINGS_CHANGE, minutesPerStop })));
  expect(answers.map((answer) => (answer.ok ? "changed" : answer.refusal.kind)).sort()).toEqual(["changed", "conflict"]);
});

test.each([
  ["calibrationValidDays", "0"], ["calibrationValidDays", "a year"], ["samePressureWithinPsi", "21"], ["granularPasses", "three"], ["tankLoads", ""], ["heatCautionFromF", "49"],
  ["minutesPerStop", "-1"], ["minutesPerThousandSquareFeet", "0"], ["tankMark", "0.1"], ["tankMark", "1 lb"], ["lineAtTheEnd", "blown out"], ["version", "0"],
] as const)("%s as %j is refused at its field", async (field, value) => {
  const before = await house.books();
  const form = { ...HOUSE_SETTINGS_CHANGE, [field]: value };
  expect(await changeHouseSettings(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});
