import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { type BesideKept, haveSameFigures } from "#domain/turf/day-temperatures";
import { writeDeed } from "#application/audit-trail";
import { badField, conflict } from "#application/refusal";
import { SENT_WITH_OTHER_FIGURES } from "#application/stock/post-stock";
import { calendarDayOf, dayOf } from "#application/stored-day";
import { keepTemperaturesSchema } from "#application/temperatures/keep-temperatures.schema";
import { dayOfRow } from "#application/temperatures/kept-temperatures";
import { type TemperaturesToWrite, temperaturesToWrite } from "#application/temperatures/temperatures-to-write";
import { useCase, type Work } from "#application/use-case";

/** Says no where every day is kept already with the same figures; a second entry of the same would say nothing. */
export function refuseNothingNew({ added, replaced }: BesideKept) {
  if (added.length + replaced.length > 0) return undefined;
  return badField("days", "Every one of these days is kept already, with the same figures.");
}

/**
 * Keeps daily temperatures of a source: one entry for each day that is new or has other figures than before. What was kept
 * stays; the latest entry of a day counts. The first source of all is the one that curves are drawn by until another is
 * chosen. Pressed twice, the first press is answered. Refused at the field "days": what can't be read or can't be, a day
 * that is not over, and days of which none is new.
 */
export const keepTemperatures = useCase("temperatures/keep-temperatures", keepTemperaturesSchema, async (work, form) => {
  const { companyId } = work.company;
  const { requestId } = form;
  await lockCompany(work.tx);
  const read = await temperaturesToWrite(work, form);
  if (!read.ok) return read;
  const toWrite = read.value;
  const written = await work.tx.dailyTemperature.findMany({ where: { companyId, requestId } });
  const nothingNew = refuseNothingNew(toWrite);
  if (written.length > 0) {
    const given = new Map(toWrite.given.map((day) => [day.date, day]));
    const isSame = nothingNew !== undefined && written.every((row) => {
      const [before, now] = [dayOfRow(row), given.get(calendarDayOf(row.date))];
      return row.source === toWrite.source && row.figuresFrom === toWrite.figuresFrom && now !== undefined && haveSameFigures(before, now);
    });
    return isSame ? accept({ days: written.length }) : conflict(SENT_WITH_OTHER_FIGURES);
  }
  if (nothingNew !== undefined) return nothingNew;
  return accept({ days: await write(work, requestId, toWrite) });
});

async function write(work: Work, requestId: string, { source, figuresFrom, added, replaced, kept, period, inUse }: TemperaturesToWrite): Promise<number> {
  const { companyId } = work.company;
  const entriesOn = new Map(kept.map(({ date, entryNumber }) => [date, entryNumber]));
  const days = [...added, ...replaced.map(({ after }) => after)];
  const entry = { companyId, source, figuresFrom, requestId, enteredAt: work.now, personId: work.member.personId };
  await work.tx.dailyTemperature.createMany({
    data: days.map(({ date, ...figures }) => ({ ...entry, ...figures, date: dayOf(date), entryNumber: (entriesOn.get(date) ?? 0) + 1 })),
  });
  if (inUse === null) await work.tx.company.update({ where: { companyId }, data: { temperatureSource: source } });
  await writeDeed(work, null, {
    deed: "temperatures-kept",
    details: { source, figuresFrom, from: period.from, through: period.through, days: days.length, replaced: replaced.map(({ after }) => after.date) },
  });
  return days.length;
}
