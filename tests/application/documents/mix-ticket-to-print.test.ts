import { afterAll, beforeAll, expect, test } from "vitest";
import { issuedTicketOfId, mixTicketToPrint, truckOnPaper } from "#application/documents/mix-ticket-to-print";
import { valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { aPrintedDay, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

test("is of the ticket's own person and number, without a warning while the plan stands", async () => {
  await inWorkOf(house, at.company, async (work) => {
    expect(valueOf(await mixTicketToPrint(work, at.mixTicketId))).toMatchObject({ subjectId: at.mixTicketId, operatorId: at.company.owner.personId, warnings: [] });
    expect(await issuedTicketOfId(work, at.visit.visitId)).toBeUndefined();
    expect(await truckOnPaper(work, null)).toBeNull();
    expect(await truckOnPaper(work, at.day.vehicleId)).toMatch(/^Truck \d+, /u);
  });
});

test("warns once the plan has changed", async () => {
  await house.ask("update zone set area = area * 2 where zone_id = $1", [at.visit.frontId]);
  await inWorkOf(house, at.company, async (work) => {
    expect(valueOf(await mixTicketToPrint(work, at.mixTicketId)).warnings).toHaveLength(1);
  });
});
