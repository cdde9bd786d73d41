import Link from "next/link";
import { type TankOnFile } from "#application/fills/list-fills";
import { type ReadingOnFile } from "#application/fills/readings-on-file";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { besideBooksWords, gallonsWords } from "#domain/mixing/tank-reading";
import { Disclosure } from "#ui/disclosure";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { RECORD_TANK_READING } from "../visits/hold-acts";
import { clockOf } from "../visits/[visitId]/visit-words";
import { movedWords, WENT_TO } from "./tank-words";

/** What was found in a tank the last time, where the difference went, and the readings before it. */
export function TankReadings({ tank: { equipmentId, name, readings, fills }, timeZone }: { readonly tank: TankOnFile; readonly timeZone: string }) {
  const [last, ...earlier] = readings;
  const measure = (
    <Link href={`${RECORD_TANK_READING}?equipment=${equipmentId}`} prefetch={false} aria-label={`Write down what ${name} holds`}>
      Write down what it holds
    </Link>
  );
  if (last === undefined) {
    return (
      <p>
        {fills.length === 0 ? "Nobody has measured it." : "Nobody has measured it: what is left is by the books."} {measure}
      </p>
    );
  }
  return (
    <Stack gap={3}>
      <p>
        <strong>
          {last.volume.amount === 0n ? "Found empty" : `${gallonsWords(last.volume)} found`} {whenAndWho(last, timeZone)}
        </strong>
        , {besideBooksWords(last.volume, last.inTheBooks)}. Measured with: {withoutFullStop(last.how)}. {differenceWords(last)}
        {sinceLastWords(last)} {measure}
      </p>
      {earlier.length > 0 && (
        <Disclosure name={earlier.length === 1 ? "1 earlier reading" : `${String(earlier.length)} earlier readings`}>
          <Table
            caption={`Earlier readings of ${name}`}
            captionSpoken
            columns={[
              { id: "when", head: "Measured" },
              { id: "found", head: "Found", align: "figure" },
              { id: "books", head: "In the books", align: "figure" },
              { id: "difference", head: "Posted" },
              { id: "since", head: "Since the one before" },
            ]}
            rows={earlier.map((reading) => ({
              id: reading.tankReadingId,
              cells: {
                when: `${whenAndWho(reading, timeZone)}; ${reading.how}`,
                found: gallonsWords(reading.volume),
                books: gallonsWords(reading.inTheBooks),
                difference: differenceWords(reading),
                since: sinceLastWords(reading).trim(),
              },
            }))}
          />
        </Disclosure>
      )}
    </Stack>
  );
}

function whenAndWho({ readOn, readAt, readBy }: ReadingOnFile, timeZone: string): string {
  return `on ${formatShortDate(readOn)} at ${clockOf(readAt, timeZone)} by ${readBy}`;
}

/** What was posted for it, and what was said of it. */
function differenceWords({ moved, missingWent, note }: ReadingOnFile): string {
  const words = movedWords(moved);
  const parts = [
    words.out === "" ? "" : `Posted ${missingWent === null ? "" : WENT_TO[missingWent]}: ${words.out}.`,
    words.in === "" ? "" : `Posted into the tank from count difference: ${words.in}.`,
    words.out === "" && words.in === "" ? "No stock was posted." : "",
    note === null ? "" : `${withoutFullStop(note)}.`,
  ];
  return parts.filter((part) => part !== "").join(" ");
}

/** What left the tank between two readings, held against the records. */
function sinceLastWords({ sinceLast }: ReadingOnFile): string {
  if (sinceLast === null) return "";
  const { byReading, byRecords } = sinceLast;
  if (byReading === "more than before") return ` That is more than at the reading before with what was filled in since; the records have ${gallonsWords(byRecords)} sprayed between.`;
  return ` Since the reading before ${gallonsWords(byReading)} left the tank; the records have ${gallonsWords(byRecords)} sprayed.`;
}
