import { describe, expect, test } from "vitest";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { type MixEntered } from "#application/register/mix-entered";
import { readRecord } from "#application/register/read-record";
import { recordPlan } from "#application/register/record-plan";
import { usedOfVisit } from "#application/register/used-of-visit";
import { visitOnFile } from "#application/visits/read-visit";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, aFill, aGround, aRecord, aVisitWith, feedAndIron, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const said = (measuredBy: MixEntered["measuredBy"], amount = "", fillId: string | null = null) => ({ measuredBy, amount, fillId, alsoFrom: [] });
const AS_PLANNED = said("as-planned-not-measured");
const pounds = (value: string) => of("lb", value).amount;

/** What a visit used by what a form said; nothing is written. */
async function used(visitId: string, entered: Record<string, MixEntered>, reached: readonly string[]) {
  return inWorkOf(house, company, async (work) => {
    const found = await visitOnFile(work, visitId);
    if (found === undefined) throw new Error("the visit was planned");
    return usedOfVisit(work, entered, new Set(reached), found.visit, await recordPlan(work, found), house.now());
  });
}

async function fieldsOf(...asked: Parameters<typeof used>) {
  const answer = await used(...asked);
  return !answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer;
}

/** Writes the first task of a visit a second time, for another lawn. */
async function alsoOn(visitId: string, zoneId: string): Promise<void> {
  const columns = "product_id, label_use, rate_basis, rate_amount, rate_per, rate_text, reason, equipment_id";
  await house.ask(`insert into visit_task (company_id, visit_id, line, kind, ${columns}) select company_id, visit_id, 2, kind, ${columns} from visit_task where visit_id = $1`, [visitId]);
  await house.ask("insert into visit_task_zone (company_id, visit_id, line, zone_id) select company_id, visit_id, 2, $2 from visit_task where visit_id = $1 and line = 2", [visitId, zoneId]);
}

/** A visit with one product on the front lawn and, as a task of its own, on the back lawn. */
async function twoLines(task: { readonly productUse: string; readonly rate: string; readonly reason: string }) {
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { "0": { ...task, lawns: { [ground.frontId]: "yes" } } });
  await alsoOn(visitId, ground.backId);
  return { ...ground, visitId, lawns: [ground.frontId, ground.backId] };
}
const feed = () => ({ productUse: productUseKey(day.feedId, "Established lawns"), rate: "2.5 lb/1,000 sq ft", reason: "feed" });
const iron = () => ({ productUse: productUseKey(day.ironId, "Foliar iron"), rate: "1.5 fl oz/1,000 sq ft", reason: "color" });

describe("lots", () => {
  const lotsOf = async (visitId: string, amount: string, lawns: readonly string[]) => {
    const { used: all, lotNumbers } = valueOf(await used(visitId, { "1": said("weight", amount), "2": AS_PLANNED }, lawns));
    return all.filter(({ line }) => line === 1).flatMap(({ lots }) => lots.map(({ lotId, amount: taken }) => [lotNumbers.get(lotId), taken]));
  };

  test("come off the truck of the visit first, and then out of the shop", async () => {
    const { visitId, frontId, backId } = await aFedVisit(house, company, day);
    expect(await lotsOf(visitId, "300 lb", [frontId, backId])).toEqual([["GM-1", pounds("50")], ["GM-2", pounds("200")], ["GM-3", pounds("50")]]);
  });

  test("of a visit that is on no truck come out of the shop", async () => {
    const ground = await aGround(house, company);
    const visitId = await aVisitWith(house, company, ground, feedAndIron(day, ground));
    expect(await lotsOf(visitId, "10 lb", [ground.frontId])).toEqual([["GM-3", pounds("10")]]);
  });

  test("that one line has taken are gone for the next", async () => {
    const visit = await twoLines(feed());
    const weighed = said("weight", "40 lb");
    const { used: all, draws } = valueOf(await used(visit.visitId, { "1": weighed, "2": weighed }, visit.lawns));
    expect(all.map(({ lots }) => lots.map(({ amount }) => amount))).toEqual([[pounds("40")], [pounds("10"), pounds("30")]]);
    expect(draws).toEqual([]);
  });
});

