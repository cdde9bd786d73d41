/** What a page is given that may be asked for with a product beforehand. */
export interface ProductSearch {
  readonly searchParams: Promise<{ readonly product?: string | string[] }>;
}

/** The product that the address names, if it is one of those to choose from; else none is chosen. */
export async function productAsked(search: ProductSearch["searchParams"], products: readonly { readonly productId: string }[]): Promise<string> {
  const { product } = await search;
  return products.find(({ productId }) => productId === product)?.productId ?? "";
}
