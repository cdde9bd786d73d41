import { type CalendarDate, formatLongDate } from "#domain/foundation/calendar-date";
import { type BusinessOnFile, companyOnPaper, numberOnPaper, rulesOnPaper } from "#domain/papers/company-on-paper";
import { type PaperFrame } from "#domain/papers/paper";
import { momentOnPaper } from "#domain/papers/paper-time";
import { type IssuedTicket } from "#application/visits/issued-ticket";
import { type LicenseOnFile } from "#application/visits/ticket-facts";
import { type Work } from "#application/use-case";

/** What a frame says besides who the business is. */
export interface FrameFacts {
  readonly title: string;
  readonly number?: number;
  readonly on: CalendarDate;
  readonly createdAt: Date;
  readonly rulesVersion: string;
  readonly source: string;
}

/** The head and foot of a paper. */
export function frameOfPaper(work: Work, business: BusinessOnFile, { title, number, on, createdAt, rulesVersion, source }: FrameFacts): PaperFrame {
  return {
    company: companyOnPaper(business),
    title,
    ...(number === undefined ? {} : { number: numberOnPaper(number) }),
    date: formatLongDate(on),
    createdEpochMilliseconds: createdAt.getTime(),
    ruleVersion: rulesOnPaper(rulesVersion),
    source,
    isDemonstration: work.company.isDemonstration,
  };
}

/** From which issued mix ticket a paper is: "From mix ticket 12 as issued by Dana Quill, April 13, 2026, 4:10 pm". */
export function fromTicket({ company: { timeZone } }: Work, { number, issuedAt, issuedBy }: IssuedTicket): string {
  return `From mix ticket ${String(number)} as issued by ${issuedBy}, ${momentOnPaper(issuedAt.getTime(), timeZone)}`;
}

/** As of when a paper is: "From the plan as kept April 13, 2026, 4:10 pm". */
export function fromPlan({ company: { timeZone }, now }: Work): string {
  return `From the plan as kept ${momentOnPaper(now.getTime(), timeZone)}`;
}

/** A license in the words of papers; null where none stands. */
export function licenseOnPaper(license: LicenseOnFile | null): string | null {
  return license === null ? null : `${license.state} ${license.number}`;
}
