import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { idField } from "#application/field.schema";
import { productsOfShed } from "#application/products/list-products";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** One product with its label: the latest entry, the latest confirmed one, and what each means. */
export const readProduct = useCase("products/read-product", z.object({ productId: idField }), async (work, { productId }) => {
  const [product] = await productsOfShed(work, productId);
  return product === undefined ? notFound("product") : accept({ product });
});
