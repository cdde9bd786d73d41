import { z } from "zod";
import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { BEFORE_THE_FIRST } from "#application/register/append-entry";
import { type RecordOnFile, recordOf } from "#application/register/read-record";
import { optionalDate } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** How the chain of hashes stands: whole, or broken at an entry. */
export type ChainStanding = { readonly kind: "whole"; readonly entries: number; readonly lastHash: string } | { readonly kind: "broken"; readonly atNumber: number };

/** Checks that each entry names the hash of the one before, counts without a gap, and is what its own hash says. */
export function chainStanding(records: readonly Pick<RecordOnFile, "number" | "hash" | "previousHash" | "isUnaltered">[]): ChainStanding {
  let before = Buffer.from(BEFORE_THE_FIRST).toString("hex");
  for (const [index, { number, hash, previousHash, isUnaltered }] of records.entries()) {
    if (number !== index + 1 || previousHash !== before || !isUnaltered) return { kind: "broken", atNumber: number };
    before = hash;
  }
  return { kind: "whole", entries: records.length, lastHash: before };
}

const listRegisterSchema = z.object({ from: optionalDate("the first day").optional(), until: optionalDate("the last day").optional() });

/** The register of a period by the day the work was started, the newest first, and how the whole chain stands. */
export const listRegister = useCase("register/list-register", listRegisterSchema, async (work, { from, until }) => {
  const { companyId, timeZone } = work.company;
  const rows = await work.tx.registerEntry.findMany({ where: { companyId }, orderBy: { number: "asc" } });
  const people = await work.tx.person.findMany({ where: { companyId } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const records = rows.map((row) => recordOf({ ...row, person: { name: nameOf.get(row.personId) ?? "" } }));
  const dayOfRecord = ({ content }: RecordOnFile): CalendarDate => calendarDateIn(timeZone, Date.parse(content.startedAt));
  const ofPeriod = records.filter((record) => {
    const day = dayOfRecord(record);
    return (from === undefined || from === null || day >= from) && (until === undefined || until === null || day <= until);
  });
  return accept({ records: ofPeriod.toReversed(), chain: chainStanding(records) });
});
