import { type Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { productChoices } from "../../product-choices";
import { programOfPage, type ProgramPageProps } from "../program-of-page";
import { AddRoundForm } from "./add-round-form.client";

export const metadata: Metadata = { title: "Add a round" };

export default async function AddRoundPage(props: ProgramPageProps) {
  await pageFor("programs/add-round");
  const { program } = await programOfPage(props);
  const products = await productChoices();
  return (
    <>
      <PageHead
        above={<Link href={`/programs/${program.programId}`}>{program.name}</Link>}
        title="Add a round"
        sentence="When it may be done, and what goes down. Where in a label's range is yours to say; nothing above the label can be planned."
      />
      {products.length === 0 ? (
        <EmptyState sentence="No product can be planned yet. Enter a product's label in the shed and confirm it; then it is here to choose." />
      ) : (
        <Sheet>
          <AddRoundForm programId={program.programId} products={products} />
        </Sheet>
      )}
    </>
  );
}
