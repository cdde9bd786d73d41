import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type AftercareEnd, type EndContext, endOf } from "#domain/mixing/aftercare-instants";
import { endWords } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf, weakestAuthority } from "#domain/mixing/applied-product";
import { localWords } from "#domain/mixing/local-words";
import { type Span } from "#domain/weather/local-hours";

/**
 * Where an earlier product still keeps people off as the crew comes: its label keeps the crew off as well. A known end
 * after the visit's start holds until the visit is moved. One that waits for a state of the lawn, or is an estimate, wants
 * the crew to look first, because only somebody who stands there can tell.
 */
export function crewWhilePeopleStayOff(products: readonly AppliedProduct[], visit: Span, timeZone: string, endContext: (applied: AppliedProduct) => EndContext): readonly Finding[] {
  const earlier = products.filter(({ appliedIn }) => appliedIn === "earlier-visit");
  return constraintsOf(earlier, "people-and-pets").flatMap(({ applied, constraint }) => {
    const end = endOf(constraint.untilLaterOf, applied.application, endContext(applied));
    if (end.atEpochMilliseconds !== null && end.atEpochMilliseconds <= visit.fromEpochMilliseconds) return [];
    const name = appliedName(applied, timeZone);
    const { source, citation } = weakestAuthority([constraint]);
    const words = {
      source,
      figure: `"${constraint.labelWords}" ${end.atEpochMilliseconds === null ? "Waits for: " : "Until "}${endWords(end, timeZone)}.`,
      citation,
      about: [applied.label.productName],
    } as const;
    return [
      isKnown(end)
        ? hold("office", { ...words, rule: "crew-while-people-stay-off", what: `${name} still keeps people off the lawn as the crew comes.`, toDo: `Come after ${localWords(end.atEpochMilliseconds, timeZone, "end")}.` })
        : takeCare({ ...words, rule: "crew-while-people-may-stay-off", what: `${name} may still keep people off the lawn as the crew comes.`, toDo: "Look before anybody walks on it; where it is not so, come another time." }),
    ];
  });
}

function isKnown(end: AftercareEnd): end is AftercareEnd & { readonly atEpochMilliseconds: number } {
  return end.atEpochMilliseconds !== null && !end.isEstimate;
}
