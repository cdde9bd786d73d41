import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { house } from "#application/house";
import { listStock } from "#application/stock/list-stock";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { productAsked, type ProductSearch } from "../product-asked";
import { lotWords, onHandWords } from "../stock-words";
import { MoveStockForm } from "./move-stock-form.client";

export const metadata: Metadata = { title: "Move stock" };

export default async function MoveStockPage({ searchParams }: ProductSearch) {
  await pageFor("stock/move-stock");
  const stock = await asMember(listStock, {});
  if (!stock.ok) notFound();
  const products = stock.value.products.filter(({ lots }) => lots.length > 0);
  const { places } = stock.value;
  const lots = products.flatMap((product) =>
    product.lots.map((lot) => ({ value: lot.lotId, word: `${product.name}, lot ${lot.number}: ${lotWords(lot, product.dimension, lot.amount)}` })),
  );
  return (
    <>
      <PageHead above={<Link href="/shed">Shed</Link>} title="Move stock" sentence="From the shop to a truck and back. What expires first goes first." />
      {products.length === 0 || places.length < 2 ? (
        <EmptyState
          sentence={products.length === 0 ? "Nothing is on hand that could be moved." : "The shop is the only location so far. Trucks and tanks are added under Crew."}
          actions={products.length === 0 && <LinkButton href="/shed/receive-delivery">Receive a delivery</LinkButton>}
        />
      ) : (
        <Sheet>
          <MoveStockForm
            requestId={house().newId()}
            products={products.map((product) => ({ value: product.productId, word: `${product.name}: ${onHandWords(product)}` }))}
            places={places.map(({ value, name }) => ({ value, word: name }))}
            lots={lots}
            values={{ productId: await productAsked(searchParams, products), from: "shop" }}
          />
        </Sheet>
      )}
    </>
  );
}
