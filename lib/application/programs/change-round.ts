import { lockCompany } from "#adapters/postgres/company-work";
import { type Round } from "#adapters/postgres/generated/client";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { writeDeed } from "#application/audit-trail";
import { treatmentWords } from "#application/programs/add-round";
import { changeRoundSchema } from "#application/programs/change-round.schema";
import { treatmentColumns, type TreatmentAsked, type TreatmentColumns } from "#application/programs/treatment-columns";
import { conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { calendarDayOf, dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

/** Replaces what goes down in a round that has no visits. */
async function replaceTreatments(work: Work, roundId: string, asked: readonly TreatmentAsked[]): Promise<Outcome<readonly TreatmentColumns[], UseCaseRefusal>> {
  const { companyId } = work.company;
  const columns = await treatmentColumns(work, "treatments", asked);
  if (!columns.ok) return columns;
  await work.tx.roundTreatment.deleteMany({ where: { companyId, roundId } });
  await work.tx.roundTreatment.createMany({ data: columns.value.map((treatment, index) => ({ companyId, roundId, line: index + 1, ...treatment })) });
  return columns;
}

/** Planned visits that go by the round's window go with it; one whose window was set by hand stays. */
async function moveVisits(work: Work, before: Round, after: { readonly name: string; readonly opensOn: CalendarDate; readonly closesOn: CalendarDate }): Promise<number> {
  const { count } = await work.tx.visit.updateMany({
    where: { companyId: before.companyId, roundId: before.roundId, state: "planned", opensOn: before.opensOn, closesOn: before.closesOn },
    data: { name: after.name, opensOn: dayOf(after.opensOn), closesOn: dayOf(after.closesOn), version: { increment: 1 } },
  });
  return count;
}

/**
 * Changes a round. While it has no visits everything may change; afterwards its name and its window, and the planned
 * visits that go by that window move with it. What goes down on a visit is then changed at the visit.
 */
export const changeRound = useCase("programs/change-round", changeRoundSchema, async (work, form) => {
  const { companyId } = work.company;
  const { roundId, version, name, opensOn, closesOn, secondLook, treatments } = form;
  await lockCompany(work.tx);
  const before = await work.tx.round.findUnique({ where: { companyId_roundId: { companyId, roundId } } });
  if (before === null) return notFound("round");
  if (before.version !== version) return conflict("Someone else has changed this round since you opened the page. Load it again to see both.");
  const visits = await work.tx.visit.count({ where: { companyId, roundId } });
  const changesMore = treatments !== undefined || secondLook !== undefined;
  if (visits > 0 && changesMore) {
    return conflict("Properties were put on this round. Its name and its window can change here, what goes down only at each visit.");
  }
  const columns = treatments === undefined ? undefined : await replaceTreatments(work, roundId, treatments);
  if (columns?.ok === false) return columns;
  await work.tx.round.update({
    where: { companyId_roundId: { companyId, roundId } },
    data: { name, opensOn: dayOf(opensOn), closesOn: dayOf(closesOn), ...(secondLook === undefined ? {} : { secondLookAfterDays: secondLook }), version: { increment: 1 } },
  });
  const visitsMoved = visits === 0 ? 0 : await moveVisits(work, before, { name, opensOn, closesOn });
  const was = { name: before.name, opensOn: calendarDayOf(before.opensOn), closesOn: calendarDayOf(before.closesOn), secondLook: before.secondLookAfterDays };
  const is = { name, opensOn, closesOn, secondLook: secondLook === undefined ? before.secondLookAfterDays : secondLook };
  const after = { ...is, visitsMoved, ...(columns === undefined ? {} : { treatments: treatmentWords(columns.value) }) };
  await writeDeed(work, roundId, { deed: "round-changed", details: { before: was, after } });
  return accept({ programId: before.programId, version: version + 1, visitsMoved });
});
