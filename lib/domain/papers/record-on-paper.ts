import { LICENSE_KIND_WORDS } from "#domain/crew/license";
import { listWords } from "#domain/foundation/list-words";
import { type Finding, hold } from "#domain/foundation/finding";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount } from "#domain/quantities/quantity";
import { onSpotsWords } from "#domain/quantities/share";
import { fillsOf, LAWN_OUTCOME_WORDS, type MeasuredBy, NOT_PLANNED, type RecordContent, type RecordedAmount, type RecordedLicense, type RecordedTreatment } from "#domain/register/record-content";
import { type AmountOnRecord, type ApplicationRecordPaper, type RecordAmendment, type RecordProduct } from "#domain/papers/application-record-paper";
import { companyOnPaper, numberOnPaper, rulesOnPaper } from "#domain/papers/company-on-paper";
import { NOT_RECORDED, NOT_TAKEN, type PaperValue, said, TO_WRITE } from "#domain/papers/paper";
import { clockOnPaper, dateOnPaper, dayOnPaper, momentOnPaper, spanOnPaper } from "#domain/papers/paper-time";
import { answersOnPaper, findingsOnPaper } from "#domain/papers/ticket-on-paper";
import { localTimeAt } from "#domain/weather/local-hours";

/** A record as it stands in the register, with its place in the chain. */
export interface RecordInRegister {
  readonly number: number;
  readonly content: RecordContent;
  readonly writtenAtEpochMilliseconds: number;
  readonly writtenBy: string;
  readonly hash: string;
  readonly previousHash: string;
  /** Whether the hash is that of the bytes that stand there. */
  readonly isUnaltered: boolean;
  readonly amendments: readonly RecordAmendment[];
}

/** A record on paper: everything that it holds, and of every other element that it was not recorded. */
export function recordOnPaper(record: RecordInRegister, isDemonstration: boolean): ApplicationRecordPaper {
  const { number, content, writtenAtEpochMilliseconds, writtenBy, hash, previousHash, amendments } = record;
  const { timeZone, site, treatments, signature } = content;
  return {
    frame: {
      company: companyOnPaper(content.company),
      title: "Application record",
      number: numberOnPaper(number),
      date: dayOnPaper(Date.parse(content.startedAt), timeZone),
      createdEpochMilliseconds: writtenAtEpochMilliseconds,
      ruleVersion: rulesOnPaper(content.rulesVersion),
      source: `From record ${String(number)} as written by ${writtenBy}, ${momentOnPaper(writtenAtEpochMilliseconds, timeZone)}`,
      isDemonstration,
    },
    siteAddress: `${site.street}, ${site.city}`,
    readBack: readBack(content),
    elements: { ...siteElements(content), ...timeElements(record), ...peopleElements(content), ...workElements(content), ...weatherElements(content), ...afterElements(content) },
    products: treatments.map(productOf),
    lawns: content.lawns.map(({ zoneId, name, outcome }) => lawnWords(content, zoneId, name, LAWN_OUTCOME_WORDS[outcome].toLowerCase())),
    findings: findingsOnPaper([...chainFindings(record), ...content.findings], answersOnPaper(content.holdAnswers, content.timeZone)),
    amendments,
    hash,
    previousHash,
    signature: signature === null ? TO_WRITE : said(`${signature}, on the screen, ${momentOnPaper(Date.parse(content.enteredAt), timeZone)}`),
  };
}

function chainFindings({ isUnaltered, number }: RecordInRegister): readonly Finding[] {
  if (isUnaltered) return [];
  return [hold("nobody", { rule: "hash-does-not-fit", source: "house", what: `The hash of record ${String(number)} is not that of what stands in it.`, toDo: "Do not rely on this record; look at a backup.", about: [] })];
}

function readBack({ applicator, treatments, lawns, startedAt, endedAt, timeZone, signIsUp, noticeWasLeft }: RecordContent): string {
  const when = `${spanOnPaper(Date.parse(startedAt), Date.parse(endedAt), timeZone)} on ${dateOnPaper(localTimeAt(Date.parse(startedAt), timeZone).date)}`;
  const where = listWords(lawns.filter(({ outcome }) => outcome !== "not-done").map(({ name }) => name));
  const what = treatments.length === 0 ? "looked at" : `put down ${listWords(treatments.map(({ productName, total }) => `${total.words} of ${productName}`))} on`;
  const left = `${signIsUp ? "The sign was put up" : "No sign was put up"}; ${noticeWasLeft ? "the notice was left" : "no notice was left"}.`;
  return `${applicator.name} ${what} ${where}, ${when}. ${left}`;
}

