import { z } from "zod";
import { addDays } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { instantOfMinute } from "#domain/weather/local-hours";
import { BEFORE_THE_FIRST } from "#application/register/append-entry";
import { hexOf, isHashOf, type RecordOnFile, recordOf } from "#application/register/read-record";
import { optionalDate } from "#application/field.schema";
import { useCase, type Work } from "#application/use-case";

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

/** Entries of the register that are read at once: a whole register does not lie in memory. */
const ENTRIES_AT_ONCE = 500;

/** Reads the whole register from its first entry and checks the chain. */
async function standingOfRegister(work: Work): Promise<ChainStanding> {
  const { companyId } = work.company;
  const links: Pick<RecordOnFile, "number" | "hash" | "previousHash" | "isUnaltered">[] = [];
  let isMore = true;
  while (isMore) {
    const rows = await work.tx.registerEntry.findMany({
      where: { companyId, number: { gt: links.at(-1)?.number ?? 0 } },
      orderBy: { number: "asc" },
      take: ENTRIES_AT_ONCE,
      select: { number: true, hash: true, previousHash: true, content: true },
    });
    links.push(...rows.map((row) => ({ number: row.number, hash: hexOf(row.hash), previousHash: hexOf(row.previousHash), isUnaltered: isHashOf(row) })));
    isMore = rows.length === ENTRIES_AT_ONCE;
  }
  return chainStanding(links);
}

const listRegisterSchema = z.object({ from: optionalDate("the first day").optional(), until: optionalDate("the last day").optional() });

/** The register of a period by the day the work was started, the newest first, and how the whole chain stands. */
export const listRegister = useCase("register/list-register", listRegisterSchema, async (work, { from, until }) => {
  const { companyId, timeZone } = work.company;
  const startOf = (day: Parameters<typeof addDays>[0]) => new Date(instantOfMinute(day, 0, timeZone));
  const startedAt = {
    ...(from === undefined || from === null ? {} : { gte: startOf(from) }),
    ...(until === undefined || until === null ? {} : { lt: startOf(addDays(until, 1)) }),
  };
  const rows = await work.tx.registerEntry.findMany({ where: { companyId, kind: "record", startedAt }, orderBy: { number: "desc" } });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const records = rows.map((row) => recordOf({ ...row, person: { name: nameOf.get(row.personId) ?? "" } }));
  return accept({ records, chain: await standingOfRegister(work) });
});
