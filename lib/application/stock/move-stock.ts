import { formatQuantity } from "#domain/quantities/format-quantity";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { takeFirstExpired } from "#domain/stock/first-expired";
import { totalOf } from "#domain/stock/on-hand";
import { movePosting, type Posting } from "#domain/stock/posting";
import { type z } from "zod";
import { writeDeed } from "#application/audit-trail";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { lotsAt } from "#application/stock/lots-at";
import { moveStockSchema } from "#application/stock/move-stock.schema";
import { postedAmounts, postStock, SENT_WITH_OTHER_FIGURES, wouldLeaveBelowZero } from "#application/stock/post-stock";
import { locationOfPlace } from "#application/stock/stock-locations";
import { useCase, type Work } from "#application/use-case";

type Move = z.output<typeof moveStockSchema>;

/**
 * Carries stock from one location to another: the lot that was named, or the first to expire first. A plan can't take
 * more than is there; where the shelf holds more than the books, a count comes first.
 */
export const moveStock = useCase("stock/move-stock", moveStockSchema, async (work, form) => {
  const { companyId } = work.company;
  const { requestId, productId, amount, note } = form;
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } } });
  if (product === null) return notFound("product");
  if (amount.dimension !== product.countedBy) return badField("amount", `${product.name} is counted by ${product.countedBy === "mass" ? "weight" : "volume"}.`);
  const posted = await postStock(work, { kind: "move", requestId, happenedAt: work.now, note }, () => postingOfMove(work, form));
  if (!posted.ok) return posted;
  const { stockPostingId, isRepeat } = posted.value;
  if (isRepeat) {
    const standing = await postedAmounts(work, stockPostingId);
    const isSame = standing.every((one) => one.productId === productId) && totalOf(standing) === amount.amount;
    return isSame ? accept({ stockPostingId }) : conflict(SENT_WITH_OTHER_FIGURES);
  }
  await writeDeed(work, productId, { deed: "stock-moved", details: { productName: product.name, amount: formatQuantity(amount, "us") } });
  return accept({ stockPostingId });
});

async function postingOfMove(work: Work, { productId, amount, from, to, lotId }: Move): Promise<Outcome<Posting, UseCaseRefusal>> {
  const fromId = await locationOfPlace(work, from);
  if (fromId === undefined) return badField("from", "There is no such location here. Choose another.");
  const toId = await locationOfPlace(work, to);
  if (toId === undefined) return badField("to", "There is no such location here. Choose another.");
  const lots = (await lotsAt(work, [fromId], [productId])).filter((lot) => lotId === null || lot.lotId === lotId);
  if (lotId !== null && lots.length === 0) return notFound("lot of this product");
  const taken = takeFirstExpired(lots, amount);
  if (!taken.ok) {
    const { missing } = taken.refusal;
    const there = formatQuantity({ dimension: amount.dimension, amount: amount.amount - missing.amount }, "us");
    return badField("amount", `Only ${there} is there by the books, ${formatQuantity(missing, "us")} too little. Move less, or count what is there.`);
  }
  const posting = movePosting(fromId, toId, taken.value);
  const below = await wouldLeaveBelowZero(work, posting.entries);
  return below.length === 0 ? accept(posting) : badField("amount", "This would take more than is there. Count what is there first.");
}
