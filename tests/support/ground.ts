// Builders: customers, properties, lawns, water and stations as the use cases themselves make them.
import { addClient } from "#application/properties/add-client";
import { addSeeding } from "#application/properties/add-seeding";
import { addStation } from "#application/properties/add-station";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { addZone } from "#application/properties/add-zone";
import { CUSTOMER_COLUMN_IDS, type CustomerCells } from "#domain/properties/customer-columns";
import { of } from "#domain/quantities/quantity";
import { type TestCompany, valueOf } from "./crew";
import { type TestHouse } from "./house";

let houseNumbers = 0;

/** A house number that no other form of this file has. */
function nextStreet(): string {
  return `${String((houseNumbers += 1))} Sorrel Lane`;
}

/** The form of a new customer with a property, filled in; each street is used once. */
export function clientForm() {
  return { name: "Avery Thorn", phone: "219-555-0121", email: "", street: nextStreet(), city: "Millbrook", state: "IN", zip: "46304" } as const;
}

/** A customer with a property. */
export async function aClient(house: TestHouse, company: TestCompany) {
  return valueOf(await addClient(house, company.owner.key, clientForm()));
}

/** The form of a property, filled in, as it is when nobody has changed it yet. */
export function propertyForm(propertyId: string) {
  return {
    propertyId, version: 1, street: nextStreet(), city: "Millbrook", state: "IL", zip: "60401", position: "",
    accessNote: "Side gate", gateCode: "4471", narrowestGate: "36", dogNote: "Biscuit, friendly", tankWater: "yes", mowingDay: "2", mowedBy: "customer",
    lotArea: "1/4 acre", note: "Two lines\nof a note",
    townRule: { from: "04:00", until: "09:30", by: "weekdays", on: { "1": "yes", "3": "yes" } }, controller: { isNone: "yes", from: "", until: "", by: "weekdays", on: {} },
  } as const;
}

/** The form of a lawn, filled in but for its measure. */
export function zoneForm() {
  return { name: "Front", grass: "Kentucky bluegrass", secondGrass: "perennial ryegrass", thirdGrass: "", grassesKnown: "looked", waterBeside: "none" } as const;
}

/** Forty by sixty feet of lawn: 2,400 sq ft. */
export const RECTANGLE = { use: "lawn", shape: "rectangle", length: "40 ft", width: "60 ft" } as const;

/** A lawn of forty by sixty feet on a property of its own. */
export async function aZone(house: TestHouse, company: TestCompany, change: Partial<Parameters<typeof addZone>[2]> = {}) {
  const { propertyId } = await aClient(house, company);
  return valueOf(await addZone(house, company.owner.key, { propertyId, ...zoneForm(), measure: { kind: "piece", piece: RECTANGLE }, ...change }));
}

/** The form of a soil test, filled in. */
export function soilTestForm(zoneId: string) {
  return { zoneId, sampledOn: "2026-03-20", laboratory: "Prairie Soil Lab", phosphorusWord: "Very low", phosphorus: "deficient" } as const;
}

/** The form of an overseeding, filled in. */
export function seedingForm() {
  return { date: "2026-04-03", kind: "overseeding", method: "slit", standing: "done" } as const;
}

/** An overseeding of a lawn of its own. */
export async function aSeeding(house: TestHouse, company: TestCompany) {
  const { zoneId, propertyId } = await aZone(house, company);
  const { seedingId } = valueOf(await addSeeding(house, company.owner.key, { zoneId, ...seedingForm() }));
  return { seedingId, zoneId, propertyId };
}

/** The form of a station, filled in: 0.24 in in 20 minutes. */
export function stationForm() {
  return { number: "1", name: "Front spray heads", waters: {}, depths: "0.2, 0.24, 0.28, 0.24", minutes: "20", wind: "3", testedOn: "2026-04-02", longestRun: "" } as const;
}

/** What each can of the station form's test caught, as the database keeps it. */
export const CANS = ["0.2", "0.24", "0.28", "0.24"].map((inches) => String(of("in", inches).amount));

/** The fields of the station form where no test is entered. */
export const NO_STATION_TEST = { depths: "", minutes: "", wind: "", testedOn: "" } as const;

/** A tested station on a property of its own. */
export async function aStation(house: TestHouse, company: TestCompany) {
  const { propertyId } = await aClient(house, company);
  return valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm() }));
}

/** Water at a lawn of its own. */
export async function aWaterEdge(house: TestHouse, company: TestCompany): Promise<string> {
  const { zoneId } = await aZone(house, company);
  return valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Pond", length: "60 ft", width: "15 ft" })).waterEdgeId;
}

/** The cells of a line of a customer list, all empty but for those given. */
export function cells(given: Partial<CustomerCells> = {}): CustomerCells {
  return { ...(Object.fromEntries(CUSTOMER_COLUMN_IDS.map((column) => [column, ""])) as CustomerCells), ...given };
}

/** A line of a customer list that is accepted; each street is used once. */
export function aRow(number = 2, given: Partial<CustomerCells> = {}) {
  const whole = { customer: "Noor Tansley", phone: "219-555-0131", street: nextStreet(), city: "Millbrook", state: "IN", zip: "46304" };
  return { number, sizeMeaning: "" as const, cells: cells({ ...whole, ...given }) };
}
