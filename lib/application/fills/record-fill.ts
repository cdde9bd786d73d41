import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Finding } from "#domain/foundation/finding";
import { accept } from "#domain/foundation/outcome";
import { fromAmount, isZero } from "#domain/quantities/quantity";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { takeDown } from "#domain/register/put-down";
import { fillPosting } from "#domain/stock/posting";
import { writeDeed } from "#application/audit-trail";
import { recordFillSchema } from "#application/fills/record-fill.schema";
import { sprayerAt } from "#application/fills/sprayer-at";
import { badField, notFound, type UseCaseRefusal } from "#application/refusal";
import { lotsAt } from "#application/stock/lots-at";
import { postStock } from "#application/stock/post-stock";
import { locationOfPlace, locationOfTank } from "#application/stock/stock-locations";
import { useCase } from "#application/use-case";

/**
 * Records a filling of a tank: the finished volume and what really went in of each product, from the truck or the shop
 * into the tank, lot by lot. It is a fact: what the books do not have is taken all the same and asks for a count, which the
 * answer's findings say. Pressed twice, the first fill is answered.
 */
export const recordFill = useCase("fills/record-fill", recordFillSchema, async (work, form) => {
  const { companyId } = work.company;
  const { requestId, equipmentId, finished, mixingPlace, visitIds } = form;
  const filled = await sprayerAt(work, equipmentId, { on: form.filledOn, minuteOfDay: form.filledAt, field: "filledAt" });
  if (!filled.ok) return filled;
  const { sprayer: equipment, at: filledAt } = filled.value;
  const used = Object.entries(form.products).flatMap(([productId, quantity]) => (quantity === undefined || isZero(quantity) ? [] : [{ productId, quantity }]));
  if (used.length === 0) return badField("products", "Say what went in of at least one product.");
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: used.map(({ productId }) => productId) } } });
  const wrong = refuseProducts(used, products);
  if (wrong !== undefined) return { ok: false, refusal: wrong };
  const known = await work.tx.visit.count({ where: { companyId, visitId: { in: visitIds } } });
  if (known !== new Set(visitIds).size) return badField("visitIds", "A visit of this fill is not on file any more. Load the page again.");
  const findings: Finding[] = [];
  const posted = await postStock(work, { kind: "fill", requestId, happenedAt: filledAt }, async () => {
    const tank = await locationOfTank(work, equipmentId);
    const from = await locationOfPlace(work, form.from);
    if (tank === undefined || from === undefined) return badField("from", "There is no such location here. Choose another.");
    const lots = await lotsAt(work, [from], used.map(({ productId }) => productId));
    const missing = used.find(({ productId }) => !lots.some((lot) => lot.productId === productId));
    if (missing !== undefined) return badField(`products.${missing.productId}`, "No lot of it is on file there. Receive it or move it first.");
    const taken = used.flatMap(({ productId, quantity }) => {
      const own = lots.filter((lot) => lot.productId === productId);
      const down = takeDown(products.find((one) => one.productId === productId)?.name ?? "", quantity, [own]);
      findings.push(...down.findings);
      return down.taken.map(({ lotId, stockLocationId, amount }) => ({ lotId, from: stockLocationId, quantity: fromAmount(quantity.dimension, amount) }));
    });
    return accept(fillPosting(tank, taken));
  });
  if (!posted.ok) return posted;
  const { stockPostingId, isRepeat } = posted.value;
  if (isRepeat) {
    const first = await work.tx.fill.findFirst({ where: { companyId, stockPostingId } });
    return first === null ? notFound("fill") : accept({ fillId: first.fillId, number: first.number, findings });
  }
  const last = await work.tx.fill.findFirst({ where: { companyId }, orderBy: { number: "desc" }, select: { number: true } });
  const number = (last?.number ?? 0) + 1;
  const fillId = work.newId();
  await work.tx.fill.create({
    data: {
      companyId, fillId, equipmentId, number, finishedVolume: finished.amount, filledAt, enteredAt: work.now, personId: work.member.personId,
      mixingPlace, stockPostingId, plannedVisitIds: visitIds,
    },
  });
  await writeDeed(work, fillId, { deed: "fill-recorded", details: { number, equipment: equipment.name, finished: formatQuantity(finished, "us") } });
  return accept({ fillId, number, findings });
});

interface WentIn {
  readonly productId: string;
  readonly quantity: ProductAmount;
}

function refuseProducts(used: readonly WentIn[], products: readonly { readonly productId: string; readonly name: string; readonly countedBy: string }[]): UseCaseRefusal | undefined {
  for (const { productId, quantity } of used) {
    const product = products.find((one) => one.productId === productId);
    if (product === undefined) return notFound("product").refusal;
    if (product.countedBy !== quantity.dimension) return badField(`products.${productId}`, `${product.name} is counted by ${product.countedBy === "mass" ? "weight" : "volume"}.`).refusal;
  }
  return undefined;
}
