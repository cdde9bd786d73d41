import { describe, expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { recordPlan } from "#application/register/record-plan";
import { tanksOfRecord } from "#application/register/tanks-of-record";
import { readRecordPlan } from "#application/register/read-record-plan";
import { readRecord } from "#application/register/read-record";
import { OF_CLEAN_OUTS } from "#domain/mixing/mix-change";
import { visitOnFile } from "#application/visits/read-visit";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aCleanOut, aFedVisit, aFill, aGround, aJug, aRecord, aVisitWith, inWorkOf } from "../../support/crew-day";
import { sprayerCalibrationForm, sprayerForm } from "../../support/gear";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";
import { aConfirmedLabel, aLiquid } from "../../support/shed";

eachOnACrewDay("not-known");

type Visit = Awaited<ReturnType<typeof aFedVisit>>;

const cleanOut = (cleanedAt: string) => aCleanOut(house, company, day, { cleanedAt });
const fillFor = (visit: Visit, filledAt = "7:15") => aFill(house, company, day, [visit.visitId], { filledAt });
const saidOf = async (visit: Visit, fillId: string) => {
  const mixes = { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "9.5", fillId } } as const;
  const { registerEntryId } = await aRecord(house, company.owner, visit, { mixes });
  const { findings } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record.content;
  return findings.filter(({ rule }) => OF_CLEAN_OUTS.has(rule)).map(({ level, what }) => `${level}: ${what}`);
};

test("a fill into a tank of which nobody knows what it held is said on the record, by the fill that was drawn from", async () => {
  const visit = await aFedVisit(house, company, day);
  const { fillId, number } = await fillFor(visit);
  expect(valueOf(await readRecordPlan(house, company.owner.key, { visitId: visit.visitId })).cleanOuts).toMatchObject([{ level: "hold" }]);
  expect(await saidOf(visit, fillId)).toEqual([`hold: What the tank of 100 gal tank held before fill ${String(number)} is not on file.`]);
});

test("what nobody knows of stays in question under the fills that followed", async () => {
  const visit = await aFedVisit(house, company, day);
  const { number } = await fillFor(visit, "7:00");
  const { fillId } = await fillFor(visit, "7:30");
  expect(await saidOf(visit, fillId)).toEqual([`hold: What the tank of 100 gal tank held before fill ${String(number)} is not on file.`]);
});

test("a clean-out before the fill says nothing, whatever was done with the tank since", async () => {
  const visit = await aFedVisit(house, company, day);
  await cleanOut("7:10");
  const { fillId } = await fillFor(visit);
  expect(await saidOf(visit, fillId)).toEqual([]);
});

test("what the tank held before counts by what is planned for these lawns: the same products are wanted there", async () => {
  const visit = await aFedVisit(house, company, day);
  await cleanOut("6:50");
  await fillFor(visit, "7:00");
  const { fillId } = await fillFor(visit, "7:30");
  expect(await saidOf(visit, fillId)).toEqual([]);
});

test("a product that is not planned there and whose label nobody has read has to be out first, whatever was filled on top of it", async () => {
  const visit = await aFedVisit(house, company, day);
  const otherId = await aLiquid(house, company);
  await aJug(house, company, day, otherId);
  await cleanOut("6:50");
  const other = await aFill(house, company, day, [], { filledAt: "7:00", products: { [otherId]: "30 fl oz" } });
  await aFill(house, company, day, [], { filledAt: "7:20", products: { [day.ironId]: "20 fl oz" } });
  const { fillId, number } = await fillFor(visit, "7:30");
  const found = await inWorkOf(house, company, async (work) => {
    const own = await visitOnFile(work, visit.visitId);
    if (own === undefined) return [];
    const fill = (await fillsAtHand(work, [fillId], house.now())).get(fillId);
    const draws = fill === undefined ? [] : [{ fill, sprayed: of("gal", "9.5"), isMeasured: true }];
    return tanksOfRecord(work, own, { ...(await recordPlan(work, own)), findings: [] }, { used: [], draws, findings: [], unplanned: [], lotNumbers: new Map() });
  });
  expect(found).toMatchObject([{ level: "hold", rule: "clean-out", figure: expect.stringMatching(new RegExp(`^Fill ${String(other.number)}: .* may not be labeled for the grass there`, "u")) as string }]);
  expect(found[0]?.what).toContain(`with no clean-out on file before fill ${String(number)}.`);
  expect(await saidOf(visit, fillId)).toEqual([`hold: ${found[0]?.what ?? ""}`]);
});

