import { VISIT_STANDINGS, type VisitStanding } from "#domain/scheduling/visit-standing";
import { Row } from "#ui/row";
import { VisitMark } from "#ui/visit-mark";

export interface VisitCountsProps {
  readonly visits: Readonly<Record<VisitStanding, number>>;
}

/** How many visits stand where, each with its mark and word; what none stands at is left out. */
export function VisitCounts({ visits }: VisitCountsProps) {
  const standing = VISIT_STANDINGS.filter((each) => visits[each] > 0);
  if (standing.length === 0) return "none yet";
  return (
    <Row gap="plain">
      {standing.map((each) => (
        <span key={each}>
          {visits[each]} <VisitMark state={each} />
        </span>
      ))}
    </Row>
  );
}
