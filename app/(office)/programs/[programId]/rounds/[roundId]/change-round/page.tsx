import { type Metadata } from "next";
import Link from "next/link";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { PressForm } from "../../../../../../action-form.client";
import { pageFor } from "../../../../../page-for";
import { productChoices } from "../../../../product-choices";
import { removeRoundAction } from "../../../action";
import { roundOfPage, type RoundPageProps } from "../../../program-of-page";
import { typedShareOf } from "#domain/quantities/share";
import { ChangeRoundForm } from "./change-round-form.client";

export const metadata: Metadata = { title: "Change a round" };

/** The window and, while no property is on the round, everything else. */
export default async function ChangeRoundPage(props: RoundPageProps) {
  await pageFor("programs/change-round");
  const { program, round } = await roundOfPage(props);
  const { roundId, version, name, opensOn, closesOn, secondLookAfterDays, treatments, visitCount } = round;
  const isFree = visitCount === 0;
  const rows = treatments.flatMap(({ productId, labelUse, rateText, spotShareBasisPoints, reason }, row) => [
    [`treatments.${String(row)}.productUse`, productUseKey(productId, labelUse)] as const,
    [`treatments.${String(row)}.rate`, rateText] as const,
    [`treatments.${String(row)}.spotShare`, typedShareOf(spotShareBasisPoints)] as const,
    [`treatments.${String(row)}.reason`, reason] as const,
  ]);
  const more = { secondLook: secondLookAfterDays === null ? "" : String(secondLookAfterDays), ...Object.fromEntries(rows) };
  const sentence = isFree
    ? "No property is on this round yet: everything may change."
    : `${visitCount === 1 ? "One visit comes" : `${String(visitCount)} visits come`} of this round. Its name and window change here, and planned visits move with it; what goes down changes at each visit.`;
  return (
    <>
      <PageHead above={<Link href={`/programs/${program.programId}`}>{program.name}</Link>} title={name} sentence={sentence} />
      <Stack gap={5}>
        <Sheet>
          <ChangeRoundForm
            roundId={roundId}
            version={String(version)}
            values={{ name, opensOn, closesOn, ...(isFree ? more : {}) }}
            treatments={isFree ? { products: await productChoices(), onFile: treatments.length } : null}
          />
        </Sheet>
        {isFree && (
          <PressForm action={removeRoundAction} fixed={{ roundId }} whilePending="Taking it out">
            Take this round out
          </PressForm>
        )}
      </Stack>
    </>
  );
}
