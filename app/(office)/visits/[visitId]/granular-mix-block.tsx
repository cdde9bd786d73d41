import { type GranularMix } from "#domain/mixing/granular-mix";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { Amount } from "#ui/amount";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { amountProps, becameWords, timeWords, us } from "./mix-words";

interface GranularMixBlockProps {
  readonly mix: GranularMix;
  readonly treatment: TicketTreatment | undefined;
  /** The whole amount in bags, where it is known what a bag holds. */
  readonly bagWords: string | undefined;
}

/** What to spread: the amount of each lawn, what goes on in each pass, the setting, and what the rate really becomes. */
export function GranularMixBlock({ mix, treatment, bagWords }: GranularMixBlockProps) {
  const { productName, lawns, toolName, total, hopperFills } = mix;
  const twoPasses = mix.passes === "two-at-half-rate-crosswise";
  return (
    <Stack gap={4}>
      <Stack gap={1}>
        <h3>Spread {productName}</h3>
        {treatment !== undefined && (
          <Text size="small" tone="second">
            {treatment.reason}; planned at {treatment.rateText}.
          </Text>
        )}
      </Stack>
      <Row gap="wide" align="top">
        {lawns.map(({ zoneId, letter, name, amount, marks }) => (
          <Amount key={zoneId} {...amountProps(amount, marks, toolName)} of={`${letter} ${name}`} />
        ))}
      </Row>
      <KeyValueList
        pairs={[
          { key: "With", value: mix.gearName },
          { key: "Setting", value: <SettingWords mix={mix} /> },
          { key: "Passes", value: twoPasses ? "Two, crosswise, half of it in each" : "One, edges overlapping" },
          { key: "In all", value: bagWords === undefined ? us(total) : `${us(total)}: ${bagWords}` },
          ...(treatment === undefined ? [] : [{ key: "Time on the lawn", value: timeWords(lawns, treatment.gear, twoPasses ? 2 : 1) }]),
          { key: "Hopper", value: hopperFills === 1n ? "Filled once" : `Filled ${String(hopperFills)} times at least` },
        ]}
      />
      <Table
        caption={`${productName} by lawn`}
        captionSpoken
        columns={[
          { id: "lawn", head: "Lawn" },
          { id: "treated", head: "Treated", align: "figure" },
          { id: "kept", head: "Kept clear", align: "figure" },
          { id: "amount", head: "Amount", align: "figure" },
          { id: "pass", head: "Each pass", align: "figure" },
          { id: "rate", head: "The rate becomes", align: "figure" },
        ]}
        rows={lawns.map((lawn) => ({
          id: lawn.zoneId,
          cells: {
            lawn: `${lawn.letter} ${lawn.name}`,
            treated: us(lawn.treatedArea),
            kept: keptClearWords(lawn),
            amount: us(lawn.amount),
            pass: formatQuantity(lawn.perPass, "us"),
            rate: becameWords(lawn.rate),
          },
        }))}
      />
    </Stack>
  );
}

function SettingWords({ mix: { setting } }: { readonly mix: GranularMix }) {
  if (setting === "not-calibrated") return "No setting is on file: nobody has calibrated it with this product.";
  return (
    <>
      <strong>{setting.setting}</strong>, puts down {formatRate(setting.rate, "us")} in a pass; {setting.words}
    </>
  );
}

function keptClearWords({ keptClear }: GranularMix["lawns"][number]): string {
  return keptClear.amount === 0n ? "" : us(keptClear);
}
