import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { LinkButton } from "#ui/button";
import { Finding } from "#ui/finding";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { PressForm } from "../../../../action-form.client";
import { pageFor } from "../../../page-for";
import { LabelIsTheLaw } from "../../label-is-the-law";
import { EveryLabelLine, unreadCount } from "../label-lines";
import { productOfPage, type ProductPageProps } from "../product-of-page";
import { confirmLabelAction } from "./action";

export const metadata: Metadata = { title: "Read a label back" };

export default async function ConfirmLabelPage(props: ProductPageProps) {
  await pageFor("products/confirm-label");
  const product = await productOfPage(props);
  const { latest } = product.label;
  if (latest === undefined || latest.confirmation !== undefined || product.retiredAt !== null) notFound();
  const base = `/shed/${product.productId}`;
  const unread = unreadCount(latest);
  return (
    <>
      <PageHead
        above={<Link href={base}>{product.name}</Link>}
        title="Hold every line against the container"
        sentence={
          <>
            Entry {latest.number}, typed by {latest.enteredBy}. Read each line here, then on the container. From your confirmation on, plans and mix
            tickets go by it under your name.
          </>
        }
      />
      <Stack gap={5}>
        {unread > 0 && (
          <Finding
            level="take-care"
            what={unread === 1 ? "Nobody has read one fact." : `Nobody has read ${String(unread)} facts.`}
            figure="What nobody has read is not taken for a label without limits:"
            toDo="whatever depends on it is held until somebody reads it."
            source="house"
          />
        )}
        <Sheet>
          <EveryLabelLine entry={latest} />
        </Sheet>
        <LabelIsTheLaw />
        <Row fillOnPhone align="top">
          <PressForm action={confirmLabelAction} fixed={{ labelEntryId: latest.labelEntryId }} kind="act" whilePending="Confirming">
            Every line agrees with the container
          </PressForm>
          <LinkButton href={`${base}/enter-label?use=0`}>Something is wrong: change it</LinkButton>
        </Row>
      </Stack>
    </>
  );
}
