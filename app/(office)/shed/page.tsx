import { type Metadata } from "next";
import { notFound } from "next/navigation";
import { may } from "#application/permission";
import { listProducts } from "#application/products/list-products";
import { listStock, type StockOfProduct } from "#application/stock/list-stock";
import { LinkButton } from "#ui/button";
import { type DataCell, DataTable } from "#ui/data-table.client";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { asMember, memberOfPage } from "../../session";
import { LabelIsTheLaw } from "./label-is-the-law";
import { expiryWords, labelWords, onHandWords, waitsForReading } from "./stock-words";

export const metadata: Metadata = { title: "Shed" };

function strong(text: string, isStrong: boolean): DataCell {
  return isStrong ? { text, show: <strong>{text}</strong> } : text;
}

function onHandCell(stock: StockOfProduct | undefined): DataCell {
  if (stock === undefined) return "none";
  const words = onHandWords(stock);
  // Sorted by the canonical amount; a weight and a volume have no order between them.
  const sortBy = Number(stock.amount);
  return stock.mustBeCounted ? { text: `${words}: count it`, sortBy, show: <strong>{words}: count it</strong> } : { text: words, sortBy };
}

export default async function ShedPage() {
  const { member } = await memberOfPage();
  const products = await asMember(listProducts, {});
  const stock = await asMember(listStock, {});
  if (!products.ok || !stock.ok) notFound();
  const stockOf = new Map(stock.value.products.map((one) => [one.productId, one]));
  const here = products.value.products.filter((product) => product.retiredAt === null || stockOf.has(product.productId));
  const waiting = here.filter(waitsForReading).length;
  const toCount = stock.value.products.filter(({ mustBeCounted }) => mustBeCounted).length;
  const addProduct = may(member.role, "products/add-product") && <LinkButton href="/shed/add-product">Add a product</LinkButton>;
  return (
    <>
      <PageHead
        title="Shed"
        sentence={
          <>
            {here.length === 1 ? "One product." : `${String(here.length)} products.`}{" "}
            {waiting > 0 && <strong>{waiting === 1 ? "One label waits to be read." : `${String(waiting)} labels wait to be read.`}</strong>}{" "}
            {toCount > 0 && <strong>{toCount === 1 ? "One must be counted." : `${String(toCount)} must be counted.`}</strong>}
          </>
        }
        actions={
          <Row fillOnPhone>
            {addProduct}
            {may(member.role, "stock/move-stock") && here.length > 0 && <LinkButton href="/shed/move-stock">Move stock</LinkButton>}
            {may(member.role, "stock/receive-delivery") && here.length > 0 && (
              <LinkButton kind="act" href="/shed/receive-delivery">
                Receive a delivery
              </LinkButton>
            )}
          </Row>
        }
      />
      <Stack gap={5}>
        <DataTable
          id="products"
          caption="Products"
          captionSpoken
          noun={["product", "products"]}
          filterLabel="Find a product"
          columns={[
            { id: "name", head: "Product", sortable: true },
            { id: "onHand", head: "On hand", sortable: true },
            { id: "lots", head: "Lots", sortable: false },
            { id: "label", head: "Label", sortable: true },
          ]}
          rows={here.map((product) => {
            const own = stockOf.get(product.productId);
            const lots = own?.lots ?? [];
            return {
              id: product.productId,
              href: `/shed/${product.productId}`,
              cells: {
                name: product.name,
                onHand: onHandCell(own),
                lots: strong(expiryWords(lots), lots.some(({ isExpired }) => isExpired)),
                label: strong(labelWords(product), waitsForReading(product)),
              },
            };
          })}
          empty={<EmptyState sentence="Nothing is in the shed yet. Add the first product, then type its label." actions={addProduct} />}
        />
        <LabelIsTheLaw />
      </Stack>
    </>
  );
}
