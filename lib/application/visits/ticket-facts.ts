import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { type LicenseKind } from "#domain/crew/license";
import { type HouseSettings } from "#domain/company/house-settings";
import { type UsState } from "#domain/company/us-state";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { fromAmount } from "#domain/quantities/quantity";
import { isGrass } from "#domain/turf/grass";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { multiplyExact } from "#domain/quantities/exact-quantity";
import { rational } from "#domain/quantities/rational";
import { type PastApplication, type TicketLawn, type TicketTool } from "#domain/mixing/ticket-question";
import { houseSettingsOf } from "#application/companies/house-settings";
import { type CalibrationOnFile, calibrationsOnFile, type EquipmentOnFile, equipmentOnFile } from "#application/equipment/gear-on-file";
import { type LabelsRead, labelsOfProducts } from "#application/products/stored-label";
import { type LookOnFile, looksOfZones } from "#application/properties/lawn-looks";
import { seedingsOfZones } from "#application/properties/seedings-on-file";
import { calendarDayOf, calendarDayOrNone } from "#application/stored-day";
import { type StockForVisits, stockForVisits } from "#application/visits/stock-for-visits";
import { type Work } from "#application/use-case";
import { historyOfZones, productsOfRecords, type PutDownOnZone, putDownOnZones, recordsOfProperties, usesOfRecords } from "#application/register/zone-history";
import { type VisitRow } from "#application/visits/visit-rows";

/** A person's license, as far as a mix ticket asks. */
export interface LicenseOnFile {
  readonly licenseId: string;
  readonly personId: string;
  readonly kind: LicenseKind;
  readonly state: UsState;
  readonly number: string;
  readonly category: string;
  readonly issuedOn: CalendarDate | null;
  readonly expiresOn: CalendarDate;
}

/** A lawn with what its aftercare hangs on. */
export interface LawnFacts {
  /** Whether it blooms hangs on the day, which each visit has of its own. */
  readonly lawn: Omit<TicketLawn, "inBloom" | "bloomSeen">;
  /** What was seen on it, the latest look first. */
  readonly looks: readonly LookOnFile[];
  /** What was put down on it, as its aftercare asks, by every record. */
  readonly putDown: readonly PutDownOnZone[];
  readonly propertyId: string;
  readonly stations: readonly IrrigationStation[];
}

/** The lawns of some properties, and the labels that what was put down on them is read by. */
export interface LawnsWithPast {
  readonly lawnsByProperty: ReadonlyMap<string, readonly LawnFacts[]>;
  /** Of the products that were asked for and of those that were put down on the lawns before. */
  readonly labels: LabelsRead;
}

/** Everything on file that the mix tickets of some visits are computed from, read once for all of them. */
export interface TicketFacts extends LawnsWithPast, StockForVisits {
  readonly gear: readonly EquipmentOnFile[];
  readonly calibrations: readonly CalibrationOnFile[];
  readonly tools: readonly TicketTool[];
  readonly productOf: ReadonlyMap<string, { readonly name: string; readonly countedBy: "mass" | "volume" }>;
  readonly personOf: ReadonlyMap<string, string>;
  readonly licenses: readonly LicenseOnFile[];
  readonly settings: HouseSettings;
}

/** Rest between runs of a station where the soil can't take the water at once. Common practice, until a site is measured. */
const SOAK_MINUTES = 30;

/** Reads the facts for all of the visits with a fixed number of queries, whatever their number. */
export async function readTicketFacts(work: Work, visits: readonly VisitRow[]): Promise<TicketFacts> {
  const { companyId } = work.company;
  const productIds = [...new Set(visits.flatMap(({ treatments }) => treatments.map(({ productId }) => productId)))];
  const propertyIds = [...new Set(visits.map(({ property }) => property.propertyId))];
  const gear = await equipmentOnFile(work);
  const [products, people] = [
    await work.tx.product.findMany({ where: { companyId, productId: { in: productIds } } }),
    await work.tx.person.findMany({ where: { companyId } }),
  ];
  return {
    ...(await lawnsWithPast(work, propertyIds, productIds)),
    gear,
    calibrations: await calibrationsOnFile(work, gear),
    tools: await toolsOf(work),
    ...(await stockForVisits(work, visits.map(({ visitId }) => visitId), productIds)),
    productOf: new Map(products.map(({ productId, name, countedBy }) => [productId, { name, countedBy: countedBy as "mass" | "volume" }])),
    personOf: new Map(people.map(({ personId, name }) => [personId, name])),
    licenses: await licensesOnFile(work),
    settings: await houseSettingsOf(work),
  };
}

/**
 * Reads the lawns of some properties with what was put down on them, and the labels of those products; with a fixed number of
 * queries, whatever the number of properties.
 * @param productIds others whose labels are wanted, so that all of them are asked for once
 */
export async function lawnsWithPast(work: Work, propertyIds: readonly string[], productIds: readonly string[] = []): Promise<LawnsWithPast> {
  const records = await recordsOfProperties(work, propertyIds);
  const labels = await labelsOfProducts(work.tx, work.company.companyId, [...new Set([...productIds, ...productsOfRecords(records)])]);
  const uses = await usesOfRecords(work, records);
  const past = { historyOf: historyOfZones(work, records, labels, uses), putDownOn: putDownOnZones(records, labels, uses) };
  return { labels, lawnsByProperty: await lawnsOf(work, propertyIds, past) };
}

