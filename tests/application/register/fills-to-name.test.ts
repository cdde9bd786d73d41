import { describe, expect, test } from "vitest";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { readRecordPlan } from "#application/register/read-record-plan";
import { readRecord } from "#application/register/read-record";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aCleanOut, aFedVisit, aFill, aGround, aJug, aRecord, aVisitWith, tankReadingForm } from "../../support/crew-day";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";
import { aConfirmedLabel, aLiquid } from "../../support/shed";

eachOnACrewDay();

type Visit = Awaited<ReturnType<typeof aFedVisit>>;
const fed = () => aFedVisit(house, company, day);
const asked = async ({ visitId }: Pick<Visit, "visitId">) => valueOf(await readRecordPlan(house, company.owner.key, { visitId })).mixes;
const named = async (visit: Pick<Visit, "visitId">) => (await asked(visit)).find(({ kind }) => kind === "spray")?.fillIds;
const record = (visit: Visit, spray: object, change: object = {}) => aRecord(house, company.owner, visit, { ...change, mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": spray } });

/** As strong as the visits want it: 6,400 sq ft take 9.6 fl oz, in what the sprayer puts out there. */
async function strength(visit: Visit) {
  const [, spray] = await asked(visit);
  const gallons = Number(spray?.planned?.amount ?? 0n) / Number(of("gal", 1n).amount);
  return { gallons, ouncesPerGallon: 9.6 / gallons };
}
async function filled(visits: readonly Visit[], gallons: number, filledAt: string, times = 1) {
  const [visit] = visits;
  const { ouncesPerGallon } = await strength(visit ?? (await fed()));
  const products = { [day.ironId]: `${(gallons * ouncesPerGallon * times).toFixed(2)} fl oz` };
  return (await aFill(house, company, day, visits.map(({ visitId }) => visitId), { filledAt, finished: `${String(gallons)} gal`, products })).fillId;
}

/** Forty gallons left over of a fill of 52 for a visit that is over. */
async function leftOver() {
  const before = await fed();
  const fillId = await filled([before], 52, "6:30");
  await record(before, { measuredBy: "meter", amount: "12 gal", fillId }, { startedAt: "6:40", endedAt: "7:00" });
  return fillId;
}

describe("what other visits left over of the same mix", () => {
  test("comes first, and the fills that were made for the visit after it", async () => {
    const first = await leftOver();
    const [one, two] = [await fed(), await fed()];
    const second = await filled([one, two], 20, "7:15");
    expect([await named(one), await named(two)]).toEqual([[first, second], [first, second]]);
  });

  test("is named from a mark of the gauge on", async () => {
    const first = await leftOver();
    await record(await fed(), { measuredBy: "meter", amount: "39.96 gal", fillId: first }, { startedAt: "7:01", endedAt: "7:10" });
    const visit = await fed();
    expect(await named(visit)).toEqual([]);
    const own = await filled([visit], 20, "7:15");
    expect(await named(visit)).toEqual([own]);
  });

  test("is not what lies under another mix, be that used up, once the visit's own fill was made", async () => {
    const [first, other] = [await leftOver(), await fed()];
    const between = await filled([other], 12, "7:01", 2);
    await record(other, { measuredBy: "meter", amount: "12 gal", fillId: between }, { startedAt: "7:02", endedAt: "7:12" });
    const visit = await fed();
    // The other mix went in on the visit's own day: the visit may have come before it.
    expect(await named(visit)).toEqual([first]);
    const own = await filled([visit], 20, "7:15");
    expect(await named(visit)).toEqual([own]);
  });

  test("serves a visit alone for which nothing was filled, out of the tank and not out of jugs", async () => {
    const fillId = await leftOver();
    const visit = await fed();
    expect(await named(visit)).toEqual([fillId]);
    const { registerEntryId } = await record(visit, { measuredBy: "as-planned-not-measured", fillId });
    const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
    expect(content.treatments.find(({ productId }) => productId === day.ironId)?.fill?.fillId).toBe(fillId);
    expect(content.findings.map(({ rule }) => rule)).not.toContain("more-sprayed-than-filled");
  });

  test("as planned two visits that take more than the fill made for them get the whole planned product out of both", async () => {
    const [first, one, two] = [await leftOver(), await fed(), await fed()];
    const { gallons, ouncesPerGallon } = await strength(one);
    // All of the left-over but two gallons is gone.
    await record(await fed(), { measuredBy: "meter", amount: "38 gal", fillId: first }, { startedAt: "7:01", endedAt: "7:10" });
    await filled([one, two], Math.ceil(2 * gallons - 2), "7:15");
    for (const visit of [one, two]) {
      const [fillId, ...others] = (await named(visit)) ?? [];
      const { registerEntryId } = await record(visit, { measuredBy: "as-planned-not-measured", fillId, alsoFrom: others.map((other) => ({ fillId: other, amount: "" })) });
      const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
      const iron = content.treatments.find(({ productId }) => productId === day.ironId);
      expect(Number(iron?.total.amount ?? 0) / Number(of("fl oz", 1n).amount)).toBeCloseTo(gallons * ouncesPerGallon, 1);
      expect(content.findings.map(({ rule }) => rule)).not.toContain("more-sprayed-than-filled");
    }
  });

  test("is not what is stronger, was cleaned out, is still for a visit of its own, or was filled after the visit's own", async () => {
    const visit = await fed();
    await filled([], 20, "6:30", 2);
    expect(await named(visit)).toEqual([]);
    await filled([], 20, "6:40");
    await aCleanOut(house, company, day, { cleanedAt: "6:50" });
    expect(await named(visit)).toEqual([]);
    await filled([await fed()], 20, "6:55");
    expect(await named(visit)).toEqual([]);
    const own = await filled([visit], 20, "7:00");
    await filled([], 20, "7:20");
    expect(await named(visit)).toEqual([own]);
  });

  test("is not what was cleaned out before the visit's own fill was made", async () => {
    await leftOver();
    await aCleanOut(house, company, day, { cleanedAt: "7:10" });
    const visit = await fed();
    const own = await filled([visit], 20, "7:15");
    expect(await named(visit)).toEqual([own]);
  });

  test("counts where its tank was found empty in the evening: what was missing then may be this visit's", async () => {
    const fillId = await leftOver();
    const visit = await fed();
    valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { readAt: "8:50", missingWent: "loss" })));
    expect(await named(visit)).toEqual([fillId]);
  });
});

