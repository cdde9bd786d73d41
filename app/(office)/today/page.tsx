import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { type DayShown, readDay } from "#application/days/read-day";
import { HOUSE_TRAVEL_WORDS } from "#application/days/travel-of-day";
import { may } from "#application/permission";
import { addDays } from "#domain/foundation/calendar-date";
import { Button, LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Stack } from "#ui/stack";
import { DateField } from "#ui/text-field";
import { asMember } from "../../session";
import { pageFor } from "../page-for";
import { counted, dateWords, dayHref, nearWords } from "./day-words";
import { Decisions } from "./decisions";
import { OpenVisitsOfDay } from "./open-visits";
import styles from "./today.module.css";
import { TruckColumn } from "./truck-column";
import { type DoneParameters, UndoLine } from "./undo-line";

export const metadata: Metadata = { title: "Today" };

interface TodayPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** A parameter once; of several the first. */
function once(value: string | readonly string[] | undefined): string | undefined {
  return typeof value === "string" || value === undefined ? value : value[0];
}

function HowItStands({ day: { trucks, totals } }: { readonly day: DayShown }) {
  if (trucks.length === 0) return null;
  const { stops, held, done, withoutTicket } = totals;
  return (
    <>
      {counted(trucks.length, "truck")}, {counted(stops, "stop")}. {held > 0 && <strong>{held} can&apos;t go as planned. </strong>}
      {done > 0 && `${String(done)} done. `}
      {withoutTicket > 0 && `${counted(withoutTicket, "mix ticket")} to issue.`}
    </>
  );
}

function forecastWords(forecast: DayShown["forecast"]): string {
  if (forecast === null) return "No forecast is entered.";
  const { highF, followingHighsF, source } = forecast;
  const later = followingHighsF.every((high) => high === null) ? "" : `, then ${followingHighsF.map((high) => (high === null ? "not entered" : `${String(high)} °F`)).join(", ")}`;
  return `Forecast high ${String(highF)} °F${later}, ${source}.`;
}

function DayLine({ day, mayPlan }: { readonly day: DayShown; readonly mayPlan: boolean }) {
  const { date, forecast, knowsShop, trucks } = day;
  return (
    <div className={styles.line}>
      <LinkButton href={dayHref(addDays(date, -1))}>Day before</LinkButton>
      <LinkButton href={dayHref(addDays(date, 1))}>Day after</LinkButton>
      <form action="/today" className={styles.line}>
        <DateField key={date} label="Another day" name="date" defaultValue={date} required />
        <Button type="submit">Go</Button>
      </form>
      {trucks.length > 0 && (
        <p>
          {forecastWords(forecast)}{" "}
          {mayPlan && (
            <Link prefetch={false} href={`/today/enter-forecast?date=${date}`}>
              {forecast === null ? "Enter the forecast" : "Change the forecast"}
            </Link>
          )}
        </p>
      )}
      {mayPlan && !knowsShop && (
        <p>
          Trucks have no times until the shop has a place. <Link prefetch={false} href={`/today/set-shop-position?date=${date}`}>Say where the shop is</Link>
        </p>
      )}
    </div>
  );
}

function EmptyDay({ day, mayPlan }: { readonly day: DayShown; readonly mayPlan: boolean }) {
  const { count } = day.open;
  const open = count === 0 ? "No visit is open that day." : `${counted(count, "visit is", "visits are")} open that day.`;
  const noTruck = day.freeVehicles.length === 0;
  return (
    <EmptyState
      sentence={`Nothing is set for ${dateWords(day.date, day.today)}. ${noTruck ? "No truck is on file yet: add one to the crew's gear first." : open}`}
      actions={
        mayPlan &&
        !noTruck && (
          <LinkButton kind="act" href={`/today/add-route-day?date=${day.date}`}>
            Send a truck out
          </LinkButton>
        )
      }
    />
  );
}

export default async function TodayPage({ searchParams }: TodayPageProps) {
  const { member } = await pageFor("days/read-day");
  const parameters = await searchParams;
  const answer = await asMember(readDay, { date: once(parameters["date"]) ?? "" });
  if (!answer.ok) notFound();
  const day = answer.value;
  const mayPlan = may(member.role, "days/order-day");
  const trucks = day.trucks.map(({ routeDayId, number, stops }) => ({ value: routeDayId, word: `Truck ${String(number)} (${counted(stops.length, "stop")})` }));
  const names = ["after", "visit", "day", "position", "version", "order", "adds"] as const;
  const done: DoneParameters = Object.fromEntries(names.flatMap((name) => (once(parameters[name]) === undefined ? [] : [[name, once(parameters[name])]])));
  return (
    <Stack gap={5}>
      <PageHead
        above={nearWords(day.date, day.today)}
        title={dateWords(day.date, day.today)}
        sentence={<HowItStands day={day} />}
        actions={mayPlan && day.trucks.length > 0 && day.freeVehicles.length > 0 && <LinkButton href={`/today/add-route-day?date=${day.date}`}>Send a truck out</LinkButton>}
      />
      <DayLine day={day} mayPlan={mayPlan} />
      {day.trucks.length === 0 && <EmptyDay day={day} mayPlan={mayPlan} />}
      <Decisions day={day} mayPlan={mayPlan} />
      {day.trucks.length > 0 && (
        <div>
          <div className={styles.trucks}>
            {day.trucks.map((truck) => (
              <TruckColumn key={truck.routeDayId} truck={truck} date={day.date} trucks={trucks} mayPlan={mayPlan} />
            ))}
          </div>
          <p className={styles.small}>{HOUSE_TRAVEL_WORDS}</p>
        </div>
      )}
      <OpenVisitsOfDay day={day} trucks={mayPlan ? trucks : []} />
      <UndoLine day={day} done={done} />
    </Stack>
  );
}
