import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { ChangeCompanyForm } from "./change-company-form.client";

export const metadata: Metadata = { title: "Change the company" };

export default async function ChangeCompanyPage() {
  const { company } = await pageFor("companies/change-company");
  const { version, isDemonstration: _isDemonstration, ...details } = company;
  const values = Object.fromEntries(Object.entries(details).map(([name, value]) => [name, value ?? ""]));
  return (
    <>
      <PageHead above={<Link href="/settings">Settings</Link>} title="Change the company" />
      <Sheet>
        <ChangeCompanyForm version={String(version)} values={values} />
      </Sheet>
    </>
  );
}
