import { afterAll, beforeAll, expect, test } from "vitest";
import { changeProperty } from "#application/properties/change-property";
import { typedPastMidnight } from "#application/properties/watering-fields.schema";
import { readProperty } from "#application/properties/read-property";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aClient, propertyForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("writes access, mowing and watering, moves to the new ZIP code, and the trail never says the gate code", async () => {
  const { propertyId } = await aClient(house, company);
  expect(await changeProperty(house, company.owner.key, propertyForm(propertyId))).toEqual({ ok: true, value: { version: 2 } });
  const { property } = valueOf(await readProperty(house, company.owner.key, { propertyId }));
  expect(property).toMatchObject({
    version: 2, state: "IL", zip: "60401", accessNote: "Side gate", gateCode: "4471", narrowestGate: of("in", 36n), dogNote: "Biscuit, friendly", tankWater: "yes",
    mowingDay: 2, mowedBy: "customer", lotArea: of("acre", "0.25"), townRule: { days: { weekdays: [1, 3] }, hours: { fromMinute: 240, untilMinute: 570 } }, controller: "none",
    note: "Two lines\nof a note",
  });
  expect(Math.round(property.position?.latitude ?? 0)).toBe(41);
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "property-changed", details: { after: { gateCode: "changed", zip: "60401" } } });
  expect(JSON.stringify(last?.details)).not.toContain("4471");
});

const NOT_ON_FILE = { isNone: "", from: "", until: "", by: "weekdays", on: {} } as const;
type Watering = Partial<Pick<Parameters<typeof changeProperty>[2], "townRule" | "controller">>;

/** What is kept of the two facts, and what is refused of them, when a form with them is sent. */
async function watered(change: Watering & { readonly street?: string }) {
  const { propertyId } = await aClient(house, company);
  const answer = await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), townRule: NOT_ON_FILE, controller: NOT_ON_FILE, ...change });
  if (!answer.ok) return answer.refusal.kind === "bad-input" ? Object.keys(answer.refusal.fields) : answer.refusal.kind;
  const { townRule, controller } = valueOf(await readProperty(house, company.owner.key, { propertyId })).property;
  return { townRule, controller };
}

test("watering days may come as a list, as the browser's form holds numbered fields", async () => {
  const on = [undefined, "yes", "", false, "yes"];
  expect(await watered({ controller: { ...NOT_ON_FILE, on } })).toEqual({ townRule: "unknown", controller: { days: { weekdays: [1, 4] }, hours: null } });
});

test("the town's rule and the controller are kept apart: on file, known not to be there, or not on file", async () => {
  expect(await watered({})).toEqual({ townRule: "unknown", controller: "unknown" });
  expect(await watered({ townRule: { ...NOT_ON_FILE, isNone: "yes" } })).toEqual({ townRule: "none", controller: "unknown" });
  expect(await watered({ townRule: { ...NOT_ON_FILE, by: "house-number" }, controller: { ...NOT_ON_FILE, from: "4:00", until: "9:00", by: "even" }, street: "41 Sorrel Rise" })).toEqual({
    townRule: { days: { dates: "house-number" }, hours: null },
    controller: { days: { dates: "even" }, hours: { fromMinute: 240, untilMinute: 540 } },
  });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { after: { townRuleDates: "house-number", controllerDates: "even" } } });
});

test("hours may end at midnight, and midnight twice is the whole day", async () => {
  const hours = async (from: string, until: string) => watered({ townRule: { ...NOT_ON_FILE, from, until } });
  expect(await hours("22:00", "00:00")).toMatchObject({ townRule: { hours: { fromMinute: 1320, untilMinute: 1440 } } });
  expect(await hours("00:00", "00:00")).toMatchObject({ townRule: { hours: { fromMinute: 0, untilMinute: 1440 } } });
});

