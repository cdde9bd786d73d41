import Link from "next/link";
import { type CalibrationOnFile, type EquipmentOnFile, type LatestOnFile } from "#application/equipment/gear-on-file";
import { may } from "#application/permission";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { formatRate } from "#domain/quantities/format-rate";
import { LinkButton } from "#ui/button";
import { Dialog } from "#ui/dialog.client";
import { EmptyState } from "#ui/empty-state";
import { Finding } from "#ui/finding";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { PressForm } from "../../../../action-form.client";
import { pageFor } from "../../../page-for";
import { standDownEquipmentAction } from "../action";
import { FindingOf } from "../finding-of";
import { factsOf, setupWords, truckWords } from "../gear-words";
import { OperatorsTable } from "../operators-table";
import { NominalSection } from "./nominal-section";
import { TestedSettings } from "./tested-settings";
import { equipmentNameOfPage, equipmentOfPage, type EquipmentPageProps } from "./equipment-of-page";

export async function generateMetadata(props: EquipmentPageProps) {
  return { title: (await equipmentNameOfPage(props)) ?? "Trucks and gear" };
}

export default async function EquipmentPage(props: EquipmentPageProps) {
  const { member } = await pageFor("equipment/read-equipment");
  const { equipment, vehicles, latest, calibrations } = await equipmentOfPage(props);
  const base = `/crew/gear/${equipment.equipmentId}`;
  const truck = vehicles.find((vehicle) => vehicle.vehicleId === equipment.vehicleId);
  const place = equipment.isStoodDown ? "Stood down." : truck === undefined ? "At the shop." : `On ${truckWords(truck)}.`;
  const isInUse = !equipment.isStoodDown;
  return (
    <>
      <PageHead
        above={<Link href="/crew/gear">Trucks and gear</Link>}
        title={equipment.name}
        sentence={`${factsOf(equipment)} ${place}`}
        actions={
          isInUse && (
            <Row>
              {may(member.role, "equipment/change-equipment") && <LinkButton href={`${base}/change-equipment`}>Change</LinkButton>}
              <LinkButton kind="act" href={`${base}/calibrate`}>
                Calibrate
              </LinkButton>
            </Row>
          )
        }
      />
      <Section id="today" name="Whose figures hold today">
        <Stack gap={5}>
          {isInUse && <Care equipment={equipment} latest={latest} />}
          <OperatorsTable
            name={equipment.name}
            base={base}
            latest={latest}
            empty={<EmptyState sentence="Nobody has calibrated it yet. Pace is part of the rate, so each operator calibrates for themselves." />}
          />
        </Stack>
      </Section>
      <TestedSettings calibrations={calibrations} />
      <NominalSection equipment={equipment} />
      {calibrations.length > 0 && <History base={base} calibrations={calibrations} />}
      {isInUse && may(member.role, "equipment/stand-down-equipment") && (
        <Section id="stand-down" name="No longer used">
          <Dialog open="Stand it down" title={`Stand down ${equipment.name}?`} close="Keep it">
            <p>It is planned no more. Its calibrations stay in the books, because past records name them.</p>
            <PressForm action={standDownEquipmentAction} fixed={{ equipmentId: equipment.equipmentId }} whilePending="Standing down">
              Stand down
            </PressForm>
          </Dialog>
        </Section>
      )}
    </>
  );
}

/** What wants care: calibrations that have run out or are of another setup, and facts that nobody knows. */
function Care({ equipment, latest }: { readonly equipment: EquipmentOnFile; readonly latest: readonly LatestOnFile[] }) {
  return (
    <>
      {latest.map(({ calibration, standing }) =>
        standing.kind === "good" ? null : <FindingOf key={calibration.figures.calibrationId} finding={standing.finding} />,
      )}
      {isSprayer(equipment.kind) && equipment.holdUp === null && (
        <Finding
          level="take-care"
          what="Nobody has measured what pump and hose hold."
          figure="The next lawn gets that much of the last mix first."
          toDo="Measure it, or work it out from the hose, under Change."
          source="house"
        />
      )}
      {!isSprayer(equipment.kind) && equipment.hasDeflector === null && (
        <Finding
          level="take-care"
          what="Nobody has looked whether it has a deflector."
          figure="How near to water it may come can depend on that."
          toDo="Look, and say so under Change."
          source="house"
        />
      )}
    </>
  );
}

function History({ base, calibrations }: { readonly base: string; readonly calibrations: readonly CalibrationOnFile[] }) {
  return (
    <Section id="history" name="All calibrations">
      <Table
        caption="All calibrations, the newest first"
        captionSpoken
        columns={[
          { id: "on", head: "On" },
          { id: "operator", head: "By" },
          { id: "with", head: "With" },
          { id: "gives", head: "Gives" },
        ]}
        rows={calibrations.map((calibration) => ({
          id: calibration.figures.calibrationId,
          href: `${base}/calibrations/${calibration.figures.calibrationId}`,
          cells: {
            on: formatShortDate(calibration.doneOn),
            operator: calibration.operator.name,
            with: setupWords(calibration),
            gives: formatRate(calibration.figures.rate, "us"),
          },
        }))}
      />
    </Section>
  );
}
