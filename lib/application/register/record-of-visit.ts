import { type Finding, gravestFirst } from "#domain/foundation/finding";
import { licenseStanding } from "#domain/crew/license";
import { AFTERCARE_KINDS } from "#domain/label/aftercare-constraint";
import { sumOfLots } from "#domain/mixing/tank-books";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { RULES_VERSION } from "#domain/rules/packs-on-file";
import { sharePutDown, usesPutDown } from "#domain/register/put-down";
import { checkWeatherRead } from "#domain/register/weather-read";
import { type RecordContent, type RecordedAmount, type RecordedFill, type RecordedLicense, type RecordedTreatment, type RecordedWeather } from "#domain/register/record-content";
import { type CompletedForm, reachedLawns } from "#application/register/complete-visit.schema";
import { type DrawOfFill, type ReallyUsed } from "#application/register/drawn-from-fills";
import { findingsOfRecord } from "#application/register/findings-of-record";
import { NOT_ON_FILE, type ProductPutDown, type RecordPlan, treatmentOnLine } from "#application/register/record-plan";
import { type UsedOfVisit } from "#application/register/used-of-visit";
import { type LicenseOnFile, licensesOnFile } from "#application/visits/ticket-facts";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";

/** What a record is made of besides the form. */
export interface RecordFacts {
  readonly visit: VisitRow;
  readonly plan: RecordPlan;
  readonly used: UsedOfVisit;
  readonly startedAt: Date;
  readonly endedAt: Date;
}

function recorded(quantity: Quantity<"mass"> | Quantity<"volume"> | Quantity<"area">): RecordedAmount {
  return { dimension: quantity.dimension, amount: quantity.amount.toString(), words: formatQuantity(quantity, "us") };
}

/** Puts a record together from what happened, with the findings that belong on it. */
export async function recordOfVisit(work: Work, form: CompletedForm, facts: RecordFacts): Promise<RecordContent> {
  const { companyId, timeZone } = work.company;
  const { visit, plan, used } = facts;
  const company = await work.tx.company.findUniqueOrThrow({ where: { companyId } });
  const crew = await crewOf(work, form, visit.property.state);
  const shared = used.used.map((one) => treatmentOf(one, form, facts, timeZone));
  const ofRecord = await findingsOfRecord(work, form, { ...facts, ...crew, unplanned: used.unplanned });
  const { street, city, state, zip, propertyId } = visit.property;
  return {
    form: "application-record-1",
    company: { name: company.name, address: company.address, phone: company.phone, businessLicenseNumber: company.businessLicenseNumber },
    customer: { name: visit.client.name, phone: visit.client.phone },
    site: { propertyId, street, city, state, zip },
    visit: { visitId: visit.visitId, name: visit.name, mixTicketNumber: plan.mixTicketNumber },
    ...crew,
    startedAt: facts.startedAt.toISOString(),
    endedAt: facts.endedAt.toISOString(),
    timeZone,
    enteredAt: work.now.toISOString(),
    weather: weatherOf(form),
    lawns: plan.lawns.map(({ zoneId, name, grasses }) => ({ zoneId, name, grasses, outcome: form.lawns[zoneId] ?? "not-done" })),
    treatments: shared.map(({ treatment }) => treatment),
    signIsUp: form.signIsUp,
    noticeWasLeft: form.noticeWasLeft,
    remarks: form.remarks,
    rulesVersion: RULES_VERSION,
    holdAnswers: plan.holdAnswers,
    findings: gravestFirst([...plan.findings, ...used.findings, ...shared.flatMap(({ findings }) => findings), ...ofRecord]),
    signature: form.signature,
  };
}

/** Who did it and who supervised, each with the license of the property's state that stood on the day. */
async function crewOf(work: Work, form: CompletedForm, state: string): Promise<Pick<RecordContent, "applicator" | "supervisor">> {
  const { applicatorId, supervisorId } = form;
  const people = await work.tx.person.findMany({ where: { companyId: work.company.companyId, personId: { in: [applicatorId, supervisorId ?? applicatorId] } } });
  const licenses = await licensesOnFile(work);
  const worker = (personId: string) => ({
    personId,
    name: people.find((person) => person.personId === personId)?.name ?? "",
    license: licenseOf(licenses, personId, state, form),
  });
  return { applicator: worker(applicatorId), supervisor: supervisorId === null ? null : worker(supervisorId) };
}

