import { type Metadata } from "next";
import Link from "next/link";
import { house } from "#application/house";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { AddProgramForm } from "./add-program-form.client";

export const metadata: Metadata = { title: "Add a program" };

export default async function AddProgramPage() {
  const { company } = await pageFor("programs/add-program");
  const season = calendarDateIn(company.timeZone, house().now().getTime()).slice(0, 4);
  return (
    <>
      <PageHead above={<Link href="/programs">Programs</Link>} title="Add a program" sentence="A season of rounds for lawns that want the same. Its rounds come next." />
      <Sheet>
        <AddProgramForm season={season} />
      </Sheet>
    </>
  );
}
