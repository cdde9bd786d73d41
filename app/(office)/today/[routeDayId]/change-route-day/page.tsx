import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { dateWords, dayHref, fieldTime } from "../../day-words";
import { type DayPageProps, dayOfAddress } from "../../day-of-address";
import { ChangeRouteDayForm } from "./change-route-day-form.client";

export const metadata: Metadata = { title: "Change a truck's day" };

interface ChangeRouteDayPageProps extends DayPageProps {
  readonly params: Promise<{ readonly routeDayId: string }>;
}

export default async function ChangeRouteDayPage(props: ChangeRouteDayPageProps) {
  await pageFor("days/change-route-day");
  const { routeDayId } = await props.params;
  const { date, today, trucks, people } = await dayOfAddress(props);
  const truck = trucks.find((one) => one.routeDayId === routeDayId);
  if (truck === undefined) notFound();
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href={dayHref(date)}>
            {dateWords(date, today)}
          </Link>
        }
        title={`Change Truck ${String(truck.number)}'s day`}
        sentence="The stops stay in their order and are timed anew."
      />
      <Sheet>
        <ChangeRouteDayForm
          fixed={{ routeDayId, version: String(truck.version) }}
          values={{ operatorId: truck.operatorId, startsAt: fieldTime(truck.startsAtMinute), endsAt: fieldTime(truck.endsAtMinute) }}
          people={people.map(({ personId, name }) => ({ value: personId, word: name }))}
        />
      </Sheet>
    </>
  );
}
