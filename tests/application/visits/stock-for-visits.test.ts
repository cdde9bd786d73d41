import { expect, test } from "vitest";
import { readVisit } from "#application/visits/read-visit";
import { availableFor, stockForVisits } from "#application/visits/stock-for-visits";
import { sprayForGround } from "#domain/mixing/spray-mix";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aCleanOut, aCrewDay, aFedVisit, aFill, aRecord, aSharedFill, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const there = (visitId: string) =>
  inWorkOf(house, company, async (work) => {
    const stock = await stockForVisits(work, [visitId], [day.ironId, day.feedId]);
    return { onHand: stock.onHand.get(day.ironId), available: availableFor(stock, visitId).get(day.ironId), feed: availableFor(stock, visitId).get(day.feedId) };
  });
const fluidOunces = (value: string) => of("fl oz", value).amount;

test("what is mixed in a tank is there for the visits that it was mixed for and for no other, until the tank is cleaned out", async () => {
  const other = await aFedVisit(house, company, day);
  expect(await there(other.visitId)).toMatchObject({ onHand: fluidOunces("640"), available: fluidOunces("640") });
  const { visits: [first] } = await aSharedFill(house, company, day);
  const visitId = first?.visitId ?? "";
  expect(await there(visitId)).toMatchObject({ onHand: fluidOunces("610"), available: fluidOunces("640"), feed: of("lb", "850").amount });
  expect(await there(other.visitId)).toMatchObject({ onHand: fluidOunces("610"), available: fluidOunces("610") });
  await aCleanOut(house, company, day);
  expect((await there(visitId)).available).toBe(fluidOunces("610"));
});

test("a visit whose product is all in another visit's tank is held as short", async () => {
  const apart = await aCompany(house, "Short Turf");
  const own = await aCrewDay(house, apart);
  const other = await aFedVisit(house, apart, own);
  const rules = async (visitId: string) => valueOf(await readVisit(house, apart.owner.key, { visitId })).openHolds.map(({ rule }) => rule);
  const { visits: [first] } = await aSharedFill(house, apart, own);
  expect([await rules(other.visitId), await rules(first?.visitId ?? "")]).toEqual([[], []]);
  await house.ask("update stock_balance set amount = 0 where lot_id in (select lot_id from lot where product_id = $1) and stock_location_id in (select stock_location_id from stock_location where kind in ('shop', 'truck'))", [own.ironId]);
  expect([await rules(other.visitId), await rules(first?.visitId ?? "")]).toEqual([["stock-short"], []]);
});

test("what earlier visits left of its mix in its sprayer is there for a visit; what is left of another mix is not, nor what lies under one", async () => {
  for (const [ounces, onTop, rules] of [["20", null, []], ["40", null, ["stock-short"]], ["20", "20", []], ["20", "40", ["stock-short"]]] as const) {
    const apart = await aCompany(house, `Left-over Turf ${ounces} ${onTop ?? "alone"}`);
    const own = await aCrewDay(house, apart);
    const [visit, other] = [await aFedVisit(house, apart, own), await aFedVisit(house, apart, own)];
    const { outcome } = valueOf(await readVisit(house, apart.owner.key, { visitId: visit.visitId }));
    const spray = outcome.ok ? outcome.value.ticket.mixes.find(({ kind }) => kind === "spray") : undefined;
    if (spray?.kind !== "spray") throw new Error("the visit has a spray");
    // As strong as the ticket's in the first round: 9.6 fl oz in what 6,400 sq ft take.
    const gallons = (20 * Number(sprayForGround(spray.carrier, spray.lawns).amount)) / Number(of("gal", 1n).amount) / 9.6;
    await aFill(house, apart, own, [], { filledAt: "6:30", finished: `${gallons.toFixed(2)} gal`, products: { [own.ironId]: `${ounces} fl oz` } });
    if (onTop !== null) {
      const { fillId } = await aFill(house, apart, own, [other.visitId], { filledAt: "7:01", finished: `${gallons.toFixed(2)} gal`, products: { [own.ironId]: `${onTop} fl oz` } });
      await aRecord(house, apart.owner, other, { startedAt: "7:05", endedAt: "7:25", mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: `${gallons.toFixed(2)} gal`, fillId } } });
    }
    await house.ask("update stock_balance set amount = 0 where lot_id in (select lot_id from lot where product_id = $1) and stock_location_id in (select stock_location_id from stock_location where kind in ('shop', 'truck'))", [own.ironId]);
    const read = valueOf(await readVisit(house, apart.owner.key, { visitId: visit.visitId }));
    expect(read.openHolds.map(({ rule }) => rule).filter((rule) => rule === "stock-short")).toEqual(rules);
  }
});
