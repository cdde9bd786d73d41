import Link from "next/link";
import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { readVisitPlan, type TreatmentOnPlan } from "#application/visits/read-visit-plan";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { typedShareOf } from "#domain/quantities/share";
import { labelRangeWords } from "#domain/scheduling/planned-rate";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../../session";
import { pageFor } from "../../../../page-for";
import { ChangeTaskForm } from "./change-task-form.client";

export const metadata = { title: "Change what goes down" };

interface Props {
  readonly params: Promise<{ readonly visitId: string; readonly line: string }>;
}

/** The label's range for a rate, as the field's hint. */
function rateHint({ labelRates }: TreatmentOnPlan): string {
  if (labelRates === null) return "The label has no such use on file.";
  return `The label’s range is ${labelRangeWords(labelRates)}. Where in it is your decision.`;
}

/** The form that changes one task of a planned visit. */
export default async function ChangeTaskPage({ params }: Props) {
  await pageFor("visits/change-visit-task");
  const { visitId, line } = await params;
  const answer = await asMember(readVisitPlan, { visitId });
  const gear = await asMember(listEquipment, {});
  if (!answer.ok) notFound();
  const { visit } = answer.value;
  const treatment = visit.treatments.find((one) => String(one.line) === line);
  const task = treatment ?? visit.looks.find((one) => String(one.line) === line);
  if (task === undefined) notFound();
  const above = (
    <Link href={`/visits/${visitId}`} prefetch={false}>
      {visit.property.street}
    </Link>
  );
  const title = treatment === undefined ? "Change where to look" : `Change ${treatment.productName}`;
  if (visit.hasRecord || visit.state !== "planned") {
    return (
      <>
        <PageHead above={above} title={title} />
        <EmptyState sentence="This visit is over. What was done stands in its record." />
      </>
    );
  }
  const ticks = Object.fromEntries(task.zoneIds.map((zoneId) => [`lawns.${zoneId}`, "yes"]));
  return (
    <>
      <PageHead above={above} title={title} sentence={`${visit.name}. A mix ticket that was issued stands as it was; issue it anew after the change.`} />
      <Sheet>
        <ChangeTaskForm
          fixed={{ visitId, line, version: String(visit.version) }}
          values={{ rate: treatment?.rateText ?? "", spotShare: typedShareOf(treatment?.spot?.shareBasisPoints), equipmentId: treatment?.equipmentId ?? "", ...ticks }}
          rateHint={treatment === undefined ? undefined : rateHint(treatment)}
          labelRates={treatment?.labelRates ?? null}
          lawns={visit.lawns.filter(({ isRemoved }) => !isRemoved).map(({ zoneId, letter, name, area }) => ({ zoneId, words: `${letter} ${name}, ${formatQuantity(area, "us")}` }))}
          gear={gear.ok ? gear.value.equipment.filter(({ isStoodDown }) => !isStoodDown).map(({ equipmentId, name }) => ({ value: equipmentId, word: name })) : []}
        />
      </Sheet>
    </>
  );
}
