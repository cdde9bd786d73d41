import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { confirmLabelSchema } from "#application/products/confirm-label.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Says that every line of a label's latest entry was held against the container and is so. Whoever typed it may confirm
 * it too; the record says who did which. From then on plans and mix tickets go by this entry.
 */
export const confirmLabel = useCase("products/confirm-label", confirmLabelSchema, async (work, { labelEntryId }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const entry = await work.tx.labelEntry.findUnique({ where: { companyId_labelEntryId: { companyId, labelEntryId } } });
  if (entry === null) return notFound("label entry");
  const { productId, number } = entry;
  const product = await work.tx.product.findUniqueOrThrow({ where: { companyId_productId: { companyId, productId } } });
  if (product.retiredAt !== null) return conflict(`${product.name} was retired. Add it anew if it is used again.`);
  const newer = await work.tx.labelEntry.count({ where: { companyId, productId, number: { gt: number } } });
  if (newer > 0) return conflict("This label was entered anew since you opened the page. Read the newer entry back and confirm that.");
  const standing = await work.tx.labelConfirmation.findUnique({ where: { companyId_labelEntryId: { companyId, labelEntryId } } });
  if (standing !== null) return conflict("This label is confirmed already. Nothing was written a second time.");
  await work.tx.labelConfirmation.create({
    data: { companyId, labelConfirmationId: work.newId(), labelEntryId, personId: work.member.personId, confirmedAt: work.now },
  });
  await writeDeed(work, productId, { deed: "label-confirmed", details: { productName: product.name, number } });
  return accept({ productId });
});
