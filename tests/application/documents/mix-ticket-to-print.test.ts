import { afterAll, beforeAll, expect, test } from "vitest";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { mixTicketToPrint, ticketPaper } from "#application/documents/mix-ticket-to-print";
import { issuedTicketOf } from "#application/visits/issued-ticket";
import { HOUSE_SETTINGS_CHANGE } from "../../support/attempts-of-company";
import { valueOf } from "../../support/crew";
import { aGround, aVisitWith, feedAndIron, inWorkOf } from "../../support/crew-day";
import { aPrintedDay, aTicket, type PrintedDay } from "../../support/documents";
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
    expect(await mixTicketToPrint(work, at.visit.visitId)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  });
});

test("names the truck, or says that the visit is on none", async () => {
  await inWorkOf(house, at.company, async (work) => {
    const issued = await issuedTicketOf(work, at.visit.visitId);
    if (issued === undefined) throw new Error("The ticket of the day was issued.");
    const truckOf = async (vehicleId: string | null) => {
      const { data } = await ticketPaper(work, { ...issued, snapshot: { ...issued.snapshot, application: { ...issued.snapshot.application, vehicleId } } }, false);
      return data.kind === "mix-ticket" ? data.paper.visit.find(({ label }) => label === "Truck")?.value : undefined;
    };
    expect(await truckOf(at.day.vehicleId)).toMatchObject({ text: expect.stringMatching(/^Truck \d+, /u) as string });
    expect(await truckOf(null)).toMatchObject({ kind: "does-not-apply" });
  });
});

test("warns of no change where the tank plan says something at the visit, as it did when it was issued", async () => {
  const { company, day } = await aPrintedDay(house, "Line Left Lawns");
  valueOf(await changeHouseSettings(house, company.owner.key, { ...HOUSE_SETTINGS_CHANGE, lineAtTheEnd: "left-as-it-is" }));
  const ground = await aGround(house, company);
  const tasks = feedAndIron(day, ground);
  // Another strength of the iron follows in the same tank, after what pump and hose still hold.
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { ...tasks, "1": { ...tasks["1"], rate: "1 fl oz/1,000 sq ft" } });
  const mixTicketId = await aTicket(house, company, visitId);
  await inWorkOf(house, company, async (work) => {
    const issued = await issuedTicketOf(work, visitId);
    expect(issued?.snapshot.findings.map(({ rule }) => rule).filter((rule) => ["carry-over", "flush-the-line"].includes(rule))).toHaveLength(1);
    expect(valueOf(await mixTicketToPrint(work, mixTicketId)).warnings).toEqual([]);
  });
});

test("warns once the plan has changed", async () => {
  await house.ask("update zone set area = area * 2 where zone_id = $1", [at.visit.frontId]);
  await inWorkOf(house, at.company, async (work) => {
    expect(valueOf(await mixTicketToPrint(work, at.mixTicketId)).warnings).toHaveLength(1);
  });
});
