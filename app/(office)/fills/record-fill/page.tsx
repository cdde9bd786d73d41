import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { listFills, type TankOnFile } from "#application/fills/list-fills";
import { readFillOfDay } from "#application/fills/read-fill-of-day";
import { type FillToMake, readPlannedFill } from "#application/fills/read-planned-fill";
import { type VisitWithoutFill } from "#application/fills/sprays-of-visits";
import { house } from "#application/house";
import { listStock, type StockOfProduct } from "#application/stock/list-stock";
import { listWords } from "#domain/foundation/list-words";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { gallonsWords, notRecordedWords } from "#domain/mixing/tank-reading";
import { type Quantity, zero } from "#domain/quantities/quantity";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Amount } from "#ui/amount";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { VisitFinding } from "../../visits/visit-finding";
import { amountProps, us } from "../../visits/[visitId]/mix-words";
import { type ProductAsked, RecordFillForm } from "./record-fill-form.client";

export const metadata: Metadata = { title: "Record a fill" };

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const ID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/u;

/** The visits of the address: ids after ?visits=, apart by commas or spaces. */
function visitsAsked(value: string | readonly string[] | undefined): readonly string[] {
  return typeof value === "string" ? [...new Set(value.split(/[\s,]+/u).filter((part) => ID.test(part)))] : [];
}

type Asked = Awaited<Props["searchParams"]>;

interface FillsAsked {
  readonly fills: readonly FillToMake[];
  readonly without: readonly VisitWithoutFill[];
}

/** The fill that a truck's day has under a letter, or what some visits take; "gone": the day's plan has no such fill any more. */
async function fillsAsked(asked: Asked): Promise<FillsAsked | { readonly gone: string; readonly date: string }> {
  const { day: routeDayId, fill: letter } = asked;
  const visitIds = [...visitsAsked(asked["visits"])];
  if (typeof routeDayId === "string" && typeof letter === "string") {
    const ofDay = await asMember(readFillOfDay, { routeDayId, letter, visitIds });
    if (!ofDay.ok) notFound();
    const { fill, date } = ofDay.value;
    return fill === null ? { gone: letter, date } : { fills: [fill], without: [] };
  }
  const planned = await asMember(readPlannedFill, { visitIds });
  if (!planned.ok) notFound();
  const { fills, without } = planned.value;
  return { fills: fills.filter((one) => asked["mix"] === undefined || asked["mix"] === mixKey(one)), without };
}

/** The products of a mix in one word of an address: a visit may have two mixes. */
function mixKey({ plan }: FillToMake): string {
  return plan.products.map(({ productId }) => productId).toSorted().join(",");
}

/** What really went into a tank, for some visits or for none. */
export default async function RecordFillPage({ searchParams }: Props) {
  const { company } = await pageFor("fills/record-fill");
  const planned = await fillsAsked(await searchParams);
  if ("gone" in planned) return <FillIsGone letter={planned.gone} date={planned.date} />;
  const gear = await asMember(listEquipment, {});
  const stock = await asMember(listStock, {});
  const books = await asMember(listFills, {});
  if (!gear.ok || !stock.ok || !books.ok) notFound();
  const { fills, without } = planned;
  const [fill, ...others] = fills;
  const tanks = gear.value.equipment.filter((piece) => isSprayer(piece.kind) && !piece.isStoodDown);
  const asked = fill === undefined ? (tanks.length === 1 ? tanks[0]?.equipmentId : undefined) : fill.equipmentId;
  const rests = books.value.tanks.map(restOf);
  const rest = rests.find(({ equipmentId }) => equipmentId === asked);
  const today = calendarDateIn(company.timeZone, house().now().getTime());
  const products = fill === undefined ? productsOnHand(stock.value.products) : productsPlanned(fill);
  const vehicleId = tanks.find(({ equipmentId }) => equipmentId === fill?.equipmentId)?.vehicleId;
  const from = stock.value.places.some(({ value }) => value === `vehicle:${vehicleId ?? ""}`) && vehicleId !== null ? `vehicle:${vehicleId ?? ""}` : "shop";
  return (
    <>
      <PageHead
        above={<Link href="/fills">Fills</Link>}
        title="Record a fill"
        sentence={fill === undefined ? "What really went into a tank." : `${fill.gearName}, for ${listWords(fill.visits.map(({ street }) => street))}.`}
      />
      <Stack gap={5}>
        {others.length > 0 && <OtherFills fills={fills} />}
        {without.length > 0 && <WithoutFill visits={without} />}
        {fill !== undefined && others.length === 0 && <PlannedFillBlock fill={fill} />}
        {others.length === 0 && tanks.length > 0 && products.length > 0 && (
          <Sheet>
            <RecordFillForm
              fixed={{
                requestId: house().newId(),
                visitIds: (fill?.plan.visitIds ?? []).join(" "),
                ...(asked === undefined ? {} : { equipmentId: asked }),
              }}
              values={{ filledOn: today, from, ...(rest === undefined || rest.openStreets.length > 0 ? {} : { gaugeBefore: gallonsWords(rest.left) }) }}
              tanks={fill === undefined ? tanks.map(({ equipmentId, name }) => ({ value: equipmentId, word: name })) : []}
              places={stock.value.places.filter(({ value }) => !value.startsWith("equipment:")).map(({ value, name }) => ({ value, word: name }))}
              products={products}
              beforeHint={beforeHint(rest === undefined ? rests : [rest])}
              afterHint={fill === undefined ? "With its unit, such as 60 gal. What went in is the difference." : `Planned: ${us(fill.plan.finished)} more than before. Write what it really shows.`}
            />
          </Sheet>
        )}
        {tanks.length === 0 && <EmptyState sentence="No sprayer is on file, so there is no tank to fill." actions={<LinkButton href="/crew/gear">Trucks and gear</LinkButton>} />}
        {tanks.length > 0 && products.length === 0 && (
          <EmptyState sentence="No product is on hand that could go in." actions={<LinkButton href="/shed/receive-delivery">Receive a delivery</LinkButton>} />
        )}
      </Stack>
    </>
  );
}

