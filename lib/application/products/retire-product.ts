import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { conflict, notFound } from "#application/refusal";
import { retireProductSchema } from "#application/products/retire-product.schema";
import { useCase } from "#application/use-case";

/**
 * Takes a product out of what can be planned and received. Its records, its label entries and what is left of it stay;
 * a new product may take its name.
 */
export const retireProduct = useCase("products/retire-product", retireProductSchema, async (work, { productId, version }) => {
  const key = { companyId: work.company.companyId, productId };
  const product = await work.tx.product.findUnique({ where: { companyId_productId: key } });
  if (product === null) return notFound("product");
  const { count } = await work.tx.product.updateMany({
    where: { ...key, version, retiredAt: null },
    data: { retiredAt: work.now, version: { increment: 1 } },
  });
  if (count === 0) return conflict("Someone else has changed or retired this product since you opened the page. Load it again.");
  await writeDeed(work, productId, { deed: "product-retired", details: { name: product.name } });
  return accept({ productId });
});
