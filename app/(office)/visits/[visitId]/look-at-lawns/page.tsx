import Link from "next/link";
import { house } from "#application/house";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { LOOK_FORM } from "#domain/mixing/site-checks";
import { localTimeAt } from "#domain/weather/local-hours";
import { EmptyState } from "#ui/empty-state";
import { LinkButton } from "#ui/button";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { crewChoices } from "../../../crew-choices";
import { pageFor } from "../../../page-for";
import { visitOfPage, type VisitPageProps } from "../visit-of-page";
import { lawnWords } from "../visit-words";
import { LookAtLawnsForm } from "./look-at-lawns-form.client";

export const metadata = { title: LOOK_FORM };

/** The crew's form of what blooms on the lawns of a visit and which were watered in, all of them at once. */
export default async function LookAtLawnsPage(props: VisitPageProps) {
  const { company } = await pageFor("visits/look-at-lawns");
  const { visit, seen } = await visitOfPage(props);
  const { people, own } = await crewChoices();
  const now = house().now().getTime();
  return (
    <>
      <PageHead
        above={
          <Link href={`/visits/${visit.visitId}`} prefetch={false}>
            {visit.property.street}
          </Link>
        }
        title={LOOK_FORM}
        sentence="Flowers of weeds, clover, the grass itself or anything else on the lawn, and that it was watered in. What is written down here is never changed; what is seen later is a look of its own."
      />
      {seen.lawns.length === 0 ? (
        <EmptyState
          sentence="No lawn of this visit is on the plan any more, so there is none to look at."
          actions={<LinkButton href={`/properties/${visit.property.propertyId}#ground`}>Lawns of this property</LinkButton>}
        />
      ) : (
        <Sheet>
          <LookAtLawnsForm
            fixed={{ requestId: house().newId(), visitId: visit.visitId }}
            values={{
              seenOn: calendarDateIn(company.timeZone, now),
              seenAt: localTimeAt(now, company.timeZone).localTime.slice(0, 5),
              seenById: own,
              ...Object.fromEntries(seen.lawns.flatMap(({ zoneId }) => [[`lawns.${zoneId}`, "not-looked"], [`said.${zoneId}`, ""], [`watered.${zoneId}`, ""]])),
              ...{ wateredBy: "", waterToldBy: "", wateredOn: "", wateredAt: "", waterDepth: "" },
            }}
            lawns={seen.lawns.map((lawn) => ({ zoneId: lawn.zoneId, words: lawnWords(lawn) }))}
            people={people}
          />
        </Sheet>
      )}
    </>
  );
}
