// Builders: products, labels and deliveries as the use cases themselves make them.
import { addProduct } from "#application/products/add-product";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { type LabelText } from "#domain/label/label-fields";
import { type TestCompany, valueOf } from "./crew";
import { type TestHouse } from "./house";
import { aFeedText } from "./label-texts";

let made = 0;

/** A granular feed, counted by weight, of a name that was not used before. */
export function productForm() {
  return { name: `Greenmere ${String((made += 1))}`, form: "granular", countedBy: "mass" } as const;
}

/** A granular feed in the shed, without a label. */
export async function aFeed(house: TestHouse, company: TestCompany): Promise<string> {
  return valueOf(await addProduct(house, company.owner.key, productForm())).productId;
}

/** A liquid in the shed, counted by volume, without a label. */
export async function aLiquid(house: TestHouse, company: TestCompany): Promise<string> {
  const name = `Ironside ${String((made += 1))}`;
  return valueOf(await addProduct(house, company.owner.key, { name, form: "liquid", countedBy: "volume" })).productId;
}

/** The label form of a granular feed, filled in for its first entry. */
export function labelForm(productId: string, text: LabelText = aFeedText()) {
  const [use] = text.uses;
  if (use === undefined) throw new Error("the label of a test has a use");
  return { productId, form: text.form, basedOnNumber: 0, useIndex: 0, ...text.general, ...use };
}

/** The first entry of a product's label. */
export async function aLabelEntry(house: TestHouse, company: TestCompany, productId: string, text?: LabelText) {
  return valueOf(await enterLabel(house, company.owner.key, labelForm(productId, text)));
}

/** The first entry of a product's label, confirmed. */
export async function aConfirmedLabel(house: TestHouse, company: TestCompany, productId: string, text?: LabelText) {
  const entry = await aLabelEntry(house, company, productId, text);
  valueOf(await confirmLabel(house, company.owner.key, { labelEntryId: entry.labelEntryId }));
  return entry;
}

/** The delivery form: twelve bags of 50 lb to the shop. */
export function deliveryForm(house: TestHouse, productId: string) {
  return {
    requestId: house.newId(), productId, receivedOn: "2026-04-14", count: 12, container: "bag", containerSize: "50 lb", paidForOne: "",
    lotNumber: "L-1", expiresOn: "2027-06-30", to: "shop", note: "",
  } as const;
}

/** Twelve bags of 50 lb in the shop. */
export async function aDelivery(house: TestHouse, company: TestCompany, productId: string) {
  return valueOf(await receiveDelivery(house, company.owner.key, deliveryForm(house, productId)));
}

/** The first lot of a product. */
export async function lotOf(house: TestHouse, productId: string): Promise<string> {
  const [row] = await house.ask<{ lot_id: string }>("select lot_id from lot where product_id = $1 order by number", [productId]);
  if (row === undefined) throw new Error("nothing of the product was received");
  return row.lot_id;
}

/** The form of what was paid for a product's last delivery: $38.50 for one, by an invoice. */
export async function priceForm(house: TestHouse, productId: string) {
  const [row] = await house.ask<{ stock_posting_id: string; line: number }>(
    `select e.stock_posting_id, e.line from stock_entry e join lot l on l.lot_id = e.lot_id join stock_posting p on p.stock_posting_id = e.stock_posting_id
     where l.product_id = $1 and p.kind = 'receive' and e.amount > 0 order by p.entered_at desc, p.stock_posting_id desc limit 1`,
    [productId],
  );
  if (row === undefined) throw new Error("nothing of the product was received");
  return { requestId: house.newId(), productId, delivery: `${row.stock_posting_id} ${String(row.line)}`, paidForOne: "38.50", said: "Invoice 1182" };
}

/** The movement form: two bags' worth from the shop. */
export function moveForm(house: TestHouse, productId: string, to: string) {
  return { requestId: house.newId(), productId, amount: "100 lb", from: "shop", to, lotId: "", note: "" } as const;
}

/** A truck of the company. */
export async function aTruck(house: TestHouse, company: TestCompany): Promise<string> {
  const vehicleId = house.newId();
  await house.ask("insert into vehicle (company_id, vehicle_id, number, name, created_at) values ($1, $2, $3, 'Box truck', $4)", [
    company.companyId, vehicleId, 500 + (made += 1), house.now(),
  ]);
  return vehicleId;
}

/** A sprayer of the company. */
export async function aTank(house: TestHouse, company: TestCompany): Promise<string> {
  const equipmentId = house.newId();
  await house.ask(
    "insert into equipment (company_id, equipment_id, name, kind, capacity, created_at) values ($1, $2, 'Skid tank', 'hose-and-gun', 1000, $3)",
    [company.companyId, equipmentId, house.now()],
  );
  return equipmentId;
}

/** What the database keeps on hand, by kind of location, as text of canonical units. */
export async function balancesOf(house: TestHouse, productId: string): Promise<Readonly<Record<string, string>>> {
  const rows = await house.ask<{ kind: string; amount: string }>(
    `select s.kind, sum(b.amount)::text as amount from stock_balance b join lot l using (company_id, lot_id) join stock_location s using (company_id, stock_location_id)
     where l.product_id = $1 group by s.kind order by s.kind`,
    [productId],
  );
  return Object.fromEntries(rows.map(({ kind, amount }) => [kind, amount]));
}
