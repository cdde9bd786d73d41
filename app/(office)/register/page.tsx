import { type Metadata } from "next";
import { notFound } from "next/navigation";
import { listRegister } from "#application/register/list-register";
import { type RecordOnFile } from "#application/register/read-record";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { LAWN_OUTCOME_WORDS } from "#domain/register/record-content";
import { Button, LinkButton } from "#ui/button";
import { Code } from "#ui/code";
import { type DataCell, DataTable } from "#ui/data-table.client";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { DateField } from "#ui/text-field";
import { Text } from "#ui/text";
import { asMember } from "../../session";
import { pageFor } from "../page-for";
import { ChainSentence } from "./chain-sentence";
import { dayOfRecord, putDownWords } from "./record-words";

export const metadata: Metadata = { title: "Register" };

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const DAY = /^\d{4}-\d{2}-\d{2}$/u;

function dayAsked(value: string | readonly string[] | undefined): string {
  return typeof value === "string" && DAY.test(value) ? value : "";
}

/** The book of records, by period, and how its chain stands. */
export default async function RegisterPage({ searchParams }: Props) {
  await pageFor("register/list-register");
  const asked = await searchParams;
  const [from, until] = [dayAsked(asked["from"]), dayAsked(asked["until"])];
  const answer = await asMember(listRegister, { from, until });
  if (!answer.ok) notFound();
  const { records, chain } = answer.value;
  const isNarrowed = from !== "" || until !== "";
  const isEmpty = chain.kind === "whole" && chain.entries === 0;
  return (
    <>
      <PageHead title="Register" sentence={<ChainSentence chain={chain} />} actions={<LinkButton href="/register/rules">Rules on file</LinkButton>} />
      <Stack gap={5}>
        {!isEmpty && <Period from={from} until={until} isNarrowed={isNarrowed} />}
        <DataTable
          id="records"
          caption={isNarrowed ? "Records of this period" : "Records"}
          captionSpoken
          noun={["record", "records"]}
          filterLabel="Find by street, customer or product"
          columns={[
            { id: "number", head: "Number", align: "figure" },
            { id: "day", head: "Day" },
            { id: "street", head: "Where" },
            { id: "customer", head: "Customer" },
            { id: "what", head: "What was put down" },
            { id: "who", head: "Applied by" },
          ]}
          rows={records.map((record) => ({ id: record.registerEntryId, href: `/register/${record.registerEntryId}`, cells: cellsOf(record) }))}
          empty={
            <EmptyState
              sentence={isEmpty ? "Nothing is written yet. Complete a visit, and its record stands here." : "No record is of this period."}
              actions={isEmpty ? undefined : <LinkButton href="/register">Show all records</LinkButton>}
            />
          }
        />
        {chain.kind === "whole" && chain.entries > 0 && (
          <Text size="small" tone="second">
            The last hash is <Code>{chain.lastHash}</Code>. Noted down elsewhere, it shows later that nothing before it was altered.
          </Text>
        )}
      </Stack>
    </>
  );
}

function cellsOf({ number, content }: RecordOnFile): Readonly<Record<string, DataCell>> {
  const day = dayOfRecord(content);
  const open = content.lawns.filter(({ outcome }) => outcome !== "done");
  const rest = open.length === 0 ? "" : `; ${open.map(({ name, outcome }) => `${name} ${LAWN_OUTCOME_WORDS[outcome].toLowerCase()}`).join(", ")}`;
  return {
    number: { text: String(number), sortBy: number },
    day: { text: formatShortDate(day), sortBy: day },
    street: `${content.site.street}, ${content.site.city}`,
    customer: content.customer.name,
    what: `${putDownWords(content.treatments)}${rest}`,
    who: content.applicator.name,
  };
}

function Period({ from, until, isNarrowed }: { readonly from: string; readonly until: string; readonly isNarrowed: boolean }) {
  return (
    <form method="get" action="/register">
      <Row gap="plain" align="top" fillOnPhone>
        <DateField label="From" name="from" defaultValue={from} />
        <DateField label="Until" name="until" defaultValue={until} />
        <Button type="submit">Show this period</Button>
        {isNarrowed && <LinkButton href="/register">Show all</LinkButton>}
      </Row>
    </form>
  );
}
