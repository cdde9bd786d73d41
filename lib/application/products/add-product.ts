import { accept } from "#domain/foundation/outcome";
import { lockCompany } from "#adapters/postgres/company-work";
import { writeDeed } from "#application/audit-trail";
import { addProductSchema } from "#application/products/add-product.schema";
import { badField } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Puts a product on the shelf. Until its label is entered and confirmed nothing can be planned with it. */
export const addProduct = useCase("products/add-product", addProductSchema, async (work, form) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const [same] = await work.tx.$queryRaw<{ name: string }[]>`
    SELECT name FROM product WHERE company_id = ${companyId}::uuid AND lower(name) = lower(${form.name}) AND retired_at IS NULL`;
  if (same !== undefined) return badField("name", `${same.name} is in the shed already.`);
  const productId = work.newId();
  await work.tx.product.create({ data: { companyId, productId, ...form, createdAt: work.now } });
  await writeDeed(work, productId, { deed: "product-added", details: form });
  return accept({ productId });
});
