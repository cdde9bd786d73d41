import { type Finding, gravestFirst, note, takeCare } from "#domain/foundation/finding";
import { licenseStanding } from "#domain/crew/license";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { RULES_VERSION } from "#domain/rules/packs-on-file";
import { sharePutDown } from "#domain/register/put-down";
import { type RecordContent, type RecordedAmount, type RecordedLicense, type RecordedTreatment, type RecordedWeather } from "#domain/register/record-content";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { AFTERCARE_KINDS } from "#domain/label/aftercare-constraint";
import { type completeVisitSchema } from "#application/register/complete-visit.schema";
import { type ReallyUsed } from "#application/register/really-used";
import { type LicenseOnFile, licensesOnFile } from "#application/visits/ticket-facts";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";
import { type z } from "zod";

export type CompletedForm = z.output<typeof completeVisitSchema>;

/** What a record is made of besides the form. */
export interface RecordFacts {
  readonly visit: VisitRow;
  readonly ticket: MixTicket | undefined;
  readonly treatments: readonly TicketTreatment[];
  readonly mixTicketNumber: number | null;
  readonly lawns: readonly { readonly zoneId: string; readonly name: string; readonly grasses: readonly string[] }[];
  readonly used: readonly ReallyUsed[];
  readonly lotNumbers: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
  readonly startedAt: Date;
  readonly endedAt: Date;
}

/** Entries later than this after the work are said to be late. A house rule; states ask for a day or more. */
const LATE_AFTER_HOURS = 24;
/** Faster than this nobody walks a lawn with spreader or gun: an entry to look at again. Common practice. */
const FASTEST_SQ_FT_A_MINUTE = 2_000n;

function recorded(quantity: Quantity<"mass"> | Quantity<"volume"> | Quantity<"area">): RecordedAmount {
  return { dimension: quantity.dimension, amount: quantity.amount.toString(), words: formatQuantity(quantity, "us") };
}

/** Puts a record together from what happened, with the findings that belong on it. */
export async function recordOfVisit(work: Work, form: CompletedForm, facts: RecordFacts): Promise<RecordContent> {
  const { companyId, timeZone } = work.company;
  const company = await work.tx.company.findUniqueOrThrow({ where: { companyId } });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: [form.applicatorId, form.supervisorId ?? form.applicatorId] } } });
  const licenses = await licensesOnFile(work);
  const worker = (personId: string) => ({
    personId,
    name: people.find((person) => person.personId === personId)?.name ?? "",
    license: licenseOf(licenses, personId, facts.visit.property.state, form),
  });
  const applicator = worker(form.applicatorId);
  const shared = facts.used.map((used) => treatmentOf(used, form, facts));
  const findings = [...facts.findings, ...shared.flatMap((one) => one.findings), ...entryFindings(work, facts), ...licenseFindings(applicator)];
  const { street, city, state, zip, propertyId } = facts.visit.property;
  return {
    form: "application-record-1",
    company: { name: company.name, address: company.address, phone: company.phone, businessLicenseNumber: company.businessLicenseNumber },
    customer: { name: facts.visit.client.name, phone: facts.visit.client.phone },
    site: { propertyId, street, city, state, zip },
    visit: { visitId: facts.visit.visitId, name: facts.visit.name, mixTicketNumber: facts.mixTicketNumber },
    applicator,
    supervisor: form.supervisorId === null ? null : worker(form.supervisorId),
    startedAt: facts.startedAt.toISOString(),
    endedAt: facts.endedAt.toISOString(),
    timeZone,
    enteredAt: work.now.toISOString(),
    weather: weatherOf(form),
    lawns: facts.lawns.map(({ zoneId, name, grasses }) => ({ zoneId, name, grasses, outcome: form.lawns[zoneId] ?? "not-done" })),
    treatments: shared.map((one) => one.treatment),
    signIsUp: form.signIsUp,
    noticeWasLeft: form.noticeWasLeft,
    remarks: form.remarks,
    rulesVersion: RULES_VERSION,
    findings: gravestFirst(findings),
    signature: form.signature,
  };
}

function weatherOf({ temperatureF, windMph, windFrom, instrument }: CompletedForm): RecordedWeather {
  if (temperatureF === null || windMph === null || windFrom === "") return { kind: "not-taken" };
  return { kind: "taken", temperatureF, windMph, windFrom, instrument: instrument ?? "instrument not named" };
}

/** The license as it stood on the day; one that had run out is not named. */
function licenseOf(licenses: readonly LicenseOnFile[], personId: string, state: string, { doneOn }: CompletedForm): RecordedLicense | null {
  const own = licenses.filter((license) => license.personId === personId && license.state === state);
  const stood = own.filter((license) => ["standing", "runs-out-soon"].includes(licenseStanding(license, doneOn).kind));
  const best = stood.find(({ kind }) => kind === "certified-applicator") ?? stood[0];
  if (best === undefined) return null;
  const { kind, number, category, expiresOn } = best;
  return { kind, state: best.state, number, category, expiresOn };
}

