import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { house } from "#application/house";
import { listStock } from "#application/stock/list-stock";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { EmptyState } from "#ui/empty-state";
import { LinkButton } from "#ui/button";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { productAsked, type ProductSearch } from "../product-asked";
import { ReceiveDeliveryForm } from "./receive-delivery-form.client";

export const metadata: Metadata = { title: "Receive a delivery" };

export default async function ReceiveDeliveryPage({ searchParams }: ProductSearch) {
  const { company } = await pageFor("stock/receive-delivery");
  const stock = await asMember(listStock, {});
  if (!stock.ok) notFound();
  const products = stock.value.products.filter(({ isRetired }) => !isRetired);
  const { now, newId } = house();
  return (
    <>
      <PageHead above={<Link href="/shed">Shed</Link>} title="Receive a delivery" sentence="One lot at a time, by the bag or the jug, as it stands in front of you." />
      {products.length === 0 ? (
        <EmptyState sentence="There is no product to receive yet." actions={<LinkButton href="/shed/add-product">Add a product</LinkButton>} />
      ) : (
        <Sheet>
          <ReceiveDeliveryForm
            requestId={newId()}
            products={products.map(({ productId, name }) => ({ value: productId, word: name }))}
            places={stock.value.places.map(({ value, name }) => ({ value, word: name }))}
            values={{ productId: await productAsked(searchParams, products), receivedOn: calendarDateIn(company.timeZone, now().getTime()), to: "shop" }}
          />
        </Sheet>
      )}
    </>
  );
}
