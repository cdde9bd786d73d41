import { expect, test } from "vitest";
import { momentOfDay } from "#application/stock/moment-of-day";
import { type CompanyFacts } from "#adapters/postgres/company-work";
import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { COMPANY_TIME_ZONES } from "#domain/company/us-state";

const now = new Date("2026-04-14T13:00:00Z");
const workIn = (timeZone: string) => ({ now, company: { timeZone } as CompanyFacts });

test("today is now, and any other day is a moment of that day wherever the company is", () => {
  for (const timeZone of COMPANY_TIME_ZONES) {
    const work = workIn(timeZone);
    expect(momentOfDay(work, calendarDateIn(timeZone, now.getTime()))).toEqual(now);
    for (const day of ["2026-01-01", "2026-03-08", "2026-11-01", "2025-12-31"] as CalendarDate[]) {
      expect(calendarDateIn(timeZone, momentOfDay(work, day).getTime()), timeZone).toBe(day);
    }
  }
});
