import Link from "next/link";
import { notFound } from "next/navigation";
import { heldOf } from "#application/visits/visit-ticket";
import { answeredHold, textOfAnsweredHold } from "#domain/foundation/answered-hold";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { pageFor } from "../../../page-for";
import { VisitFinding } from "../../visit-finding";
import { visitOfPage, type VisitPageProps } from "../visit-of-page";
import { AnswerHoldForm } from "./answer-hold-form.client";

export const metadata = { title: "Answer a hold" };

interface Props extends VisitPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** A license holder says why a hold of law does not apply to a visit. */
export default async function AnswerHoldPage({ params, searchParams }: Props) {
  await pageFor("visits/answer-hold");
  const found = await visitOfPage({ params });
  const { rule, number = "1" } = await searchParams;
  const hold = found.openHolds.filter((one) => one.rule === rule)[Number(number) - 1];
  const { on } = heldOf(found.outcome);
  if (hold?.answerableBy !== "license-holder" || on === null) notFound();
  const { visitId, property, name } = found.visit;
  const licenses = found.mayAnswerWith.map(({ licenseId, number, expiresOn }) => ({ value: licenseId, word: `${property.state} ${number}, until ${formatShortDate(expiresOn)}` }));
  return (
    <>
      <PageHead
        above={
          <Link href={`/visits/${visitId}`} prefetch={false}>
            {property.street}
          </Link>
        }
        title="Answer a hold"
        sentence={`${name}, for ${formatShortDate(on)}. Law leaves this to a license holder; a label never does.`}
      />
      <Stack gap={5}>
        <VisitFinding finding={hold} />
        {licenses.length === 0 ? (
          <EmptyState sentence={`You hold no certified applicator’s license of ${property.state} that stands today. Ask a license holder to answer under their own sign-in, or change the plan.`} />
        ) : (
          <Sheet>
            <AnswerHoldForm visitId={visitId} hold={textOfAnsweredHold(answeredHold(hold, on))} licenses={licenses} />
          </Sheet>
        )}
      </Stack>
    </>
  );
}
