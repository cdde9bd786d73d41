import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { shownOrNone } from "#application/equipment/typed-amount";
import { isSprayer, methodsFor, SPRAYER_METHOD_WORDS, type SprayerKind, type SprayerMethod } from "#domain/equipment/equipment-kind";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { pageFor } from "../../../../page-for";
import { equipmentOfPage, type EquipmentPageProps } from "../equipment-of-page";
import { CalibrateSprayerForm } from "./calibrate-sprayer-form.client";
import { CalibrateSpreaderForm } from "./calibrate-spreader-form.client";

export const metadata: Metadata = { title: "Calibrate" };

interface Props extends EquipmentPageProps {
  readonly searchParams: Promise<{ readonly method?: string | string[] }>;
}

export default async function CalibratePage(props: Props) {
  const { member } = await pageFor("equipment/calibrate-sprayer");
  const { equipment, operators, products, today } = await equipmentOfPage(props);
  if (equipment.isStoodDown) notFound();
  const { equipmentId, kind, name } = equipment;
  const entersOwn = member.role === "applicator" || member.role === "technician";
  const shared = {
    fixed: { equipmentId, ...(entersOwn ? { operatorId: member.personId } : {}) },
    values: { madeOn: today, ...(isSprayer(kind) ? { liquid: "as-water" } : { swath: shownOrNone("length", equipment.swath?.amount ?? null) ?? "" }) },
    operators: entersOwn ? undefined : operators.map((person) => ({ value: person.personId, word: person.name })),
  };
  const head = (
    <PageHead
      above={<Link href={`/crew/gear/${equipmentId}`}>{name}</Link>}
      title="Calibrate"
      sentence={isSprayer(kind) ? "With water, or with the mix itself. It is kept for good, as it was typed." : "One product at one setting. It is kept for good, as it was typed."}
    />
  );
  if (!isSprayer(kind)) {
    return (
      <>
        {head}
        {products.length === 0 ? (
          <EmptyState sentence="No granular product is on file, and a spreader is calibrated for one. Add the product in the Shed first." />
        ) : (
          <Sheet>
            <CalibrateSpreaderForm {...shared} products={products.map((product) => ({ value: product.productId, word: product.name }))} />
          </Sheet>
        )}
      </>
    );
  }
  const method = chosenMethod(kind, (await props.searchParams).method);
  return (
    <>
      {head}
      <Stack gap={5}>
        <MethodChoice kind={kind} chosen={method} base={`/crew/gear/${equipmentId}/calibrate`} />
        <Sheet>
          <CalibrateSprayerForm key={method} {...shared} method={method} />
        </Sheet>
      </Stack>
    </>
  );
}

function chosenMethod(kind: SprayerKind, asked: string | string[] | undefined): SprayerMethod {
  const methods = methodsFor(kind);
  return methods.find((method) => method === asked) ?? methods[0];
}

interface MethodChoiceProps {
  readonly kind: SprayerKind;
  readonly chosen: SprayerMethod;
  readonly base: string;
}

function MethodChoice({ kind, chosen, base }: MethodChoiceProps) {
  return (
    <nav aria-label="How it is measured">
      <Stack gap={3}>
        <p>
          Measured: <strong>{SPRAYER_METHOD_WORDS[chosen]}.</strong> Or otherwise:
        </p>
        <Row fillOnPhone>
          {methodsFor(kind)
            .filter((method) => method !== chosen)
            .map((method) => (
              <LinkButton key={method} href={`${base}?method=${method}`}>
                {SPRAYER_METHOD_WORDS[method]}
              </LinkButton>
            ))}
        </Row>
      </Stack>
    </nav>
  );
}