/** "Front", "Front and Back", "Front, Back and Strip". */
function saidOr(texts: readonly string[], otherwise: PaperValue): PaperValue {
  const each = [...new Set(texts)];
  return each.length === 0 ? otherwise : said(each.join(", "));
}

const notApplying = (because: string): PaperValue => ({ kind: "does-not-apply", because });

function siteElements({ customer, site, lawns, treatments }: RecordContent) {
  const whole = `${site.street}, ${site.city}, ${site.state} ${site.zip}`;
  const plants = lawns.map(({ name, grasses }) => (grasses.length === 0 ? `${name} (grass not on file)` : `${name} (${grasses.join(", ")})`));
  return {
    customerName: said(customer.name),
    customerAddress: NOT_RECORDED,
    customerPhone: customer.phone === null ? NOT_RECORDED : said(customer.phone),
    propertyName: said(site.street),
    siteAddress: said(whole),
    municipality: said(site.city),
    county: NOT_RECORDED,
    siteAndPlants: saidOr(plants, NOT_RECORDED),
    area: areaTreated(treatments),
    targetPest: saidOr(treatments.flatMap(({ targets, reason }) => (targets.length === 0 ? [reason] : targets)), NOT_RECORDED),
  };
}

/** Ground that got anything, counted once: of each lawn the largest area that one product went on. */
function areaTreated(treatments: readonly RecordedTreatment[]): PaperValue {
  const largest = new Map<string, bigint>();
  for (const { zoneId, treatedArea } of treatments.flatMap(({ lawns }) => lawns)) {
    const area = BigInt(treatedArea.amount);
    if (area > (largest.get(zoneId) ?? 0n)) largest.set(zoneId, area);
  }
  if (largest.size === 0) return notApplying("nothing was put down");
  return said(formatQuantity(fromAmount("area", [...largest.values()].reduce((total, area) => total + area, 0n)), "us"));
}

function timeElements({ content, writtenAtEpochMilliseconds }: RecordInRegister) {
  const { startedAt, endedAt, enteredAt, timeZone } = content;
  return {
    date: said(dateOnPaper(localTimeAt(Date.parse(startedAt), timeZone).date)),
    startTime: said(clockOnPaper(Date.parse(startedAt), timeZone)),
    endTime: said(clockOnPaper(Date.parse(endedAt), timeZone)),
    reentryInterval: NOT_RECORDED,
    reentryTime: NOT_RECORDED,
    enteredTime: said(momentOnPaper(Date.parse(enteredAt), timeZone)),
    receivedTime: said(momentOnPaper(writtenAtEpochMilliseconds, timeZone)),
  };
}

function licenseWords(license: RecordedLicense | null): PaperValue {
  if (license === null) return notApplying("none on file that stood on that day");
  const { state, number, category, expiresOn } = license;
  return said(`${state} ${number}, ${category}, to ${dateOnPaper(expiresOn)}`);
}

function peopleElements({ applicator, supervisor, company }: RecordContent) {
  const isCertified = applicator.license?.kind === "certified-applicator";
  const noncertified = isCertified ? notApplying("none; the applicator is certified") : said(applicator.name);
  return {
    applicatorName: said(applicator.license === null ? applicator.name : `${applicator.name}, ${kindWords(applicator.license)}`),
    applicatorLicense: licenseWords(applicator.license),
    supervisorName: supervisor === null ? notApplying("none named") : said(supervisor.name),
    supervisorLicense: supervisor === null ? notApplying("none named") : licenseWords(supervisor.license),
    noncertifiedName: noncertified,
    noncertifiedNumber: isCertified ? notApplying("none") : licenseWords(applicator.license),
    businessName: said(company.name),
    businessAddress: company.address === null ? NOT_RECORDED : said(company.address),
    businessLicense: company.businessLicenseNumber === null ? NOT_RECORDED : said(company.businessLicenseNumber),
  };
}

function kindWords({ kind }: RecordedLicense): string {
  return LICENSE_KIND_WORDS[kind as keyof typeof LICENSE_KIND_WORDS].toLowerCase();
}

