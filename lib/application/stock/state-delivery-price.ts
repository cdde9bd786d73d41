import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { formatMoney, fromCents } from "#domain/money/money";
import { paidForDelivery } from "#domain/stock/cost-of-product";
import { type PostingKind } from "#domain/stock/posting";
import { writeDeed } from "#application/audit-trail";
import { badField, conflict, notFound } from "#application/refusal";
import { SENT_WITH_OTHER_FIGURES } from "#application/stock/post-stock";
import { stateDeliveryPriceSchema } from "#application/stock/state-delivery-price.schema";
import { useCase } from "#application/use-case";

const NOT_ON_FILE = "not on file";

function wordsOf(cents: bigint | null): string {
  return cents === null ? NOT_ON_FILE : formatMoney(fromCents(cents));
}

/**
 * Says after a delivery what was paid for it. What was said with the delivery and since stays on file; the last statement
 * counts. Pressed twice, the first statement is answered.
 */
export const stateDeliveryPrice = useCase("stock/state-delivery-price", stateDeliveryPriceSchema, async (work, { requestId, productId, delivery, paidForOne, said }) => {
  const { companyId } = work.company;
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } } });
  if (product === null) return notFound("product");
  await lockCompany(work.tx);
  const first = await work.tx.deliveryPrice.findUnique({ where: { companyId_requestId: { companyId, requestId } } });
  if (first !== null) {
    const isSame = first.stockPostingId === delivery.stockPostingId && first.line === delivery.line && first.paidPerContainerCents === paidForOne && first.said === said;
    return isSame ? accept({ number: first.number }) : conflict(SENT_WITH_OTHER_FIGURES);
  }
  const entry = await work.tx.stockEntry.findUnique({ where: { companyId_stockPostingId_line: { companyId, ...delivery } } });
  const lot = entry === null ? null : await work.tx.lot.findUnique({ where: { companyId_lotId: { companyId, lotId: entry.lotId } } });
  const posting = await work.tx.stockPosting.findUnique({ where: { companyId_stockPostingId: { companyId, stockPostingId: delivery.stockPostingId } } });
  const kind: PostingKind = "receive";
  if (entry === null || posting === null || lot?.productId !== productId || entry.amount <= 0n || posting.kind !== kind) return badField("delivery", "This is no delivery of this product. Load the page again.");
  const before = await work.tx.deliveryPrice.findMany({ where: { companyId, ...delivery }, orderBy: { number: "asc" } });
  const number = (before.at(-1)?.number ?? 0) + 1;
  await work.tx.deliveryPrice.create({
    data: { companyId, ...delivery, number, requestId, paidPerContainerCents: paidForOne, said, statedAt: work.now, personId: work.member.personId },
  });
  await writeDeed(work, productId, {
    deed: "delivery-price-stated",
    details: {
      productName: product.name, lot: lot.number, receivedAt: posting.happenedAt.toISOString(),
      before: wordsOf(paidForDelivery(entry.paidPerContainerCents, before)), paidForOne: wordsOf(paidForOne), said,
    },
  });
  return accept({ number });
});