test("the town's hours past midnight are asked what they mean, at a field of their own; a controller's are not", async () => {
  const night = { ...NOT_ON_FILE, from: "18:00", until: "10:00", on: { "1": "yes", "4": "yes" } };
  const town = (pastMidnight?: "" | "same-day" | "next-morning" | "not-known", change = {}) => watered({ townRule: { ...night, ...(pastMidnight === undefined ? {} : { pastMidnight }), ...change } });
  expect(await town()).toEqual(["townRule.pastMidnight"]);
  expect(await town("")).toEqual(["townRule.pastMidnight"]);
  expect(await town("next-day" as "next-morning")).toEqual(["townRule.pastMidnight"]);
  const onFile = (pastMidnight: string) => ({ townRule: { days: { weekdays: [1, 4] }, hours: { fromMinute: 1080, untilMinute: 600, pastMidnight } }, controller: "unknown" });
  expect(await town("same-day")).toEqual(onFile("same-day"));
  expect(await town("next-morning")).toEqual(onFile("next-morning"));
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { before: { townRulePastMidnight: null }, after: { townRulePastMidnight: "next-morning" } } });
  const asTyped = { townRule: { days: { weekdays: [1, 4] }, hours: { fromMinute: 1080, untilMinute: 600 } }, controller: "unknown" };
  expect(await town("not-known")).toEqual(asTyped);
  const all = { "1": "yes", "2": "yes", "3": "yes", "4": "yes", "5": "yes", "6": "yes", "7": "yes" };
  expect(await town("", { on: all })).toMatchObject({ townRule: { hours: { fromMinute: 1080, untilMinute: 600 } } });
  expect(await town("", { on: {} })).toMatchObject({ townRule: { days: null, hours: { fromMinute: 1080, untilMinute: 600 } } });
  expect(await town("same-day", { until: "23:00" })).toMatchObject({ townRule: { hours: { fromMinute: 1080, untilMinute: 1380 } } });
  expect(await town(undefined, { until: "00:00" })).toMatchObject({ townRule: { hours: { fromMinute: 1080, untilMinute: 1440 } } });
  expect(await watered({ controller: night })).toEqual({ townRule: "unknown", controller: { days: { weekdays: [1, 4] }, hours: { fromMinute: 1080, untilMinute: 600 } } });
});

test("two times as they are typed pass midnight where the second is earlier and is not midnight itself", () => {
  expect(typedPastMidnight("18:00", "10:00")).toEqual({ fromMinute: 1080, untilMinute: 600 });
  for (const [from, until] of [["04:00", "09:00"], ["18:00", "00:00"], ["00:00", "00:00"], ["18:00", "18:00"], ["18:00", ""], ["", "10:00"], ["6 pm", "10:00"]] as const) expect(typedPastMidnight(from, until)).toBeUndefined();
});

test("what contradicts itself is refused at its field", async () => {
  expect(await watered({ townRule: { ...NOT_ON_FILE, by: "even", on: { "1": "yes" } } })).toEqual(["townRule.by"]);
  expect(await watered({ townRule: { ...NOT_ON_FILE, isNone: "yes", by: "odd" } })).toEqual(["townRule.by"]);
  expect(await watered({ controller: { ...NOT_ON_FILE, isNone: "yes", from: "4:00", until: "9:00" } })).toEqual(["controller.by"]);
  expect(await watered({ controller: { ...NOT_ON_FILE, from: "4:00" } })).toEqual(["controller.until"]);
  expect(await watered({ controller: { ...NOT_ON_FILE, from: "4:00", until: "4:00" } })).toEqual(["controller.until"]);
  expect(await watered({ controller: { ...NOT_ON_FILE, by: "house-number" as "odd" } })).toEqual(["controller.by"]);
  expect(await watered({ townRule: { ...NOT_ON_FILE, by: "house-number" }, street: "Old Mill Road" })).toEqual(["townRule.by"]);
});

