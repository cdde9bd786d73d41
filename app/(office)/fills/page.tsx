import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { type DrawOfFill, type FillOnFile, listFills, type TankOnFile } from "#application/fills/list-fills";
import { may } from "#application/permission";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { besideBooksWords, gallonsWords } from "#domain/mixing/tank-reading";
import { localTimeAt } from "#domain/weather/local-hours";
import { sum } from "#domain/quantities/quantity";
import { LinkButton } from "#ui/button";
import { Disclosure } from "#ui/disclosure";
import { EmptyState } from "#ui/empty-state";
import { MarkedWords } from "#ui/marked-words";
import { PageHead } from "#ui/page-head";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { asMember } from "../../session";
import { pageFor } from "../page-for";
import { us } from "../visits/[visitId]/mix-words";
import { RECORD_CLEAN_OUT, RECORD_TANK_READING } from "../visits/hold-acts";
import { clockOf } from "../visits/[visitId]/visit-words";
import { VisitFinding } from "../visits/visit-finding";
import { TankReadings } from "./tank-readings";
import { movedWords, productsWords } from "./tank-words";

export const metadata: Metadata = { title: "Fills" };

/** The tanks: what is left in each, fill by fill, and who drew what. */
export default async function FillsPage() {
  const { member, company } = await pageFor("fills/list-fills");
  const answer = await asMember(listFills, {});
  if (!answer.ok) notFound();
  const { tanks } = answer.value;
  const holding = tanks.filter(({ left, isClean }) => left.amount > 0n && !isClean);
  const sentence =
    holding.length === 0 ? "Nothing is left in any tank." : holding.map(({ name, left }) => `${us(left)} left in ${name}.`).join(" ");
  return (
    <>
      <PageHead
        title="Fills"
        sentence={tanks.length === 0 ? undefined : sentence}
        actions={
          may(member.role, "fills/record-fill") &&
          tanks.length > 0 && (
            <>
              <LinkButton href="/fills/record-fill">Record a fill</LinkButton> <LinkButton href={RECORD_CLEAN_OUT}>Record a clean-out</LinkButton>{" "}
              <LinkButton href={RECORD_TANK_READING}>Write down what a tank holds</LinkButton>
            </>
          )
        }
      />
      {tanks.length === 0 && <EmptyState sentence="No sprayer is on file, so there is no tank to fill." actions={<LinkButton href="/crew/gear">Trucks and gear</LinkButton>} />}
      <Stack gap={6}>
        {tanks.map((tank) => (
          <TankSection key={tank.equipmentId} tank={tank} timeZone={company.timeZone} seesRecords={may(member.role, "register/read-record")} />
        ))}
      </Stack>
    </>
  );
}

interface TankSectionProps {
  readonly tank: TankOnFile;
  readonly timeZone: string;
  readonly seesRecords: boolean;
}

function TankSection({ tank, timeZone, seesRecords }: TankSectionProps) {
  const { equipmentId, name, capacity, holdUp, left, fills, isClean } = tank;
  const lines = holdUp === null ? "what pump and hose hold beyond that, nobody measured" : `pump and hose hold ${us(holdUp)} beyond that`;
  const [last, ...earlier] = fills;
  return (
    <Section id={`tank-${equipmentId}`} name={name} aside={isClean ? "cleaned out" : left.amount === 0n ? "nothing left" : `${us(left)} left in tank and lines`}>
      <Stack gap={5}>
        <Text size="small" tone="second">
          Holds {us(capacity)}; {lines}.
        </Text>
        <CleanOutLine tank={tank} timeZone={timeZone} />
        <TankReadings tank={tank} timeZone={timeZone} />
        {last === undefined ? <p>No fill of it is on record.</p> : <FillBlock fill={last} timeZone={timeZone} seesRecords={seesRecords} />}
        {earlier.filter(({ left: rest }) => rest.amount > 0n).map((fill) => (
          <FillBlock key={fill.fillId} fill={fill} timeZone={timeZone} seesRecords={seesRecords} />
        ))}
        <EarlierFills fills={earlier.filter(({ left: rest }) => rest.amount === 0n)} timeZone={timeZone} seesRecords={seesRecords} />
      </Stack>
    </Section>
  );
}

