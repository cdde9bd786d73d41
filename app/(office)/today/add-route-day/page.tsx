import { type Metadata } from "next";
import Link from "next/link";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { dateWords, dayHref } from "../day-words";
import { type DayPageProps, dayOfAddress } from "../day-of-address";
import { AddRouteDayForm } from "./add-route-day-form.client";

export const metadata: Metadata = { title: "Send a truck out" };

export default async function AddRouteDayPage(props: DayPageProps) {
  await pageFor("days/add-route-day");
  const { date, today, freeVehicles, people } = await dayOfAddress(props);
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href={dayHref(date)}>
            {dateWords(date, today)}
          </Link>
        }
        title="Send a truck out"
        sentence="Which truck, who applies, and its hours. The stops come next."
      />
      {freeVehicles.length === 0 ? (
        <EmptyState sentence="Every truck on file is out that day already, or none is on file." actions={<LinkButton href={dayHref(date)}>Back to the day</LinkButton>} />
      ) : (
        <Sheet>
          <AddRouteDayForm
            date={date}
            vehicles={freeVehicles.map(({ vehicleId, number, name }) => ({ value: vehicleId, word: `Truck ${String(number)}, ${name}` }))}
            people={people.map(({ personId, name }) => ({ value: personId, word: name }))}
          />
        </Sheet>
      )}
    </>
  );
}
