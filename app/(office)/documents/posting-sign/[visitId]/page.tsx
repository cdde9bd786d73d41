import { type Metadata } from "next";
import { printPostingSignAction } from "../../action";
import { PaperPage } from "../../paper-page";

export const metadata: Metadata = { title: "Posting sign" };

export default async function PostingSignPage({ params }: { readonly params: Promise<{ readonly visitId: string }> }) {
  return (
    <PaperPage
      kind="posting-sign"
      useCase="documents/print-posting-sign"
      subjectId={(await params).visitId}
      field="visitId"
      action={printPostingSignAction}
      sentence="A sheet of lawn markers at the size and in the words of the state’s law. Print at 100 percent and measure the bar."
    />
  );
}