/** Whether the tank is clean for the next mix, and since when. */
function CleanOutLine({ tank: { equipmentId, name, cleanOut, movedByCleanOut, isClean, left, lastFillNumber }, timeZone }: { readonly tank: TankOnFile; readonly timeZone: string }) {
  const since = lastFillNumber === null ? "" : `Not cleaned out since fill ${String(lastFillNumber)}. `;
  const record = (
    <Link href={`${RECORD_CLEAN_OUT}?equipment=${equipmentId}`} prefetch={false} aria-label={`Record a clean-out of ${name}`}>
      Record a clean-out
    </Link>
  );
  if (cleanOut === null) {
    return (
      <p>
        {since === "" ? "No clean-out of it is on record." : since}{" "}
        {record}
      </p>
    );
  }
  const { cleanedOn, cleanedAt, doneBy, how, rinsate } = cleanOut;
  const when = `on ${formatShortDate(cleanedOn)} at ${clockOf(cleanedAt, timeZone)} by ${doneBy}`;
  const words = `${withoutFullStop(how)}; the rinsate went ${withoutFullStop(rinsate)}.`;
  const { out } = movedWords(movedByCleanOut);
  if (!isClean) {
    return (
      <p>
        <strong>{since.trim()}</strong> It was cleaned out last {when}: {words} {record}
      </p>
    );
  }
  return (
    <p>
      <strong>Cleaned out {when}</strong>: {words}
      {out !== "" && ` With it ${out} left the books.`}
      {left.amount > 0n && ` By the books ${us(left)} were in it before.`} {record}
    </p>
  );
}

function EarlierFills({ fills, timeZone, seesRecords }: { readonly fills: readonly FillOnFile[]; readonly timeZone: string; readonly seesRecords: boolean }) {
  if (fills.length === 0) return null;
  return (
    <Disclosure name={fills.length === 1 ? "1 earlier fill, used up" : `${String(fills.length)} earlier fills, used up`}>
      <Stack gap={5}>
        {fills.map((fill) => (
          <FillBlock key={fill.fillId} fill={fill} timeZone={timeZone} seesRecords={seesRecords} />
        ))}
      </Stack>
    </Disclosure>
  );
}

interface FillBlockProps {
  readonly fill: FillOnFile;
  readonly timeZone: string;
  readonly seesRecords: boolean;
}

function FillBlock({ fill, timeZone, seesRecords }: FillBlockProps) {
  const { number, filledOn, filledAt, filledBy, mixingPlace, finished, gauge, products, draws, left, leftOf, found, whenRecorded, findings } = fill;
  return (
    <Stack gap={3}>
      <h3 id={`fill-${String(number)}`}>Fill {number}</h3>
      <p>
        {us(finished)} with {products.map(({ name, amount }) => `${us(amount)} of ${name}`).join(" and ")}, filled {formatShortDate(filledOn)} at{" "}
        {clockOf(filledAt, timeZone)} by {filledBy}, {mixingPlace}.
        {gauge !== null && ` The tank held ${gallonsWords(gauge.before)} before, ${besideBooksWords(gauge.before, gauge.inTheBooks)}, and ${gallonsWords(gauge.after)} after.`}
      </p>
      {whenRecorded.length > 0 && (
        <Stack gap={3}>
          <p>When it was recorded:</p>
          {whenRecorded.map((finding) => (
            <VisitFinding key={`${finding.rule} ${finding.what}`} finding={finding} />
          ))}
        </Stack>
      )}
      <Table
        caption={`Drawn from fill ${String(number)}`}
        captionSpoken
        columns={[
          { id: "where", head: "Drawn at" },
          { id: "visit", head: "Visit" },
          { id: "record", head: "Record" },
          { id: "volume", head: "Drawn", align: "figure" },
          { id: "product", head: "Product in it" },
          { id: "how", head: "How" },
        ]}
        rows={draws.map((draw) => ({ id: draw.visitId, href: `/visits/${draw.visitId}`, cells: drawCells(draw, seesRecords) }))}
        empty={<p>Nothing was drawn from it yet.</p>}
      />
      <p>
        Drawn {us(sum("volume", draws.map(({ volume }) => volume)))} of {us(finished)}
        {found !== null && `, and ${found.left.amount === 0n ? "nothing" : us(found.left)} of it found on ${formatShortDate(localTimeAt(found.at.getTime(), timeZone).date)} at ${clockOf(found.at, timeZone)}, ${besideBooksWords(found.left, found.inTheBooks)}`}:{" "}
        <strong>{left.amount === 0n ? "nothing left" : `${us(left)} left`}</strong>
        {leftOf.length > 0 && `, with ${productsWords(leftOf)}`}.
      </p>
      {findings.map(({ rule, what, figure, toDo }) => (
        <p key={rule}>
          <MarkedWords level="take-care">
            {what} {figure} {toDo}
          </MarkedWords>
        </p>
      ))}
    </Stack>
  );
}

function drawCells({ street, visitName, recordNumber, registerEntryId, volume, isMeasured, products }: DrawOfFill, seesRecords: boolean) {
  return {
    where: street,
    visit: visitName,
    record: seesRecords ? (
      <Link href={`/register/${registerEntryId}`} prefetch={false}>
        {recordNumber}
      </Link>
    ) : (
      String(recordNumber)
    ),
    volume: us(volume),
    product: products.map(({ name, amount }) => `${us(amount)} ${name}`).join(" and "),
    how: isMeasured ? "measured" : "as planned, not measured",
  };
}
