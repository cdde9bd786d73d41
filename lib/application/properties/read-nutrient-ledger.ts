import { type CalendarDate } from "#domain/foundation/calendar-date";
import { accept, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type UsState } from "#domain/company/us-state";
import { isOverArea } from "#domain/label/label-facts";
import { NO_NUTRIENT_RATES, nutrientRatesOf, overWholeLawn } from "#domain/mixing/delivered";
import { type NutrientRates, type PastApplication } from "#domain/mixing/ticket-question";
import { packOf } from "#domain/rules/packs-on-file";
import { type LawnLedger, lawnLedger, type LedgerEntry } from "#domain/scheduling/nutrient-ledger";
import { firstDayOpen } from "#domain/scheduling/visit-standing";
import { type Grass, isGrass } from "#domain/turf/grass";
import { type GrowthOfMonth, growthOfMonths, growthSeasonOf } from "#domain/turf/growth-of-months";
import { type GrowthSeason } from "#domain/turf/growth-potential";
import { type MonthTemperature, monthTemperatures, yearPeriod } from "#domain/turf/month-temperature";
import { labelInUse, type LabelOfProduct, labelsOfProducts, type LabelsRead } from "#application/products/stored-label";
import { todayOf } from "#application/programs/visits-of-rounds";
import { readNutrientLedgerSchema } from "#application/properties/read-nutrient-ledger.schema";
import { historyOfZones, productsOfRecords, recordsOfProperties } from "#application/register/zone-history";
import { notFound } from "#application/refusal";
import { keptTemperatures, sourceInUse } from "#application/temperatures/kept-temperatures";
import { useCase, type Work } from "#application/use-case";
import { productNamesOf, standingOf } from "#application/visits/list-visits";
import { type PlannedTreatment, type VisitRow, visitRows } from "#application/visits/visit-rows";

/** How a lawn's grass could grow by the kept temperatures of the year: a curve to look at, never a target. */
export interface GrowthOfYear {
  readonly season: GrowthSeason;
  /** True where nobody has looked at the grass. */
  readonly isGrassAssumed: boolean;
  /** The source of the temperatures. */
  readonly source: string;
  /** January first. */
  readonly months: readonly GrowthOfMonth[];
}

/** The year's nutrients on one lawn. */
export interface LedgerOfLawn {
  readonly zoneId: string;
  readonly letter: string;
  readonly name: string;
  readonly ledger: LawnLedger;
  /** Refused by name for a grass that has no one curve, and while too few temperatures are kept. */
  readonly growth: Outcome<GrowthOfYear>;
}

export interface NutrientLedgerOnFile {
  readonly year: number;
  readonly lawns: readonly LedgerOfLawn[];
  /** Visits with a product that are past their window and on no day to come: they are not counted as planned. */
  readonly notCounted: readonly string[];
}

/**
 * The nutrients of a calendar year on each lawn of a property: what the register says was put down, what a visit in view
 * brings, and what visits ahead bring at their planned rates, by the labels on file now. The year is that of the visit's
 * day, or else of today.
 */
export const readNutrientLedger = useCase("properties/read-nutrient-ledger", readNutrientLedgerSchema, async (work, { propertyId, visitId }) => {
  const { companyId } = work.company;
  const property = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } }, select: { state: true } });
  if (property === null) return notFound("property");
  const today = todayOf(work);
  const planned = await plannedVisits(work, propertyId);
  const inView = planned.find((visit) => visit.visitId === visitId);
  const year = Number((inView === undefined ? today : dayOfVisit(inView, today)).slice(0, 4));
  const counted = planned.filter((visit) => visit === inView || standingOf(visit, today) !== "past-its-window");
  const names = await productNamesOf(work, counted);
  const records = await recordsOfProperties(work, [propertyId]);
  const labels = await labelsOfProducts(work.tx, companyId, [...names.keys(), ...productsOfRecords(records)]);
  const ahead = counted.flatMap((visit) => entriesAhead(visit, dayOfVisit(visit, today), visit === inView ? "this-visit" : "planned", names, labels));
  // Under which use of its label something went down, no nutrient asks.
  const history = historyOfZones(work, records, labels, new Map());
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId, removedAt: null }, orderBy: { letter: "asc" } });
  const state = property.state as UsState;
  const temperatures = await temperaturesOfYear(work, year);
  const lawns = zones.map(({ zoneId, letter, name, ...zone }): LedgerOfLawn => {
    const grasses = zone.grasses.filter(isGrass);
    const entries = [...(history.get(zoneId) ?? []).map(entryPutDown), ...ahead.flatMap((one) => (one.zoneId === zoneId ? [one.entry] : []))];
    return {
      ...{ zoneId, letter, name },
      ledger: lawnLedger({ year, state, pack: packOf(state), grasses, entries }),
      growth: growthOfYear({ grasses, isGrassAssumed: zone.grassesAssumed }, temperatures),
    };
  });
  const ledger: NutrientLedgerOnFile = { year, lawns, notCounted: planned.filter((visit) => visit.treatments.length > 0 && !counted.includes(visit)).map(({ name }) => name) };
  return accept(ledger);
});

