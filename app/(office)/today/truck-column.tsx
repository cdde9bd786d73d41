import Link from "next/link";
import { type StopShown, type TruckShown } from "#application/days/truck-shown";
import { LinkButton } from "#ui/button";
import { Row } from "#ui/row";
import { type Choice } from "#ui/select-field";
import { clockWords } from "#domain/foundation/clock-words";
import { milesWords } from "./day-words";
import { OrderForm } from "./order-form.client";
import { PaperLinks } from "./paper-links";
import { StopRow } from "./stop-row";
import styles from "./today.module.css";
import { TruckLoad } from "./truck-load";

/** From so many minutes on a drive is written between the rows. */
const LONG_DRIVE_MINUTES = 15;
const STRIP = 12;

interface TruckColumnProps {
  readonly truck: TruckShown;
  readonly date: string;
  readonly trucks: readonly Choice[];
  readonly mayPlan: boolean;
}

/** One truck's day: a written list of rows with the hours between them and the tank strip down the left edge. */
export function TruckColumn({ truck, date, trucks, mayPlan }: TruckColumnProps) {
  const name = `Truck ${String(truck.number)}`;
  const headId = `truck-${truck.routeDayId}`;
  return (
    <section className={styles.truck} aria-labelledby={headId}>
      <div className={styles.truckHead}>
        <h2 id={headId}>
          {name} <span className={styles.operator}>{truck.operatorName}</span>
        </h2>
        <p>
          {clockWords(truck.startsAtMinute)} to {clockWords(truck.endsAtMinute)}
          {mayPlan && (
            <>
              {" · "}
              <Link prefetch={false} href={`/today/${truck.routeDayId}/change-route-day?date=${date}`} aria-label={`Change ${name}`}>
                Change
              </Link>
            </>
          )}
        </p>
      </div>
      {truck.stops.length === 0 ? (
        <p className={styles.foot}>No stops yet.</p>
      ) : (
        <ol className={styles.rows} aria-label={`Stops of ${name}`}>
          {truck.stops.map((stop, index) => (
            <li key={stop.visit.visitId} className={styles.item}>
              <TankStrip stop={stop} />
              <HourRule stop={stop} before={truck.stops[index - 1]} />
              <StopRow stop={stop} routeDayId={truck.routeDayId} trucks={trucks} mayPlan={mayPlan} />
            </li>
          ))}
        </ol>
      )}
      <div className={styles.foot}>
        <p className={styles.small}>{footWords(truck)}</p>
        <TruckLoad truck={truck} />
        <Row align="top">
          {mayPlan && truck.stops.length > 0 && <OrderForm routeDayId={truck.routeDayId} version={truck.version} truck={name} />}
          <PaperLinks routeDayId={truck.routeDayId} truck={name} />
          <LinkButton href="/fills">What is left in the tanks</LinkButton>
        </Row>
      </div>
    </section>
  );
}

function footWords({ stops, returnsAtMinute, driveMeters, missing, tankPlan: { fills } }: TruckShown): string {
  if (stops.length === 0) return "";
  if (returnsAtMinute === null || driveMeters === null) return missing.join(" ");
  const filled = fills.length === 0 ? [] : [`${fills.length === 1 ? "fill" : "fills"} ${fills.map(({ letter }) => letter).join(", ")}`];
  return [`Back at the shop ${clockWords(returnsAtMinute)}`, milesWords(driveMeters), ...filled].join(" · ");
}

/** What is aboard: how much of the fullest tank, and nothing where the truck sprays nothing. */
function TankStrip({ stop: { aboard } }: { readonly stop: StopShown }) {
  const { share, letters } = aboard ?? { share: null, letters: [] };
  if (share === null) return null;
  const percent = Math.round(share * 100);
  return (
    <svg className={styles.strip} viewBox={`0 0 ${String(STRIP)} 48`} preserveAspectRatio="none" role="img" aria-label={`Tank ${String(percent)} % full`}>
      <rect className={styles.aboard} x="0" y="0" width={STRIP * share} height="48" />
      {letters.length > 0 && <rect className={styles.notch} x="0" y="0" width={STRIP} height="3" />}
    </svg>
  );
}

/** The hour that begins with a row, and a long drive to it. */
function HourRule({ stop, before }: { readonly stop: StopShown; readonly before: StopShown | undefined }) {
  const hourOf = (minute: number | null | undefined) => (minute === null || minute === undefined ? undefined : Math.floor(minute / 60));
  const hour = hourOf(stop.arrivesAtMinute);
  const isNew = hour !== undefined && hour !== hourOf(before?.arrivesAtMinute);
  const isLong = stop.driveMinutes !== null && stop.driveMinutes > LONG_DRIVE_MINUTES;
  if (!isNew && !isLong) return null;
  return (
    <p className={styles.hour}>
      {isNew && <span>{clockWords(hour * 60)}</span>}
      {isLong && <span>drive {stop.driveMinutes} min</span>}
    </p>
  );
}
