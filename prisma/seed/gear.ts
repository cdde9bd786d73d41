/**
 * The demonstration's trucks, gear and measuring tools, with calibrations by several people: one has run out, and one is
 * of a tip that was changed since.
 */
import { type SessionKey } from "#adapters/postgres/company-work";
import { addEquipment } from "#application/equipment/add-equipment";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { addVehicle } from "#application/equipment/add-vehicle";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { listPeople } from "#application/people/list-people";
import { type House } from "#application/use-case";
import { NO_NOMINAL_SPRAYER } from "#domain/equipment/nominal-sprayer";
import { invariant } from "#domain/foundation/invariant";
import { must } from "./must";

export interface GearSeed {
  readonly key: SessionKey;
  readonly houseDaysAgo: (days: number) => House;
  readonly dayIn: (days: number) => string;
  /** Granular products, the first one mostly used; without any no spreader is calibrated. */
  readonly granularProductIds: readonly string[];
}

/** What was made, for whatever is planned with it. */
export interface GearOfDemonstration {
  readonly truckIds: readonly [string, string];
  readonly sprayerIds: readonly [string, string];
  readonly backpackId: string;
  readonly broadcastSpreaderId: string;
  readonly dropSpreaderId: string;
}

const DAYS_SINCE_THE_START = 405;
const BARE = { holdUp: "", hoseLength: "", hoseDiameter: "", pumpHolds: "", ...NO_NOMINAL_SPRAYER, tipDroplets: "" } as const;
/** The gun's tip as its maker states it, at a steady walk: what holds where somebody has not calibrated. */
const GUN = {
  tip: "Gun tip, 1.5 gal a minute", tipFlow: "1.5 gal", tipFlowPsi: "40", pressurePsi: "60", minutesPerThousand: "1",
  tipDroplets: "Gun tip, 1.5 gal a minute; 60 psi; very coarse\nGun tip, 3 gal a minute; 150 psi; coarse",
} as const;
/** The bags' own tables, for one of two passes. Not every product was tested with every spreader. */
const BAGS = {
  broadcast: "Fieldrow Starter 18-24-6; J; 1.4 lb per 1,000 sq ft\nLatefield 24-0-12; I; 1.5 lb per 1,000 sq ft",
  drop: "Wardlow 19-0-7 Preventer; 8; 1.5 lb per 1,000 sq ft\nFieldrow Starter 18-24-6; 7 1/2; 1.4 lb per 1,000 sq ft\nLatefield 24-0-12; 7; 1.5 lb per 1,000 sq ft",
} as const;

/** Writes the gear and its calibrations through the use cases, each at its own time. */
export async function makeGear(seed: GearSeed): Promise<GearOfDemonstration> {
  const { key, houseDaysAgo } = seed;
  const then = houseDaysAgo(DAYS_SINCE_THE_START);
  const truck = async (number: string, name: string, payload: string, staysAboard: string) => must(await addVehicle(then, key, { number, name, payload, staysAboard })).vehicleId;
  const gear = async (form: Parameters<typeof addEquipment>[2]) => must(await addEquipment(then, key, form)).equipmentId;
  const first = await truck("1", "White flatbed", "3,150 lb", "750 lb");
  const second = await truck("2", "Green van", "2,020 lb", "370 lb");
  const large = await gear({
    ...BARE, ...GUN, kind: "hose-and-gun", name: "100 gal tank with hose reel", vehicleId: first, swath: "8 ft", capacity: "100 gal",
    hoseLength: "300 ft", hoseDiameter: "1/2 in", pumpHolds: "0.4 gal",
  });
  const broadcast = await gear({ kind: "broadcast-spreader", name: "Push spreader, 80 lb", vehicleId: first, swath: "10 ft", capacity: "80 lb", deflector: "yes", bagSettings: BAGS.broadcast });
  const small = await gear({ ...BARE, ...GUN, kind: "hose-and-gun", name: "60 gal tank with hose reel", vehicleId: second, swath: "8 ft", capacity: "60 gal" });
  const backpack = await gear({
    ...BARE, tip: "Flat fan, gray", tipSize: "06", pressurePsi: "30", speedMph: "2.5", tipDroplets: "Flat fan, gray; 30 psi; coarse", kind: "backpack-sprayer", name: "Backpack, gray", vehicleId: second, swath: "3 ft", capacity: "4 gal", holdUp: "6 fl oz",
  });
  const drop = await gear({ kind: "drop-spreader", name: "Drop spreader, 36 in", vehicleId: second, swath: "3 ft", capacity: "50 lb", deflector: "nobody-looked", bagSettings: BAGS.drop });
  must(await addMeasuringTool(then, key, { name: "Half-ounce cup", mark: "0.5 fl oz" }));
  must(await addMeasuringTool(then, key, { name: "Hanging scale", mark: "0.25 lb" }));
  await calibrateSprayers(seed, { large, small, backpack });
  await calibrateSpreaders(seed, { broadcast, drop });
  return { truckIds: [first, second], sprayerIds: [large, small], backpackId: backpack, broadcastSpreaderId: broadcast, dropSpreaderId: drop };
}

