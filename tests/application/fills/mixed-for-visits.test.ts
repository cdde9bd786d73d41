import { expect, test } from "vitest";
import { mixAlone, mixedForVisits } from "#application/fills/mixed-for-visits";
import { of } from "#domain/quantities/quantity";
import { aCompany } from "../../support/crew";
import { aFedVisit, aFill, aRecord, inWorkOf } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay();

const LONG_AGO = new Date("2026-01-01T00:00:00Z");
const mixed = (since: Date | null = LONG_AGO) => inWorkOf(house, company, (work) => mixedForVisits(work, since));
/** Records as they were before the sprayer's id was kept in them, by what it was called then. */
const withoutItsId = async (equipmentName: string) => {
  await house.ask("alter table register_entry disable trigger user");
  await house.ask("update register_entry set content = replace(replace(content, $1, ''), $2, $3)", [`"equipmentId":"${day.sprayerId}",`, '"equipmentName":"100 gal tank"', `"equipmentName":"${equipmentName}"`]);
  await house.ask("alter table register_entry enable trigger user");
};

test("a spray that a record has out of no fill counts with its sprayer, its street and when its visit ended", async () => {
  const visit = await aFedVisit(house, company, day);
  expect(await mixed()).toEqual([]);
  await aRecord(house, company.owner, visit, { endedAt: "8:45" });
  const [only, ...more] = await mixed();
  expect(more).toEqual([]);
  const endedAt = Date.parse("2026-04-14T08:45:00-04:00");
  // The feed was spread, and 9.6 fl oz of iron went on 6,400 sq ft.
  expect(only).toMatchObject({ visitId: visit.visitId, equipmentId: day.sprayerId, endedAt, street: expect.stringMatching(/^\d/u) as string, products: [{ productId: day.ironId }] });
  expect(await mixed(new Date(endedAt - 1))).toHaveLength(1);
  expect(await mixed(new Date(endedAt)), "a clean-out in that minute came after it").toEqual([]);
  expect(await mixed(null)).toEqual([]);
});

test("what came out of a fill is none, and neither is what nothing was sprayed of or another company has", async () => {
  const [one, two] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const { fillId } = await aFill(house, company, day, [one.visitId]);
  await aRecord(house, company.owner, one, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "9.5", fillId } } });
  await aRecord(house, company.owner, two, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "0" } } });
  expect(await mixed()).toEqual([]);
  const other = await aCompany(house);
  await aRecord(house, company.owner, await aFedVisit(house, company, day));
  expect(await mixed()).toHaveLength(1);
  expect(await inWorkOf(house, other, (work) => mixedForVisits(work, LONG_AGO))).toEqual([]);
});

test("a record that does not keep the sprayer's id names it, or its visit was planned with it", async () => {
  const visit = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, visit);
  await withoutItsId("100 gal tank");
  expect(await mixed()).toMatchObject([{ equipmentId: day.sprayerId }]);
  await withoutItsId("Old name");
  expect(await mixed(), "it was called otherwise then, and the plan named none").toEqual([]);
  await house.ask("update visit_task set equipment_id = $1 where visit_id = $2 and product_id = $3", [day.sprayerId, visit.visitId, day.ironId]);
  expect(await mixed()).toMatchObject([{ equipmentId: day.sprayerId }]);
});

test("as a mix it has the name of its street, no known strength, and labels as far as they are read", () => {
  const iron = { productId: "iron", productName: "Ironside", amount: of("fl oz", 9n) };
  const mix = mixAlone({ visitId: "v", equipmentId: "e", endedAt: 0, street: "12 Elm St", products: [iron] }, new Map());
  expect(mix).toEqual({ name: "the mix of 12 Elm St", finished: "unknown", products: [{ ...iron, label: "unknown" }] });
});
