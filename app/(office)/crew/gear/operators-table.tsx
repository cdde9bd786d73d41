import { type ReactNode } from "react";
import { type LatestOnFile } from "#application/equipment/gear-on-file";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { formatRate } from "#domain/quantities/format-rate";
import { FindingMark } from "#ui/finding-mark";
import { Row } from "#ui/row";
import { Table } from "#ui/table";
import { setupWords, standingWords } from "./gear-words";

interface OperatorsTableProps {
  readonly caption: ReactNode;
  readonly captionSpoken?: boolean;
  readonly latest: readonly LatestOnFile[];
  /** The address of the gear's page. */
  readonly base: string;
  readonly empty: ReactNode;
}

/** Who calibrated a piece of gear, when, with what, what it gives, and whether that is still good. */
export function OperatorsTable({ caption, captionSpoken = false, latest, base, empty }: OperatorsTableProps) {
  return (
    <Table
      caption={caption}
      captionSpoken={captionSpoken}
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
          today:
            standing.kind === "good" ? (
              standingWords(standing)
            ) : (
              <Row gap="narrow">
                <FindingMark level="take-care" size={16} />
                <strong>{standingWords(standing)}</strong>
              </Row>
            ),
        },
      }))}
      empty={empty}
    />
  );
}
