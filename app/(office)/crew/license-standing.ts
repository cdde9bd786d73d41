import { type LicenseStanding } from "#domain/crew/license";

function days(count: number): string {
  return count === 1 ? "1 day" : `${String(count)} days`;
}

/** How a license stands, in a few words. */
export function standingSentence(standing: LicenseStanding): string {
  switch (standing.kind) {
    case "not-yet":
      return `starts in ${days(standing.startsInDays)}`;
    case "standing":
      return `good for ${days(standing.daysLeft)}`;
    case "runs-out-soon":
      return standing.daysLeft === 0 ? "last day today" : `runs out in ${days(standing.daysLeft)}`;
    case "expired":
      return `ran out ${days(standing.daysAgo)} ago`;
  }
}
