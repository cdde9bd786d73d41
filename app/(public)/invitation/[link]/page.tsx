import { type Metadata } from "next";
import { house } from "#application/house";
import { readInvitation } from "#application/people/accept-invitation";
import { ROLE_SENTENCES } from "#domain/crew/role";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { LinkEnded } from "../../link-ended";
import { AcceptInvitationForm } from "./accept-invitation-form.client";

export const metadata: Metadata = { title: "Invitation" };

export default async function InvitationPage({ params }: { readonly params: Promise<{ readonly link: string }> }) {
  const { link } = await params;
  const answer = await readInvitation(house(), link);
  if (!answer.ok) return <LinkEnded sentence={answer.refusal.sentence} />;
  const { companyName, personName, role, email, hasAccount } = answer.value;
  return (
    <>
      <PageHead title={`${companyName} invites ${personName}`} sentence={ROLE_SENTENCES[role]} />
      <Sheet>
        <AcceptInvitationForm link={link} email={email} hasAccount={hasAccount} />
      </Sheet>
    </>
  );
}
