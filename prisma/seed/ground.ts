import { type SessionKey } from "#adapters/postgres/company-work";
import { addSeeding } from "#application/properties/add-seeding";
import { addSoilTest } from "#application/properties/add-soil-test";
import { addStation } from "#application/properties/add-station";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { addZone } from "#application/properties/add-zone";
import { changeProperty } from "#application/properties/change-property";
import { importCustomers } from "#application/properties/import-customers";
import { listProperties, type PropertyInList } from "#application/properties/list-properties";
import { measureZone } from "#application/properties/measure-zone";
import { readCustomerList } from "#application/properties/read-customer-list";
import { readProperty } from "#application/properties/read-property";
import { sayNoWater } from "#application/properties/say-no-water";
import { type House } from "#application/use-case";
import { NO_FIXED_DAY } from "#domain/properties/mowing-day";
import { cellsOf } from "#domain/properties/customer-columns";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { customerListText, MEASURED_ROWS, POND_ROW } from "./customer-list";
import { must } from "./must";

/** What the making of the ground needs: who does it, and the days that count from the day of making. */
export interface GroundMaking {
  readonly key: SessionKey;
  readonly houseDaysAgo: (days: number) => House;
  readonly dayIn: (days: number) => string;
}

const IMPORTED_DAYS_AGO = 395;
const MEASURED_DAYS_AGO = 380;
/** Far enough ahead for every label of the shed whose product the season puts down. */
const PLANNED_SEED_IN_DAYS = 100;

type Piece = Extract<Parameters<typeof addZone>[2]["measure"], { kind: "piece" }>["piece"];

/** Lawns as a wheel and a tape give them; each is used for several properties, a little larger each time. */
const FRONTS: readonly ((more: number) => Piece)[] = [
  (more) => ({ use: "lawn", shape: "rectangle", length: `${String(52 + more)} ft`, width: "38 ft" }),
  (more) => ({ use: "lawn", shape: "trapezoid", side: `${String(60 + more)} ft`, otherSide: "48 ft", height: "34 ft 6 in" }),
  (more) => ({ use: "lawn", shape: "offsets", step: "10 ft", widths: `30, 33, ${String(36 + more)}, 35, 31, 28`, ends: "widths", line: "edge" }),
  (more) => ({ use: "lawn", shape: "corners", corners: `0, 0\n${String(64 + more)}, 0\n58, 36\n20, 42\n0, 40` }),
];
const BED: Piece = { use: "cut-out", shape: "rectangle", name: "bed", length: "14 ft", width: "7 ft", x: "8", y: "6" };

async function importList({ key, houseDaysAgo }: GroundMaking): Promise<void> {
  const then = houseDaysAgo(IMPORTED_DAYS_AGO);
  const { lines, places, listId } = must(await readCustomerList(then, key, { text: customerListText() }));
  const rows = lines.map(({ number, cells }) => ({ number, cells: cellsOf(cells, places), sizeMeaning: "" as const }));
  must(await importCustomers(then, key, { listId, rows }));
}

/** A place within about two miles of the middle of the ZIP code, another one for each property and the same each time. */
function positionNear(latitude: number, longitude: number, index: number): string {
  const [angle, far] = [index * 2.399963, 0.004 + ((index * 37) % 23) / 1000];
  return `${(latitude + far * Math.sin(angle)).toFixed(5)}, ${(longitude + 1.3 * far * Math.cos(angle)).toFixed(5)}`;
}

/** What the crew has said of water for the tank: at most properties nobody has. */
const WATER_AT = ["", "yes", "", "no", ""] as const;

type Watering = Pick<Parameters<typeof changeProperty>[2], "townRule" | "controller">;

const NOT_ON_FILE = { from: "", until: "", by: "weekdays", on: {} } as const;
const MORNINGS = { from: "04:00", until: "09:00" } as const;
const NOT_BY_DAY = { from: "19:00", until: "10:00", pastMidnight: "same-day" } as const;

/**
 * What was said of watering: at the pond the town has no rule and the controller runs three mornings; the town of the third
 * property lets its people water by their house numbers, early and late on those dates, and there is no controller; of the
 * fourth only the rule's days were told. Of most nobody has asked.
 */
