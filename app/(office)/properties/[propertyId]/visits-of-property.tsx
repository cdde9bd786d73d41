import { EmptyState } from "#ui/empty-state";

/** Which property a section is of, and the one lawn that the page is narrowed to, if it is. */
export interface VisitsOfPropertyProps {
  readonly propertyId: string;
  readonly zoneId?: string | undefined;
}

/** The next visit: day, round, what goes down, and whether it may. */
export function NextVisit(_props: VisitsOfPropertyProps) {
  return <EmptyState sentence="No visit is ahead." />;
}

/** Visits that are promised for a day or open to be placed. */
export function PromisedAndOpen(_props: VisitsOfPropertyProps) {
  return <EmptyState sentence="Nothing is promised or open." />;
}

/** What went down this year and may still go down: a bar for each lawn and nutrient. */
export function ThisYearOnThisGround(_props: VisitsOfPropertyProps) {
  return <EmptyState sentence="Nothing was put down this year." />;
}
