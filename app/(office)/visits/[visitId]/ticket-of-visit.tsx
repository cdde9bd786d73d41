import { type VisitOnFile } from "#application/visits/read-visit";
import { type StockOfProduct } from "#application/stock/list-stock";
import { type VisitTicket } from "#application/visits/visit-ticket";
import { listWords } from "#domain/foundation/list-words";
import { neededTreatments } from "#domain/mixing/mix-ticket";
import { type BagOfProduct, granularWorkings } from "#domain/mixing/ticket-working-granular";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
import { stockInWords } from "#domain/stock/container-words";
import { MarkedWords } from "#ui/marked-words";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { GranularMixBlock } from "./granular-mix-block";
import { us } from "./mix-words";
import { SprayMixBlock } from "./spray-mix-block";
import { lawnWords } from "./visit-words";

interface MixesOfVisitProps {
  readonly ticket: VisitTicket;
  readonly stock: readonly StockOfProduct[];
}

/** What to put down, mix by mix. */
export function MixesOfVisit({ ticket, stock }: MixesOfVisitProps) {
  const { question, ticket: worked } = ticket;
  if (worked.mixes.length === 0) return <p>Nothing can be put down as it is planned. The holds above say why.</p>;
  return (
    <Stack gap={5}>
      {worked.mixes.map((mix) => (
        <Sheet key={mix.kind === "granular" ? mix.line : `spray ${String(mix.products[0]?.line ?? 0)}`}>
          {mix.kind === "granular" ? (
            <GranularMixBlock
              mix={mix}
              settings={question.settings}
              treatment={question.treatments.find(({ line }) => line === mix.line)}
              workings={granularWorkings(mix, question, worked, bagOf(stock.find(({ productId }) => productId === question.treatments.find(({ line }) => line === mix.line)?.productId)))}
            />
          ) : (
            <SprayMixBlock mix={mix} treatments={question.treatments} settings={question.settings} workings={sprayWorkings(mix, question, worked)} />
          )}
        </Sheet>
      ))}
    </Stack>
  );
}

/** The bags that are opened first; undefined where nobody knows what a bag holds. */
function bagOf(stock: StockOfProduct | undefined): BagOfProduct | undefined {
  const [lot] = stock?.lots ?? [];
  if (lot === undefined || stock?.dimension !== "mass") return undefined;
  return { container: lot.container, size: { dimension: "mass", amount: lot.containerSize } };
}

/** What the visit takes of each product against what is on hand. */
export function StockOfVisit({ ticket }: { readonly ticket: VisitTicket }) {
  const { question, ticket: worked } = ticket;
  const needed = neededTreatments(worked.mixes, question.treatments);
  if (needed.length === 0) return null;
  return (
    <Table
      caption="Stock"
      columns={[
        { id: "product", head: "Product" },
        { id: "takes", head: "The visit takes", align: "figure" },
        { id: "hand", head: "On hand", align: "figure" },
      ]}
      rows={needed.map(({ treatment, amount }) => {
        const { label, onHand, line } = treatment;
        const whole = "amount" in onHand ? onHand.amount : null;
        const words = whole === null ? "not known" : stockInWords(whole, onHand.dimension);
        const isShort = whole !== null && onHand.dimension === amount.dimension && whole < amount.amount;
        return { id: String(line), cells: { product: label.productName, takes: us(amount), hand: isShort ? <MarkedWords level="take-care">{words}</MarkedWords> : words } };
      })}
    />
  );
}

/** Work without a product. */
export function LooksOfVisit({ found }: { readonly found: VisitOnFile }) {
  const { looks } = found.visit;
  if (looks.length === 0) return null;
  const lawns = found.outcome.ok ? found.outcome.value.question.lawns : [];
  return (
    <ul>
      {looks.map(({ line, reason, zoneIds }) => {
        const names = zoneIds.flatMap((zoneId) => lawns.filter((lawn) => lawn.zoneId === zoneId).map(lawnWords));
        return (
          <li key={line}>
            Look: {reason}
            {names.length > 0 && `, on ${listWords(names)}`}.
          </li>
        );
      })}
    </ul>
  );
}
