import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { checkBloom, OF_FLOWERS } from "#domain/mixing/site-checks";
import { usesPutDown } from "#domain/register/put-down";
import { type RecordContent } from "#domain/register/record-content";
import { type CompletedForm, reachedLawns } from "#application/register/complete-visit.schema";
import { bloomOfLawn, looksOfZones } from "#application/properties/lawn-looks";
import { type ProductPutDown, type RecordPlan } from "#application/register/record-plan";
import { type Work } from "#application/use-case";

/** What the findings of a record itself are about: who did it, when, and on how much ground. */
export interface RecordAtHand extends Pick<RecordContent, "applicator" | "supervisor"> {
  readonly plan: RecordPlan;
  /** What came out of a fill and was not planned. */
  readonly unplanned: readonly ProductPutDown[];
  readonly startedAt: Date;
  readonly endedAt: Date;
}

/** Entries later than this after the work are said to be late. A house rule; states ask for a day or more. */
const LATE_AFTER_HOURS = 24;
/** Faster than this nobody walks a lawn with spreader or gun: an entry to look at again. Common practice. */
const FASTEST_SQ_FT_A_MINUTE = 2_000n;
const CANONICAL_AREA_A_SQ_FT = 2_322_576n;

/** What is to be said of the entry as such. None of it keeps a record from being written. */
export async function findingsOfRecord(work: Work, form: CompletedForm, at: RecordAtHand): Promise<readonly Finding[]> {
  return [
    ...(await flowerFindings(work, form, at)),
    ...lateFinding(work, at),
    ...fastFinding(form, at),
    ...(await elsewhereFinding(work, form, at)),
    ...licenseFindings(at),
    ...weatherFinding(form),
    ...partFindings(form, at),
  ];
}

/**
 * What blooms on the day it was really done, on the lawns that were reached, by all looks that are on file until now: also
 * those after the mix ticket, and where no mix ticket could be worked out.
 */
async function flowerFindings(work: Work, form: CompletedForm, { plan, unplanned }: RecordAtHand): Promise<readonly Finding[]> {
  const isReached = reachedLawns(form);
  const reached = plan.lawns.filter(({ zoneId }) => isReached.has(zoneId));
  const looksOf = await looksOfZones(work, reached.map(({ zoneId }) => zoneId));
  return [...plan.treatments, ...unplanned].flatMap(({ label, lawns }) => {
    if (label === "not-on-file") return [];
    const own = reached.filter(({ zoneId }) => lawns.some((lawn) => lawn.zoneId === zoneId));
    const inBloom = own.map(({ zoneId, name }) => ({ name, ...bloomOfLawn(looksOf.get(zoneId) ?? [], form.doneOn) }));
    const perUse = usesPutDown(label).map((use) => checkBloom({ label: label.label, use }, inBloom).filter(({ rule }) => OF_FLOWERS.has(rule)));
    // One use that says so is enough where nobody knows under which it went down.
    return perUse.find((found) => found.length > 0) ?? [];
  });
}

function lateFinding({ company, now }: Work, { endedAt }: RecordAtHand): readonly Finding[] {
  const lateHours = (now.getTime() - endedAt.getTime()) / 3_600_000;
  if (lateHours <= LATE_AFTER_HOURS) return [];
  const figure = `The work ended on ${formatShortDate(calendarDateIn(company.timeZone, endedAt.getTime()))}, ${String(Math.round(lateHours))} hours before.`;
  return [note({ rule: "entered-late", source: "house", what: "This record was entered late.", figure, about: [] })];
}

