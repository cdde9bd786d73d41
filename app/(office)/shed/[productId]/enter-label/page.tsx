import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { UNREAD_GENERAL, UNREAD_USE } from "#domain/label/label-fields";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { productOfPage, type ProductPageProps } from "../product-of-page";
import { EnterLabelForm } from "./enter-label-form.client";

export const metadata: Metadata = { title: "Enter a label" };

interface Props extends ProductPageProps {
  readonly searchParams: Promise<{ readonly use?: string | string[] }>;
}

export default async function EnterLabelPage(props: Props) {
  await pageFor("products/enter-label");
  const product = await productOfPage(props);
  if (product.retiredAt !== null) notFound();
  const { latest } = product.label;
  const uses = latest?.text.uses ?? [];
  const asked = (await props.searchParams).use;
  const useIndex = typeof asked === "string" && /^\d{1,2}$/.test(asked) ? Math.min(Number(asked), uses.length) : 0;
  const use = uses[useIndex];
  const title = latest === undefined ? "Enter the label" : use === undefined ? "Add another use" : `Change the use ${use.useName}`;
  const formulation = product.form === "granular" ? { formulation: "dry granule" } : {};
  return (
    <>
      <PageHead
        above={<Link href={`/shed/${product.productId}`}>{product.name}</Link>}
        title={title}
        sentence="Type it from the container in front of you, as printed. It counts when somebody has read it back."
      />
      <Sheet>
        <EnterLabelForm
          productId={product.productId}
          form={product.form}
          basedOnNumber={String(latest?.number ?? 0)}
          useIndex={String(useIndex)}
          values={{ ...UNREAD_GENERAL, ...formulation, ...latest?.text.general, ...UNREAD_USE, ...use }}
        />
      </Sheet>
    </>
  );
}
