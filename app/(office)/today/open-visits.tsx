import Link from "next/link";
import { type OpenVisit } from "#application/days/open-visits";
import { type DayShown } from "#application/days/read-day";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { Disclosure } from "#ui/disclosure";
import { Section } from "#ui/section";
import { VisitMark } from "#ui/visit-mark";
import { counted } from "./day-words";
import styles from "./open-visits.module.css";
import { PlaceForm } from "./place-form.client";
import { type Choice } from "#ui/select-field";

function VisitWords({ visit }: { readonly visit: OpenVisit }) {
  return (
    <>
      <p className={styles.street}>
        <VisitMark state={visit.isPastItsWindow ? "past-its-window" : "open"} word="spoken" />
        <span>
        <Link prefetch={false} href={`/properties/${visit.propertyId}`}>
          {visit.street}
        </Link>
        , {visit.city} · {visit.name}
        </span>
      </p>
      <p className={styles.small}>
        {visit.clientName} · {visit.against ?? `open until ${formatShortDate(visit.closesOn)}`}
      </p>
    </>
  );
}

/** What could go out that day and is on no truck, and what should not, with its reason. */
export function OpenVisitsOfDay({ day, trucks }: { readonly day: DayShown; readonly trucks: readonly Choice[] }) {
  const kept = day.open.visits.filter(({ against, isPastItsWindow }) => against !== null && !isPastItsWindow);
  const open = day.open.visits.filter((visit) => !kept.includes(visit));
  const past = open.filter(({ isPastItsWindow }) => isPastItsWindow);
  const rowOf = (visit: OpenVisit) => ({ visitId: visit.visitId, street: visit.street, words: <VisitWords visit={visit} /> });
  const left = day.trucks.flatMap(({ stops }) => stops).filter(({ visit }) => visit.state === "not-done");
  const unlisted = day.open.count - day.open.visits.length;
  return (
    <>
      {kept.length + left.length > 0 && (
        <Section id="not-today" name="Not today" aside={counted(kept.length + left.length, "visit")}>
          <ul className={styles.list}>
            {left.map(({ visit }) => (
              <li key={visit.visitId} className={styles.row}>
                <div className={styles.words}>
                  <p className={styles.street}>
                    <VisitMark state="not-done" word="spoken" />
                    <span>
                      {visit.property.street}, {visit.property.city} · {visit.name}
                    </span>
                  </p>
                  <p className={styles.small}>The crew left it. Its record says why.</p>
                </div>
              </li>
            ))}
            {kept.map((visit) => (
              <li key={visit.visitId} className={styles.row}>
                <div className={styles.words}>
                  <VisitWords visit={visit} />
                </div>
              </li>
            ))}
          </ul>
        </Section>
      )}
      {open.length > 0 && (
        <Section id="open-visits" name="Open, on no truck" aside={counted(day.open.count, "visit")}>
          <PlaceForm trucks={trucks} visits={open.filter(({ isPastItsWindow }) => !isPastItsWindow).map(rowOf)} />
          {past.length > 0 && (
            <Disclosure name={`Past their window: ${counted(past.length, "visit")}`}>
              <PlaceForm idPrefix="past-" trucks={trucks} visits={past.map(rowOf)} />
            </Disclosure>
          )}
          {unlisted > 0 && <p className={styles.small}>And {counted(unlisted, "more", "more")}, which close later.</p>}
        </Section>
      )}
    </>
  );
}
