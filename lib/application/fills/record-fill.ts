import { lockCompany } from "#adapters/postgres/company-work";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Finding, gravestFirst } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { fromAmount, isZero, type Quantity } from "#domain/quantities/quantity";
import { filledBetween, type GaugeAroundFill, gaugeFindings, readAsBooks } from "#domain/mixing/fill-by-gauge";
import { fillStrengthFindings, type ProductFilled } from "#domain/mixing/fill-strength";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { takeDown } from "#domain/register/put-down";
import { type AmountOfLot, fillPosting } from "#domain/stock/posting";
import { writeDeed } from "#application/audit-trail";
import { houseSettingsOf } from "#application/companies/house-settings";
import { nameOfTruck } from "#application/equipment/add-vehicle";
import { type FillForm, recordFillSchema } from "#application/fills/record-fill.schema";
import { sprayerAt } from "#application/fills/sprayer-at";
import { spraysOfVisits } from "#application/fills/sprays-of-visits";
import { tankBeforeFill } from "#application/fills/tank-before-fill";
import { labelsOfProducts } from "#application/products/stored-label";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { lotsAt } from "#application/stock/lots-at";
import { postStock } from "#application/stock/post-stock";
import { locationOfPlace, locationOfTank, type StockPlace } from "#application/stock/stock-locations";
import { fromStoredJson, toStoredJson } from "#application/stored-json";
import { useCase, type Work } from "#application/use-case";

/** A fill before it is written, in the words in which it is read back. */
export interface FillToRecord {
  readonly equipmentName: string;
  readonly filledAt: Date;
  readonly gauge: GaugeAroundFill;
  /** What the books have in the tank before it. */
  readonly inTheBooks: Quantity<"volume">;
  /** What was filled in: the difference of the two readings. */
  readonly finished: Quantity<"volume">;
  readonly products: readonly ProductFilled[];
  readonly mixingPlace: string;
  /** Where the products came from: "Truck 3". */
  readonly fromName: string;
  /** The lots that the product comes from, and where they are. */
  readonly lots: readonly (AmountOfLot & { readonly from: string })[];
  readonly findings: readonly Finding[];
}

/**
 * Puts a fill together from the form and what is on file, and writes none: the finished volume is what the gauge went up by.
 * It is held against the books, the tank, the mix tickets of its visits and the labels. Refuses what can't be written.
 */
export async function fillToRecord(work: Work, form: FillForm): Promise<Outcome<FillToRecord, UseCaseRefusal>> {
  const { companyId } = work.company;
  const { equipmentId, mixingPlace, visitIds } = form;
  const filled = await sprayerAt(work, equipmentId, { on: form.filledOn, minuteOfDay: form.filledAt, field: "filledAt" });
  if (!filled.ok) return filled;
  const { sprayer, at: filledAt } = filled.value;
  const tank = await tankBeforeFill(work, equipmentId, filledAt);
  const gauge: GaugeAroundFill = { before: readAsBooks(form.gaugeBefore, tank.inTheBooks), after: form.gaugeAfter };
  const finished = filledBetween(gauge);
  if (!finished.ok) return badField(finished.refusal.field, finished.refusal.sentence);
  const products = await productsFilled(work, form);
  if (!products.ok) return products;
  const known = await work.tx.visit.count({ where: { companyId, visitId: { in: visitIds } } });
  if (known !== new Set(visitIds).size) return badField("visitIds", "A visit of this fill is not on file any more. Load the page again.");
  const taken = await takenFrom(work, form, products.value);
  if (!taken.ok) return taken;
  const { tankMark: mark } = await houseSettingsOf(work);
  const capacity = fromAmount("volume", sprayer.capacity + (sprayer.holdUp ?? 0n));
  const { sprays } = await spraysOfVisits(work, visitIds);
  const mixes = sprays.filter(({ gear }) => gear.equipmentId === equipmentId).map(({ planned }) => planned);
  const findings = gravestFirst([
    ...gaugeFindings({ ...gauge, ...tank, name: sprayer.name, mark, capacity }),
    ...fillStrengthFindings({ finished: finished.value, mark }, products.value, mixes),
    ...taken.value.findings,
  ]);
  return accept({ equipmentName: sprayer.name, filledAt, gauge, inTheBooks: tank.inTheBooks, finished: finished.value, products: products.value, mixingPlace, ...taken.value, findings });
}

