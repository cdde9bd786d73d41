import { z } from "zod";
import { evennessOf, type StationEvenness, type StationTest } from "#domain/equipment/station-test";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { accept } from "#domain/foundation/outcome";
import { type ClientStanding, type Mower } from "#domain/properties/client-standing";
import { type MowingDay, mowingDayOf } from "#domain/properties/mowing-day";
import { type TypedPiece } from "#domain/properties/lawn-pieces";
import { type PhosphorusFinding } from "#domain/properties/soil-test";
import { type TankWater, tankWaterOf } from "#domain/properties/tank-water";
import { type WateringOfProperty } from "#domain/properties/watering-fact";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type WaterBeside } from "#domain/rules/kept-clear";
import { isGrass, type Grass } from "#domain/turf/grass";
import { idField } from "#application/field.schema";
import { type LookOnFile, looksOfZones } from "#application/properties/lawn-looks";
import { type SeedingOnFile, seedingsOfZones } from "#application/properties/seedings-on-file";
import { wateringOf } from "#application/properties/watering-on-file";
import { notFound } from "#application/refusal";
import { calendarDayOf, calendarDayOrNone } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

type Length = Quantity<"length">;
type Area = Quantity<"area">;

/** Water beside a lawn, as far as anybody measured it. */
export interface WaterEdgeOnFile {
  readonly waterEdgeId: string;
  readonly name: string;
  readonly length: Length | null;
  readonly width: Length | null;
}

export interface SoilTestOnFile {
  readonly soilTestId: string;
  readonly sampledOn: CalendarDate;
  readonly laboratory: string;
  readonly phosphorusWord: string;
  readonly phosphorus: PhosphorusFinding;
}

/** A lawn that is on the plan. */
export interface LawnOnFile {
  readonly zoneId: string;
  readonly version: number;
  readonly letter: string;
  readonly name: string;
  readonly grasses: readonly Grass[];
  readonly grassesAssumed: boolean;
  /** As they were typed; empty where only an area is on file. */
  readonly pieces: readonly TypedPiece[];
  readonly area: Area;
  readonly areaOrigin: "measured" | "entered" | "imported";
  readonly measuredOn: CalendarDate | null;
  /** Whether there is water beside it, as somebody said. */
  readonly waterBeside: WaterBeside;
  readonly waterEdges: readonly WaterEdgeOnFile[];
  /** The newest first. */
  readonly soilTests: readonly SoilTestOnFile[];
  /** What was seen on it, the latest look first. */
  readonly looks: readonly LookOnFile[];
  /** Seed and sod, done and planned, the latest day first. */
  readonly seedings: readonly SeedingOnFile[];
}

/** An irrigation station. Without a test it has no rate. */
export interface StationOnFile {
  readonly stationId: string;
  readonly version: number;
  readonly number: number;
  readonly name: string;
  readonly test: (StationTest & { readonly testedOn: CalendarDate }) | null;
  /** How evenly it waters and what is to be said of its test; null without a test. */
  readonly evenness: StationEvenness | null;
  readonly longestRunMinutes: number | null;
  readonly zoneIds: readonly string[];
}

/** A property with everything that is on file of its ground and its customer. */
export interface PropertyOnFile extends WateringOfProperty {
  readonly propertyId: string;
  readonly version: number;
  readonly street: string;
  readonly city: string;
  readonly state: string;
  readonly zip: string;
  readonly position: { readonly latitude: number; readonly longitude: number; readonly origin: "zip-centroid" | "entered" } | null;
  readonly accessNote: string | null;
  readonly gateCode: string | null;
  readonly narrowestGate: Length | null;
  readonly dogNote: string | null;
  /** Whether a tank can be filled there. */
  readonly tankWater: TankWater;
  /** Null where nobody has said. */
  readonly mowingDay: MowingDay | null;
  readonly mowedBy: Mower | null;
  readonly lotArea: Area | null;
  readonly note: string | null;
  readonly client: {
    readonly clientId: string;
    readonly version: number;
    readonly name: string;
    readonly phone: string | null;
    readonly email: string | null;
    readonly standing: ClientStanding;
    readonly otherProperties: readonly { readonly propertyId: string; readonly street: string; readonly city: string }[];
  };
  readonly lawns: readonly LawnOnFile[];
  readonly stations: readonly StationOnFile[];
}

function lengthOrNone(amount: bigint | null): Length | null {
  return amount === null ? null : fromAmount("length", amount);
}