function fastFinding(form: CompletedForm, { plan, startedAt, endedAt }: RecordAtHand): readonly Finding[] {
  const minutes = BigInt(Math.max(1, Math.round((endedAt.getTime() - startedAt.getTime()) / 60_000)));
  const grounds = plan.treatments.map(({ lawns }) => lawns.filter(({ zoneId }) => form.lawns[zoneId] === "done").reduce((total, { treatedArea }) => total + treatedArea.amount, 0n));
  const squareFeet = grounds.reduce((most, ground) => (ground > most ? ground : most), 0n) / CANONICAL_AREA_A_SQ_FT;
  if (squareFeet <= FASTEST_SQ_FT_A_MINUTE * minutes) return [];
  const figure = `${squareFeet.toLocaleString("en-US")} sq ft in ${String(minutes)} min.`;
  return [takeCare({ rule: "very-fast", source: "common-practice", what: "The work is entered as faster than anybody walks.", figure, toDo: "Look at the times again.", about: [] })];
}

async function elsewhereFinding(work: Work, { applicatorId }: CompletedForm, { applicator, startedAt, endedAt }: RecordAtHand): Promise<readonly Finding[]> {
  const { companyId } = work.company;
  const other = await work.tx.registerEntry.findFirst({
    where: { companyId, kind: "record", applicatorId, startedAt: { lt: endedAt }, endedAt: { gt: startedAt } },
    orderBy: { number: "desc" },
    select: { number: true },
  });
  if (other === null) return [];
  return [
    takeCare({
      rule: "elsewhere-at-that-time",
      source: "house",
      what: `${applicator.name} is on record elsewhere at the same time.`,
      figure: `Record ${String(other.number)} has hours of this one.`,
      toDo: "Look at the times again.",
      about: [applicator.name],
    }),
  ];
}

function licenseFindings({ applicator, supervisor }: RecordAtHand): readonly Finding[] {
  const findings: Finding[] = [];
  if (applicator.license === null) {
    const toDo = "Tell the license holder; the record says who really did it.";
    findings.push(takeCare({ rule: "license-missing", source: "law", what: `${applicator.name} had no license on file that stood on that day.`, toDo, about: [applicator.name] }));
  }
  if (supervisor === null && applicator.license?.kind === "registered-technician") {
    const what = `${applicator.name} is a registered technician, and no supervising applicator is named.`;
    findings.push(takeCare({ rule: "supervisor-missing", source: "law", what, toDo: "Tell the license holder today.", about: [applicator.name] }));
  }
  if (supervisor !== null && supervisor.license?.kind !== "certified-applicator") {
    const what = `${supervisor.name} had no certified applicator's license on file that stood on that day.`;
    findings.push(takeCare({ rule: "supervisor-without-license", source: "law", what, toDo: "Tell the license holder today.", about: [supervisor.name] }));
  }
  return findings;
}

function weatherFinding({ temperatureF, windMph, windFrom, instrument }: CompletedForm): readonly Finding[] {
  if (temperatureF !== null && windMph !== null && windFrom !== "") return [];
  const wind = windMph === null ? [] : [`wind ${String(windMph)} mph`];
  const read = [...(temperatureF === null ? [] : [`${String(temperatureF)} \u00B0F`]), ...wind, ...(windFrom === "" ? [] : [`from ${windFrom}`])];
  const figure = read.length === 0 ? "Nothing was read." : `Only this was read: ${read.join(", ")}${instrument === null ? "" : ` (${instrument})`}.`;
  return [note({ rule: "weather-not-taken", source: "house", what: "The weather at the site was not taken whole.", figure, about: [] })];
}

function partFindings(form: CompletedForm, { plan: { lawns, treatments } }: RecordAtHand): readonly Finding[] {
  const part = lawns.filter(({ zoneId }) => form.lawns[zoneId] === "part" && treatments.some((treatment) => treatment.lawns.some((lawn) => lawn.zoneId === zoneId)));
  return part.map(({ name }) =>
    note({
      rule: "part-of-a-lawn",
      source: "house",
      what: `Only a part of ${name} was done.`,
      figure: "How much of it was not measured. The rates of this record are over the whole of it; where it was done they were higher.",
      about: [name],
    }),
  );
}
