import { expect, test } from "vitest";
import { readDay } from "#application/days/read-day";
import { readFillOfDay } from "#application/fills/read-fill-of-day";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aFill, CREW_DAY } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay();

const fillsOfDay = async () => valueOf(await readDay(house, company.owner.key, { date: CREW_DAY })).trucks[0]?.tankPlan.fills ?? [];
const read = async (letter: string, visitIds: readonly string[], key = company.owner.key) => readFillOfDay(house, key, { routeDayId: day.routeDayId, letter, visitIds: [...visitIds] });

/** Two stops that take more than a tank of twelve gallons holds: the first one is split between two fills. */
async function twoStops() {
  await house.ask("update equipment set capacity = $1 where equipment_id = $2", [of("gal", 12n).amount.toString(), day.sprayerId]);
  return [await aFedVisit(house, company, day), await aFedVisit(house, company, day)].map(({ visitId }) => visitId);
}

test("a fill is the one that the day's tank plan has, with its part of a stop that is split", async () => {
  const visitIds = await twoStops();
  const [a, b] = await fillsOfDay();
  expect([a?.visitIds, b?.visitIds]).toEqual([visitIds.slice(0, 1), visitIds]);
  for (const planned of [a, b]) {
    const { date, fill } = valueOf(await read(planned?.letter ?? "", planned?.visitIds ?? []));
    expect(date).toBe(CREW_DAY);
    expect(fill).toMatchObject({ equipmentId: day.sprayerId, plan: { visitIds: planned?.visitIds, finished: planned?.finished, products: planned?.products }, findings: [] });
    expect(fill?.visits.map(({ visitId, vehicleId }) => [visitId, vehicleId])).toEqual(planned?.visitIds.map((visitId) => [visitId, day.vehicleId]));
  }
});

test("one that the plan has no more, or under another letter by now, is not taken for another", async () => {
  await twoStops();
  const [a, b] = await fillsOfDay();
  const amounts = Object.fromEntries((a?.products ?? []).map(({ productId }) => [productId, "9 fl oz"]));
  await aFill(house, company, day, a?.visitIds, { finished: "12 gal", products: amounts });
  for (const one of [a, b]) expect(valueOf(await read(one?.letter ?? "", one?.visitIds ?? [])).fill).toBeNull();
  // What was the second fill is the first one of what is still to be filled.
  const [next] = await fillsOfDay();
  expect(next?.letter).toBe("A");
  expect(valueOf(await read("A", next?.visitIds ?? [])).fill?.plan.finished).toEqual(next?.finished);
});

test("another company's day is no day, and a day without stops has no fills", async () => {
  expect(valueOf(await read("A", [])).fill).toBeNull();
  expect(await read("A", [], (await aCompany(house)).owner.key)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await read("a", [])).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
});
