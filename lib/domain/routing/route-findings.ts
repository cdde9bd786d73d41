import { type Finding, hold, takeCare } from "#domain/foundation/finding";

/** A stop as its times stand. */
export interface ReachedStop {
  readonly street: string;
  readonly lateSeconds: number;
}

/** A truck's day as its times stand. */
export interface RunOfTruck {
  readonly truck: string;
  readonly returnSeconds: number;
  readonly dayEndSeconds: number;
}

/** What stands against a stop's time: the crew would come too late to be done while the customer lets it on the ground. */
export function findingsOfStop({ street, lateSeconds }: ReachedStop): readonly Finding[] {
  if (lateSeconds === 0) return [];
  return [
    hold("office", {
      rule: "customers-hours-missed",
      source: "house",
      what: "The crew comes too late for the customer's hours.",
      figure: `Too late by ${minutes(lateSeconds)}.`,
      toDo: "Put the day in order, or move the stop forward.",
      about: [street],
    }),
  ];
}

/** What stands against a truck's day as a whole: it would be back after the day's end. */
export function findingsOfRun({ truck, returnSeconds, dayEndSeconds }: RunOfTruck): readonly Finding[] {
  if (returnSeconds <= dayEndSeconds) return [];
  return [
    takeCare({
      rule: "back-after-the-day",
      source: "house",
      what: `${truck} would be back after its day ends.`,
      figure: `Later by ${minutes(returnSeconds - dayEndSeconds)}, by the house's estimate of drives.`,
      toDo: "Move a stop to another truck or day, or let the day end later.",
      about: [truck],
    }),
  ];
}

function minutes(seconds: number): string {
  return `${String(Math.ceil(seconds / 60))} min`;
}
