import Link from "next/link";
import { listEquipment } from "#application/equipment/list-equipment";
import { type VehicleOnFile } from "#application/equipment/gear-on-file";
import { house } from "#application/house";
import { may } from "#application/permission";
import { listStock } from "#application/stock/list-stock";
import { type VisitOnFile } from "#application/visits/read-visit";
import { heldOf } from "#application/visits/visit-ticket";
import { onSpotsWords } from "#domain/quantities/share";
import { type Role } from "#domain/crew/role";
import { calendarDateIn, formatLongDate, formatShortDate } from "#domain/foundation/calendar-date";
import { LinkButton } from "#ui/button";
import { clockWords } from "#domain/foundation/clock-words";
import { KeyValueList } from "#ui/key-value-list";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { JumpLinks, Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { VisitMark } from "#ui/visit-mark";
import { asMember } from "../../../session";
import { truckWords } from "../../crew/gear/gear-words";
import { pageFor } from "../../page-for";
import { AftercareOfLawnsBlock } from "./aftercare-of-lawns";
import { CostOfProducts } from "./cost-of-products";
import { DeliveredActives, DeliveredNutrients } from "./delivered-nutrients";
import { FindingsOfVisit } from "./findings-of-visit";
import { TicketSection } from "./papers-of-visit";
import { SeenOnLawns } from "./seen-on-lawns";
import { LooksOfVisit, MixesOfVisit, StockOfVisit } from "./ticket-of-visit";
import { titleOfVisit, type VisitPageProps, visitWithCost } from "./visit-of-page";
import { standingOf } from "./visit-words";
import { YearAfterVisit } from "./year-after-visit";

export async function generateMetadata(props: VisitPageProps) {
  return { title: await titleOfVisit(props) };
}

/** One visit, in order of time: where, what was seen, what was found, what to put down, what comes after, its papers and its record. */
export default async function VisitPage(props: VisitPageProps) {
  const { member, company } = await pageFor("visits/read-visit");
  const found = await visitWithCost(props);
  const gear = await asMember(listEquipment, {});
  const stock = await asMember(listStock, {});
  const { visit, outcome, record } = found;
  const { timeZone } = company;
  const today = calendarDateIn(timeZone, house().now().getTime());
  const trucks = gear.ok ? gear.value.vehicles : [];
  const mayComplete = may(member.role, "register/complete-visit") && record === undefined && visit.state === "planned";
  const isTreated = visit.treatments.length > 0;
  return (
    <>
      <PageHead
        above={
          <Link href={`/properties/${visit.property.propertyId}`} prefetch={false}>
            {visit.client.name}
          </Link>
        }
        title={visit.property.street}
        sentence={<HeadSentence found={found} trucks={trucks} />}
        actions={mayComplete && <LinkButton href={`/visits/${visit.visitId}/complete`}>Complete the visit</LinkButton>}
      />
      <JumpLinks sections={SECTIONS.filter(({ id }) => isTreated || id !== "aftercare")} />
      <Stack gap={6}>
        <Section id="where" name="What and where" aside={<VisitMark state={standingOf(visit, today)} size={24} />}>
          <WhereWords found={found} trucks={trucks} />
        </Section>
        <Section id="seen" name="Seen on the lawns">
          <SeenOnLawns found={found} mayLook={may(member.role, "visits/look-at-lawns")} />
        </Section>
        <Section id="findings" name="Findings" aside={countWords(found)}>
          <FindingsOfVisit found={found} timeZone={timeZone} today={today} mayAnswer={may(member.role, "visits/answer-hold")} />
        </Section>
        <Section id="put-down" name={isTreated ? "What to put down" : "What to do"}>
          <Stack gap={5}>
            <LooksOfVisit found={found} />
            {visit.state === "planned" && record === undefined && <TasksToChange found={found} role={member.role} />}
            {outcome.ok && (
              <>
                <MixesOfVisit ticket={outcome.value} stock={stock.ok ? stock.value.products : []} />
                <DeliveredNutrients question={outcome.value.question} ticket={outcome.value.ticket} />
                <DeliveredActives question={outcome.value.question} ticket={outcome.value.ticket} />
                <YearAfterVisit visit={visit} />
                <StockOfVisit ticket={outcome.value} />
              </>
            )}
            <CostOfProducts cost={found.cost} />
            {!outcome.ok && isTreated && <p>{outcome.refusal.refusal.sentence}</p>}
          </Stack>
        </Section>
        {isTreated && (
          <Section id="aftercare" name="Aftercare">
            <Stack gap={5}>
              {outcome.ok && outcome.value.aftercare.map((aftercare) => <AftercareOfLawnsBlock key={aftercare.lawnNames.join(" ")} aftercare={aftercare} />)}
              {!outcome.ok && <p>What comes after is worked out with the mix ticket.</p>}
            </Stack>
          </Section>
        )}
        <Section id="mix-ticket" name="Mix ticket and papers">
          <TicketSection found={found} timeZone={timeZone} mayIssue={may(member.role, "visits/issue-mix-ticket")} />
        </Section>
        <Section id="record" name="Record">
          <RecordOfVisit found={found} mayRead={may(member.role, "register/read-record")} mayComplete={mayComplete} />
        </Section>
      </Stack>
    </>
  );
}

/** Links to change each task, and to call the visit off, for whoever may. */
function TasksToChange({ found: { visit }, role }: { readonly found: VisitOnFile; readonly role: Role }) {
  if (!may(role, "visits/change-visit-task")) return null;
  return (
    <Row gap="wide">
      {visit.treatments.map(({ line, rateText, spot, reason }) => (
        <Link key={line} href={`/visits/${visit.visitId}/change-task/${String(line)}`} prefetch={false}>
          Change {rateText}
          {onSpotsWords(spot?.shareBasisPoints)} for {reason}
        </Link>
      ))}
      {visit.looks.map(({ line, reason }) => (
        <Link key={line} href={`/visits/${visit.visitId}/change-task/${String(line)}`} prefetch={false}>
          Change where to look: {reason}
        </Link>
      ))}
      <Link href={`/visits/${visit.visitId}/call-off`} prefetch={false}>
        Call the visit off
      </Link>
    </Row>
  );
}

const SECTIONS = [
  { id: "where", name: "What and where" },
  { id: "seen", name: "Seen on the lawns" },
  { id: "findings", name: "Findings" },
  { id: "put-down", name: "What to put down" },
  { id: "aftercare", name: "Aftercare" },
  { id: "mix-ticket", name: "Mix ticket and papers" },
  { id: "record", name: "Record" },
] as const;

interface WithTrucks {
  readonly found: VisitOnFile;
  readonly trucks: readonly VehicleOnFile[];
}

function dayWords({ found: { visit }, trucks }: WithTrucks): string {
  const { stop } = visit;
  if (stop === null) return "On no day";
  const truck = trucks.find(({ vehicleId }) => vehicleId === stop.vehicleId);
  const arrives = stop.arrivesAtMinute === null ? "" : `, about ${clockWords(stop.arrivesAtMinute)}`;
  return `${formatLongDate(stop.date)}${arrives}${truck === undefined ? "" : `, ${truckWords(truck)}`}`;
}

function HeadSentence({ found, trucks }: WithTrucks) {
  const { visit, openHolds } = found;
  return (
    <>
      {visit.name}. {dayWords({ found, trucks })}.{" "}
      {visit.state === "planned" && openHolds.length > 0 && <strong>{openHolds.length === 1 ? "One hold stands." : `${String(openHolds.length)} holds stand.`}</strong>}
    </>
  );
}

function WhereWords({ found, trucks }: WithTrucks) {
  const { property, client, opensOn, closesOn, window, serviceMinutes, treatments } = found.visit;
  const { outcome } = found;
  return (
    <KeyValueList
      pairs={[
        { key: "Address", value: `${property.street}, ${property.city}, ${property.state} ${property.zip}` },
        { key: "Customer", value: client.phone === null ? client.name : `${client.name}, ${client.phone}` },
        { key: "Day", value: dayWords({ found, trucks }) },
        { key: "Its window", value: `${formatShortDate(opensOn)} to ${formatShortDate(closesOn)}` },
        ...(window === null ? [] : [{ key: "Customer’s hours", value: `${clockWords(window.fromMinute)} to ${clockWords(window.untilMinute)}` }]),
        { key: "Work", value: `${treatments.length === 0 ? "A look" : "Applied"}, about ${String(serviceMinutes)} min` },
        ...(outcome.ok ? [{ key: "Applies", value: applicatorWords(found) }] : []),
        ...(property.dogNote === null ? [] : [{ key: "Dog", value: property.dogNote }]),
        ...(property.accessNote === null ? [] : [{ key: "Access", value: property.accessNote }]),
      ]}
    />
  );
}

function applicatorWords({ outcome }: VisitOnFile): string {
  if (!outcome.ok) return "";
  const { application, license } = outcome.value;
  return license === null ? `${application.operatorName}, without a license of this state` : `${application.operatorName}, ${license.state} ${license.number}`;
}

function countWords(found: VisitOnFile): string {
  const { findings } = heldOf(found.outcome);
  const cares = findings.filter(({ level }) => level === "take-care").length;
  const holds = found.openHolds.length;
  return `${holds === 1 ? "1 hold" : `${String(holds)} holds`}, ${String(cares)} to take care of`;
}

interface RecordOfVisitProps {
  readonly found: VisitOnFile;
  readonly mayRead: boolean;
  readonly mayComplete: boolean;
}

function RecordOfVisit({ found: { record, visit, secondLook }, mayRead, mayComplete }: RecordOfVisitProps) {
  return (
    <Stack gap={3}>
      {record === undefined ? (
        <p>{visit.state === "planned" ? "No record is written yet." : "This visit is over without a record."}</p>
      ) : (
        <p>{mayRead ? <Link href={`/register/${record.registerEntryId}`} prefetch={false}>{`Record ${String(record.number)}`}</Link> : `Record ${String(record.number)}`} is written.</p>
      )}
      {mayComplete && (
        <div>
          <LinkButton href={`/visits/${visit.visitId}/complete`}>Complete the visit</LinkButton>
        </div>
      )}
      {secondLook !== undefined && (
        <p>
          <Link href={`/visits/${secondLook.visitId}`} prefetch={false}>
            Second look
          </Link>{" "}
          from {formatLongDate(secondLook.opensOn)}.
        </p>
      )}
      {visit.looksAgainAtId !== null && (
        <p>
          This is a second look at{" "}
          <Link href={`/visits/${visit.looksAgainAtId}`} prefetch={false}>
            an earlier visit
          </Link>
          .
        </p>
      )}
    </Stack>
  );
}