test("the table takes dates or days of the week, and days and hours only of what is on file", async () => {
  const { propertyId } = await aClient(house, company);
  valueOf(await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), townRule: { ...NOT_ON_FILE, by: "even" }, controller: NOT_ON_FILE }));
  const set = (columns: string) => house.ask(`update property set ${columns} where property_id = $1`, [propertyId]);
  await expect(set("town_rule_weekdays = '1'")).rejects.toThrow("property_town_rule_goes_by_weekdays_or_dates");
  await expect(set("town_rule_dates = 'some'")).rejects.toThrow("property_town_rule_dates_are_known");
  await expect(set("town_rule_past_midnight = 'same-day'")).rejects.toThrow("property_town_rule_past_midnight_is_of_hours_that_pass_it");
  await expect(set("town_rule_past_midnight = 'same-day', town_rule_from_minute = 240, town_rule_until_minute = 540")).rejects.toThrow("property_town_rule_past_midnight_is_of_hours_that_pass_it");
  await expect(set("town_rule_past_midnight = 'some', town_rule_from_minute = 1080, town_rule_until_minute = 540")).rejects.toThrow("property_town_rule_past_midnight_is_known");
  await expect(set("town_rule = null")).rejects.toThrow("property_town_rule_says_something");
  await expect(set("town_rule_dates = null")).rejects.toThrow("property_town_rule_says_something");
  await expect(set("controller = 'none', controller_weekdays = '1'")).rejects.toThrow("property_controller_says_something");
  await expect(set("controller = 'on-file', controller_weekdays = '8'")).rejects.toThrow("property_controller_weekdays_are_some");
  await expect(set("controller = 'on-file', controller_dates = 'house-number'")).rejects.toThrow("property_controller_dates_are_known");
  await expect(set("controller = 'on-file', controller_dates = 'odd', controller_weekdays = '1'")).rejects.toThrow("property_controller_goes_by_weekdays_or_dates");
  await expect(set("controller = 'on-file', controller_from_minute = 5")).rejects.toThrow("property_controller_hours_are_whole");
  await expect(set("controller = 'on-file', controller_from_minute = 5, controller_until_minute = 5")).rejects.toThrow("property_controller_hours_lie_in_a_day");
  await expect(set("mows_on_no_fixed_day = true, mowing_weekday = 2")).rejects.toThrow("property_mows_on_a_day_or_on_no_fixed_one");
});

test("a customer without a fixed mowing day is put on file as such, which is not the same as nobody's answer", async () => {
  const { propertyId } = await aClient(house, company);
  const kept = async (version: number, mowingDay: string) => {
    valueOf(await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), street: "12 Thistle Rise", version, mowingDay }));
    return valueOf(await readProperty(house, company.owner.key, { propertyId })).property.mowingDay;
  };
  expect([await kept(1, "no-fixed-day"), await kept(2, ""), await kept(3, "5")]).toEqual(["no-fixed-day", null, 5]);
});

test("a position that is given is kept as entered, and one that is taken back leaves the middle of the ZIP code", async () => {
  const { propertyId } = await aClient(house, company);
  const form = propertyForm(propertyId);
  const positionAfter = async (version: number, position: string) => {
    valueOf(await changeProperty(house, company.owner.key, { ...form, version, position }));
    return valueOf(await readProperty(house, company.owner.key, { propertyId })).property.position;
  };
  expect(await positionAfter(1, "41.4021, -87.3254")).toEqual({ latitude: 41.4021, longitude: -87.3254, origin: "entered" });
  expect(await positionAfter(2, "")).toMatchObject({ origin: "zip-centroid" });
});

test("whoever filled the form from an older version is told, and an address of another property is refused", async () => {
  const { propertyId } = await aClient(house, company);
  const other = await aClient(house, company);
  const form = propertyForm(propertyId);
  valueOf(await changeProperty(house, company.owner.key, form));
  expect(await changeProperty(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "conflict" } });
  const taken = { ...propertyForm(other.propertyId), street: form.street, zip: form.zip };
  expect(await changeProperty(house, company.owner.key, taken)).toMatchObject({ refusal: { fields: { street: A_SENTENCE } } });
});

test.each([
  ["narrowestGate", { narrowestGate: "0" }], ["lotArea", { lotArea: "some" }], ["mowingDay", { mowingDay: "8" }],
  ["position", { position: "41.4" }], ["position", { position: "95, 10" }], ["townRule.from", { townRule: { ...NOT_ON_FILE, from: "25:00", until: "9:00" } }], ["dogNote", { dogNote: "x".repeat(201) }], ["tankWater", { tankWater: "perhaps" as "yes" }],
] as const)("%s is refused at its field", async (field, change) => {
  const { propertyId } = await aClient(house, company);
  expect(await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), ...change })).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
});
