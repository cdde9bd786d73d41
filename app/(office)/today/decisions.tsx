import { type DayShown } from "#application/days/read-day";
import { type FindingCause } from "#domain/foundation/finding-causes";
import { LinkButton } from "#ui/button";
import { Disclosure } from "#ui/disclosure";
import { FindingGroup } from "#ui/finding-group";
import { Section } from "#ui/section";
import { counted, SOURCE_WORDS } from "./day-words";
import styles from "./today.module.css";

/** Where each thing that a finding is at stands on the page. */
function placesOf({ trucks }: DayShown): ReadonlyMap<string, { readonly words: string; readonly href: string; readonly isTruck: boolean }> {
  return new Map(
    trucks.flatMap((truck) => [
      [truck.routeDayId, { words: `Truck ${String(truck.number)}`, href: `#truck-${truck.routeDayId}`, isTruck: true }] as const,
      ...truck.stops.map(
        ({ visit, position }) =>
          [visit.visitId, { words: `Truck ${String(truck.number)}, ${String(position)}: ${visit.property.street}`, href: `#stop-${visit.visitId}`, isTruck: false }] as const,
      ),
    ]),
  );
}

/** The causes that ask for a decision, each once with what it meets; notes behind one press below them. */
export function Decisions({ day, mayPlan }: { readonly day: DayShown; readonly mayPlan: boolean }) {
  const places = placesOf(day);
  const grave = day.causes.filter(({ finding }) => finding.level !== "note");
  const notes = day.causes.filter(({ finding }) => finding.level === "note");
  if (day.causes.length === 0) return null;
  const group = (cause: FindingCause) => <Cause key={`${cause.finding.rule} ${cause.what}`} cause={cause} places={places} date={day.date} mayPlan={mayPlan} />;
  return (
    <Section id="decisions" name="Needs a decision" aside={grave.length === 0 ? "nothing" : counted(grave.length, "cause")}>
      <div className={styles.causes}>{grave.map(group)}</div>
      {notes.length > 0 && (
        <Disclosure name={counted(notes.length, "note")}>
          <div className={styles.causes}>{notes.map(group)}</div>
        </Disclosure>
      )}
    </Section>
  );
}

interface CauseProps {
  readonly cause: FindingCause;
  readonly places: ReturnType<typeof placesOf>;
  readonly date: string;
  readonly mayPlan: boolean;
}

function Cause({ cause, places, date, mayPlan }: CauseProps) {
  const { finding, what, figure, at } = cause;
  const where = at.flatMap((id) => (places.has(id) ? [{ id, place: places.get(id) }] : []));
  const ofTrucks = where.every(({ place }) => place?.isTruck === true);
  return (
    <FindingGroup
      level={finding.level}
      cause={what.replace(/\.$/u, "")}
      count={counted(at.length, ofTrucks ? "truck" : "stop")}
      figure={
        <>
          {figure} {finding.toDo}
        </>
      }
      source={SOURCE_WORDS[finding.source]}
      {...(mayPlan && finding.rule === "forecast-not-entered" ? { act: <LinkButton href={`/today/enter-forecast?date=${date}`}>Enter the forecast</LinkButton> } : {})}
      items={where.map(({ id, place }) => ({ id, words: <a href={place?.href}>{place?.words}</a> }))}
    />
  );
}
