import { listWords } from "#domain/foundation/list-words";
import { LEFT_IN_TANK, type SprayMix, type SprayRest, type TankLoad } from "#domain/mixing/spray-mix";
import { type TicketSettings, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type SprayWorkings } from "#domain/mixing/ticket-working-spray";
import { timeWords } from "#domain/mixing/ticket-working-time";
import { treatedWords } from "#domain/mixing/treated-area";
import { onSpotsWords } from "#domain/quantities/share";
import { formatRate } from "#domain/quantities/format-rate";
import { Amount } from "#ui/amount";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { HowWorkedOut } from "#ui/working";
import { amountProps, concentrationWords, us } from "./mix-words";

interface SprayMixBlockProps {
  readonly mix: SprayMix;
  readonly treatments: readonly TicketTreatment[];
  readonly settings: TicketSettings;
  /** How its amounts come about; none for treatments that the question no longer has. */
  readonly workings: SprayWorkings | undefined;
}

/** What to spray: each load with its water and products in mixing order, the steps, and what each lawn gets. */
export function SprayMixBlock({ mix, treatments, settings, workings }: SprayMixBlockProps) {
  const { products, loads, lawns, steps, carrier } = mix;
  const rest = restOf(mix);
  const planned = treatments.filter(({ line }) => products.some((product) => product.line === line));
  return (
    <Stack gap={4}>
      <Stack gap={1}>
        <h3>Spray {listWords(products.map(({ productName }) => productName))}</h3>
        <Text size="small" tone="second">
          {planned.map(({ label, reason, rateText, spot }) => `${label.productName} for ${reason}, planned at ${rateText}${onSpotsWords(spot?.shareBasisPoints)}.`).join(" ")}
        </Text>
      </Stack>
      {loads.map((load) => (
        <LoadBlock key={load.number} load={load} mix={mix} workings={workings} />
      ))}
      <Stack gap={2}>
        <h4>In this order</h4>
        <ol>
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        {workings !== undefined && (
          <div>
            <HowWorkedOut of="the order" workings={[workings.order]} />
            <HowWorkedOut of="half of the water" workings={[workings.half]} />
          </div>
        )}
      </Stack>
      <KeyValueList
        pairs={[
          { key: "With", value: mix.gearName },
          { key: "Puts out", value: `${formatRate(carrier.rate, "us")}; ${carrier.words}` },
          ...planned.slice(0, 1).map(({ gear }) => ({ key: "Time on the lawn", value: timeWords({ lawns, gear, passes: 1, settings }) })),
          { key: "Finished spray in all", value: us(mix.finished) },
          ...products.map(({ line, productName, concentration, total }) => ({ key: productName, value: `${concentrationWords(concentration)}; ${us(total)} in all${becomesWords(line, workings)}` })),
        ]}
      />
      <Table
        caption="Finished spray by lawn"
        captionSpoken
        columns={[
          { id: "lawn", head: "Lawn" },
          { id: "treated", head: "Treated", align: "figure" },
          { id: "finished", head: "Finished spray", align: "figure" },
          ...products.map(({ line, productName }) => ({ id: String(line), head: productName, align: "figure" as const })),
        ]}
        rows={[
          ...lawns.map((lawn) => ({ id: lawn.zoneId, cells: { lawn: `${lawn.letter} ${lawn.name}`, treated: treatedWords(lawn), ...amountsOf(lawn) } })),
          ...(rest === undefined ? [] : [{ id: "rest", cells: { lawn: LEFT_IN_TANK, treated: "–", ...amountsOf(rest) } }]),
        ]}
      />
      {workings !== undefined && <HowSprayComesAbout mix={mix} workings={workings} />}
    </Stack>
  );
}

/** What is left in the tank, where anything is. */
function restOf({ rest }: SprayMix): SprayRest | undefined {
  return rest === undefined || rest.finished.amount === 0n ? undefined : rest;
}

function amountsOf({ finished, products }: SprayRest): Readonly<Record<string, string>> {
  return { finished: us(finished), ...Object.fromEntries(products.map(({ line, amount }) => [String(line), us(amount)])) };
}

/** What the rate really becomes, where its working is there to say it. */
function becomesWords(line: number, workings: SprayWorkings | undefined): string {
  const becomes = workings?.products.find((product) => product.line === line)?.rate.result;
  return becomes === undefined ? "" : `, which is ${becomes}`;
}

/** What the spray takes in all, product by product, and for each lawn its share. */
function HowSprayComesAbout({ mix, workings }: { readonly mix: SprayMix; readonly workings: SprayWorkings }) {
  return (
    <div>
      <HowWorkedOut of={`${us(mix.finished)} in all`} workings={[...workings.lawns.map(({ treated }) => treated), workings.carrier, workings.finished]} />
      {workings.time !== undefined && <HowWorkedOut of="the time on the lawn" workings={[workings.time]} />}
      {mix.products.map(({ line, productName, total }) => (
        <HowWorkedOut
          key={line}
          of={`${us(total)} of ${productName} in all`}
          workings={workings.products.filter((product) => product.line === line).flatMap((product) => [product.concentration, product.total, product.rate])}
        />
      ))}
      {mix.lawns.map((lawn) => (
        <HowWorkedOut
          key={lawn.zoneId}
          of={`${us(lawn.finished)} for ${lawn.letter} ${lawn.name}`}
          workings={workings.lawns.filter(({ zoneId }) => zoneId === lawn.zoneId).flatMap(({ finished, products }) => [finished, ...products.map(({ working }) => working)])}
        />
      ))}
      {workings.rest !== undefined && <HowWorkedOut of="what is left in the tank" workings={[workings.rest.finished, ...workings.rest.products.map(({ working }) => working)]} />}
    </div>
  );
}

interface LoadBlockProps {
  readonly load: TankLoad;
  readonly mix: SprayMix;
  readonly workings: SprayWorkings | undefined;
}

function LoadBlock({ load, mix, workings }: LoadBlockProps) {
  const own = (workings?.loads ?? []).filter(({ number }) => number === load.number);
  const name = mix.loads.length === 1 ? `One load of ${us(load.finished)}` : `Load ${String(load.number)} of ${String(mix.loads.length)}, ${us(load.finished)}`;
  return (
    <Stack gap={2}>
      <h4>{name}</h4>
      <Row gap="wide" align="top">
        <Amount {...amountOfWater(load)} of="Water in all" tool="by the tank’s gauge or the meter" />
        {load.products.map(({ line, amount, marks }) => {
          const product = mix.products.find((one) => one.line === line);
          return <Amount key={line} {...amountProps(amount, marks, product?.toolName ?? null)} of={product?.productName ?? ""} />;
        })}
      </Row>
      <HowWorkedOut
        of={mix.loads.length === 1 ? "the load" : `load ${String(load.number)}`}
        workings={own.flatMap(({ finished, products, water }) => [finished, ...products.map(({ working }) => working), water])}
      />
    </Stack>
  );
}

function amountOfWater({ water }: TankLoad) {
  const { figure, unit } = amountProps(water, null, null);
  return { figure, unit };
}
