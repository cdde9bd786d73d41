import { type Metadata } from "next";
import { readResetLink } from "#application/accounts/reset-password";
import { house } from "#application/house";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { LinkEnded } from "../../link-ended";
import { ResetPasswordForm } from "./reset-password-form.client";

export const metadata: Metadata = { title: "Set a new password" };

export default async function ResetPasswordPage({ params }: { readonly params: Promise<{ readonly secret: string }> }) {
  const { secret } = await params;
  const answer = await readResetLink(house(), secret);
  if (!answer.ok) return <LinkEnded sentence={answer.refusal.sentence} />;
  return (
    <>
      <PageHead title="Set a new password" sentence={`For ${answer.value.email}. Every browser that is signed in is signed out.`} />
      <Sheet>
        <ResetPasswordForm secret={secret} />
      </Sheet>
    </>
  );
}
