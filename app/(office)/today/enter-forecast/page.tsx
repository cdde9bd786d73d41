import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { dateWords, dayHref } from "../day-words";
import { type DayPageProps, dayOfAddress } from "../day-of-address";
import { EnterForecastForm } from "./enter-forecast-form.client";

export const metadata: Metadata = { title: "Enter the forecast" };

export default async function EnterForecastPage(props: DayPageProps) {
  await pageFor("days/enter-forecast");
  const { date, today, forecast } = await dayOfAddress(props);
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href={dayHref(date)}>
            {dateWords(date, today)}
          </Link>
        }
        title="Enter the forecast"
        sentence="For every truck of the day. Labels that limit the heat are held against it."
      />
      <Sheet>
        <EnterForecastForm date={date} highF={forecast === null ? "" : String(forecast.highF)} nextHighF={String(forecast?.nextHighF ?? "")} source={forecast?.source ?? ""} />
      </Sheet>
    </>
  );
}
