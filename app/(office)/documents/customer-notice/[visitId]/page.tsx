import { type Metadata } from "next";
import { printCustomerNoticeAction } from "../../action";
import { PaperPage } from "../../paper-page";

export const metadata: Metadata = { title: "Customer notice" };

export default async function CustomerNoticePage({ params }: { readonly params: Promise<{ readonly visitId: string }> }) {
  return (
    <PaperPage
      kind="customer-notice"
      useCase="documents/print-customer-notice"
      subjectId={(await params).visitId}
      field="visitId"
      action={printCustomerNoticeAction}
      sentence="Before the visit it leaves room for the time, the products and the signature. After it, the record fills them in."
    />
  );
}
