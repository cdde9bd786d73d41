import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { type Container } from "#domain/stock/container-words";
import { inTakingOrder } from "#domain/stock/first-expired";
import { totalOf } from "#domain/stock/on-hand";
import { type LocationKind } from "#domain/stock/posting";
import { calendarDayOrNone } from "#application/stored-day";
import { listStockSchema } from "#application/stock/list-stock.schema";
import { type StockPlace } from "#application/stock/stock-locations";
import { useCase, type Work } from "#application/use-case";

/** So much of a lot at one location where stock is kept; below zero means that more was used than the books had: count it. */
export interface AmountAtLocation {
  readonly stockLocationId: string;
  readonly kind: LocationKind;
  readonly name: string;
  readonly amount: bigint;
}

export interface LotOfStock {
  readonly lotId: string;
  readonly number: string;
  readonly expiresOn: CalendarDate | null;
  readonly isExpired: boolean;
  readonly container: Container;
  readonly containerSize: bigint;
  /** Grows with time: the order in which lots came. */
  readonly receivedOrder: number;
  /** Over all locations, canonical units. */
  readonly amount: bigint;
  readonly at: readonly AmountAtLocation[];
}

export interface StockOfProduct {
  readonly productId: string;
  readonly name: string;
  readonly dimension: "mass" | "volume";
  readonly isRetired: boolean;
  readonly amount: bigint;
  /** True where a location is below zero. */
  readonly mustBeCounted: boolean;
  /** In the order in which they are taken. Lots that are used up are left out. */
  readonly lots: readonly LotOfStock[];
}

/** A place to receive at, to move from or to, whether or not it has ever held anything. */
export interface NamedPlace {
  /** As the forms send it. */
  readonly value: string;
  readonly name: string;
}

interface BalanceRow {
  readonly lot_id: string;
  readonly product_id: string;
  readonly number: string;
  readonly expires_on: Date | null;
  readonly container: string;
  readonly container_size: bigint;
  readonly created_at: Date;
  readonly stock_location_id: string;
  readonly kind: string;
  readonly location_name: string;
  readonly amount: bigint;
}

async function lotsOnHand(work: Work, productIds: readonly string[] | undefined): Promise<ReadonlyMap<string, readonly LotOfStock[]>> {
  const { companyId, timeZone } = work.company;
  const asked = productIds === undefined ? null : [...productIds];
  const rows = await work.tx.$queryRaw<BalanceRow[]>`
    SELECT l.lot_id, l.product_id, l.number, l.expires_on, l.container, l.container_size, l.created_at,
      s.stock_location_id, s.kind, s.name AS location_name, b.amount
    FROM stock_balance b
    JOIN lot l ON l.company_id = b.company_id AND l.lot_id = b.lot_id
    JOIN stock_location s ON s.company_id = b.company_id AND s.stock_location_id = b.stock_location_id
    WHERE b.company_id = ${companyId}::uuid AND b.amount <> 0 AND s.kind IN ('shop', 'truck', 'tank')
      AND (${asked}::uuid[] IS NULL OR l.product_id = ANY(${asked}::uuid[]))
    ORDER BY l.created_at, l.lot_id, s.kind, s.name`;
  const today = calendarDateIn(timeZone, work.now.getTime());
  const byLot = new Map<string, LotOfStock & { readonly productId: string }>();
  for (const row of rows) {
    const at = { stockLocationId: row.stock_location_id, kind: row.kind as LocationKind, name: row.location_name, amount: row.amount };
    const before = byLot.get(row.lot_id);
    const expiresOn = calendarDayOrNone(row.expires_on);
    const places = [...(before?.at ?? []), at];
    byLot.set(row.lot_id, {
      productId: row.product_id,
      lotId: row.lot_id,
      number: row.number,
      expiresOn,
      isExpired: expiresOn !== null && expiresOn < today,
      container: row.container as Container,
      containerSize: row.container_size,
      receivedOrder: row.created_at.getTime(),
      amount: totalOf(places),
      at: places,
    });
  }
  const byProduct = new Map<string, LotOfStock[]>();
  for (const { productId: of, ...lot } of inTakingOrder([...byLot.values()])) byProduct.set(of, [...(byProduct.get(of) ?? []), lot]);
  return byProduct;
}

/** What each product, or each of those asked for, has on hand, by lot and location. Retired products stand there as long as something of them is left. */
export async function stockOfProducts(work: Work, productIds?: readonly string[]): Promise<readonly StockOfProduct[]> {
  const lots = await lotsOnHand(work, productIds);
  const products = await work.tx.product.findMany({
    where: { companyId: work.company.companyId, ...(productIds === undefined ? {} : { productId: { in: [...productIds] } }) },
    orderBy: [{ name: "asc" }, { productId: "asc" }],
  });
  return products.flatMap((product): readonly StockOfProduct[] => {
    const own = lots.get(product.productId) ?? [];
    if (product.retiredAt !== null && own.length === 0) return [];
    return [
      {
        productId: product.productId,
        name: product.name,
        dimension: product.countedBy as StockOfProduct["dimension"],
        isRetired: product.retiredAt !== null,
        amount: totalOf(own),
        mustBeCounted: own.some(({ at }) => at.some(({ amount }) => amount < 0n)),
        lots: own,
      },
    ];
  });
}

/** How a form names a place. */
function placeValue(place: StockPlace): string {
  switch (place.kind) {
    case "shop":
      return "shop";
    case "vehicle":
      return `vehicle:${place.vehicleId}`;
    case "equipment":
      return `equipment:${place.equipmentId}`;
  }
}

/** The shop, then the trucks by number, then tanks and hoppers by name; what was stood down is left out. */
async function placesOf(work: Work): Promise<readonly NamedPlace[]> {
  const where = { companyId: work.company.companyId, stoodDownAt: null };
  const vehicles = await work.tx.vehicle.findMany({ where, orderBy: { number: "asc" } });
  const equipment = await work.tx.equipment.findMany({ where, orderBy: { name: "asc" } });
  return [
    { value: placeValue({ kind: "shop" }), name: "Shop" },
    ...vehicles.map(({ vehicleId, number, name }) => ({ value: placeValue({ kind: "vehicle", vehicleId }), name: `Truck ${String(number)}, ${name}` })),
    ...equipment.map(({ equipmentId, name }) => ({ value: placeValue({ kind: "equipment", equipmentId }), name })),
  ];
}

/** Everything on hand, and the places where it can be. */
export const listStock = useCase("stock/list-stock", listStockSchema, async (work, { productId }) => {
  return accept({ products: await stockOfProducts(work, productId === undefined ? undefined : [productId]), places: await placesOf(work) });
});
