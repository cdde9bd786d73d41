import { type Metadata } from "next";
import { printMixTicketAction } from "../../action";
import { PaperPage } from "../../paper-page";

export const metadata: Metadata = { title: "Mix ticket" };

export default async function MixTicketPaperPage({ params }: { readonly params: Promise<{ readonly mixTicketId: string }> }) {
  return (
    <PaperPage
      kind="mix-ticket"
      useCase="documents/print-mix-ticket"
      subjectId={(await params).mixTicketId}
      field="mixTicketId"
      action={printMixTicketAction}
      sentence="Amounts, order, lawns and aftercare as the ticket was issued. Later changes do not alter it."
    />
  );
}
