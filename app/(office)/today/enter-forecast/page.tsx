import { type Metadata } from "next";
import Link from "next/link";
import { LATER_HIGHS } from "#application/days/enter-forecast.schema";
import { addDays, formatShortDate } from "#domain/foundation/calendar-date";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { dateWords, dayHref } from "../day-words";
import { type DayPageProps, dayOfAddress } from "../day-of-address";
import { EnterForecastForm } from "./enter-forecast-form.client";

export const metadata: Metadata = { title: "Enter the forecast" };

function valuesOf(forecast: Awaited<ReturnType<typeof dayOfAddress>>["forecast"]): Readonly<Record<string, string>> {
  const later = LATER_HIGHS.map((name, index): readonly [string, string] => [`followingHighsF.${name}`, String(forecast?.followingHighsF[index] ?? "")]);
  return { highF: String(forecast?.highF ?? ""), source: forecast?.source ?? "", ...Object.fromEntries(later) };
}

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
        sentence="For every truck of the day. Labels that limit the heat are held against it, and feed and iron wait in it."
      />
      <Sheet>
        <EnterForecastForm date={date} values={valuesOf(forecast)} dayWords={LATER_HIGHS.map((_, index) => formatShortDate(addDays(date, index + 1)))} />
      </Sheet>
    </>
  );
}
