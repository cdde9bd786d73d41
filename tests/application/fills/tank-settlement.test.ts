import { expect, test } from "vitest";
import { hasMissing, isSettledLater, postDifference, tankToSettle } from "#application/fills/tank-settlement";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { moveStock } from "#application/stock/move-stock";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aFill, aSharedFill, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const AT = new Date("2026-04-14T11:30:00Z");
const settle = (gallons: string, at = AT) => inWorkOf(house, company, (work) => tankToSettle(work, day.sprayerId, at, of("gal", gallons)));
const ounces = (value: string | bigint) => of("fl oz", value).amount;

/** Carries iron out of the tank or into it, as somebody at the shed may. */
async function move(amount: string, from: string, to: string): Promise<void> {
  valueOf(await moveStock(house, company.owner.key, { requestId: house.newId(), productId: day.ironId, amount, from, to, lotId: "", note: "" }));
}

test("what was carried out by hand before is gone already, and only the rest leaves", async () => {
  await aSharedFill(house, company, day);
  await move("3 fl oz", `equipment:${day.sprayerId}`, "shop");
  expect(await settle("36")).toMatchObject({ inTheBooks: of("gal", 40n), lots: [{ inTheBooks: ounces(27n), found: ounces(27n), leaves: 0n }] });
  expect(await settle("32")).toMatchObject({ lots: [{ inTheBooks: ounces(27n), found: ounces(24n), leaves: ounces(3n) }] });
  expect(await settle("40")).toMatchObject({ lots: [{ found: ounces(30n), leaves: -ounces(3n) }] });
});

test("what was carried in by hand is in no fill: an empty tank has lost it too", async () => {
  await aSharedFill(house, company, day);
  await move("5 fl oz", `vehicle:${day.vehicleId}`, `equipment:${day.sprayerId}`);
  const empty = await settle("0");
  expect(empty.lots).toMatchObject([{ inTheBooks: ounces(35n), found: 0n, leaves: ounces(35n) }]);
  expect(hasMissing(empty)).toBe(true);
});

test("what a later fill brought is left alone, whatever was carried by hand since", async () => {
  await aSharedFill(house, company, day);
  await aFill(house, company, day, [], { filledAt: "7:45" });
  await move("5 fl oz", `equipment:${day.sprayerId}`, "shop");
  expect(await settle("36")).toMatchObject({ isFilledSince: true, lots: [{ inTheBooks: ounces(30n), found: ounces(27n), leaves: ounces(3n) }] });
});

test("no posting is made where every lot agrees", async () => {
  await aSharedFill(house, company, day);
  const posted = await inWorkOf(house, company, async (work) => postDifference(work, { requestId: house.newId(), note: null }, await tankToSettle(work, day.sprayerId, AT, of("gal", 40n)), "loss"));
  expect(valueOf(posted)).toEqual({ stockPostingId: null, wentToId: null });
});

test("a time is settled by a later reading, and by one of its minute where that is asked", async () => {
  valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId)));
  const minute = (minutes: number) => new Date(AT.getTime() + minutes * 60_000);
  const ask = (at: Date, sameMinute: boolean) => inWorkOf(house, company, (work) => isSettledLater(work, day.sprayerId, at, sameMinute));
  expect([await ask(minute(-1), false), await ask(AT, false), await ask(AT, true), await ask(minute(1), true)]).toEqual([true, false, true, false]);
});
