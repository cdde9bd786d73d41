import { type LicenseStanding } from "#domain/crew/license";
import { daysWords } from "#domain/foundation/days-words";

/** How a license stands, in a few words. */
export function standingSentence(standing: LicenseStanding): string {
  switch (standing.kind) {
    case "not-yet":
      return `starts in ${daysWords(standing.startsInDays)}`;
    case "standing":
      return `good for ${daysWords(standing.daysLeft)}`;
    case "runs-out-soon":
      return standing.daysLeft === 0 ? "last day today" : `runs out in ${daysWords(standing.daysLeft)}`;
    case "expired":
      return `ran out ${daysWords(standing.daysAgo)} ago`;
  }
}
