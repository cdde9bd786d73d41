import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { ChangePasswordForm } from "./change-password-form.client";

export const metadata: Metadata = { title: "Change your password" };

export default async function ChangePasswordPage() {
  await pageFor("accounts/change-password");
  return (
    <>
      <PageHead
        above={<Link href="/settings">Settings</Link>}
        title="Change your password"
        sentence="Every browser that is signed in with the old one is signed out, this one too."
      />
      <Sheet>
        <ChangePasswordForm />
      </Sheet>
    </>
  );
}
