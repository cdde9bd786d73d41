import { type Metadata } from "next";
import { printApplicationRecordAction } from "../../action";
import { PaperPage } from "../../paper-page";

export const metadata: Metadata = { title: "Application record" };

export default async function ApplicationRecordPage({ params }: { readonly params: Promise<{ readonly registerEntryId: string }> }) {
  return (
    <PaperPage
      kind="application-record"
      useCase="documents/print-application-record"
      subjectId={(await params).registerEntryId}
      field="registerEntryId"
      action={printApplicationRecordAction}
      sentence="Everything that the record holds, its hash and the hash before it, and what was amended since."
    />
  );
}