/** The weather where all of it was read; what was read of it stands in a finding otherwise. */
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

function treatmentOf(used: ReallyUsed, form: CompletedForm, facts: RecordFacts, timeZone: string): { readonly treatment: RecordedTreatment; readonly findings: readonly Finding[] } {
  const { plan, used: { lotNumbers, unplanned } } = facts;
  const treatment = treatmentOnLine<ProductPutDown>([...plan.treatments, ...unplanned], used.line);
  const { line, draws, measuredBy, total, lots } = used;
  const isReached = reachedLawns(form);
  const reached = treatment.lawns.filter(({ zoneId }) => isReached.has(zoneId));
  const shared = sharePutDown(treatment.label, total, reached, draws);
  const [fill = null, ...furtherFills] = draws.map(recordedFill);
  return {
    // Where nothing of it went down, no weather was wrong for it.
    findings: [...shared.findings, ...(shared.lawns.length === 0 ? [] : checkWeatherRead(treatment.label, form, { ...facts, timeZone }))],
    treatment: {
      line,
      productId: treatment.productId,
      productName: treatment.productName,
      ...ofLabel(treatment.label),
      reason: treatment.reason,
      plannedRate: treatment.rateText,
      ...(treatment.spot === undefined ? {} : { spotShareBasisPoints: treatment.spot.shareBasisPoints }),
      measuredBy,
      total: recorded(total),
      lots: sumOfLots([lots]).map(({ lotId, amount }) => ({ lotId, number: lotNumbers.get(lotId) ?? "", amount: recorded({ dimension: total.dimension, amount }) })),
      fill,
      ...(furtherFills.length === 0 ? {} : { furtherFills }),
      equipmentName: treatment.equipmentName,
      ...(treatment.equipmentId === undefined ? {} : { equipmentId: treatment.equipmentId }),
      notCountable: shared.notCountable,
      lawns: shared.lawns.map(({ zoneId, lawnName, treatedArea, amount, activeIngredients }) => ({
        zoneId,
        lawnName,
        treatedArea: recorded(treatedArea),
        amount: recorded(amount),
        activeIngredients: activeIngredients.map(({ name, rate }) => ({ name, amount: rate.amount.toString(), per: rate.per.toString() })),
      })),
    },
  };
}

function recordedFill({ fill: { fillId, number, mixingPlace }, sprayed }: DrawOfFill): RecordedFill {
  return { fillId, number, sprayed: recorded(sprayed), mixingPlace };
}

type FromLabel = Pick<RecordedTreatment, "epaRegistrationNumber" | "formulation" | "activeIngredients" | "isRestrictedUse" | "serviceType" | "targets" | "precautions">;

function ofLabel(facts: ProductPutDown["label"]): FromLabel {
  if (facts === "not-on-file") {
    return { epaRegistrationNumber: null, formulation: NOT_ON_FILE, activeIngredients: [], isRestrictedUse: false, serviceType: NOT_ON_FILE, targets: [], precautions: [] };
  }
  const { label, use } = facts;
  const uses = usesPutDown(facts);
  return {
    epaRegistrationNumber: typeof label.epaRegistrationNumber === "string" ? null : label.epaRegistrationNumber.number,
    formulation: label.formulation,
    activeIngredients: label.activeIngredients === "unknown" ? [] : label.activeIngredients.map(({ name }) => name),
    isRestrictedUse: label.isRestrictedUse === true,
    serviceType: use === "not-known" ? NOT_ON_FILE : use.serviceType,
    targets: use === "not-known" ? [] : use.targets,
    precautions: AFTERCARE_KINDS.flatMap((kind) => {
      const facts = uses.map(({ aftercare }) => aftercare.facts[kind]);
      return [...new Set(facts.flatMap((fact) => (typeof fact === "string" ? [] : [fact.labelWords])))];
    }),
  };
}
