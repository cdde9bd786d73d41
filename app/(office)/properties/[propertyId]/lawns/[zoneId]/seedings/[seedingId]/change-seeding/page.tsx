import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { seedingWords } from "#domain/properties/lawn-seeding";
import { Dialog } from "#ui/dialog.client";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { PressForm } from "../../../../../../../../action-form.client";
import { pageFor } from "../../../../../../../page-for";
import { lawnOfPage } from "../../../../../property-of-page";
import { removeSeedingAction } from "./action";
import { ChangeSeedingForm } from "./change-seeding-form.client";

export const metadata: Metadata = { title: "Change seed or sod" };

interface SeedingPageProps {
  readonly params: Promise<{ readonly propertyId: string; readonly zoneId: string; readonly seedingId: string }>;
}

export default async function ChangeSeedingPage(props: SeedingPageProps) {
  await pageFor("properties/change-seeding");
  const { property, lawn } = await lawnOfPage(props);
  const { seedingId } = await props.params;
  const onFile = lawn.seedings.find((each) => each.seedingId === seedingId);
  if (onFile === undefined) notFound();
  const { seeding, version } = onFile;
  const { propertyId } = property;
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title="Change seed or sod"
        sentence={`${seedingWords(seeding)}, ${seeding.standing === "done" ? "done on" : "planned for"} ${formatShortDate(seeding.date)}.`}
      />
      <Stack gap={5}>
        <Sheet>
          <ChangeSeedingForm
            seedingId={seedingId}
            version={String(version)}
            values={{ date: seeding.date, kind: seeding.kind, standing: seeding.standing, method: seeding.kind === "sod" ? "unknown" : seeding.method }}
          />
        </Sheet>
        <div>
          <Dialog open="Take it off this lawn" title="Take it off this lawn?" close="Leave it">
            <Stack gap={4}>
              <p>For what was entered by mistake, or was planned and given up. No label and no law counts with it any more.</p>
              <PressForm action={removeSeedingAction} fixed={{ seedingId, propertyId, zoneId: lawn.zoneId }} whilePending="Taking it off">
                Take it off
              </PressForm>
            </Stack>
          </Dialog>
        </div>
      </Stack>
    </>
  );
}
