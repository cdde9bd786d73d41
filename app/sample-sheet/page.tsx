import { type Metadata } from "next";
import { Gallery } from "#ui/gallery";
import { memberOfPage } from "../session";

export const metadata: Metadata = { title: "Sample sheet" };

/** Every part that screens are made of, in every state, with invented figures. */
export default async function SampleSheetPage() {
  await memberOfPage();
  return <Gallery />;
}
