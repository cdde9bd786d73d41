// Builders: visits planned straight into the tables, trucks' days as the use cases themselves make them.
import { asGuest } from "#adapters/postgres/company-work";
import { addRouteDay } from "#application/days/add-route-day";
import { placeVisit } from "#application/days/place-visit";
import { setShopPosition } from "#application/days/set-shop-position";
import { addEquipment } from "#application/equipment/add-equipment";
import { rateOf } from "#domain/quantities/rate";
import { addZone } from "#application/properties/add-zone";
import { type TestCompany, valueOf } from "./crew";
import { aVehicle, spreaderForm } from "./gear";
import { aClient, RECTANGLE, zoneForm } from "./ground";
import { type TestHouse } from "./house";
import { aFeedText } from "./label-texts";
import { aConfirmedLabel, aDelivery, aFeed } from "./shed";

/** The day of every test house. */
export const DAY = "2026-04-14";

/** Where the shop of a test is. */
export const SHOP = { latitude: "41.54", longitude: "-87.06" } as const;

export interface VisitMore {
  /** Degrees of longitude east of the shop's; null: the property has no position. */
  readonly east?: number | null;
  readonly window?: { readonly fromMinute: number; readonly untilMinute: number };
  readonly serviceMinutes?: number;
  readonly state?: "planned" | "done" | "part-done" | "not-done";
  readonly opensOn?: string;
  readonly closesOn?: string;
  /** What is put down; none: a look without a product. */
  readonly productId?: string;
  readonly labelUse?: string;
}

/** A visit at a property of its own with one lawn of 2,400 sq ft. */
export async function aVisit(house: TestHouse, company: TestCompany, more: VisitMore = {}) {
  const { companyId } = company;
  const { east = 0.01, window, serviceMinutes = 30, state = "planned", opensOn = "2026-04-10", closesOn = "2026-04-24", productId, labelUse = "Established lawns" } = more;
  const { propertyId } = await aClient(house, company);
  const { zoneId } = valueOf(await addZone(house, company.owner.key, { propertyId, ...zoneForm(), measure: { kind: "piece", piece: RECTANGLE } }));
  const place = east === null ? [null, null] : [Number(SHOP.latitude), Number(SHOP.longitude) + east];
  await house.ask("update property set latitude = $2, longitude = $3, position_origin = $4 where property_id = $1", [propertyId, ...place, east === null ? null : "entered"]);
  const visitId = house.newId();
  const day = (date: string) => new Date(`${date}T00:00:00Z`);
  const rate = rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft");
  await asGuest(house.client, companyId, async (tx) => {
    await tx.visit.create({
      data: {
        companyId, visitId, propertyId, name: "Spring feed", opensOn: day(opensOn), closesOn: day(closesOn), state, serviceMinutes, createdAt: house.now(),
        windowFromMinute: window?.fromMinute ?? null, windowUntilMinute: window?.untilMinute ?? null,
      },
    });
    const treatment = { productId: productId ?? null, labelUse, rateBasis: rate.basis, rateAmount: rate.amount, ratePer: rate.per, rateText: "2.5 lb per 1,000 sq ft" };
    await tx.visitTask.create({
      data: { companyId, visitId, line: 1, reason: "spring feed", ...(productId === undefined ? { kind: "look" } : { kind: "treatment", ...treatment }) },
    });
    await tx.visitTaskZone.create({ data: { companyId, visitId, line: 1, zoneId } });
  });
  return { visitId, propertyId, zoneId };
}

/** A feed with its label confirmed and twelve bags in the shop. */
export async function aFeedOnHand(house: TestHouse, company: TestCompany, grade = "32-0-0"): Promise<string> {
  const productId = await aFeed(house, company);
  await aConfirmedLabel(house, company, productId, aFeedText({ grade, nitrogenRelease: "slow 5 % of product" }));
  await aDelivery(house, company, productId);
  return productId;
}

/** The form of a truck's day, filled in, with a truck of its own. */
export async function routeDayForm(house: TestHouse, company: TestCompany, date: string = DAY) {
  return { date, vehicleId: await aVehicle(house, company), operatorId: company.owner.personId, startsAt: "08:00", endsAt: "16:30" } as const;
}

/** A truck that goes out that day. */
export async function aRouteDay(house: TestHouse, company: TestCompany, date: string = DAY): Promise<string> {
  return valueOf(await addRouteDay(house, company.owner.key, await routeDayForm(house, company, date))).routeDayId;
}

/** A spreader on the truck of a day. */
export async function aSpreaderOn(house: TestHouse, company: TestCompany, routeDayId: string): Promise<string> {
  const [day] = await house.ask<{ vehicle_id: string }>("select vehicle_id from route_day where route_day_id = $1", [routeDayId]);
  return valueOf(await addEquipment(house, company.owner.key, spreaderForm(day?.vehicle_id))).equipmentId;
}

/** The shop where the tests have it. */
export async function aShop(house: TestHouse, company: TestCompany) {
  return valueOf(await setShopPosition(house, company.owner.key, { zip: "", ...SHOP }));
}

/** A truck's day with these visits, in this order. */
export async function aDayOf(house: TestHouse, company: TestCompany, visits: readonly VisitMore[], date: string = DAY) {
  const routeDayId = await aRouteDay(house, company, date);
  const visitIds: string[] = [];
  for (const more of visits) {
    const { visitId } = await aVisit(house, company, more);
    valueOf(await placeVisit(house, company.owner.key, { visitId, routeDayId }));
    visitIds.push(visitId);
  }
  return { routeDayId, visitIds };
}

/** A day's stops as the books have them, in their order. */
export async function stopsOf(house: TestHouse, routeDayId: string) {
  return house.ask<{ visit_id: string; position: number; arrives_at_minute: number | null; drive_minutes: number | null; is_pinned: boolean }>(
    "select visit_id, position, arrives_at_minute, drive_minutes, is_pinned from stop where route_day_id = $1 order by position",
    [routeDayId],
  );
}

/** The version of a truck's day, which counts up with every change. */
export async function versionOf(house: TestHouse, routeDayId: string): Promise<number> {
  const [row] = await house.ask<{ version: number }>("select version from route_day where route_day_id = $1", [routeDayId]);
  if (row === undefined) throw new Error("There is no such day.");
  return row.version;
}