interface RestOfTank {
  readonly equipmentId: string;
  readonly name: string;
  readonly left: Quantity<"volume">;
  /** The streets of visits whose records would take from it: until then nobody knows from the books what it holds. */
  readonly openStreets: readonly string[];
}

/** What a tank has left by the books; nothing where it was cleaned out since. */
function restOf({ equipmentId, name, left, isClean, openStreets }: TankOnFile): RestOfTank {
  return { equipmentId, name, left: isClean ? zero("volume") : left, openStreets: isClean ? [] : openStreets };
}

function beforeHint(rests: readonly RestOfTank[]): string {
  const words = listWords(rests.map(({ name, left }) => `${left.amount === 0n ? "nothing" : gallonsWords(left)} in ${name}`));
  const open = rests.flatMap(({ openStreets }) => openStreets);
  const lacking = open.length === 0 ? "" : `, without what was sprayed since at visits of its fills. ${notRecordedWords(open)}`;
  return `The books have ${words}${lacking === "" ? "." : lacking} Write what it really shows; where pump and hose are full of spray, add what they hold here and after filling.`;
}

/** Another plan than that of the fill is not shown for it. */
function FillIsGone({ letter, date }: { readonly letter: string; readonly date: string }) {
  return (
    <>
      <PageHead above={<Link href="/fills">Fills</Link>} title="Record a fill" />
      <EmptyState
        sentence={`The day's tank plan has changed: fill ${letter} is not in it as it was. A fill that was recorded since has moved the letters of the others up.`}
        actions={
          <>
            <LinkButton href={`/today?date=${date}`}>Look at the day</LinkButton> <LinkButton href="/fills/record-fill">Record a fill that is in no plan</LinkButton>
          </>
        }
      />
    </>
  );
}

function productsPlanned({ plan }: FillToMake): readonly ProductAsked[] {
  return plan.products.map(({ productId, productName, amount }) => ({ productId, name: productName, hint: `Planned: ${us(amount)}. Write what really went in, with its unit.` }));
}

function productsOnHand(stock: readonly StockOfProduct[]): readonly ProductAsked[] {
  return stock
    .filter(({ lots }) => lots.length > 0)
    .map(({ productId, name, dimension }) => ({ productId, name, hint: dimension === "mass" ? "By weight, with its unit; empty where none went in." : "By volume, with its unit; empty where none went in." }));
}

function PlannedFillBlock({ fill }: { readonly fill: FillToMake }) {
  return (
    <Stack gap={4}>
      <h2>Planned</h2>
      {fill.findings.map((finding) => (
        <VisitFinding key={finding.what} finding={finding} />
      ))}
      <Row gap="wide" align="top">
        <Amount {...amountOf(fill)} of="Finished spray" tool={`${fill.gearName}, holds ${us(fill.capacity)}`} />
        {fill.plan.products.map(({ productId, productName, amount, toolName, marks }) => (
          <Amount key={productId} {...amountProps(amount, marks, toolName)} of={productName} />
        ))}
      </Row>
    </Stack>
  );
}

function amountOf({ plan }: FillToMake) {
  const { figure, unit } = amountProps(plan.finished, null, null);
  return { figure, unit };
}

function OtherFills({ fills }: { readonly fills: readonly FillToMake[] }) {
  return (
    <Stack gap={4}>
      <p>
        <strong>These visits do not share one mix.</strong> Each mix is a fill of its own: choose the one that was filled.
      </p>
      {fills.map((fill) => (
        <div key={`${fill.equipmentId} ${mixKey(fill)} ${fill.plan.visitIds.join(" ")}`}>
          <LinkButton
            href={`/fills/record-fill?visits=${fill.plan.visitIds.join(",")}&mix=${mixKey(fill)}`}
            second={`${us(fill.plan.finished)} in ${fill.gearName}, for ${listWords(fill.visits.map(({ street }) => street))}`}
          >
            {listWords(fill.plan.products.map(({ productName }) => productName))}
          </LinkButton>
        </div>
      ))}
    </Stack>
  );
}

function WithoutFill({ visits }: { readonly visits: readonly VisitWithoutFill[] }) {
  return (
    <ul>
      {visits.map(({ visitId, street, why }) => (
        <li key={visitId}>
          <Link href={`/visits/${visitId}`} prefetch={false}>
            {street}
          </Link>
          : {why}
        </li>
      ))}
    </ul>
  );
}
