import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { may } from "#application/permission";
import { readRecord } from "#application/register/read-record";
import { LAWN_OUTCOME_WORDS, type RecordContent } from "#domain/register/record-content";
import { answerInDocument } from "#domain/foundation/answered-hold";
import { type Finding } from "#domain/foundation/finding";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { LinkButton } from "#ui/button";
import { Code } from "#ui/code";
import { KeyValueList } from "#ui/key-value-list";
import { MarkedWords } from "#ui/marked-words";
import { PageHead } from "#ui/page-head";
import { JumpLinks, Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { VisitFinding } from "../../visits/visit-finding";
import { clockOf, momentOf } from "../../visits/[visitId]/visit-words";
import { dayOfRecord, licenseWords, weatherWords } from "../record-words";
import { RecordedTreatmentBlock } from "./recorded-treatment";

interface Props {
  readonly params: Promise<{ readonly registerEntryId: string }>;
}

const readOnce = cache((registerEntryId: string) => asMember(readRecord, { registerEntryId }));

export async function generateMetadata({ params }: Props) {
  const answer = await readOnce((await params).registerEntryId);
  return { title: answer.ok ? `Record ${String(answer.value.record.number)}` : "Register" };
}

const SECTIONS = [
  { id: "what", name: "What was put down" },
  { id: "where", name: "Where and for whom" },
  { id: "when", name: "When and who" },
  { id: "findings", name: "Findings" },
  { id: "proof", name: "Proof" },
] as const;

/** One record as it stands in the register, every field under its name. */
export default async function RecordPage({ params }: Props) {
  const { member, company } = await pageFor("register/read-record");
  const answer = await readOnce((await params).registerEntryId);
  if (!answer.ok) notFound();
  const { record } = answer.value;
  const { content } = record;
  const seesVisits = may(member.role, "visits/read-visit");
  return (
    <>
      <PageHead
        above={<Link href="/register">Register</Link>}
        title={`Record ${String(record.number)}`}
        sentence={`${content.site.street}, ${formatLongDate(dayOfRecord(content))}. ${content.visit.name}.`}
        actions={
          <LinkButton document href={`/documents/application-record/${record.registerEntryId}`}>
            Print the record
          </LinkButton>
        }
      />
      <JumpLinks sections={SECTIONS} />
      <Stack gap={6}>
        <Section id="what" name="What was put down">
          <Stack gap={5}>
            {content.treatments.length === 0 && <p>Nothing was put down: it was a look.</p>}
            {content.treatments.map((treatment) => (
              <RecordedTreatmentBlock key={treatment.line} treatment={treatment} />
            ))}
            <ul>
              {content.lawns.map(({ zoneId, name, grasses, outcome }) => (
                <li key={zoneId}>
                  {name}: <strong>{LAWN_OUTCOME_WORDS[outcome]}</strong>
                  {grasses.length > 0 && `, ${grasses.join(", ")}`}
                </li>
              ))}
            </ul>
          </Stack>
        </Section>
        <Section id="where" name="Where and for whom">
          <WhereAndForWhom content={content} visitHref={seesVisits ? `/visits/${record.visitId}` : undefined} />
        </Section>
        <Section id="when" name="When and who">
          <WhenAndWho content={content} />
        </Section>
        <Section id="findings" name="Findings on the record">
          <Stack gap={4}>
            {content.findings.length === 0 && <p>None.</p>}
            {content.findings.map((finding) => (
              <RecordedFinding key={`${finding.rule} ${finding.what} ${finding.figure ?? ""} ${finding.about.join(" ")}`} finding={finding} content={content} />
            ))}
          </Stack>
        </Section>
        <Section id="proof" name="Proof">
          <KeyValueList
            pairs={[
              { key: "Written", value: `${momentOf(record.writtenAt, company.timeZone)}, by ${record.writtenBy}` },
              { key: "Stands as written", value: record.isUnaltered ? "Yes: its hash is that of what stands here" : <MarkedWords level="hold">No: its hash is not that of what stands here</MarkedWords> },
              { key: "Hash", value: <Code>{record.hash}</Code> },
              { key: "Hash of the entry before", value: <Code>{record.previousHash}</Code> },
              { key: "Rules", value: content.rulesVersion },
              { key: "Form", value: content.form },
            ]}
          />
        </Section>
      </Stack>
    </>
  );
}

/** A finding as the record has it; a hold that a license holder answered carries the answer. */
function RecordedFinding({ finding, content }: { readonly finding: Finding; readonly content: RecordContent }) {
  const said = answerInDocument(finding, content.holdAnswers);
  return <VisitFinding finding={finding} answer={said === undefined ? undefined : { said, at: momentOf(Date.parse(said.answeredAt), content.timeZone) }} />;
}

function WhereAndForWhom({ content, visitHref }: { readonly content: RecordContent; readonly visitHref: string | undefined }) {
  const { site, customer, company, visit } = content;
  const ticket = visit.mixTicketNumber === null ? "none was issued" : String(visit.mixTicketNumber);
  return (
    <KeyValueList
      pairs={[
        { key: "Site", value: `${site.street}, ${site.city}, ${site.state} ${site.zip}` },
        { key: "Customer", value: customer.phone === null ? customer.name : `${customer.name}, ${customer.phone}` },
        {
          key: "Visit",
          value:
            visitHref === undefined ? (
              visit.name
            ) : (
              <Link href={visitHref} prefetch={false}>
                {visit.name}
              </Link>
            ),
        },
        { key: "Mix ticket", value: ticket },
        { key: "Business", value: [company.name, company.address, company.phone].filter((part) => part !== null).join(", ") },
        { key: "Business license", value: company.businessLicenseNumber ?? "not on file" },
      ]}
    />
  );
}

function WhenAndWho({ content }: { readonly content: RecordContent }) {
  const { startedAt, endedAt, enteredAt, timeZone, applicator, supervisor } = content;
  return (
    <KeyValueList
      pairs={[
        { key: "Day", value: formatLongDate(dayOfRecord(content)) },
        { key: "Started", value: clockOf(Date.parse(startedAt), timeZone) },
        { key: "Ended", value: clockOf(Date.parse(endedAt), timeZone) },
        { key: "Applied by", value: `${applicator.name}; ${licenseWords(applicator.license)}` },
        { key: "Supervised by", value: supervisor === null ? "nobody" : `${supervisor.name}; ${licenseWords(supervisor.license)}` },
        { key: "Weather", value: weatherWords(content) },
        { key: "Sign", value: content.signIsUp ? "was put up" : "was not put up" },
        { key: "Notice", value: content.noticeWasLeft ? "was left" : "was not left" },
        { key: "Remarks", value: content.remarks ?? "none" },
        { key: "Signature", value: content.signature ?? "nobody signed" },
        { key: "Entered", value: momentOf(Date.parse(enteredAt), timeZone) },
      ]}
    />
  );
}
