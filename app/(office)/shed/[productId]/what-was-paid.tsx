import Link from "next/link";
import { type ProductOfShed } from "#application/products/list-products";
import { type DeliveryOfProduct, type StatedPrice } from "#application/stock/read-prices";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { amountInContainers, type Container } from "#domain/stock/container-words";
import { Code } from "#ui/code";
import { EmptyState } from "#ui/empty-state";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { paidWords } from "../stock-words";

interface Props {
  readonly deliveries: readonly DeliveryOfProduct[];
  readonly product: ProductOfShed;
  readonly mayState: boolean;
  readonly timeZone: string;
}

/** The deliveries of a product with what counts as paid for each, and everything that was said of it. */
export function WhatWasPaid({ deliveries, product, mayState, timeZone }: Props) {
  return (
    <Table
      caption="Deliveries and what was paid, the newest first"
      captionSpoken
      columns={[
        { id: "received", head: "Received" },
        { id: "lot", head: "Lot" },
        { id: "amount", head: "What came" },
        { id: "paid", head: "Paid for one" },
        { id: "said", head: "Who said so" },
        ...(mayState ? [{ id: "acts", head: "Change" }] : []),
      ]}
      rows={deliveries.map((delivery) => {
        const { stockPostingId, line, receivedAt, lotNumber, container, containerSize, amount, paidPerContainerCents, statements } = delivery;
        return {
          id: `${stockPostingId} ${String(line)}`,
          cells: {
            received: formatShortDate(calendarDateIn(timeZone, receivedAt.getTime())),
            lot: <Code>{lotNumber}</Code>,
            amount: amountInContainers(amount, container, { dimension: product.dimension, amount: containerSize }),
            paid: paidPerContainerCents === null ? <strong>not on file</strong> : paidWords(paidPerContainerCents, container),
            said: (
              <Stack gap={1}>
                {statements.toReversed().map((statement) => (
                  <Text key={statement.number} size="small">
                    {statementWords(statement, container, timeZone)}
                  </Text>
                ))}
              </Stack>
            ),
            acts: (
              <Link href={`/shed/${product.productId}/state-delivery-price?delivery=${stockPostingId}&line=${String(line)}`} prefetch={false}>
                Say what was paid
              </Link>
            ),
          },
        };
      })}
      empty={<EmptyState sentence="Nothing of it was ever received, so nothing was paid. Receive a delivery, with its price or without." />}
    />
  );
}

/** "Apr 14, 2026, Rowan Ash: $38.50 a bag. Invoice 1182" */
function statementWords({ paidPerContainerCents, said, statedAt, statedBy, number }: StatedPrice, container: Container, timeZone: string): string {
  const day = formatShortDate(calendarDateIn(timeZone, statedAt.getTime()));
  const words = `${day}, ${statedBy}${number === 0 ? ", with the delivery" : ""}: ${paidWords(paidPerContainerCents, container)}.`;
  return said === null ? words : `${words} ${said}`;
}
