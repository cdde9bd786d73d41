import { type PaperFinding, type PaperFrame } from "./paper";

/** One thing to take along, formatted. */
export interface LoadingLine {
  readonly what: string;
  /** With its unit: "3 bags of 50 lb", "12 signs". */
  readonly amount: string;
  readonly lot?: string;
  /** Where it lies: "Shed, shelf B". */
  readonly location?: string;
}

/** What belongs together on a loading list: products, signs and stakes, notices, protective gear, spill kit. */
export interface LoadingGroup {
  readonly title: string;
  readonly lines: readonly LoadingLine[];
}

/** What a truck takes along for a day, to be ticked off while loading. */
export interface LoadingList {
  readonly frame: PaperFrame;
  readonly truck: string;
  readonly people: readonly string[];
  readonly groups: readonly LoadingGroup[];
  readonly findings: readonly PaperFinding[];
}

/** The groups that have something to load; an empty group would print a heading over nothing. */
export function groupsToLoad(groups: readonly LoadingGroup[]): readonly LoadingGroup[] {
  return groups.filter((group) => group.lines.length > 0);
}
