import { z } from "zod";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { accept } from "#domain/foundation/outcome";
import { NO_VISITS, sumCounts, todayOf, type VisitCounts, visitsOfRounds } from "#application/programs/visits-of-rounds";
import { calendarDayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** A program as a list shows it. */
export interface ProgramInList {
  readonly programId: string;
  readonly name: string;
  readonly season: number;
  /** In the order in which they open. */
  readonly rounds: readonly { readonly roundId: string; readonly name: string; readonly opensOn: CalendarDate; readonly closesOn: CalendarDate }[];
  readonly properties: number;
  readonly visits: VisitCounts;
}

/** Every program, the latest season first and then by name, with how its visits stand today. */
export const listPrograms = useCase("programs/list-programs", z.object({}), async (work) => {
  const { companyId } = work.company;
  const programs = await work.tx.program.findMany({ where: { companyId }, orderBy: [{ season: "desc" }, { name: "asc" }, { programId: "asc" }] });
  const rounds = await work.tx.round.findMany({ where: { companyId }, orderBy: [{ opensOn: "asc" }, { closesOn: "asc" }, { position: "asc" }] });
  const roundsOf = groupedBy(rounds, ({ programId }) => programId);
  const counts = await visitsOfRounds(work, rounds.map(({ roundId }) => roundId));
  const properties = await work.tx.$queryRaw<{ program_id: string; properties: number }[]>`
    SELECT r.program_id, count(DISTINCT v.property_id)::int AS properties
    FROM visit v JOIN round r ON r.company_id = v.company_id AND r.round_id = v.round_id
    WHERE v.company_id = ${companyId}::uuid GROUP BY r.program_id`;
  const propertiesOf = new Map(properties.map((row) => [row.program_id, row.properties]));
  const list = programs.map(({ programId, name, season }): ProgramInList => {
    const own = roundsOf.get(programId) ?? [];
    return {
      programId,
      name,
      season,
      rounds: own.map((round) => ({ roundId: round.roundId, name: round.name, opensOn: calendarDayOf(round.opensOn), closesOn: calendarDayOf(round.closesOn) })),
      properties: propertiesOf.get(programId) ?? 0,
      visits: sumCounts(own.map(({ roundId }) => counts.get(roundId) ?? NO_VISITS)),
    };
  });
  return accept({ programs: list, today: todayOf(work) });
});
