import { type Metadata } from "next";
import { PageHead } from "#ui/page-head";
import { ContentsList } from "#ui/top-bar";
import { memberOfPage } from "../../session";
import { placesFor } from "../places";

export const metadata: Metadata = { title: "Contents" };

/** The places as a page of their own, for screens too narrow for the row. */
export default async function ContentsPage() {
  const { company, member } = await memberOfPage();
  const worksheets = { name: "Worksheets", href: "/worksheets", question: "How is it worked out by hand, from what was measured?" };
  const settings = { name: "Settings", href: "/settings", question: "How is the company, your account and the screen set up?" };
  return (
    <>
      <PageHead title="Contents" sentence={`${company.name}, ${member.personName}.`} />
      <ContentsList places={[...placesFor(member.role), worksheets, settings]} />
    </>
  );
}
