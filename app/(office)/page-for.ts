import { notFound } from "next/navigation";
import { may, type UseCaseName } from "#application/permission";
import { memberOfPage } from "../session";

/** The member and company of a page that is for one use case; a role that may not do it finds no page. */
export async function pageFor(useCase: UseCaseName) {
  const page = await memberOfPage();
  if (!may(page.member.role, useCase)) notFound();
  return page;
}
