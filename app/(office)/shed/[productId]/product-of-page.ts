import { notFound } from "next/navigation";
import { cache } from "react";
import { type ProductOfShed } from "#application/products/list-products";
import { readProduct } from "#application/products/read-product";
import { asMember } from "../../../session";

/** What a page below a product's address is given. */
export interface ProductPageProps {
  readonly params: Promise<{ readonly productId: string }>;
}

/** Asked once for a page, however many of its parts want to know. */
const readOnce = cache((productId: string) => asMember(readProduct, { productId }));

/** The product whose page is drawn; where there is none, there is no page. */
export async function productOfPage({ params }: ProductPageProps): Promise<ProductOfShed> {
  const answer = await readOnce((await params).productId);
  if (!answer.ok) notFound();
  return answer.value.product;
}

/** The product's name for the page's title, or undefined: whether there is a page is not for its title to say. */
export async function productNameOfPage({ params }: ProductPageProps): Promise<string | undefined> {
  const answer = await readOnce((await params).productId);
  return answer.ok ? answer.value.product.name : undefined;
}
