import { calendarDateIn } from "#domain/foundation/calendar-date";
import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { formatMoney, fromCents } from "#domain/money/money";
import { type Quantity } from "#domain/quantities/quantity";
import { type Dimension, GREATEST_STORED_AMOUNT } from "#domain/quantities/units";
import { containersOf, type Container } from "#domain/stock/container-words";
import { receivePosting } from "#domain/stock/posting";
import { type z } from "zod";
import { calendarDayOrNone, dayOrNone } from "#application/stored-day";
import { writeDeed } from "#application/audit-trail";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { postedAmounts, postStock, SENT_WITH_OTHER_FIGURES } from "#application/stock/post-stock";
import { receiveDeliverySchema } from "#application/stock/receive-delivery.schema";
import { momentOfDay } from "#application/stock/moment-of-day";
import { locationOfPlace, singularLocation } from "#application/stock/stock-locations";
import { useCase, type Work } from "#application/use-case";

type Delivery = z.output<typeof receiveDeliverySchema>;

/**
 * Takes a delivery in: so many containers of one lot, to the shop or onto a truck. The same lot may come again; what
 * is on file about it must then agree, but for its price, which is the delivery's own. Pressed twice, the first answer stands and nothing is written again.
 */
export const receiveDelivery = useCase("stock/receive-delivery", receiveDeliverySchema, async (work, form) => {
  const { companyId, timeZone } = work.company;
  const { requestId, productId, note, paidForOne } = form;
  if (form.receivedOn > calendarDateIn(timeZone, work.now.getTime())) return badField("receivedOn", "This day has not come yet.");
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } } });
  if (product === null) return notFound("product");
  if (product.retiredAt !== null) return badField("productId", `${product.name} was retired. Add it anew if it is used again.`);
  const size: Quantity<Dimension> = form.containerSize.quantity;
  if (size.dimension !== product.countedBy) {
    const asked = product.countedBy === "mass" ? "by weight: 50 lb" : "by volume: 2.5 gal";
    return badField("containerSize", `${product.name} is counted ${asked}.`);
  }
  const amount = size.amount * BigInt(form.count);
  if (amount > GREATEST_STORED_AMOUNT) return badField("count", "This is more than can be kept on file.");
  const happenedAt = momentOfDay(work, form.receivedOn);
  const posted = await postStock(work, { kind: "receive", requestId, happenedAt, note }, async () => {
    const to = await locationOfPlace(work, form.to);
    if (to === undefined) return badField("to", "There is no such location here. Choose another.");
    const lot = await lotOf(work, form, happenedAt);
    if (!lot.ok) return lot;
    const supplier = await singularLocation(work, "supplier");
    return accept(receivePosting(supplier, to, [{ lotId: lot.value, quantity: { dimension: size.dimension, amount }, paidPerContainerCents: paidForOne }]));
  });
  if (!posted.ok) return posted;
  const { stockPostingId, isRepeat } = posted.value;
  if (isRepeat) {
    const standing = await postedAmounts(work, stockPostingId);
    const isSame = standing.every(
      (one) => one.productId === productId && one.lotNumber === form.lotNumber && one.amount === amount && one.paidPerContainerCents === paidForOne,
    );
    if (!isSame) return conflict(SENT_WITH_OTHER_FIGURES);
  } else {
    const received = containersOf(BigInt(form.count), form.container, size);
    const paid = paidForOne === null ? "not on file" : formatMoney(fromCents(paidForOne));
    await writeDeed(work, productId, { deed: "delivery-received", details: { productName: product.name, lot: form.lotNumber, received, paidForOne: paid, on: form.receivedOn } });
  }
  return accept({ stockPostingId });
});

/** The lot on file, or a new one. What was said of it before must hold: an expiry does not change by a delivery. */
async function lotOf(work: Work, form: Delivery, createdAt: Date): Promise<Outcome<string, UseCaseRefusal>> {
  const { companyId } = work.company;
  const { productId, lotNumber: number, container, expiresOn } = form;
  const containerSize = form.containerSize.quantity.amount;
  const onFile = await work.tx.lot.findUnique({
    where: { companyId_productId_number_containerSize: { companyId, productId, number, containerSize } },
  });
  if (onFile === null) {
    const lotId = work.newId();
    await work.tx.lot.create({ data: { companyId, lotId, productId, number, expiresOn: dayOrNone(expiresOn), container, containerSize, createdAt } });
    return accept(lotId);
  }
  const expiry = calendarDayOrNone(onFile.expiresOn);
  if (expiry !== expiresOn) {
    return refuse(fieldRefusal("expiresOn", `Lot ${number} is on file with ${expiry === null ? "no expiry" : `the expiry ${expiry}`}. Look at the container again.`));
  }
  if ((onFile.container as Container) !== container) {
    return refuse(fieldRefusal("container", `Lot ${number} is on file in a ${onFile.container} of this size.`));
  }
  return accept(onFile.lotId);
}

function fieldRefusal(field: string, sentence: string): UseCaseRefusal {
  return badField(field, sentence).refusal;
}
