import { type Metadata } from "next";
import { redirect } from "next/navigation";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { DoorFrame } from "../door-frame";
import { ownPath } from "../own-path";
import { asMember } from "../session";
import { readCompany } from "#application/companies/read-company";
import { SignInForm } from "./sign-in-form.client";

export const metadata: Metadata = { title: "Sign in" };

interface Props {
  readonly searchParams: Promise<{ readonly next?: string | string[] }>;
}

export default async function SignInPage({ searchParams }: Props) {
  const next = ownPath((await searchParams).next);
  if ((await asMember(readCompany, {})).ok) redirect(next);
  return (
    <DoorFrame>
      <PageHead title="Sign in" />
      <Sheet>
        <Stack gap={5}>
          <SignInForm next={next} />
          <Text tone="second">
            Forgot the password? The owner of your company makes you a link to set a new one. An owner prints a link in the terminal
            of the installation: npm run company -- reset, and the email address.
          </Text>
        </Stack>
      </Sheet>
    </DoorFrame>
  );
}
