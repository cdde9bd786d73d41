import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { AddProductForm } from "./add-product-form.client";

export const metadata: Metadata = { title: "Add a product" };

export default async function AddProductPage() {
  await pageFor("products/add-product");
  return (
    <>
      <PageHead above={<Link href="/shed">Shed</Link>} title="Add a product" sentence="Its label comes next: have the container in front of you." />
      <Sheet>
        <AddProductForm />
      </Sheet>
    </>
  );
}