test("a weedkiller that was mixed for one visit alone stays in question under a fill that was made after it", async () => {
  await cleanOut("5:50");
  const dockId = await aLiquid(house, company);
  await aJug(house, company, day, dockId);
  const [use] = A_WHOLE_IRON_TEXT.uses;
  if (use === undefined) throw new Error("The label has a use.");
  await aConfirmedLabel(house, company, dockId, { ...A_WHOLE_IRON_TEXT, productName: "Dockaway", uses: [{ ...use, grasses: "zoysiagrass" }] });
  const ground = await aGround(house, company);
  const tasks = { "0": { productUse: productUseKey(dockId, "Foliar iron"), rate: "1.5 fl oz/1,000 sq ft", reason: "dock", lawns: { [ground.frontId]: "yes", [ground.backId]: "yes" } } } as const;
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, tasks);
  await aRecord(house, company.owner, { ...ground, visitId }, { startedAt: "6:00", endedAt: "6:45", mixes: { "1": { measuredBy: "as-planned-not-measured" } } });
  const visit = await aFedVisit(house, company, day);
  const { fillId, number } = await fillFor(visit);
  expect(await saidOf(visit, fillId)).toEqual([`hold: 100 gal tank was filled for the turf at ${await streetOf(visit)} with no clean-out on file before fill ${String(number)}.`]);
});

async function streetOf({ visitId }: Visit): Promise<string> {
  const [row] = await house.ask<{ street: string }>("select p.street from visit v join property p using (company_id, property_id) where v.visit_id = $1", [visitId]);
  return row?.street ?? "";
}

describe("a visit with two sprayers", () => {
  /** Iron out of the truck's tank and another liquid out of a backpack, neither of which anybody knows what it held. */
  async function withBackpack() {
    const { key, personId } = company.owner;
    const { equipmentId } = valueOf(await addEquipment(house, key, { ...sprayerForm(day.vehicleId), name: "Backpack", capacity: "4 gal" }));
    valueOf(await calibrateSprayer(house, key, sprayerCalibrationForm(equipmentId, personId)));
    const dyeId = await aLiquid(house, company);
    await aConfirmedLabel(house, company, dyeId, A_WHOLE_IRON_TEXT);
    await aJug(house, company, day, dyeId);
    const ground = await aGround(house, company);
    const task = (productId: string, zoneId: string) => ({ productUse: productUseKey(productId, "Foliar iron"), rate: "1.5 fl oz/1,000 sq ft", reason: "color", lawns: { [zoneId]: "yes" as const } });
    const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { "0": task(day.ironId, ground.frontId), "1": task(dyeId, ground.backId) });
    for (const [line, sprayerId] of [day.sprayerId, equipmentId].entries()) await house.ask("update visit_task set equipment_id = $3 where visit_id = $1 and line = $2", [visitId, line + 1, sprayerId]);
    return { visit: { ...ground, visitId }, backpackId: equipmentId, dyeId };
  }

  async function heldOf(visit: Visit, first: string, second: string) {
    const mix = (fillId: string) => (fillId === "" ? ({ measuredBy: "as-planned-not-measured" } as const) : ({ measuredBy: "meter", amount: "2 gal", fillId } as const));
    const { registerEntryId } = await aRecord(house, company.owner, visit, { mixes: { "1": mix(first), "2": mix(second) } });
    const { findings } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record.content;
    return findings.filter(({ rule }) => OF_CLEAN_OUTS.has(rule)).map(({ what }) => what).toSorted();
  }

  test("what is said of the one stays when only the other was drawn from", async () => {
    const { visit } = await withBackpack();
    const { fillId, number } = await fillFor(visit);
    expect(await heldOf(visit, fillId, "")).toEqual([`What the tank of 100 gal tank held before fill ${String(number)} is not on file.`, "What the tank of Backpack held last is not on file."]);
  });

  test("one that gave a fill in the place of the planned one takes over for it, under its own name", async () => {
    const { visit, backpackId, dyeId } = await withBackpack();
    const { fillId, number } = await aFill(house, company, day, [visit.visitId], { equipmentId: backpackId, finished: "4 gal", products: { [day.ironId]: "3 fl oz", [dyeId]: "3 fl oz" } });
    expect(await heldOf(visit, fillId, fillId)).toEqual([`What the tank of Backpack held before fill ${String(number)} is not on file.`]);
  });
});