/** What went in, product by product, with the labels that count. */
async function productsFilled(work: Work, form: FillForm): Promise<Outcome<readonly ProductFilled[], UseCaseRefusal>> {
  const { companyId } = work.company;
  const used = Object.entries(form.products).flatMap(([productId, amount]): readonly WentIn[] => (amount === undefined || isZero(amount) ? [] : [{ productId, amount }]));
  if (used.length === 0) return badField("products", "Say what went in of at least one product.");
  const rows = await work.tx.product.findMany({ where: { companyId, productId: { in: used.map(({ productId }) => productId) } } });
  const labels = await labelsOfProducts(work.tx, companyId, rows.map(({ productId }) => productId));
  const products: ProductFilled[] = [];
  for (const { productId, amount } of used) {
    const product = rows.find((one) => one.productId === productId);
    if (product === undefined) return notFound("product");
    if (product.countedBy !== amount.dimension) return badField(`products.${productId}`, `${product.name} is counted by ${product.countedBy === "mass" ? "weight" : "volume"}.`);
    products.push({ productId, productName: product.name, amount, label: labels.get(productId)?.confirmed?.facts ?? "unknown" });
  }
  return accept(products);
}

interface WentIn {
  readonly productId: string;
  readonly amount: ProductAmount;
}

/** The lots that it came from; what the books do not have is taken all the same and asks for a count. */
async function takenFrom(work: Work, form: FillForm, products: readonly ProductFilled[]): Promise<Outcome<Pick<FillToRecord, "fromName" | "lots" | "findings">, UseCaseRefusal>> {
  const from = await locationOfPlace(work, form.from);
  if (from === undefined) return badField("from", "There is no such location here. Choose another.");
  const lots = await lotsAt(work, [from], products.map(({ productId }) => productId));
  const missing = products.find(({ productId }) => !lots.some((lot) => lot.productId === productId));
  if (missing !== undefined) return badField(`products.${missing.productId}`, "No lot of it is on file there. Receive it or move it first.");
  const downs = products.map(({ productId, productName, amount }) => ({ amount, down: takeDown(productName, amount, [lots.filter((lot) => lot.productId === productId)]) }));
  return accept({
    fromName: await nameOfPlace(work, form.from),
    lots: downs.flatMap(({ amount: { dimension }, down }) => down.taken.map(({ lotId, stockLocationId, amount }) => ({ lotId, from: stockLocationId, quantity: fromAmount(dimension, amount) }))),
    findings: downs.flatMap(({ down }) => down.findings),
  });
}

async function nameOfPlace({ tx, company: { companyId } }: Work, place: StockPlace): Promise<string> {
  switch (place.kind) {
    case "shop":
      return "the shop";
    case "vehicle":
      return nameOfTruck((await tx.vehicle.findUniqueOrThrow({ where: { companyId_vehicleId: { companyId, vehicleId: place.vehicleId } } })).number);
    case "equipment":
      return (await tx.equipment.findUniqueOrThrow({ where: { companyId_equipmentId: { companyId, equipmentId: place.equipmentId } } })).name;
  }
}

/**
 * Records a filling of a tank: what its gauge showed before and after, whose difference is the finished volume, and what
 * really went in of each product, from the truck or the shop into the tank, lot by lot. It is a fact: what does not go with
 * the books, the tank, the plan or a label is taken all the same, and the findings that say so stay with the fill. Pressed
 * twice, the first fill is answered.
 */
export const recordFill = useCase("fills/record-fill", recordFillSchema, async (work, form) => {
  const { companyId } = work.company;
  const { requestId, equipmentId, mixingPlace, visitIds } = form;
  await lockCompany(work.tx);
  const standing = await work.tx.stockPosting.findUnique({ where: { companyId_requestId: { companyId, requestId } } });
  if (standing !== null) {
    const first = await work.tx.fill.findFirst({ where: { companyId, stockPostingId: standing.stockPostingId } });
    return first === null ? conflict("This form was sent before for something else. Load the page again.") : accept({ fillId: first.fillId, number: first.number, findings: fromStoredJson(first.findings) as readonly Finding[] });
  }
  const toRecord = await fillToRecord(work, form);
  if (!toRecord.ok) return toRecord;
  const { equipmentName, filledAt, gauge, inTheBooks, finished, lots, findings } = toRecord.value;
  const posted = await postStock(work, { kind: "fill", requestId, happenedAt: filledAt }, async () => {
    const tank = await locationOfTank(work, equipmentId);
    return tank === undefined ? notFound("sprayer") : accept(fillPosting(tank, lots));
  });
  if (!posted.ok) return posted;
  const last = await work.tx.fill.findFirst({ where: { companyId }, orderBy: { number: "desc" }, select: { number: true } });
  const number = (last?.number ?? 0) + 1;
  const fillId = work.newId();
  await work.tx.fill.create({
    data: {
      ...{ companyId, fillId, equipmentId, number, filledAt, mixingPlace, enteredAt: work.now, personId: work.member.personId },
      ...{ finishedVolume: finished.amount, gaugeBefore: gauge.before.amount, gaugeAfter: gauge.after.amount, inTheBooks: inTheBooks.amount },
      ...{ stockPostingId: posted.value.stockPostingId, plannedVisitIds: visitIds, findings: toStoredJson(findings) },
    },
  });
  await writeDeed(work, fillId, { deed: "fill-recorded", details: { number, equipment: equipmentName, finished: formatQuantity(finished, "us") } });
  return accept({ fillId, number, findings });
});
