import { z } from "zod";
import { emailsOfMembers } from "#adapters/postgres/accounts";
import { type CompanyTransaction } from "#adapters/postgres/company-work";
import { type UsState } from "#domain/company/us-state";
import { type LicenseKind, type LicenseStanding, licenseStanding } from "#domain/crew/license";
import { type Role } from "#domain/crew/role";
import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { calendarDayOf, calendarDayOrNone } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

export interface LicenseOfPerson {
  readonly licenseId: string;
  readonly kind: LicenseKind;
  readonly state: UsState;
  readonly number: string;
  readonly category: string;
  readonly issuedOn: CalendarDate | null;
  readonly expiresOn: CalendarDate;
  readonly standing: LicenseStanding;
}

export interface PersonOfCrew {
  readonly personId: string;
  readonly version: number;
  readonly name: string;
  readonly phone: string | null;
  readonly leftOn: CalendarDate | null;
  readonly access:
    | { readonly kind: "none" }
    | { readonly kind: "member"; readonly role: Role; readonly email: string }
    | { readonly kind: "invited"; readonly invitationId: string; readonly role: Role; readonly email: string; readonly expiresAt: Date };
  readonly licenses: readonly LicenseOfPerson[];
}

async function licensesByPerson(
  tx: CompanyTransaction,
  companyId: string,
  personIds: readonly string[],
  today: CalendarDate,
): Promise<ReadonlyMap<string, readonly LicenseOfPerson[]>> {
  const rows = await tx.license.findMany({
    where: { companyId, personId: { in: [...personIds] }, withdrawnAt: null },
    orderBy: [{ expiresOn: "desc" }, { number: "asc" }],
  });
  const byPerson = new Map<string, LicenseOfPerson[]>(personIds.map((personId) => [personId, []]));
  for (const row of rows) {
    const dates = { issuedOn: calendarDayOrNone(row.issuedOn), expiresOn: calendarDayOf(row.expiresOn) };
    byPerson.get(row.personId)?.push({
      licenseId: row.licenseId,
      kind: row.kind as LicenseKind,
      state: row.state as UsState,
      number: row.number,
      category: row.category,
      ...dates,
      standing: licenseStanding(dates, today),
    });
  }
  return byPerson;
}

/** The crew, or the named ones of it, with access and licenses as of today in the company's time zone. */
export async function peopleOfCrew(work: Work, personId?: string): Promise<readonly PersonOfCrew[]> {
  const { companyId, timeZone } = work.company;
  const which = personId === undefined ? {} : { personId };
  const people = await work.tx.person.findMany({ where: { companyId, ...which }, orderBy: [{ name: "asc" }, { personId: "asc" }] });
  const ids = people.map((person) => person.personId);
  const memberships = await work.tx.membership.findMany({ where: { companyId, ...which, endedAt: null } });
  const invitations = await work.tx.invitation.findMany({
    where: { companyId, ...which, acceptedAt: null, withdrawnAt: null, expiresAt: { gt: work.now } },
  });
  const emails = await emailsOfMembers(work.tx);
  const licenses = await licensesByPerson(work.tx, companyId, ids, calendarDateIn(timeZone, work.now.getTime()));
  const memberOf = new Map(memberships.map((membership) => [membership.personId, membership]));
  const invitationOf = new Map(invitations.map((invitation) => [invitation.personId, invitation]));
  return people.map((person) => {
    const member = memberOf.get(person.personId);
    const invitation = invitationOf.get(person.personId);
    return {
      personId: person.personId,
      version: person.version,
      name: person.name,
      phone: person.phone,
      leftOn: calendarDayOrNone(person.leftOn),
      access:
        member !== undefined
          ? { kind: "member", role: member.role as Role, email: emails.get(member.accountId) ?? "" }
          : invitation !== undefined
            ? {
                kind: "invited",
                invitationId: invitation.invitationId,
                role: invitation.role as Role,
                email: invitation.email,
                expiresAt: invitation.expiresAt,
              }
            : { kind: "none" },
      licenses: licenses.get(person.personId) ?? [],
    };
  });
}

/** Everyone in the crew's books by name, those who left last. */
export const listPeople = useCase("people/list-people", z.object({}), async (work) => {
  const people = await peopleOfCrew(work);
  return accept({ people: [...people.filter((person) => person.leftOn === null), ...people.filter((person) => person.leftOn !== null)] });
});