interface TemperaturesOfYear {
  readonly source: string | null;
  readonly months: readonly MonthTemperature[];
}

async function temperaturesOfYear(work: Work, year: number): Promise<TemperaturesOfYear> {
  const source = await sourceInUse(work);
  return { source, months: source === null ? [] : monthTemperatures(await keptTemperatures(work, source, yearPeriod(year)), year) };
}

interface GrassOfLawn {
  readonly grasses: readonly Grass[];
  readonly isGrassAssumed: boolean;
}

function growthOfYear({ grasses, isGrassAssumed }: GrassOfLawn, { source, months: temperatures }: TemperaturesOfYear): Outcome<GrowthOfYear> {
  const season = growthSeasonOf(grasses);
  if (!season.ok) return season;
  if (source === null) return missingFact("source", "daily temperatures", "No daily temperatures are kept yet, so how the grass grows can't be drawn.");
  const months = growthOfMonths(season.value, temperatures);
  return months.ok ? accept({ season: season.value, isGrassAssumed, source, months: months.value }) : months;
}

async function plannedVisits(work: Work, propertyId: string): Promise<readonly VisitRow[]> {
  const found = await work.tx.visit.findMany({
    where: { companyId: work.company.companyId, propertyId, state: "planned" },
    select: { visitId: true },
    orderBy: [{ opensOn: "asc" }, { visitId: "asc" }],
  });
  return visitRows(work, found.map(({ visitId }) => visitId));
}

/** The day that a visit is on, or the first on which it may still be. */
function dayOfVisit(visit: VisitRow, today: CalendarDate): CalendarDate {
  const { stop } = visit;
  return stop !== null && stop.date >= today ? stop.date : firstDayOpen(visit, today);
}

function entryPutDown({ on, visitId, productId, productName, nutrients, spot }: PastApplication, index: number): LedgerEntry {
  return { id: `${visitId} ${productId} ${String(index)}`, on, productName, standing: "put-down", brought: overWholeLawn(nutrients, spot) };
}

interface EntryOnLawn {
  readonly zoneId: string;
  readonly entry: LedgerEntry;
}

/** What one visit ahead brings to each of its lawns. */
function entriesAhead(visit: VisitRow, on: CalendarDate, standing: LedgerEntry["standing"], names: ReadonlyMap<string, string>, labels: LabelsRead): readonly EntryOnLawn[] {
  return visit.treatments.flatMap((treatment) => {
    const productName = names.get(treatment.productId) ?? "";
    const id = `${visit.visitId} ${String(treatment.line)}`;
    const entry: LedgerEntry = { id, on, productName, standing, brought: broughtBy(treatment, productName, labels.get(treatment.productId)) };
    return treatment.zoneIds.map((zoneId) => ({ zoneId, entry }));
  });
}

function broughtBy({ rate, spot }: PlannedTreatment, productName: string, label: LabelOfProduct | undefined): Outcome<NutrientRates> {
  const facts = labelInUse(label)?.facts;
  if (facts === undefined) return missingFact("label", "the product's label", `Nobody has entered the label of ${productName}.`);
  if (facts.analysis === "none") return accept(NO_NUTRIENT_RATES);
  if (!isOverArea(rate)) return missingFact("rate", "a rate over area", `${productName} is planned by the gallon of spray: what it brings stands on its mix ticket, and in this ledger once it is recorded.`);
  return overWholeLawn(nutrientRatesOf(facts, rate), spot);
}
