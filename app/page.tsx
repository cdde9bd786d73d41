import { redirect } from "next/navigation";
import { placesFor } from "./(office)/places";
import { memberOfPage } from "./session";

/** The front door: into the first place that the role may enter. */
export default async function FrontDoor() {
  const { member } = await memberOfPage();
  redirect(placesFor(member.role)[0]?.href ?? "/settings");
}