async function readLawns(work: Work, propertyId: string): Promise<readonly LawnOnFile[]> {
  const { companyId } = work.company;
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId, removedAt: null }, orderBy: { letter: "asc" } });
  const ofZones = { companyId, zoneId: { in: zones.map(({ zoneId }) => zoneId) } };
  const edges = await work.tx.waterEdge.findMany({ where: { ...ofZones, removedAt: null }, orderBy: [{ createdAt: "asc" }, { waterEdgeId: "asc" }] });
  const tests = await work.tx.soilTest.findMany({ where: ofZones, orderBy: [{ sampledOn: "desc" }, { createdAt: "desc" }, { soilTestId: "asc" }] });
  const edgesOf = groupedBy(edges, ({ zoneId }) => zoneId);
  const testsOf = groupedBy(tests, ({ zoneId }) => zoneId);
  const looksOf = await looksOfZones(work, ofZones.zoneId.in);
  const seedingsOf = await seedingsOfZones(work, ofZones.zoneId.in);
  return zones.map((zone) => ({
    zoneId: zone.zoneId,
    version: zone.version,
    letter: zone.letter,
    name: zone.name,
    grasses: zone.grasses.filter(isGrass),
    grassesAssumed: zone.grassesAssumed,
    pieces: zone.pieces as unknown as readonly TypedPiece[],
    area: fromAmount("area", zone.area),
    areaOrigin: zone.areaOrigin as LawnOnFile["areaOrigin"],
    measuredOn: calendarDayOrNone(zone.measuredOn),
    waterBeside: zone.waterBeside as WaterBeside,
    waterEdges: (edgesOf.get(zone.zoneId) ?? []).map(({ waterEdgeId, name, length, width }) => ({
      waterEdgeId, name, length: lengthOrNone(length), width: lengthOrNone(width),
    })),
    soilTests: (testsOf.get(zone.zoneId) ?? []).map(({ soilTestId, sampledOn, laboratory, phosphorusWord, phosphorus }) => ({
      soilTestId, sampledOn: calendarDayOf(sampledOn), laboratory, phosphorusWord, phosphorus: phosphorus as PhosphorusFinding,
    })),
    looks: looksOf.get(zone.zoneId) ?? [],
    seedings: seedingsOf.get(zone.zoneId) ?? [],
  }));
}

async function readStations(work: Work, propertyId: string): Promise<readonly StationOnFile[]> {
  const { companyId } = work.company;
  const stations = await work.tx.station.findMany({ where: { companyId, propertyId, removedAt: null }, orderBy: { number: "asc" } });
  const links = await work.tx.stationZone.findMany({ where: { companyId, stationId: { in: stations.map(({ stationId }) => stationId) } } });
  const linksOf = groupedBy(links, ({ stationId }) => stationId);
  return stations.map((row) => {
    const { stationId, version, number, name, longestRunMinutes } = row;
    const test = testOf(row);
    return {
      ...{ stationId, version, number, name, longestRunMinutes, test },
      evenness: test === null ? null : evennessOf(`station ${String(number)} ${name}`, test),
      zoneIds: (linksOf.get(stationId) ?? []).map(({ zoneId }) => zoneId),
    };
  });
}

type StationRow = Awaited<ReturnType<Work["tx"]["station"]["findMany"]>>[number];

function testOf({ testDepth, testMinutes, testedOn, testCans, testWindMph }: StationRow): StationOnFile["test"] {
  if (testDepth === null || testMinutes === null || testedOn === null) return null;
  return {
    cans: testCans.map((amount) => fromAmount("length", amount)),
    averageDepth: fromAmount("length", testDepth),
    minutes: testMinutes,
    windMph: testWindMph ?? "not-taken",
    testedOn: calendarDayOf(testedOn),
  };
}

/** One property with its customer, its lawns, their water and soil tests, and its irrigation stations. */
export const readProperty = useCase("properties/read-property", z.object({ propertyId: idField }), async (work, { propertyId }) => {
  const { companyId } = work.company;
  const row = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } } });
  if (row === null) return notFound("property");
  const client = await work.tx.client.findUniqueOrThrow({ where: { companyId_clientId: { companyId, clientId: row.clientId } } });
  const others = await work.tx.property.findMany({
    where: { companyId, clientId: row.clientId, propertyId: { not: propertyId } },
    select: { propertyId: true, street: true, city: true },
    orderBy: [{ street: "asc" }, { propertyId: "asc" }],
  });
  const { version, street, city, state, zip, accessNote, gateCode, dogNote, note } = row;
  const property: PropertyOnFile = {
    ...{ propertyId, version, street, city, state, zip, accessNote, gateCode, dogNote, note },
    position:
      row.latitude === null || row.longitude === null
        ? null
        : { latitude: row.latitude, longitude: row.longitude, origin: row.positionOrigin === "entered" ? "entered" : "zip-centroid" },
    narrowestGate: lengthOrNone(row.narrowestGate),
    mowingDay: mowingDayOf(row),
    mowedBy: row.mowedBy as Mower | null,
    tankWater: tankWaterOf(row.tankWater),
    lotArea: row.lotArea === null ? null : fromAmount("area", row.lotArea),
    ...wateringOf(row),
    client: {
      clientId: client.clientId, version: client.version, name: client.name, phone: client.phone, email: client.email,
      standing: client.standing as ClientStanding, otherProperties: others,
    },
    lawns: await readLawns(work, propertyId),
    stations: await readStations(work, propertyId),
  };
  return accept({ property });
});
