import { z } from "zod";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type UsState } from "#domain/company/us-state";
import { accept } from "#domain/foundation/outcome";
import { calendarDayOrNone } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

export interface CompanyDetails {
  readonly version: number;
  readonly name: string;
  readonly state: UsState;
  readonly timeZone: string;
  readonly phone: string | null;
  readonly address: string | null;
  readonly businessLicenseNumber: string | null;
  readonly businessLicenseExpiresOn: CalendarDate | null;
  readonly insuranceExpiresOn: CalendarDate | null;
  readonly isDemonstration: boolean;
}

/** The whole of what is kept about the open company itself. */
export async function companyDetails(work: Work): Promise<CompanyDetails> {
  const row = await work.tx.company.findUniqueOrThrow({ where: { companyId: work.company.companyId } });
  return {
    version: row.version,
    name: row.name,
    state: row.state as UsState,
    timeZone: row.timeZone,
    phone: row.phone,
    address: row.address,
    businessLicenseNumber: row.businessLicenseNumber,
    businessLicenseExpiresOn: calendarDayOrNone(row.businessLicenseExpiresOn),
    insuranceExpiresOn: calendarDayOrNone(row.insuranceExpiresOn),
    isDemonstration: row.isDemonstration,
  };
}

/** Reads the company, and who is asking: what nearly every page begins with. */
export const readCompany = useCase("companies/read-company", z.object({}), async (work) =>
  accept({ company: await companyDetails(work), companyId: work.company.companyId, member: work.member, now: work.now }),
);
