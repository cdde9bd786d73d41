import { type CostOfVisit } from "#application/visits/cost-of-visit";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type CostOfNamedProduct, costSentence, costWords } from "#domain/stock/cost-of-product";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";

const BASIS_WORDS: Readonly<Record<CostOfVisit["basis"], string>> = {
  "lots-to-open": "By the lots that will be opened for it, the first to expire first.",
  "lots-put-down": "By the lots that the record took down.",
};

/** What the products of a visit cost, for those who may see money; nothing where there is no cost to tell. */
export function CostOfProducts({ cost }: { readonly cost: CostOfVisit | undefined }) {
  if (cost === undefined) return null;
  return (
    <Stack gap={2}>
      <Table
        caption="Cost"
        columns={[
          { id: "product", head: "Product" },
          { id: "lots", head: "Lots" },
          { id: "cost", head: "Cost", align: "figure" },
        ]}
        rows={cost.products.map((product) => ({ id: `${product.productId} ${product.quantity.dimension}`, cells: { product: product.productName, lots: lotsWords(product), cost: costWords(product) } }))}
      />
      <p>{costSentence(cost.products)}</p>
      <Text size="small" tone="second">
        {BASIS_WORDS[cost.basis]} Worked out exactly; each figure is rounded to the cent by itself.
      </Text>
    </Stack>
  );
}

function lotsWords({ cost }: CostOfNamedProduct): string {
  if (cost === "counted-by-another-measure") return "not known";
  return cost.lots.length === 0 ? "none on hand" : cost.lots.map(({ lotNumber, quantity }) => `${formatQuantity(quantity, "us")} of ${lotNumber}`).join(", ");
}
