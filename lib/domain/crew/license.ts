import { type CalendarDate, daysBetween } from "#domain/foundation/calendar-date";

/** What a license lets its holder do: put pesticides down and answer for it, or do so under somebody who does. */
export const LICENSE_KINDS = ["certified-applicator", "registered-technician"] as const;
export type LicenseKind = (typeof LICENSE_KINDS)[number];

/** The words for a kind on screens and papers. */
export const LICENSE_KIND_WORDS: Readonly<Record<LicenseKind, string>> = {
  "certified-applicator": "Certified applicator",
  "registered-technician": "Registered technician",
};

/** How many days before its last day a license is spoken of as running out. A house setting, not a law. */
export const RUNS_OUT_SOON_DAYS = 60;

/** How a license stands on a day, with the days until it begins, until its last good day, or since it. */
export type LicenseStanding =
  | { readonly kind: "not-yet"; readonly startsInDays: number }
  | { readonly kind: "standing"; readonly daysLeft: number }
  | { readonly kind: "runs-out-soon"; readonly daysLeft: number }
  | { readonly kind: "expired"; readonly daysAgo: number };

/**
 * How a license stands on a day. The day it expires on is its last good day; a state that counts otherwise
 * prints the day before as its expiry, and the entry copies what is printed.
 */
export function licenseStanding(
  license: { readonly issuedOn: CalendarDate | null; readonly expiresOn: CalendarDate },
  on: CalendarDate,
): LicenseStanding {
  if (license.issuedOn !== null && daysBetween(on, license.issuedOn) > 0) {
    return { kind: "not-yet", startsInDays: daysBetween(on, license.issuedOn) };
  }
  const daysLeft = daysBetween(on, license.expiresOn);
  if (daysLeft < 0) return { kind: "expired", daysAgo: -daysLeft };
  return daysLeft <= RUNS_OUT_SOON_DAYS ? { kind: "runs-out-soon", daysLeft } : { kind: "standing", daysLeft };
}
