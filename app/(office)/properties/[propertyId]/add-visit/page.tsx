import { type Metadata } from "next";
import Link from "next/link";
import { house } from "#application/house";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { squareFeetWords } from "#domain/properties/area-words";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { productChoices } from "../../../programs/product-choices";
import { propertyOfPage, type PropertyPageProps } from "../property-of-page";
import { AddVisitForm } from "./add-visit-form.client";

export const metadata: Metadata = { title: "Add one visit" };

/** One visit by hand; it needs a lawn to go to. */
export default async function AddVisitPage(props: PropertyPageProps) {
  const { company } = await pageFor("visits/plan-visit");
  const { propertyId, street, lawns } = await propertyOfPage(props);
  const { newId, now } = house();
  return (
    <>
      <PageHead above={<Link href={`/properties/${propertyId}`}>{street}</Link>} title="Add one visit" sentence="Outside any program: a call-back, spot work, a look. Windows are days on which it may be done." />
      {lawns.length === 0 ? (
        <EmptyState sentence="No lawn is measured here yet, so there is nothing to put a task on." actions={<LinkButton href={`/properties/${propertyId}/measure-lawn`}>Measure a lawn</LinkButton>} />
      ) : (
        <Sheet>
          <AddVisitForm
            requestId={newId()}
            propertyId={propertyId}
            today={calendarDateIn(company.timeZone, now().getTime())}
            lawns={lawns.map(({ zoneId, letter, name, area }) => ({ zoneId, words: `${letter} ${name}, ${squareFeetWords(area)}` }))}
            products={await productChoices()}
          />
        </Sheet>
      )}
    </>
  );
}
