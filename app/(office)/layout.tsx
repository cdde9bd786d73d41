import { type ReactNode } from "react";
import { DemonstrationNotice } from "#ui/demonstration-notice";
import { PageFrame } from "#ui/page-frame";
import { memberOfPage } from "../session";
import { OfficeBar } from "./office-bar.client";
import { placesFor } from "./places";

export default async function OfficeLayout({ children }: { readonly children: ReactNode }) {
  const { company, member } = await memberOfPage();
  const places = placesFor(member.role).map(({ name, href }) => ({ name, href }));
  const notice = company.isDemonstration && (
    <DemonstrationNotice>{company.name} is invented: its people, customers, products and places do not exist.</DemonstrationNotice>
  );
  return (
    <PageFrame bar={<OfficeBar places={places} />} notice={notice}>
      {children}
    </PageFrame>
  );
}
