import { afterAll, beforeAll, expect, test } from "vitest";
import { frameOfPaper, fromPlan, licenseOnPaper } from "#application/documents/frame-of-paper";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { answersOnPaper } from "#domain/papers/ticket-on-paper";
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

test("a frame has the day in words, the moment it speaks of, and its source in the company's time", async () => {
  await inWorkOf(house, at.company, (work) => {
    const business = { name: "Birchline", address: null, phone: null, businessLicenseNumber: null };
    const frame = frameOfPaper(work, business, { title: "Route sheet", number: 3, on: "2026-04-14" as CalendarDate, createdAt: work.now, rulesVersion: "IN 1", source: fromPlan(work) });
    expect(frame).toMatchObject({ number: "No. 3", date: "Tuesday, April 14, 2026", createdEpochMilliseconds: house.now().getTime(), source: "From the plan as kept April 14, 2026, 9:00 am", isDemonstration: false });
    expect(answersOnPaper([{ rule: "a", reason: "told", by: "Dana", license: "IN C-1", answeredAt: "2026-04-14T12:00:00.000Z" }], work.company.timeZone)[0]?.words).toBe("Answered by Dana, license IN C-1, April 14, 2026, 8:00 am: told");
    return Promise.resolve();
  });
  expect(licenseOnPaper(null)).toBeNull();
});
