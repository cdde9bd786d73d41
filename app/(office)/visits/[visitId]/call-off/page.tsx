import Link from "next/link";
import { notFound } from "next/navigation";
import { readVisitPlan } from "#application/visits/read-visit-plan";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { type VisitPageProps } from "../visit-of-page";
import { CallOffForm } from "./call-off-form.client";

export const metadata = { title: "Call the visit off" };

/** The form that calls a planned visit off. */
export default async function CallOffPage({ params }: VisitPageProps) {
  await pageFor("visits/call-off-visit");
  const answer = await asMember(readVisitPlan, await params);
  if (!answer.ok) notFound();
  const { visit } = answer.value;
  const { calledOff } = visit;
  return (
    <>
      <PageHead
        above={
          <Link href={`/visits/${visit.visitId}`} prefetch={false}>
            {visit.property.street}
          </Link>
        }
        title="Call the visit off"
        sentence={`${visit.name}. It comes off its day and is not done; what was done at other visits stays.`}
      />
      {visit.state === "planned" && !visit.hasRecord ? (
        <Sheet>
          <CallOffForm visitId={visit.visitId} version={visit.version} />
        </Sheet>
      ) : (
        <EmptyState sentence={calledOff === null ? "This visit is over." : `Called off by ${calledOff.by}: ${calledOff.reason}.`} />
      )}
    </>
  );
}