describe("fills", () => {
  const filled = async (visitId: string) =>
    (await aFill(house, company, day, [visitId], { finished: "12 gal", products: { [day.ironId]: "9 fl oz" } })).fillId;

  test("two tanks of one visit out of one fill are one draw, and each product names the fill", async () => {
    const visit = await twoLines(iron());
    const fillId = await filled(visit.visitId);
    const gallons = (amount: string) => said("meter", amount, fillId);
    const mixes = { "1": gallons("5 gal"), "2": gallons("8 gal") };
    const { draws, findings } = valueOf(await used(visit.visitId, mixes, visit.lawns));
    expect(draws.map(({ fill, sprayed, isMeasured }) => [fill.fillId, sprayed, isMeasured])).toEqual([[fillId, of("gal", 13n), true]]);
    expect(findings.map(({ rule }) => rule)).toEqual(["more-sprayed-than-filled"]);
    const { registerEntryId } = await aRecord(house, company.owner, visit, { mixes });
    const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
    expect(content.treatments.map(({ total, fill }) => [total.words, fill?.fillId])).toEqual([["3\u00BE fl oz", fillId], ["5\u00BC fl oz", fillId]]);
    expect(await house.ask("select volume::text from fill_draw where fill_id = $1", [fillId])).toEqual([{ volume: of("gal", "13").amount.toString() }]);
  });

  test("a draw of which a part was not measured is not measured, and no gallons are no draw", async () => {
    const visit = await twoLines(iron());
    const fillId = await filled(visit.visitId);
    const planned = said("as-planned-not-measured", "", fillId);
    const drawsOf = async (first: MixEntered, second: MixEntered) => valueOf(await used(visit.visitId, { "1": first, "2": second }, visit.lawns)).draws;
    expect((await drawsOf(said("meter", "3 gal", fillId), planned)).map(({ isMeasured }) => isMeasured)).toEqual([false]);
    expect((await drawsOf(planned, said("meter", "3 gal", fillId))).map(({ isMeasured }) => isMeasured)).toEqual([false]);
    expect(await drawsOf(said("meter", "0 gal", fillId), said("meter", "0 gal", fillId))).toEqual([]);
  });

  test("each with its own gallons and its own strength are a draw each; a fill that is not on file is refused at its row", async () => {
    const visit = await twoLines(iron());
    const [strong, weak] = [await filled(visit.visitId), (await aFill(house, company, day, [visit.visitId], { filledAt: "7:40", finished: "12 gal", products: { [day.ironId]: "6 fl oz" } })).fillId];
    const both = (fillId: string) => ({ ...said("meter", "4 gal", strong), alsoFrom: [{ row: "0", amount: "2 gal", fillId }] });
    const { draws, used: all } = valueOf(await used(visit.visitId, { "1": both(weak), "2": said("meter", "1 gal", weak) }, visit.lawns));
    expect(draws.map(({ fill, sprayed, isMeasured }) => [fill.fillId, sprayed, isMeasured])).toEqual([[strong, of("gal", 4n), true], [weak, of("gal", 3n), true]]);
    expect(all.map(({ total }) => total)).toEqual([of("fl oz", "4"), of("fl oz", "0.5")]);
    expect(await fieldsOf(visit.visitId, { "1": both(house.newId()), "2": AS_PLANNED }, visit.lawns)).toEqual({ "mixes.1.alsoFrom.0.fillId": "This fill is not on file. Choose another." });
  });

  test("that nobody has, and another company's, are refused", async () => {
    const { visitId, frontId } = await aFedVisit(house, company, day);
    const other = await aCompany(house, "Other Turf");
    const otherDay = await aCrewDay(house, other);
    const { fillId } = await aFill(house, other, otherDay);
    for (const unknown of [house.newId(), fillId]) {
      const entered = { "1": AS_PLANNED, "2": { ...AS_PLANNED, fillId: unknown } };
      expect(await fieldsOf(visitId, entered, [frontId])).toEqual({ "mixes.2.fillId": "This fill is not on file. Choose another." });
    }
  });
});

test("something must be said of a mix of which a lawn was reached, and of no other", async () => {
  const visit = await twoLines(feed());
  const asked = { "mixes.2.measuredBy": "Say how much was put down, or that it was as planned and not measured." };
  expect(await fieldsOf(visit.visitId, { "1": AS_PLANNED }, visit.lawns)).toEqual(asked);
  const { used: all } = valueOf(await used(visit.visitId, { "1": AS_PLANNED }, [visit.frontId]));
  expect(all.map(({ line, total }) => [line, total])).toEqual([[1, of("lb", "6")]]);
  expect(await fieldsOf(visit.visitId, { "1": said("weight", "a lot") }, [visit.frontId])).toHaveProperty(["mixes.1.amount"]);
});
