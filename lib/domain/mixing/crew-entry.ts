import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type EndContext, endOf } from "#domain/mixing/aftercare-instants";
import { endWords } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf, isOfOtherWork, weakestAuthority } from "#domain/mixing/applied-product";
import { localWords } from "#domain/mixing/local-words";
import { type Span } from "#domain/weather/local-hours";

/**
 * Where an earlier product still keeps people off as the crew comes: its label keeps the crew off as well. A stated time
 * after the visit's start holds until the visit is moved. What waits for a state of the lawn, or is an estimate, wants
 * the crew to look first, because only somebody who stands there can tell. What goes down by other work while the crew
 * is there keeps it off as much.
 */
export function crewWhilePeopleStayOff(products: readonly AppliedProduct[], visit: Span, timeZone: string, endContext: (applied: AppliedProduct) => EndContext): readonly Finding[] {
  const earlier = products.filter((applied) => isOfOtherWork(applied));
  return constraintsOf(earlier, "people-and-pets").flatMap(({ applied, constraint }) => {
    const end = endOf(constraint.untilLaterOf, applied.application, endContext(applied));
    const { atEpochMilliseconds: at, notBeforeEpochMilliseconds: stated } = end;
    if (at !== null && at <= visit.fromEpochMilliseconds) return [];
    const name = appliedName(applied, timeZone);
    const isStillGoingDown = applied.application.endsAtEpochMilliseconds > visit.fromEpochMilliseconds;
    const still = isStillGoingDown ? "" : "still ";
    const when = isStillGoingDown ? ", and goes down while the crew is there" : " as the crew comes";
    const { source, citation } = weakestAuthority([constraint]);
    const words = {
      source,
      figure: `"${constraint.labelWords}" ${at === null ? "Waits for: " : "Until "}${endWords(end, timeZone)}.`,
      citation,
      about: [applied.label.productName],
    } as const;
    return [
      stated !== null && stated > visit.fromEpochMilliseconds
        ? hold("office", { ...words, rule: "crew-while-people-stay-off", what: `${name} ${still}keeps people off the lawn${when}.`, toDo: `Come after ${localWords(stated, timeZone, "end")}.` })
        : takeCare({ ...words, rule: "crew-while-people-may-stay-off", what: `${name} may ${still}keep people off the lawn${when}.`, toDo: "Look before anybody walks on it; where it is not so, come another time." }),
    ];
  });
}
