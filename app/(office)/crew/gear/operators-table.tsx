import { type ReactNode } from "react";
import { type LatestOnFile } from "#application/equipment/gear-on-file";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { formatRate } from "#domain/quantities/format-rate";
import { MarkedWords } from "#ui/marked-words";
import { Table } from "#ui/table";
import { setupWords, standingWords } from "./gear-words";

interface OperatorsTableProps {
  /** What the gear is called. */
  readonly name: string;
  readonly latest: readonly LatestOnFile[];
  /** The address of the gear's page. */
  readonly base: string;
  /** What stands there when nobody has calibrated it. */
  readonly empty: ReactNode;
}

/** Who calibrated a piece of gear, when, with what, what it gives, and whether that is still good. */
export function OperatorsTable({ name, latest, base, empty }: OperatorsTableProps) {
  if (latest.length === 0) return <>{empty}</>;
  return (
    <Table
      caption={`Latest calibrations of ${name}`}
      captionSpoken
      even
      columns={[
        { id: "operator", head: "Calibrated by" },
        { id: "on", head: "On" },
        { id: "with", head: "With" },
        { id: "gives", head: "Gives" },
        { id: "today", head: "Today" },
      ]}
      rows={latest.map(({ calibration, standing }) => ({
        id: calibration.figures.calibrationId,
        href: `${base}/calibrations/${calibration.figures.calibrationId}`,
        cells: {
          operator: calibration.operator.name,
          on: formatShortDate(calibration.doneOn),
          with: setupWords(calibration),
          gives: formatRate(calibration.figures.rate, "us"),
          today: standing.kind === "good" ? standingWords(standing) : <MarkedWords level="take-care">{standingWords(standing)}</MarkedWords>,
        },
      }))}
    />
  );
}
