import { may } from "#application/permission";
import { type RecordOnFile } from "#application/register/read-record";
import { listRecordsOfProperty } from "#application/register/list-records-of-property";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { LAWN_OUTCOME_WORDS, MEASURED_BY_WORDS, type RecordedAmount, type RecordedTreatment } from "#domain/register/record-content";
import { EmptyState } from "#ui/empty-state";
import { Table } from "#ui/table";
import { asMember, memberOfPage } from "../../../session";
import { dayOfRecord } from "../../register/record-words";
import { type VisitsOfPropertyProps } from "./visits-of-property";

/** What was put down, the newest first: each row leads to its record. */
export async function PutDown({ propertyId, zoneId }: VisitsOfPropertyProps) {
  const { member } = await memberOfPage();
  const answer = await asMember(listRecordsOfProperty, { propertyId });
  const records = answer.ok ? answer.value.records.filter(({ content }) => zoneId === undefined || content.lawns.some((lawn) => lawn.zoneId === zoneId)) : [];
  const isLinked = may(member.role, "register/read-record");
  return (
    <Table
      caption="Put down"
      captionSpoken
      columns={[
        { id: "day", head: "Day" },
        { id: "what", head: "What" },
        { id: "lawns", head: "Lawns" },
        { id: "who", head: "Applied by" },
        { id: "record", head: "Record", align: "figure" },
      ]}
      rows={records.map((record) => ({
        id: record.registerEntryId,
        ...(isLinked ? { href: `/register/${record.registerEntryId}` } : {}),
        cells: cellsOf(record, zoneId),
      }))}
      empty={<EmptyState sentence={zoneId === undefined ? "Nothing is on record for this ground. A completed visit stands here." : "Nothing is on record for this lawn."} />}
    />
  );
}

function cellsOf({ number, content }: RecordOnFile, zoneId: string | undefined) {
  const lawns = content.lawns.filter((lawn) => zoneId === undefined || lawn.zoneId === zoneId);
  return {
    day: formatShortDate(dayOfRecord(content)),
    what: whatWords(content.treatments, zoneId),
    lawns: lawns.map(({ name, outcome }) => (outcome === "done" ? name : `${name}: ${LAWN_OUTCOME_WORDS[outcome].toLowerCase()}`)).join(", "),
    who: content.applicator.name,
    record: String(number),
  };
}

/** Amounts of the whole visit, or of the one lawn that is looked at. */
function whatWords(treatments: readonly RecordedTreatment[], zoneId: string | undefined): string {
  const said = treatments.flatMap((treatment) => {
    const amount: RecordedAmount | undefined = zoneId === undefined ? treatment.total : treatment.lawns.find((lawn) => lawn.zoneId === zoneId)?.amount;
    return amount === undefined ? [] : [`${amount.words} of ${treatment.productName}, ${MEASURED_BY_WORDS[treatment.measuredBy]}`];
  });
  return said.length === 0 ? "A look" : said.join("; ");
}