function wateringAt(index: number, isPond: boolean): Watering {
  if (isPond) return { townRule: { ...NOT_ON_FILE, isNone: "yes" }, controller: { ...MORNINGS, by: "weekdays", on: { "1": "yes", "3": "yes", "5": "yes" } } };
  if (index === 2) return { townRule: { ...NOT_BY_DAY, by: "house-number", on: {} }, controller: { ...NOT_ON_FILE, isNone: "yes" } };
  if (index === 3) return { townRule: { ...NOT_ON_FILE, on: { "2": "yes", "6": "yes" } }, controller: NOT_ON_FILE };
  return { townRule: NOT_ON_FILE, controller: NOT_ON_FILE };
}

/** Gives a property a position of its own, and what was said of access and mowing since the list was brought. */
async function settleProperty({ key, houseDaysAgo }: GroundMaking, propertyId: string, index: number): Promise<void> {
  const then = houseDaysAgo(MEASURED_DAYS_AGO);
  const { property } = must(await readProperty(then, key, { propertyId }));
  const { version, street, city, state, zip, position, narrowestGate, lotArea } = property;
  const isPond = street === "7 Heron Court";
  must(
    await changeProperty(then, key, {
      ...{ propertyId, version, street, city, state: state as "IN" | "IL", zip },
      position: position === null ? "" : positionNear(position.latitude, position.longitude, index),
      accessNote: isPond ? "Park on the street; the drive is gravel" : (property.accessNote ?? ""),
      gateCode: isPond ? "4471" : (property.gateCode ?? ""),
      narrowestGate: isPond ? "48 in" : narrowestGate === null ? "" : formatQuantityIn(narrowestGate, "in", 2),
      dogNote: isPond ? "Juno: shut the gate behind you" : (property.dogNote ?? ""),
      tankWater: WATER_AT[index % WATER_AT.length] ?? "",
      mowingDay: index === 4 ? NO_FIXED_DAY : property.mowingDay === null ? "" : String(property.mowingDay),
      mowedBy: index % 4 === 0 ? "customer" : index % 4 === 1 ? "another-crew" : "us",
      lotArea: lotArea === null ? "" : formatQuantityIn(lotArea, "sq ft", 2),
      ...wateringAt(index, isPond),
      note: property.note ?? "",
    }),
  );
}

const GRASSES = ["Kentucky bluegrass", "tall fescue", "Kentucky bluegrass", "perennial ryegrass"] as const;

async function measureFront({ key, houseDaysAgo }: GroundMaking, propertyId: string, index: number): Promise<void> {
  const then = houseDaysAgo(MEASURED_DAYS_AGO - index);
  const front = FRONTS[index % FRONTS.length];
  if (front === undefined) throw new Error("there is a lawn for each property");
  const { zoneId } = must(
    await addZone(then, key, {
      ...{ propertyId, name: "Front", grass: GRASSES[index % GRASSES.length] ?? "tall fescue", secondGrass: index % 3 === 0 ? "perennial ryegrass" : "", thirdGrass: "" },
      ...{ grassesKnown: index % 5 === 4 ? "assumed" : "looked", waterBeside: "none" },
      measure: { kind: "piece", piece: front(2 * index) },
    }),
  );
  if (index % 2 === 0) must(await measureZone(then, key, { zoneId, version: 1, change: { kind: "put-piece", at: "new", piece: BED } }));
  if (index % 3 !== 1) return;
  must(
    await addZone(then, key, {
      ...{ propertyId, name: "Back", grass: "Kentucky bluegrass", secondGrass: "", thirdGrass: "", grassesKnown: "looked", waterBeside: "none" },
      measure: { kind: "piece", piece: { use: "lawn", shape: "rectangle", length: `${String(70 + index)} ft`, width: "44 ft", x: "0", y: "84" } },
    }),
  );
}

const POND_FRONT: Piece = { use: "lawn", shape: "rectangle", length: "62 ft", width: "48 ft" };
const ROSES: Piece = { use: "cut-out", shape: "rectangle", name: "roses", length: "18 ft", width: "9 ft", x: "38", y: "6" };
const POND_BACK: Piece = {
  use: "lawn", shape: "offsets", step: "10 ft", widths: "38, 42, 45, 47, 46, 43, 40, 36, 31", ends: "widths", line: "edge", x: "-6", y: "88",
};
const POND: Piece = {
  use: "water", shape: "corners", name: "pond", corners: "2, 142\n20, 138\n45, 138\n68, 134\n84, 146\n78, 168\n40, 176\n8, 166",
};

