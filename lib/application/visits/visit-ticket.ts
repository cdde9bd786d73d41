import { labelInUse, type LabelsRead } from "#application/products/stored-label";
import { todayOf } from "#application/programs/visits-of-rounds";
import { bloomOfLawn } from "#application/properties/lawn-looks";
import { timeZoneDataVersion } from "#adapters/time-zone-data";
import { type HouseSettings } from "#domain/company/house-settings";
import { licenseStanding } from "#domain/crew/license";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { eachFindingOnce, type Finding, gravestFirst, hold } from "#domain/foundation/finding";
import { type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { useNamed } from "#domain/label/label-facts";
import { withTools } from "#domain/mixing/measuring-tool";
import { type MixTicket, makeMixTicket } from "#domain/mixing/mix-ticket";
import { ticketRate } from "#domain/mixing/stated-rate";
import { type TicketApplicator, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { RULES_VERSION } from "#domain/rules/packs-on-file";
import { firstDayOpen } from "#domain/scheduling/visit-standing";
import { instantOfMinute, type Span } from "#domain/weather/local-hours";
import { type AftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { aftercareOfVisit, appliedByPlan, hoursNotOnFile, spanOfVisit } from "#application/visits/visit-aftercare";
import { gearFor, type PlannedApplication, plannedApplication } from "#application/visits/visit-gear";
import { type LawnFacts, type LicenseOnFile, readTicketFacts, type TicketFacts } from "#application/visits/ticket-facts";
import { availableFor, withLeftOver } from "#application/visits/stock-for-visits";
import { type PlannedTreatment, type VisitRow, visitRows } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";

/** The question that was answered, as it is kept with a ticket: treatments with their labels, lawns, gear, weather. */
export interface VisitTicket {
  readonly visit: VisitRow;
  readonly application: PlannedApplication;
  readonly license: LicenseOnFile | null;
  readonly span: Span;
  readonly question: TicketQuestion;
  readonly ticket: MixTicket;
  readonly aftercare: readonly AftercareOfLawns[];
  /** Of the ticket, the aftercare and the plan, the gravest first. */
  readonly findings: readonly Finding[];
  readonly rulesVersion: string;
}

export type TicketOutcome = Outcome<VisitTicket, { readonly refusal: InputRefusal; readonly findings: readonly Finding[] }>;

/** What was found, and the day that it was worked out for; null where no ticket could be. An answer to a hold is for both. */
export function heldOf(outcome: TicketOutcome): { readonly findings: readonly Finding[]; readonly on: CalendarDate | null } {
  return outcome.ok ? { findings: outcome.value.findings, on: outcome.value.application.on } : { findings: outcome.refusal.findings, on: null };
}

/** A visit with what is worked out for it now. */
export interface WorkedVisit {
  readonly visit: VisitRow;
  readonly outcome: TicketOutcome;
  /** The labels that were read for it, those of its own products among them. */
  readonly labels: LabelsRead;
  /** The lawns of its property by letter, as they were read for it. */
  readonly lawns: readonly LawnFacts[];
  /** By what the house held to. */
  readonly settings: HouseSettings;
}

/** Works out the mix tickets of some visits from what is on file now, in the order of the ids. */
export async function ticketsOfVisits(work: Work, visitIds: readonly string[]): Promise<readonly WorkedVisit[]> {
  const visits = await visitRows(work, visitIds);
  const facts = await readTicketFacts(work, visits);
  const today = todayOf(work);
  return visits.map((visit) => ({ visit, outcome: ticketOf(work, visit, facts, today), labels: facts.labels, lawns: lawnsOf(visit, facts), settings: facts.settings }));
}

function lawnsOf({ property: { propertyId } }: VisitRow, { lawnsByProperty }: TicketFacts): readonly LawnFacts[] {
  return lawnsByProperty.get(propertyId) ?? [];
}

function ticketOf(work: Work, visit: VisitRow, facts: TicketFacts, today: CalendarDate): TicketOutcome {
  const { timeZone } = work.company;
  const application = plannedApplication(facts, visit.stop, firstDayOpen(visit, today), work.member.personId);
  const lawns = lawnsOf(visit, facts);
  const findings: Finding[] = visit.stop === null ? [onNoDay(visit)] : [];
  const own = { ...facts, onHand: availableFor(facts, visit.visitId) };
  const treatments = visit.treatments.flatMap((planned) => treatmentOf(own, planned, application, findings));
  const license = licenseFor(facts.licenses, visit, application);
  const planned: TicketQuestion = {
    on: application.on,
    state: visit.property.state,
    // A visit that is done has its own record among what was put down, and is not held against itself.
    lawns: lawns.map(({ lawn, looks }) => ({ ...lawn, ...bloomOfLawn(looks, application.on), history: lawn.history.filter(({ visitId }) => visitId !== visit.visitId) })),
    treatments,
    applicator: applicatorOf(application, license, facts, visit),
    forecastHighF: visit.stop?.forecastHighF ?? "not-entered",
    forecastFollowingHighsF: visit.stop?.forecastFollowingHighsF.map((highF) => highF ?? "not-entered") ?? [],
    settings: facts.settings,
  };
  const question = withLeftOver(withTools(planned, facts.tools), facts, visit.visitId);
  const ticket = makeMixTicket(question);
  if (!ticket.ok) return { ok: false, refusal: { refusal: ticket.refusal, findings } };
  const span = spanOfVisit(application.on, visit, (on, minute) => instantOfMinute(on, minute, timeZone));
  const aftercare = aftercareOfVisit(visit, lawns, appliedByPlan(treatments, span), { timeZone, zoneDataVersion: timeZoneDataVersion(), span });
  if (!aftercare.ok) return { ok: false, refusal: { refusal: aftercare.refusal, findings } };
  const all = [
    ...findings,
    ...ticket.value.findings,
    ...aftercare.value.flatMap(({ timeline }) => timeline.findings),
    ...hoursNotOnFile(visit, aftercare.value),
  ];
  return {
    ok: true,
    value: {
      visit,
      application,
      license,
      span,
      question,
      ticket: ticket.value,
      aftercare: aftercare.value,
      findings: gravestFirst(eachFindingOnce(all)),
      rulesVersion: RULES_VERSION,
    },
  };
}

/** What a visit puts down with a product; no tool yet, which hangs on the visit as a whole. */
function treatmentOf(facts: TicketFacts, planned: PlannedTreatment, application: PlannedApplication, findings: Finding[]): readonly TicketTreatment[] {
  const { line, productId, rateText, reason, zoneIds, labelUse, spot } = planned;
  const name = facts.productOf.get(productId)?.name ?? "the product";
  const entry = facts.labels.get(productId);
  const label = labelInUse(entry);
  const use = label === undefined ? undefined : useNamed(label.facts, labelUse);
  if (label === undefined || use === undefined) {
    findings.push(withoutLabel(name, labelUse, label !== undefined));
    return [];
  }
  const gear = gearFor(facts, planned, label.facts, application);
  if (gear === undefined) {
    findings.push(withoutGear(name, label.facts.form));
    return [];
  }
  if (gear.gear === "without-figures") {
    findings.push(gear.finding);
    return [];
  }
  findings.push(...gear.notAtHand);
  const stated = ticketRate(planned.rate, use, gear.gear);
  if (stated === undefined) {
    findings.push(forASprayer(name, gear.gear.name));
    return [];
  }
  const dimension = stated.rate.basis === "product-mass-per-area" ? "mass" : "volume";
  const onHand = facts.onHand.get(productId) ?? 0n;
  return [
    {
      line,
      productId,
      label: label.facts,
      labelConfirmedBy: label.confirmation?.by ?? null,
      ...stated,
      ...(spot === undefined ? {} : { spot }),
      rateText,
      reason,
      zoneIds,
      gear: gear.gear,
      tool: "none",
      // What is owed after a count is nothing on hand, not less than nothing.
      onHand: { dimension: facts.productOf.get(productId)?.countedBy ?? dimension, amount: onHand < 0n ? 0n : onHand } as TicketTreatment["onHand"],
      calibrationFinding: gear.calibrationFinding,
    },
  ];
}

function licenseFor(licenses: readonly LicenseOnFile[], visit: VisitRow, { operatorId, on }: PlannedApplication): LicenseOnFile | null {
  const own = licenses.filter(({ personId, state }) => personId === operatorId && state === visit.property.state);
  const stands = own.filter((license) => ["standing", "runs-out-soon"].includes(licenseStanding(license, on).kind));
  return stands.find(({ kind }) => kind === "certified-applicator") ?? stands[0] ?? null;
}

function applicatorOf({ operatorId, operatorName }: PlannedApplication, license: LicenseOnFile | null, { licenses }: TicketFacts, visit: VisitRow): TicketApplicator {
  if (license !== null) return { name: operatorName, license: { standing: "stands", kind: license.kind, number: license.number, category: license.category } };
  const had = licenses.some(({ personId, state }) => personId === operatorId && state === visit.property.state);
  return { name: operatorName, license: { standing: had ? "expired" : "none" } };
}

function onNoDay({ name }: VisitRow): Finding {
  return hold("office", { rule: "on-no-day", source: "house", what: "The visit is on no truck's day.", toDo: "Put it on a day first.", about: [name] });
}

function withoutLabel(name: string, labelUse: string, hasLabel: boolean): Finding {
  return hold("office", {
    rule: "label-not-entered",
    source: "house",
    what: hasLabel ? `The label of ${name} has no use "${labelUse}".` : `Nobody has entered the label of ${name}.`,
    toDo: "Enter the label in the Shed, or plan another use of it.",
    about: [name],
  });
}

function forASprayer(name: string, gearName: string): Finding {
  return hold("office", {
    rule: "rate-for-a-sprayer",
    source: "house",
    what: `${name} is planned by the gallon of spray and put down with ${gearName}.`,
    toDo: "Take a sprayer, or plan a use with a rate over area.",
    about: [name, gearName],
  });
}

function withoutGear(name: string, form: "granular" | "liquid"): Finding {
  return hold("office", {
    rule: "no-gear",
    source: "house",
    what: `The truck has no ${form === "liquid" ? "sprayer" : "spreader"} for ${name}.`,
    toDo: "Put one on the truck, or name the gear in the plan.",
    about: [name],
  });
}

