import { type RoundOnFile, type TreatmentOfRound } from "#application/programs/read-program";
import { onSpotsWords } from "#domain/quantities/share";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { labelRangeWords } from "#domain/scheduling/planned-rate";
import { type NitrogenSum, poundsApart } from "#domain/scheduling/season-nitrogen";
import { windowWords } from "#domain/scheduling/window-words";
import { Finding } from "#ui/finding";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { VisitCounts } from "../visit-counts";

/** "0.80", "at least 0.80" where something is missing, "none". */
export function nitrogenWords({ known, missing }: NitrogenSum, beside: readonly NitrogenSum["known"][] = []): string {
  const figure = poundsApart(known, beside, 2);
  if (missing.length > 0) return known.amount === 0n ? "not known" : `at least ${figure}`;
  return known.amount === 0n ? "none" : figure;
}

function standsNow({ opensOn, closesOn }: RoundOnFile, today: CalendarDate): string {
  if (today < opensOn) return "to come";
  return today <= closesOn ? "open now" : "closed";
}

function GoesDown({ treatments }: { readonly treatments: readonly TreatmentOfRound[] }) {
  return (
    <Stack gap={2}>
      {treatments.map(({ line, productName, labelUse, rateText, spotShareBasisPoints, reason, labelRates }) => (
        <div key={line}>
          <strong>{productName}</strong> at <strong>{rateText}</strong>
          {onSpotsWords(spotShareBasisPoints)} for {reason}
          <Text size="small" tone="second">
            {labelUse}
            {labelRates !== null && `, label ${labelRangeWords(labelRates)}`}
          </Text>
        </div>
      ))}
    </Stack>
  );
}

/** What a label says to a rate that was planned before the label was confirmed anew. */
function findingsOf(round: RoundOnFile) {
  return round.treatments.flatMap(({ line, productName, labelUse, rateText, standing, labelRates }) => {
    const key = `${round.roundId} ${String(line)}`;
    const source = `label of ${productName}, ${labelUse}`;
    const range = labelRates === null ? "" : `Planned is ${rateText}; the label's range is ${labelRangeWords(labelRates)}.`;
    switch (standing) {
      case "within":
        return [];
      case "below-lowest":
        return [<Finding key={key} level="take-care" what={`${round.name}: ${productName} is below the label's lowest rate.`} figure={range} toDo="It may do little; make sure that it is meant." source={source} />];
      case "above-highest":
      case "another-basis":
        return [<Finding key={key} level="hold" what={`${round.name}: ${productName} is not within its label any more.`} figure={range} toDo="Lower the rate." source={source} />];
      case "not-on-label":
        return [<Finding key={key} level="hold" what={`${round.name}: the label of ${productName} has no use named ${labelUse} any more.`} toDo="Choose a use that the label has." source={source} />];
    }
  });
}

const COLUMNS = [
  { id: "name", head: "Round" },
  { id: "window", head: "Window" },
  { id: "treatments", head: "What goes down" },
  { id: "nitrogen", head: "lb N per 1,000", align: "figure" },
  { id: "secondLook", head: "Second look" },
  { id: "visits", head: "Visits" },
] as const;

interface Props {
  readonly rounds: readonly RoundOnFile[];
  readonly today: CalendarDate;
  /** Where each round leads, for those who may change it. */
  readonly hrefOf?: ((round: RoundOnFile) => string) | undefined;
}

/** The rounds in the order in which they open, with what their labels say to them. */
export function RoundsOfProgram({ rounds, today, hrefOf }: Props) {
  const findings = rounds.flatMap(findingsOf);
  return (
    <Stack gap={5}>
      {findings.length > 0 && <Stack gap={3}>{findings}</Stack>}
      <Table
        caption="Rounds"
        captionSpoken
        columns={COLUMNS}
        rows={rounds.map((round) => ({
          id: round.roundId,
          ...(hrefOf === undefined ? {} : { href: hrefOf(round) }),
          cells: {
            name: round.name,
            window: (
              <>
                {windowWords(round)}
                <Text size="small" tone="second">
                  {standsNow(round, today)}
                </Text>
              </>
            ),
            treatments: <GoesDown treatments={round.treatments} />,
            nitrogen: nitrogenWords(round.nitrogen),
            secondLook: round.secondLookAfterDays === null ? "" : `after ${daysWords(round.secondLookAfterDays)}`,
            visits: <VisitCounts visits={round.visits} />,
          },
        }))}
      />
    </Stack>
  );
}
