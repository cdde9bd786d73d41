import { treatedWords } from "#domain/mixing/treated-area";
import { onSpotsWords } from "#domain/quantities/share";
import { type Working } from "#domain/foundation/working";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { type TicketSettings, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type GranularWorkings, hopperWords, passesOf } from "#domain/mixing/ticket-working-granular";
import { timeWords } from "#domain/mixing/ticket-working-time";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { Amount } from "#ui/amount";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { HowWorkedOut } from "#ui/working";
import { amountProps, becameWords, us } from "./mix-words";

interface GranularMixBlockProps {
  readonly mix: GranularMix;
  readonly treatment: TicketTreatment | undefined;
  readonly settings: TicketSettings;
  /** How its amounts come about; none for a treatment that the question no longer has. */
  readonly workings: GranularWorkings | undefined;
}

/** What to spread: the amount of each lawn, what goes on in each pass, the setting, and what the rate really becomes. */
export function GranularMixBlock({ mix, treatment, settings, workings }: GranularMixBlockProps) {
  const { productName, lawns, toolName, total, hopperFills } = mix;
  const bags = workings?.bags?.result;
  const twoPasses = mix.passes === "two-at-half-rate-crosswise";
  return (
    <Stack gap={4}>
      <Stack gap={1}>
        <h3>Spread {productName}</h3>
        {treatment !== undefined && (
          <Text size="small" tone="second">
            {treatment.reason}; planned at {treatment.rateText}
            {onSpotsWords(treatment.spot?.shareBasisPoints)}.
          </Text>
        )}
      </Stack>
      <Row gap="wide" align="top">
        {lawns.map(({ zoneId, letter, name, amount, marks }) => (
          <Amount key={zoneId} {...amountProps(amount, marks, toolName)} of={`${letter} ${name}`} />
        ))}
      </Row>
      <HowLawnsComeAbout mix={mix} workings={workings} />
      <KeyValueList
        pairs={[
          { key: "With", value: mix.gearName },
          { key: "Setting", value: <SettingWords mix={mix} /> },
          { key: "Passes", value: twoPasses ? "Two, crosswise, half of it in each" : "One, edges overlapping" },
          { key: "In all", value: bags === undefined ? us(total) : `${us(total)}: ${bags}` },
          ...(treatment === undefined ? [] : [{ key: "Time on the lawn", value: timeWords({ lawns, gear: treatment.gear, passes: passesOf(mix), settings }) }]),
          { key: "Hopper", value: hopperWords(hopperFills) },
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
            treated: treatedWords(lawn),
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

/** For each lawn the whole way from its area to what the rate becomes, and for the spread what it takes in all. */
function HowLawnsComeAbout({ mix, workings }: Pick<GranularMixBlockProps, "mix" | "workings">) {
  if (workings === undefined) return null;
  const { lawns, setting, total, bags, hopper, time } = workings;
  return (
    <div>
      {mix.lawns.map((lawn, index) => (
        <HowWorkedOut key={lawn.zoneId} of={`${us(lawn.amount)} for ${lawn.letter} ${lawn.name}`} workings={eachOf([lawns[index]?.treated, lawns[index]?.amount, lawns[index]?.perPass, lawns[index]?.rate])} />
      ))}
      <HowWorkedOut of={`${us(mix.total)} in all`} workings={eachOf([total, bags, hopper])} />
      <HowWorkedOut of={`the setting of ${mix.gearName}`} workings={eachOf([setting])} />
      <HowWorkedOut of="the time on the lawn" workings={eachOf([time])} />
    </div>
  );
}

function eachOf(workings: readonly (Working | undefined)[]): readonly Working[] {
  return workings.filter((working) => working !== undefined);
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