test("of products without a mix ticket it is what holds nothing else, in a sprayer of the visit's truck", async () => {
  const [herbId, otherId] = [await aLiquid(house, company), await aLiquid(house, company)];
  for (const productId of [herbId, otherId]) {
    await aConfirmedLabel(house, company, productId, A_WHOLE_IRON_TEXT);
    await aJug(house, company, day, productId);
  }
  const ground = await aGround(house, company);
  const task = (productId: string) => ({ productUse: productUseKey(productId, "Foliar iron"), rate: "1.5 fl oz/1,000 sq ft", reason: "color", lawns: { [ground.frontId]: "yes" } });
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { "0": task(day.ironId), "1": task(herbId) });
  const both = await aFill(house, company, day, [], { products: { [day.ironId]: "30 fl oz", [herbId]: "40 fl oz" } });
  await aFill(house, company, day, [], { filledAt: "7:20", products: { [day.ironId]: "30 fl oz", [otherId]: "40 fl oz" } });
  // With its ticket the mix wants another strength than that.
  expect((await asked({ visitId })).map(({ fillIds }) => fillIds)).toEqual([[]]);
  await house.ask("update visit_task set label_use = 'no such use' where visit_id = $1 and line = 2", [visitId]);
  const lines = await asked({ visitId });
  expect(lines.map(({ fillIds }) => fillIds)).toEqual([[both.fillId], [both.fillId]]);
  expect(lines.map(({ mayBeOneWith }) => mayBeOneWith.length)).toEqual([0, 1]);
});
