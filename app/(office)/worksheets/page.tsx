import { type Metadata } from "next";
import { PageHead } from "#ui/page-head";
import { ContentsList } from "#ui/top-bar";
import { memberOfPage } from "../../session";
import { WORKSHEET_LIST } from "./catalog";

export const metadata: Metadata = { title: "Worksheets" };

/** The list of worksheets. They know no customer and keep nothing: what is typed stands in the address. */
export default async function WorksheetsPage() {
  await memberOfPage();
  return (
    <>
      <PageHead title="Worksheets" sentence="Each shows its formula and every step, so that it can be followed by hand. Nothing is kept; what you type stands in the address." />
      <ContentsList places={WORKSHEET_LIST} />
    </>
  );
}
