import Link from "next/link";
import { notFound } from "next/navigation";
import { may } from "#application/permission";
import { type ProductOfShed } from "#application/products/list-products";
import { listMovements, type Movement } from "#application/stock/list-movements";
import { listStock, type LotOfStock, type StockOfProduct } from "#application/stock/list-stock";
import { type DeliveryOfProduct, readPrices } from "#application/stock/read-prices";
import { type PriceOfLot } from "#domain/stock/cost-of-product";
import { type Role } from "#domain/crew/role";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { stockInWords } from "#domain/stock/container-words";
import { type PostingKind } from "#domain/stock/posting";
import { LinkButton } from "#ui/button";
import { Code } from "#ui/code";
import { Dialog } from "#ui/dialog.client";
import { EmptyState } from "#ui/empty-state";
import { Finding } from "#ui/finding";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { JumpLinks, Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { PressForm } from "../../../action-form.client";
import { asMember, memberOfPage } from "../../../session";
import { LabelIsTheLaw } from "../label-is-the-law";
import { lotWords, onHandWords, priceWords } from "../stock-words";
import { retireProductAction } from "./action";
import { LabelLines } from "./label-lines";
import { productNameOfPage, productOfPage, type ProductPageProps } from "./product-of-page";
import { WhatWasPaid } from "./what-was-paid";

const SECTIONS = [
  { id: "on-hand", name: "On hand" },
  { id: "prices", name: "What was paid" },
  { id: "label", name: "Label" },
  { id: "movements", name: "Movements" },
];

const KIND_WORDS: Readonly<Record<PostingKind, string>> = {
  receive: "Received",
  move: "Moved",
  fill: "Filled",
  apply: "Put down",
  return: "Put back",
  lose: "Lost",
  count: "Counted",
};

export async function generateMetadata(props: ProductPageProps) {
  return { title: (await productNameOfPage(props)) ?? "Shed" };
}

export default async function ProductPage(props: ProductPageProps) {
  const { member, company } = await memberOfPage();
  const product = await productOfPage(props);
  const stock = await asMember(listStock, { productId: product.productId });
  const moved = await asMember(listMovements, { productId: product.productId });
  if (!stock.ok || !moved.ok) notFound();
  const prices = await pricesFor(member.role, product.productId);
  const [onHand] = stock.value.products;
  const base = `/shed/${product.productId}`;
  const isHere = product.retiredAt === null;
  const how = product.form === "granular" ? "Spread dry" : "Sprayed";
  return (
    <>
      <PageHead
        above={<Link href="/shed">Shed</Link>}
        title={product.name}
        sentence={isHere ? `${how}. On hand: ${onHand === undefined ? "none" : onHandWords(onHand)}.` : `Retired on ${formatShortDate(calendarDateIn(company.timeZone, product.retiredAt.getTime()))}.`}
        actions={
          isHere && (
            <Row fillOnPhone>
              {may(member.role, "stock/move-stock") && <LinkButton href={`/shed/move-stock?product=${product.productId}`}>Move</LinkButton>}
              {may(member.role, "stock/receive-delivery") && <LinkButton href={`/shed/receive-delivery?product=${product.productId}`}>Receive</LinkButton>}
            </Row>
          )
        }
      />
      <JumpLinks sections={SECTIONS.filter(({ id }) => id !== "prices" || prices !== undefined)} />
      <Section id="on-hand" name="On hand">
        <Lots stock={onHand} prices={prices?.ofLots} />
      </Section>
      {prices !== undefined && (
        <Section id="prices" name="What was paid">
          <WhatWasPaid deliveries={prices.deliveries} product={product} mayState={may(member.role, "stock/state-delivery-price")} timeZone={company.timeZone} />
        </Section>
      )}
      <Section id="label" name="Label">
        <Stack gap={5}>
          <Label product={product} role={member.role} base={base} timeZone={company.timeZone} />
          <LabelIsTheLaw />
        </Stack>
      </Section>
      <Section id="movements" name="Movements">
        <Movements movements={moved.value.movements} dimension={product.dimension} timeZone={company.timeZone} />
      </Section>
      {isHere && may(member.role, "products/retire-product") && (
        <Section id="retire" name="Out of use">
          <div>
            <Dialog open="Retire this product" title={`Retire ${product.name}?`} close="Leave it">
              <p>It can no longer be planned or received. Its records, its label and what is left of it stay.</p>
              <PressForm action={retireProductAction} fixed={{ productId: product.productId, version: String(product.version) }} whilePending="Retiring">
                Retire it
              </PressForm>
            </Dialog>
          </div>
        </Section>
      )}
    </>
  );
}

type Prices = ReadonlyMap<string, PriceOfLot>;

/** What each lot cost and each delivery, for those who may see it. */
async function pricesFor(role: Role, productId: string): Promise<{ readonly ofLots: Prices; readonly deliveries: readonly DeliveryOfProduct[] } | undefined> {
  if (!may(role, "stock/read-prices")) return undefined;
  const answer = await asMember(readPrices, { productId });
  return answer.ok ? { ofLots: new Map(answer.value.lots.map(({ lotId, price }) => [lotId, price])), deliveries: answer.value.deliveries } : undefined;
}

interface LotsProps {
  readonly stock: StockOfProduct | undefined;
  /** Undefined for whoever may not see them. */
  readonly prices: Prices | undefined;
}

function Lots({ stock, prices }: LotsProps) {
  return (
    <Table
      caption="Lots on hand, the first to expire first"
      captionSpoken
      columns={[
        { id: "lot", head: "Lot" },
        { id: "expires", head: "Expires" },
        { id: "where", head: "Where" },
        { id: "amount", head: "On hand" },
        ...(prices === undefined ? [] : [{ id: "price", head: "Paid for one" }]),
      ]}
      rows={(stock?.lots ?? []).map((lot) => ({
        id: lot.lotId,
        cells: {
          lot: <Code>{lot.number}</Code>,
          expires: lot.expiresOn === null ? "no expiry" : lot.isExpired ? <strong>expired {formatShortDate(lot.expiresOn)}</strong> : formatShortDate(lot.expiresOn),
          where: lot.at
            .map(({ name, amount }) => (lot.at.length === 1 ? name : `${name}: ${stockInWords(amount, stock?.dimension ?? "mass")}`))
            .join("; "),
          amount: lot.at.some(({ amount }) => amount < 0n) ? (
            <strong>{lotWords(lot, stock?.dimension ?? "mass", lot.amount)}: count it</strong>
          ) : (
            lotWords(lot, stock?.dimension ?? "mass", lot.amount)
          ),
          price: priceOf(lot, prices),
        },
      }))}
      empty={<EmptyState sentence="Nothing of it is on hand. Receive a delivery to have lots to plan with." />}
    />
  );
}

function priceOf({ lotId, container }: LotOfStock, prices: Prices | undefined): string {
  const price = prices?.get(lotId);
  return price === undefined ? "" : priceWords(price, container);
}

interface LabelProps {
  readonly product: ProductOfShed;
  readonly role: Role;
  readonly base: string;
  readonly timeZone: string;
}

function Label({ product, role, base, timeZone }: LabelProps) {
  const { latest, confirmed } = product.label;
  const mayEnter = product.retiredAt === null && may(role, "products/enter-label");
  if (latest === undefined) {
    return (
      <EmptyState
        sentence="Nobody has typed the label yet. Until it is typed and confirmed, nothing can be planned with this product."
        actions={mayEnter && <LinkButton kind="act" href={`${base}/enter-label`}>Enter the label</LinkButton>}
      />
    );
  }
  const day = (at: Date) => formatShortDate(calendarDateIn(timeZone, at.getTime()));
  const isConfirmed = latest.number === confirmed?.number;
  return (
    <Stack gap={5}>
      {isConfirmed ? (
        <p>
          Typed by {latest.enteredBy} on {day(latest.enteredAt)}, held against the container by <strong>{latest.confirmation?.by}</strong> on{" "}
          {latest.confirmation === undefined ? "" : day(latest.confirmation.at)}.
        </p>
      ) : (
        <Finding
          level="take-care"
          what={confirmed === undefined ? "This label is not confirmed." : "The latest entry is not confirmed."}
          figure={`Typed by ${latest.enteredBy} on ${day(latest.enteredAt)}.`}
          toDo={confirmed === undefined ? "Nothing can be planned with it before somebody has held every line against the container." : `Plans go by entry ${String(confirmed.number)} until then.`}
          source="house"
          actions={
            product.retiredAt === null &&
            may(role, "products/confirm-label") && (
              <LinkButton kind="act" href={`${base}/confirm-label`}>
                Read it back
              </LinkButton>
            )
          }
        />
      )}
      <Sheet>
        <LabelLines
          entry={latest}
          belowUse={(index) =>
            mayEnter && (
              <div>
                <LinkButton href={`${base}/enter-label?use=${String(index)}`}>Change this use</LinkButton>
              </div>
            )
          }
        />
      </Sheet>
      {mayEnter && (
        <div>
          <LinkButton href={`${base}/enter-label?use=${String(latest.text.uses.length)}`}>Add another use</LinkButton>
        </div>
      )}
    </Stack>
  );
}

interface MovementsProps {
  readonly movements: readonly Movement[];
  readonly dimension: ProductOfShed["dimension"];
  readonly timeZone: string;
}

function Movements({ movements, dimension, timeZone }: MovementsProps) {
  return (
    <Table
      caption="Movements, the newest first"
      captionSpoken
      dense
      columns={[
        { id: "day", head: "Day" },
        { id: "what", head: "What" },
        { id: "amount", head: "Amount", align: "figure" },
        { id: "lot", head: "Lot" },
        { id: "way", head: "From and to" },
        { id: "by", head: "By" },
      ]}
      rows={movements.map((one) => ({
        id: `${one.stockPostingId} ${String(one.line)}`,
        cells: {
          day: formatShortDate(calendarDateIn(timeZone, one.happenedAt.getTime())),
          what: one.note === null ? KIND_WORDS[one.kind] : `${KIND_WORDS[one.kind]}: ${one.note}`,
          amount: stockInWords(one.amount, dimension),
          lot: <Code>{one.lotNumber}</Code>,
          way: `${one.from} to ${one.to}`,
          by: one.personName,
        },
      }))}
      empty={<EmptyState sentence="Nothing has moved yet." />}
    />
  );
}