/** Asks for a person of the crew by name. */
async function operators({ key, houseDaysAgo }: GearSeed): Promise<(name: string) => string> {
  const { people } = must(await listPeople(houseDaysAgo(0), key, {}));
  return (name) => {
    const person = people.find((one) => one.name === name);
    invariant(person !== undefined, `${name} is of the crew`);
    return person.personId;
  };
}

async function calibrateSprayers(seed: GearSeed, ids: { readonly large: string; readonly small: string; readonly backpack: string }): Promise<void> {
  const { key, houseDaysAgo, dayIn } = seed;
  const personId = await operators(seed);
  const gun = async (equipmentId: string, operator: string, daysAgo: number, measured: { tip: string; pressurePsi: string; caught: string; areaSeconds: string }) =>
    must(
      await calibrateSprayer(houseDaysAgo(daysAgo), key, {
        method: "timed-area", equipmentId, operatorId: personId(operator), madeOn: dayIn(-daysAgo - 1), caughtSeconds: "30", area: "1,000 sq ft", ...measured,
      }),
    );
  // The tip was changed from 3 to 1.5 gal a minute in between: Mina's calibration is of the old one.
  await gun(ids.large, "Mina Feld", 120, { tip: "Gun tip, 3 gal a minute", pressurePsi: "150", caught: "1.5 gal\n1.52 gal", areaSeconds: "66\n63\n65" });
  await gun(ids.large, "Ray Odum", 46, { tip: "Gun tip, 1.5 gal a minute", pressurePsi: "60", caught: "0.86 gal\n0.85 gal", areaSeconds: "58\n61\n59" });
  await gun(ids.large, "Lou Parrish", 45, { tip: "Gun tip, 1.5 gal a minute", pressurePsi: "60", caught: "0.85 gal\n0.86 gal", areaSeconds: "66\n70\n67" });
  await gun(ids.small, "Mina Feld", 44, { tip: "Gun tip, 1.5 gal a minute", pressurePsi: "60", caught: "0.8 gal\n0.82 gal", areaSeconds: "62\n64" });
  must(
    await calibrateSprayer(houseDaysAgo(382), key, {
      method: "timed-course", equipmentId: ids.backpack, operatorId: personId("Ray Odum"), madeOn: dayIn(-383), tip: "Flat fan, gray", pressurePsi: "30",
      caught: "20 fl oz\n20.5 fl oz", caughtSeconds: "30", tipSize: "06", swath: "3 ft", course: "100 ft", courseSeconds: "27\n26\n28",
    }),
  );
}

async function calibrateSpreaders(seed: GearSeed, ids: { readonly broadcast: string; readonly drop: string }): Promise<void> {
  const { key, houseDaysAgo, dayIn, granularProductIds } = seed;
  const [first, second = first] = granularProductIds;
  if (first === undefined || second === undefined) return;
  const personId = await operators(seed);
  const spreader = async (equipmentId: string, operator: string, daysAgo: number, measured: { productId: string; setting: string; collected: string; speedMph: string }) =>
    must(
      await calibrateSpreader(houseDaysAgo(daysAgo), key, {
        equipmentId, operatorId: personId(operator), madeOn: dayIn(-daysAgo - 1), area: "1,000 sq ft", ...measured,
      }),
    );
  // Two settings of one operator: what lies between them is read off the line between.
  await spreader(ids.broadcast, "Ray Odum", 47, { productId: first, setting: "F", collected: "0.9 lb\n0.92 lb", speedMph: "3" });
  await spreader(ids.broadcast, "Ray Odum", 46, { productId: first, setting: "H", collected: "1.28 lb\n1.25 lb", speedMph: "3" });
  await spreader(ids.broadcast, "Lou Parrish", 45, { productId: first, setting: "H", collected: "1.3 lb\n1.25 lb", speedMph: "2.8" });
  await spreader(ids.broadcast, "Ray Odum", 40, { productId: second, setting: "K", collected: "1.5 lb\n1.55 lb", speedMph: "3" });
  await spreader(ids.drop, "Mina Feld", 39, { productId: first, setting: "7", collected: "1.25 lb", speedMph: "2.5" });
}
