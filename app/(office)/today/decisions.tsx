import { type ReactNode } from "react";
import { type DayShown } from "#application/days/read-day";
import { FINDING_SOURCE_WORDS } from "#domain/foundation/finding";
import { type FindingCause } from "#domain/foundation/finding-causes";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { LinkButton } from "#ui/button";
import { Disclosure } from "#ui/disclosure";
import { FindingGroup } from "#ui/finding-group";
import { Section } from "#ui/section";
import { RECORD_CLEAN_OUT } from "../visits/hold-acts";
import { counted } from "./day-words";
import styles from "./today.module.css";

interface PlaceOnPage {
  readonly words: string;
  readonly href: string;
  readonly isTruck: boolean;
}

/** Where each thing that a finding is at stands on the page. */
function placesOf({ trucks }: DayShown): ReadonlyMap<string, PlaceOnPage> {
  return new Map<string, PlaceOnPage>(
    trucks.flatMap((truck): readonly (readonly [string, PlaceOnPage])[] => [
      [truck.routeDayId, { words: `Truck ${String(truck.number)}`, href: `#truck-${truck.routeDayId}`, isTruck: true }],
      ...truck.stops.map(
        ({ visit, position }): readonly [string, PlaceOnPage] =>
          [visit.visitId, { words: `Truck ${String(truck.number)}, ${String(position)}: ${visit.property.street}`, href: `#stop-${visit.visitId}`, isTruck: false }],
      ),
    ]),
  );
}

/** So many causes stand open above the timetable, and every hold. */
const FIRST_CAUSES = 3;

/** The causes that ask for a decision, each once with what it meets; notes behind one press below them. */
export function Decisions({ day, mayPlan }: { readonly day: DayShown; readonly mayPlan: boolean }) {
  const places = placesOf(day);
  const grave = day.causes.filter(({ finding }) => finding.level !== "note");
  const notes = day.causes.filter(({ finding }) => finding.level === "note");
  if (day.causes.length === 0) return null;
  const holds = grave.filter(({ finding }) => finding.level === "hold").length;
  const first = grave.slice(0, Math.max(FIRST_CAUSES, holds));
  const rest = grave.slice(first.length);
  const sprayerIdOf = new Map(day.trucks.flatMap(({ tankPlan }) => tankPlan.mixes.map(({ gear }) => [gear.name, gear.equipmentId] as const)));
  const group = (cause: FindingCause) => <Cause key={`${cause.finding.rule} ${cause.what}`} cause={cause} places={places} date={day.date} mayPlan={mayPlan} sprayerIdOf={sprayerIdOf} />;
  return (
    <Section id="decisions" name="Needs a decision" aside={grave.length === 0 ? "nothing" : counted(grave.length, "cause")}>
      <div className={styles.causes}>{first.map(group)}</div>
      {rest.length > 0 && (
        <Disclosure name={`${counted(rest.length, "more cause", "more causes")} to take care of`}>
          <div className={styles.causes}>{rest.map(group)}</div>
        </Disclosure>
      )}
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
  readonly sprayerIdOf: ReadonlyMap<string, string>;
}

/** The way to what settles a cause, where there is one right from here. */
function actOf({ cause: { finding }, date, mayPlan, sprayerIdOf }: CauseProps): { readonly act?: ReactNode } {
  if (mayPlan && (finding.rule === "forecast-not-entered" || finding.rule === "forecast-after-not-entered")) return { act: <LinkButton href={`/today/enter-forecast?date=${date}`}>Enter the forecast</LinkButton> };
  if (finding.rule !== "clean-out") return {};
  const sprayerId = finding.about.flatMap((name) => sprayerIdOf.get(name) ?? [])[0];
  return { act: <LinkButton href={sprayerId === undefined ? RECORD_CLEAN_OUT : `${RECORD_CLEAN_OUT}?equipment=${sprayerId}`}>Record a clean-out</LinkButton> };
}

function Cause(props: CauseProps) {
  const { places, cause: { finding, what, figure, at } } = props;
  const where = at.flatMap((id) => (places.has(id) ? [{ id, place: places.get(id) }] : []));
  const ofTrucks = where.every(({ place }) => place?.isTruck === true);
  return (
    <FindingGroup
      level={finding.level}
      cause={withoutFullStop(what)}
      count={counted(at.length, ofTrucks ? "truck" : "stop")}
      figure={
        <>
          {figure} {finding.toDo}
        </>
      }
      source={FINDING_SOURCE_WORDS[finding.source]}
      {...actOf(props)}
      items={where.map(({ id, place }) => ({ id, words: <a href={place?.href}>{place?.words}</a> }))}
    />
  );
}
