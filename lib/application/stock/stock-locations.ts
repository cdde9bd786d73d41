import { lockCompany } from "#adapters/postgres/company-work";
import { type LocationKind } from "#domain/stock/posting";
import { type Work } from "#application/use-case";

/** What finding or making a location needs. */
export type LocationWork = Pick<Work, "tx" | "company" | "now" | "newId">;

/** Where stock comes from or goes without being on hand; each company has one of each. */
export type BeyondTheHouse = Exclude<LocationKind, "shop" | "truck" | "tank">;

const NAMES: Readonly<Record<BeyondTheHouse | "shop", string>> = {
  shop: "Shop",
  supplier: "Supplier",
  lawn: "Lawn",
  rinsate: "Rinsate",
  loss: "Loss",
  "count-difference": "Count difference",
};

interface Wanted {
  readonly kind: LocationKind;
  readonly vehicleId?: string;
  readonly equipmentId?: string;
}

async function findLocation({ tx, company }: LocationWork, wanted: Wanted): Promise<string | undefined> {
  const row = await tx.stockLocation.findFirst({ where: { companyId: company.companyId, ...wanted }, orderBy: [{ createdAt: "asc" }, { stockLocationId: "asc" }] });
  return row?.stockLocationId;
}

async function findOrMake(work: LocationWork, wanted: Wanted, name: string): Promise<string> {
  const there = await findLocation(work, wanted);
  if (there !== undefined) return there;
  // Two at once would make two; the second one waits here and then finds the first's.
  await lockCompany(work.tx);
  const made = await findLocation(work, wanted);
  if (made !== undefined) return made;
  const stockLocationId = work.newId();
  await work.tx.stockLocation.create({ data: { companyId: work.company.companyId, stockLocationId, name, ...wanted, createdAt: work.now } });
  return stockLocationId;
}

/** The one location of a kind, made at its first use: the shop, the supplier, the lawn, rinsate, loss, count difference. */
export async function singularLocation(work: LocationWork, kind: BeyondTheHouse | "shop"): Promise<string> {
  return findOrMake(work, { kind }, NAMES[kind]);
}

/** The location of what a truck carries, made at its first use; undefined when the company has no such vehicle. */
export async function locationOfVehicle(work: LocationWork, vehicleId: string): Promise<string | undefined> {
  const { companyId } = work.company;
  const vehicle = await work.tx.vehicle.findUnique({ where: { companyId_vehicleId: { companyId, vehicleId } } });
  return vehicle === null ? undefined : findOrMake(work, { kind: "truck", vehicleId }, vehicle.name);
}

/** The location of what a tank or hopper holds, made at its first use; undefined when the company has no such equipment. */
export async function locationOfTank(work: LocationWork, equipmentId: string): Promise<string | undefined> {
  const { companyId } = work.company;
  const equipment = await work.tx.equipment.findUnique({ where: { companyId_equipmentId: { companyId, equipmentId } } });
  return equipment === null ? undefined : findOrMake(work, { kind: "tank", equipmentId }, equipment.name);
}

/** Where stock is kept, as forms name it before the location itself may have been made. */
export type StockPlace =
  | { readonly kind: "shop" }
  | { readonly kind: "vehicle"; readonly vehicleId: string }
  | { readonly kind: "equipment"; readonly equipmentId: string };

/** The location of a place, made at its first use; undefined when the company has no such vehicle or equipment. */
export async function locationOfPlace(work: LocationWork, place: StockPlace): Promise<string | undefined> {
  switch (place.kind) {
    case "shop":
      return singularLocation(work, "shop");
    case "vehicle":
      return locationOfVehicle(work, place.vehicleId);
    case "equipment":
      return locationOfTank(work, place.equipmentId);
  }
}