interface PastOfLawns {
  readonly historyOf: ReadonlyMap<string, readonly PastApplication[]>;
  readonly putDownOn: ReadonlyMap<string, readonly PutDownOnZone[]>;
}

async function lawnsOf(work: Work, propertyIds: readonly string[], { historyOf, putDownOn }: PastOfLawns): Promise<ReadonlyMap<string, readonly LawnFacts[]>> {
  const { companyId } = work.company;
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId: { in: [...propertyIds] }, removedAt: null }, orderBy: { letter: "asc" } });
  const zoneIds = zones.map(({ zoneId }) => zoneId);
  const edgesOf = groupedBy(await work.tx.waterEdge.findMany({ where: { companyId, zoneId: { in: zoneIds }, removedAt: null }, orderBy: { createdAt: "asc" } }), ({ zoneId }) => zoneId);
  const testsOf = groupedBy(await work.tx.soilTest.findMany({ where: { companyId, zoneId: { in: zoneIds } } }), ({ zoneId }) => zoneId);
  const stationsOf = await stationsByZone(work, propertyIds);
  const looksOf = await looksOfZones(work, zoneIds);
  const seedingsOf = await seedingsOfZones(work, zoneIds);
  const lawns = zones.map((zone): LawnFacts => ({
    propertyId: zone.propertyId,
    looks: looksOf.get(zone.zoneId) ?? [],
    putDown: putDownOn.get(zone.zoneId) ?? [],
    stations: stationsOf.get(zone.zoneId) ?? [],
    lawn: {
      zoneId: zone.zoneId,
      letter: zone.letter,
      name: zone.name,
      area: fromAmount("area", zone.area),
      areaOrigin: zone.areaOrigin as TicketLawn["areaOrigin"],
      grasses: zone.grasses.filter(isGrass),
      grassesAssumed: zone.grassesAssumed,
      waterBeside: zone.waterBeside as TicketLawn["waterBeside"],
      waterEdges: (edgesOf.get(zone.zoneId) ?? []).map(({ name, length, width }) => ({
        name,
        length: length === null ? "unknown" : fromAmount("length", length),
        width: width === null ? "unknown" : fromAmount("length", width),
      })),
      soilTests: (testsOf.get(zone.zoneId) ?? []).map(({ sampledOn, phosphorus }) => ({
        sampledOn: calendarDayOf(sampledOn),
        phosphorus: phosphorus as TicketLawn["soilTests"][number]["phosphorus"],
      })),
      seedings: (seedingsOf.get(zone.zoneId) ?? []).map(({ seeding }) => seeding),
      history: historyOf.get(zone.zoneId) ?? [],
    },
  }));
  return groupedBy(lawns, ({ propertyId }) => propertyId);
}

async function stationsByZone(work: Work, propertyIds: readonly string[]): Promise<ReadonlyMap<string, readonly IrrigationStation[]>> {
  const { companyId } = work.company;
  const rows = await work.tx.station.findMany({ where: { companyId, propertyId: { in: [...propertyIds] }, removedAt: null }, orderBy: { number: "asc" } });
  const links = await work.tx.stationZone.findMany({ where: { companyId, stationId: { in: rows.map(({ stationId }) => stationId) } } });
  const stationOf = new Map(
    rows.map((row): readonly [string, IrrigationStation] => [
      row.stationId,
      {
        stationName: `${String(row.number)} ${row.name}`,
        depthPerHour:
          row.testDepth === null || row.testMinutes === null ? "not-tested" : multiplyExact(fromAmount("length", row.testDepth), rational(60n, BigInt(row.testMinutes))),
        cycle: row.longestRunMinutes === null ? "none" : { longestRunMinutes: row.longestRunMinutes, soakMinutes: SOAK_MINUTES },
      },
    ]),
  );
  const ordered = rows.flatMap(({ stationId }) => links.filter((link) => link.stationId === stationId));
  const byZone = groupedBy(ordered, ({ zoneId }) => zoneId);
  return new Map([...byZone].map(([zoneId, own]) => [zoneId, own.flatMap(({ stationId }) => stationOf.get(stationId) ?? [])]));
}

async function toolsOf(work: Work): Promise<readonly TicketTool[]> {
  const rows = await work.tx.measuringTool.findMany({ where: { companyId: work.company.companyId, stoodDownAt: null }, orderBy: [{ createdAt: "asc" }, { measuringToolId: "asc" }] });
  return rows.flatMap(({ name, dimension, mark }): readonly TicketTool[] => {
    const parsed = parseQuantity(mark, { field: "mark", dimensions: [dimension as "mass" | "volume"] });
    return parsed.ok ? [{ name, mark: parsed.value.exact }] : [];
  });
}

/** The licenses on file that nobody took back, the one that runs longest first. */
export async function licensesOnFile(work: Work): Promise<readonly LicenseOnFile[]> {
  const rows = await work.tx.license.findMany({ where: { companyId: work.company.companyId, withdrawnAt: null }, orderBy: [{ expiresOn: "desc" }, { number: "asc" }] });
  return rows.map(({ licenseId, personId, kind, state, number, category, issuedOn, expiresOn }) => ({
    licenseId,
    personId,
    kind: kind as LicenseKind,
    state: state as UsState,
    number,
    category,
    issuedOn: calendarDayOrNone(issuedOn),
    expiresOn: calendarDayOf(expiresOn),
  }));
}
