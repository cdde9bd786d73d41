import { type Metadata } from "next";
import Link from "next/link";
import { HOUSE_TRAVEL_WORDS } from "#application/days/travel-of-day";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { SetShopPositionForm } from "./set-shop-position-form.client";

export const metadata: Metadata = { title: "Say where the shop is" };

export default async function SetShopPositionPage() {
  await pageFor("days/set-shop-position");
  return (
    <>
      <PageHead
        above={
          <Link prefetch={false} href="/today">
            Today
          </Link>
        }
        title="Say where the shop is"
        sentence={`Trucks start and end there. ${HOUSE_TRAVEL_WORDS}`}
      />
      <Sheet>
        <SetShopPositionForm />
      </Sheet>
    </>
  );
}
