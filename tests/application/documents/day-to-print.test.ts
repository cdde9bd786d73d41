import { afterAll, beforeAll, expect, test } from "vitest";
import { dayOnFile, dayPaperToPrint, stopsWithoutTicket } from "#application/documents/day-to-print";
import { valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { aPrintedDay, anIllinoisVisit, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

test("each stop has the ticket that stands, or the reason why none does", async () => {
  await anIllinoisVisit(house, at.company, at.day);
  await inWorkOf(house, at.company, async (work) => {
    const day = await dayOnFile(work, at.day.routeDayId);
    expect(day?.stops.map(({ ticket, why, wantsSign }) => [ticket?.number, why, wantsSign])).toEqual([[1, null, true], [undefined, "no mix ticket was issued.", false]]);
    expect(day === undefined ? [] : stopsWithoutTicket(day)).toHaveLength(1);
    expect(valueOf(await dayPaperToPrint(work, at.day.routeDayId, "loadingList")).warnings).toHaveLength(1);
    expect(await dayPaperToPrint(work, at.mixTicketId, "routeSheet")).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  });
});
