import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { readHouseSettings } from "#application/companies/read-house-settings";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { ChangeHouseSettingsForm } from "./change-house-settings-form.client";

export const metadata: Metadata = { title: "Change how the house works" };

export default async function ChangeHouseSettingsPage() {
  await pageFor("companies/change-house-settings");
  const answer = await asMember(readHouseSettings, {});
  if (!answer.ok) notFound();
  const { version, settings, tankMarkText } = answer.value;
  const values = Object.fromEntries(Object.entries({ ...settings, tankMark: tankMarkText }).map(([name, value]) => [name, String(value)]));
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href="/settings#ways">
            Settings
          </Link>
        }
        title="Change how the house works"
        sentence="What label and law leave open. A product’s own label always wins, and a mix ticket that was issued stays as it is."
      />
      <Sheet>
        <ChangeHouseSettingsForm version={String(version)} values={values} />
      </Sheet>
    </>
  );
}