function treatmentOf(used: ReallyUsed, form: CompletedForm, facts: RecordFacts): { readonly treatment: RecordedTreatment; readonly findings: readonly Finding[] } {
  const treatment = facts.treatments.find(({ line }) => line === used.line);
  const mix = facts.ticket?.mixes.find((one) => (one.kind === "granular" ? one.line === used.line : one.products.some(({ line }) => line === used.line)));
  if (treatment === undefined || mix === undefined) throw new Error(`treatment ${String(used.line)} of a record is one that was planned`);
  const reached = mix.lawns.filter(({ zoneId }) => form.lawns[zoneId] === "done" || form.lawns[zoneId] === "part");
  const shared = sharePutDown(treatment, used.total, reached);
  const { label, use } = treatment;
  const entered = form.mixes[String(mix.kind === "granular" ? mix.line : (mix.products[0]?.line ?? 0))];
  return {
    findings: shared.findings,
    treatment: {
      line: used.line,
      productId: treatment.productId,
      productName: label.productName,
      epaRegistrationNumber: typeof label.epaRegistrationNumber === "string" ? null : label.epaRegistrationNumber.number,
      formulation: label.formulation,
      activeIngredients: label.activeIngredients === "unknown" ? [] : label.activeIngredients.map(({ name }) => name),
      isRestrictedUse: label.isRestrictedUse === true,
      serviceType: use.serviceType,
      targets: use.targets,
      reason: treatment.reason,
      plannedRate: treatment.rateText,
      measuredBy: entered?.measuredBy ?? "as-planned-not-measured",
      total: recorded(used.total),
      lots: used.lots.map(({ lotId, amount }) => ({ lotId, number: facts.lotNumbers.get(lotId) ?? "", amount: recorded({ dimension: used.total.dimension, amount }) })),
      fill: used.draw === null ? null : { fillId: used.draw.fill.fillId, number: used.draw.fill.number, sprayed: recorded(used.draw.sprayed), mixingPlace: used.draw.fill.mixingPlace },
      equipmentName: treatment.gear.name,
      lawns: shared.lawns.map(({ zoneId, lawnName, treatedArea, amount, activeIngredients }) => ({
        zoneId,
        lawnName,
        treatedArea: recorded(treatedArea),
        amount: recorded(amount),
        activeIngredients: activeIngredients.map(({ name, rate }) => ({ name, amount: rate.amount.toString(), per: rate.per.toString() })),
      })),
      precautions: AFTERCARE_KINDS.flatMap((kind) => {
        const fact = use.aftercare.facts[kind];
        return typeof fact === "string" ? [] : [fact.labelWords];
      }),
    },
  };
}

function entryFindings(work: Work, { startedAt, endedAt, ticket }: RecordFacts): readonly Finding[] {
  const lateHours = (work.now.getTime() - endedAt.getTime()) / 3_600_000;
  const minutes = BigInt(Math.max(1, Math.round((endedAt.getTime() - startedAt.getTime()) / 60_000)));
  const ground = ticket?.mixes.reduce((most, mix) => largest(most, mix.lawns.reduce((total, lawn) => total + lawn.treatedArea.amount, 0n)), 0n) ?? 0n;
  const squareFeet = ground / 2_322_576n;
  const findings: Finding[] = [];
  if (lateHours > LATE_AFTER_HOURS) {
    findings.push(
      note({ rule: "entered-late", source: "house", what: "This record was entered late.", figure: `The work ended on ${calendarDateIn(work.company.timeZone, endedAt.getTime())}, ${String(Math.round(lateHours))} hours before.`, about: [] }),
    );
  }
  if (squareFeet > FASTEST_SQ_FT_A_MINUTE * minutes) {
    findings.push(
      takeCare({ rule: "very-fast", source: "common-practice", what: "The work is entered as faster than anybody walks.", figure: `${String(squareFeet)} sq ft in ${String(minutes)} min.`, toDo: "Look at the times again.", about: [] }),
    );
  }
  return findings;
}

function largest(left: bigint, right: bigint): bigint {
  return left > right ? left : right;
}

function licenseFindings({ name, license }: RecordContent["applicator"]): readonly Finding[] {
  if (license !== null) return [];
  return [
    takeCare({ rule: "license-missing", source: "law", what: `${name} had no license on file that stood on that day.`, toDo: "Tell the license holder; the record says who really did it.", about: [name] }),
  ];
}
