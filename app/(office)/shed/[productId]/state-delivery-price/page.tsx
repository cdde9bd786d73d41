import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { house } from "#application/house";
import { type DeliveryOfProduct, readPrices } from "#application/stock/read-prices";
import { type ProductOfShed } from "#application/products/list-products";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { amountInContainers } from "#domain/stock/container-words";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { paidWords } from "../../stock-words";
import { productOfPage, type ProductPageProps } from "../product-of-page";
import { StateDeliveryPriceForm } from "./state-delivery-price-form.client";

export const metadata: Metadata = { title: "Say what was paid" };

interface Props extends ProductPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** What was paid for a delivery, where it is learned later or was written down wrong. */
export default async function StateDeliveryPricePage(props: Props) {
  const { company } = await pageFor("stock/state-delivery-price");
  const product = await productOfPage(props);
  const { delivery, line } = await props.searchParams;
  const answer = await asMember(readPrices, { productId: product.productId });
  if (!answer.ok) notFound();
  const { deliveries } = answer.value;
  const asked = deliveries.find((one) => one.stockPostingId === delivery && String(one.line) === line) ?? (deliveries.length === 1 ? deliveries[0] : undefined);
  return (
    <>
      <PageHead
        above={<Link href={`/shed/${product.productId}`}>{product.name}</Link>}
        title="Say what was paid"
        sentence="The delivery itself stays as it was written down. What is said last counts for what visits cost; what was said before stays to be read."
      />
      {deliveries.length === 0 ? (
        <EmptyState
          sentence="Nothing of it was ever received, so nothing was paid."
          actions={<LinkButton href={`/shed/receive-delivery?product=${product.productId}`}>Receive a delivery</LinkButton>}
        />
      ) : (
        <Sheet>
          <StateDeliveryPriceForm
            fixed={{ requestId: house().newId(), productId: product.productId }}
            values={{ delivery: asked === undefined ? "" : keyOf(asked), paidForOne: "", said: "" }}
            deliveries={deliveries.map((one) => ({ value: keyOf(one), word: deliveryWords(one, product, company.timeZone) }))}
          />
        </Sheet>
      )}
    </>
  );
}

function keyOf({ stockPostingId, line }: DeliveryOfProduct): string {
  return `${stockPostingId} ${String(line)}`;
}

/** "Apr 14, 2026: 12 bags of 50 lb, lot L-1, not on file" */
function deliveryWords(delivery: DeliveryOfProduct, { dimension }: ProductOfShed, timeZone: string): string {
  const { receivedAt, amount, container, containerSize, lotNumber, paidPerContainerCents } = delivery;
  const what = amountInContainers(amount, container, { dimension, amount: containerSize });
  return `${formatShortDate(calendarDateIn(timeZone, receivedAt.getTime()))}: ${what}, lot ${lotNumber}, ${paidPerContainerCents === null ? "no price on file" : paidWords(paidPerContainerCents, container)}`;
}
