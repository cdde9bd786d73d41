import { type Metadata } from "next";
import { isFirstRunLink } from "#application/companies/create-company";
import { house } from "#application/house";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { LinkEnded } from "../../link-ended";
import { CreateCompanyForm } from "./create-company-form.client";

export const metadata: Metadata = { title: "A new company" };

export default async function FirstRunPage({ params }: { readonly params: Promise<{ readonly secret: string }> }) {
  const { secret } = await params;
  if (!(await isFirstRunLink(house(), secret))) {
    return <LinkEnded sentence="It was used already or has run out. Print a new one in the terminal with: npm run company" />;
  }
  return (
    <>
      <PageHead title="A new company" sentence="The company, its owner, and the owner's license. Everything can be changed later." />
      <Sheet>
        <CreateCompanyForm secret={secret} />
      </Sheet>
    </>
  );
}
