import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { house } from "#application/house";
import { readTemperatures } from "#application/temperatures/read-temperatures";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { KeepTemperaturesForm } from "./keep-temperatures-form.client";

export const metadata: Metadata = { title: "Keep daily temperatures" };

/** Highs and lows of one source, pasted or typed, that are read back before they are kept. */
export default async function KeepTemperaturesPage() {
  await pageFor("temperatures/keep-temperatures");
  const answer = await asMember(readTemperatures, {});
  if (!answer.ok) notFound();
  // Most people bring more days of the source that they brought days of before.
  const { shown } = answer.value;
  const last = shown?.days.at(-1);
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href="/settings/temperatures">
            Daily temperatures
          </Link>
        }
        title="Keep daily temperatures"
        sentence="Paste the days of one source, or type them. You see what was understood before anything is kept."
      />
      <Sheet>
        <KeepTemperaturesForm
          fixed={{ requestId: house().newId() }}
          values={{ source: shown?.source ?? "", figuresFrom: last?.figuresFrom ?? "", scale: last?.scale ?? "fahrenheit", days: "" }}
        />
      </Sheet>
    </>
  );
}