function isSpread({ formulation }: RecordedTreatment): boolean {
  return formulation === "dry granule";
}

function workElements({ treatments }: RecordContent) {
  const sprayed = treatments.filter((treatment) => !isSpread(treatment));
  const fills = sprayed.flatMap(fillsOf);
  const fromTank = sprayed.length === 0 ? notApplying(treatments.length === 0 ? "nothing was put down" : "spread dry") : NOT_RECORDED;
  return {
    method: saidOr(treatments.map((treatment) => (isSpread(treatment) ? "spread dry" : "sprayed")), notApplying("nothing was put down")),
    equipment: saidOr(treatments.map(({ equipmentName }) => equipmentName), notApplying("nothing was put down")),
    calibration: treatments.length === 0 ? notApplying("nothing was put down") : NOT_RECORDED,
    mixingPlace: saidOr(fills.map(({ mixingPlace }) => mixingPlace), fromTank),
    totalMix: saidOr(fills.map(({ number, sprayed: { words } }) => `${words} of fill ${String(number)}`), fromTank),
    dilution: fromTank,
  };
}

function weatherElements({ weather }: RecordContent) {
  if (weather.kind === "not-taken") {
    return { windSpeed: NOT_TAKEN, windDirection: NOT_TAKEN, temperature: NOT_TAKEN, otherWeather: NOT_TAKEN, weatherInstrument: NOT_TAKEN };
  }
  return {
    windSpeed: said(`${String(weather.windMph)} mph`),
    windDirection: said(weather.windFrom),
    temperature: said(`${String(weather.temperatureF)} °F`),
    otherWeather: NOT_TAKEN,
    weatherInstrument: said(weather.instrument),
  };
}

function afterElements({ remarks, noticeWasLeft }: RecordContent) {
  return {
    unexpected: remarks === null ? NOT_RECORDED : said(remarks),
    disposal: NOT_RECORDED,
    accidents: NOT_RECORDED,
    insurer: NOT_RECORDED,
    labelCopy: NOT_RECORDED,
    customerCopy: said(noticeWasLeft ? "notice left at the site" : "no notice was left"),
  };
}

const MEASURED_WITH: Readonly<Record<Exclude<MeasuredBy, "as-planned-not-measured">, string>> = { meter: "meter", bags: "bags", weight: "weight" };

function amountOf(total: RecordedAmount, measuredBy: MeasuredBy): AmountOnRecord {
  if (measuredBy === "as-planned-not-measured") return { kind: "as-planned", text: total.words };
  return { kind: "measured", text: total.words, by: MEASURED_WITH[measuredBy] };
}

function productOf(treatment: RecordedTreatment): RecordProduct {
  const { productName, total, measuredBy, formulation, activeIngredients, epaRegistrationNumber, isRestrictedUse, plannedRate, spotShareBasisPoints, lots } = treatment;
  const fills = fillsOf(treatment);
  return {
    brand: productName,
    amount: amountOf(total, measuredBy),
    elements: {
      formulation: said(formulation),
      activeIngredients: saidOr(activeIngredients, notApplying("none on file")),
      registrationNumber: epaRegistrationNumber === null ? notApplying("none on file") : said(epaRegistrationNumber),
      restrictedUse: said(isRestrictedUse ? "yes" : "no"),
      rate: said(plannedRate === NOT_PLANNED ? NOT_PLANNED : `${plannedRate}${onSpotsWords(spotShareBasisPoints)}, as planned`),
      fertilizerAnalysis: NOT_RECORDED,
      lot: saidOr(lots.map(({ number, amount }) => `${number} (${amount.words})`), NOT_RECORDED),
      fill: saidOr(fills.length === 0 ? [] : [fills.map(({ number, sprayed: { words } }) => `Fill ${String(number)}, ${words} of it`).join("; ")], notApplying(isSpread(treatment) ? "spread dry" : "none on file")),
    },
  };
}

function lawnWords({ treatments }: RecordContent, zoneId: string, name: string, outcome: string): string {
  const areas = new Set(treatments.flatMap(({ lawns }) => lawns).filter((lawn) => lawn.zoneId === zoneId).map(({ treatedArea }) => treatedArea.words));
  return [`${name}: ${outcome}`, ...areas].join(", ");
}
