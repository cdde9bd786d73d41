import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { labelsOfProducts, type LabelOfProduct } from "#application/products/stored-label";
import { useCase, type Work } from "#application/use-case";

/** A product on the shelf, with how its label stands. */
export interface ProductOfShed {
  readonly productId: string;
  readonly version: number;
  readonly name: string;
  readonly form: "granular" | "liquid";
  /** Stock is counted by it. */
  readonly dimension: "mass" | "volume";
  readonly retiredAt: Date | null;
  readonly label: LabelOfProduct;
}

const NO_LABEL: LabelOfProduct = { latest: undefined, confirmed: undefined };

/** The products of a company, or one of them, by name. */
export async function productsOfShed(work: Work, productId?: string): Promise<readonly ProductOfShed[]> {
  const { companyId } = work.company;
  const rows = await work.tx.product.findMany({
    where: { companyId, ...(productId === undefined ? {} : { productId }) },
    orderBy: [{ name: "asc" }, { productId: "asc" }],
  });
  const labels = await labelsOfProducts(work.tx, companyId, rows.map((row) => row.productId));
  return rows.map((row) => ({
    productId: row.productId,
    version: row.version,
    name: row.name,
    form: row.form as ProductOfShed["form"],
    dimension: row.countedBy as ProductOfShed["dimension"],
    retiredAt: row.retiredAt,
    label: labels.get(row.productId) ?? NO_LABEL,
  }));
}

/** Every product by name, those that were retired last. */
export const listProducts = useCase("products/list-products", z.object({}), async (work) => {
  const products = await productsOfShed(work);
  return accept({ products: [...products.filter((product) => product.retiredAt === null), ...products.filter((product) => product.retiredAt !== null)] });
});