/** Says of the lawns of the list that there is no water beside them: the crew looked on its first visit. */
async function lookForWater({ key, houseDaysAgo }: GroundMaking, propertyId: string): Promise<void> {
  const then = houseDaysAgo(MEASURED_DAYS_AGO);
  const { property } = must(await readProperty(then, key, { propertyId }));
  if (property.lawns.some(({ waterBeside }) => waterBeside === "not-known")) must(await sayNoWater(then, key, { propertyId }));
}

/** The property at the pond: two lawns, the back one measured by widths along the house, and two tested stations. */
async function makePondProperty({ key, houseDaysAgo, dayIn }: GroundMaking, propertyId: string): Promise<void> {
  const then = houseDaysAgo(MEASURED_DAYS_AGO);
  const grass = { grass: "Kentucky bluegrass", secondGrass: "perennial ryegrass", thirdGrass: "", grassesKnown: "looked", waterBeside: "none" } as const;
  const front = must(await addZone(then, key, { propertyId, name: "Front", ...grass, measure: { kind: "piece", piece: POND_FRONT } }));
  must(await measureZone(then, key, { zoneId: front.zoneId, version: 1, change: { kind: "put-piece", at: "new", piece: ROSES } }));
  const back = must(await addZone(then, key, { propertyId, name: "Back, to the pond", ...grass, measure: { kind: "piece", piece: POND_BACK } }));
  must(await measureZone(then, key, { zoneId: back.zoneId, version: 1, change: { kind: "put-piece", at: "new", piece: POND } }));
  must(await addWaterEdge(then, key, { zoneId: back.zoneId, name: "Pond", length: "70 ft", width: "15 ft" }));
  must(
    await addSoilTest(houseDaysAgo(360), key, {
      zoneId: front.zoneId, sampledOn: dayIn(-372), laboratory: "Prairie Soil Laboratory", phosphorusWord: "Very low, 9 ppm", phosphorus: "deficient",
    }),
  );
  must(await addSeeding(houseDaysAgo(300), key, { zoneId: front.zoneId, date: dayIn(-301), kind: "overseeding", method: "slit", standing: "done" }));
  must(await addSeeding(houseDaysAgo(20), key, { zoneId: front.zoneId, date: dayIn(PLANNED_SEED_IN_DAYS), kind: "overseeding", method: "broadcast", standing: "planned" }));
  const station = { propertyId, testedOn: dayIn(-MEASURED_DAYS_AGO), longestRun: "" };
  must(
    await addStation(then, key, {
      ...{ ...station, number: "1", name: "Front spray heads", waters: { [front.zoneId]: "yes" }, depths: "0.34, 0.41, 0.38, 0.36, 0.45, 0.40", minutes: "15", wind: "3", longestRun: "12" },
    }),
  );
  must(
    await addStation(then, key, {
      ...{ ...station, number: "2", name: "Back rotors", waters: { [back.zoneId]: "yes" }, depths: "0.18, 0.24, 0.21, 0.20, 0.26, 0.19", minutes: "30", wind: "2" },
    }),
  );
}

/** The properties in the order of the list, whose numbers the streets begin with. */
function inListOrder(properties: readonly PropertyInList[]): readonly PropertyInList[] {
  const texts = customerListText().split("\r\n").slice(1);
  const placeOf = ({ street }: PropertyInList) => texts.findIndex((text) => text.includes(`,${street},`));
  return [...properties].sort((one, other) => placeOf(one) - placeOf(other));
}

/** Makes the demonstration's customers by their list, then measures some of their lawns as a crew would. */
export async function makeGround(making: GroundMaking): Promise<void> {
  await importList(making);
  const { properties } = must(await listProperties(making.houseDaysAgo(IMPORTED_DAYS_AGO), making.key, {}));
  for (const [index, { propertyId }] of inListOrder(properties).entries()) {
    await settleProperty(making, propertyId, index);
    if (index === POND_ROW) await makePondProperty(making, propertyId);
    else if (index < MEASURED_ROWS) await measureFront(making, propertyId, index);
    else await lookForWater(making, propertyId);
  }
}
