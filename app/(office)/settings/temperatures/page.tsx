import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { may } from "#application/permission";
import { readTemperatures, type SourceOnFile } from "#application/temperatures/read-temperatures";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { KeyValueList } from "#ui/key-value-list";
import { PageHead } from "#ui/page-head";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { PressForm } from "../../../action-form.client";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { spansWords, spanWords } from "../temperature-words";
import { chooseTemperatureSourceAction } from "./action";
import { YearOfTemperatures, yearHref } from "./year-of-temperatures";

export const metadata: Metadata = { title: "Daily temperatures" };

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const one = (asked: string | readonly string[] | undefined) => (typeof asked === "string" ? asked : undefined);

/** The highs and lows that are kept: every source with its gaps, and a year of one of them day by day. */
export default async function TemperaturesPage({ searchParams }: Props) {
  const { member, company, now } = await pageFor("temperatures/read-temperatures");
  const { source, year } = await searchParams;
  const answer = await asMember(readTemperatures, { source: one(source), year: one(year) });
  if (!answer.ok) notFound();
  const { sources, shown } = answer.value;
  const mayKeep = may(member.role, "temperatures/keep-temperatures");
  const keep = mayKeep && (
    <LinkButton kind="act" href="/settings/keep-temperatures">
      {sources.length === 0 ? "Keep daily temperatures" : "Keep more days"}
    </LinkButton>
  );
  const shownSource = sources.find((each) => each.source === shown?.source);
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href="/settings">
            Settings
          </Link>
        }
        title="Daily temperatures"
        sentence="The highs and lows of a place near the lawns. Growth potential beside the year’s nitrogen is drawn from them; no rate follows from them."
        actions={sources.length === 0 ? undefined : keep}
      />
      {sources.length === 0 && (
        <EmptyState
          sentence={mayKeep ? "No daily temperatures are kept yet, so no lawn’s growth can be drawn. Begin with a month of highs and lows of an airport or campus near the lawns, pasted or typed." : "No daily temperatures are kept yet, so no lawn’s growth can be drawn. The office keeps them."}
          actions={keep}
        />
      )}
      {sources.map((each) => (
        <SourceSection key={each.source} source={each} shown={shown} mayChoose={may(member.role, "temperatures/choose-temperature-source")} />
      ))}
      {shown !== null && shownSource !== undefined && <YearOfTemperatures shown={shown} years={shownSource.years} timeZone={company.timeZone} today={calendarDateIn(company.timeZone, now.getTime())} />}
    </>
  );
}

interface SourceSectionProps {
  readonly source: SourceOnFile;
  readonly shown: { readonly source: string; readonly year: number } | null;
  readonly mayChoose: boolean;
}

function SourceSection({ source: { source, isInUse, days, period, gaps, years }, shown, mayChoose }: SourceSectionProps) {
  const [newest] = years;
  return (
    <Section id={`source-${encodeURIComponent(source)}`} name={source} aside={isInUse ? "growth is drawn by it" : undefined}>
      <Sheet>
        <Stack gap={5}>
          <KeyValueList
            pairs={[
              { key: "Kept", value: `${daysWords(days)}, ${spanWords(period)}` },
              { key: "Missing between", value: gaps.length === 0 ? "No day" : spansWords(gaps) },
            ]}
          />
          {shown?.source !== source && newest !== undefined && (
            <p>
              <Link prefetch={false} href={yearHref(source, newest)}>
                {`Show ${String(newest)} day by day`}
              </Link>
            </p>
          )}
          {mayChoose && !isInUse && (
            <PressForm action={chooseTemperatureSourceAction} fixed={{ source }} whilePending="Choosing it">
              Draw growth by this source
            </PressForm>
          )}
        </Stack>
      </Sheet>
    </Section>
  );
}
