import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { type EquipmentOnFile, type LatestOnFile, type VehicleOnFile } from "#application/equipment/gear-on-file";
import { listEquipment, type MeasuringToolOnFile } from "#application/equipment/list-equipment";
import { may } from "#application/permission";
import { type Role } from "#domain/crew/role";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { LinkButton } from "#ui/button";
import { Dialog } from "#ui/dialog.client";
import { EmptyState } from "#ui/empty-state";
import { MarkedWords } from "#ui/marked-words";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { PressForm } from "../../../action-form.client";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { standDownMeasuringToolAction } from "./action";
import { gearSentence } from "./gear-sentence";
import { factsOf, truckWords } from "./gear-words";
import { OperatorsTable } from "./operators-table";

export const metadata: Metadata = { title: "Trucks and gear" };

type Piece = EquipmentOnFile & { readonly latest: readonly LatestOnFile[] };

export default async function GearPage() {
  const { member } = await pageFor("equipment/list-equipment");
  const answer = await asMember(listEquipment, {});
  if (!answer.ok) notFound();
  const { vehicles, equipment, measuringTools } = answer.value;
  const inUse = equipment.filter((piece) => !piece.isStoodDown);
  const stoodDown = equipment.filter((piece) => piece.isStoodDown);
  const trucks = vehicles.filter((vehicle) => !vehicle.isStoodDown);
  const adders = may(member.role, "equipment/add-vehicle") && (
    <Row>
      <LinkButton href="/crew/gear/add-vehicle">Add a truck</LinkButton>
      <LinkButton href="/crew/gear/add-equipment?what=sprayer">Add a sprayer</LinkButton>
      <LinkButton href="/crew/gear/add-equipment?what=spreader">Add a spreader</LinkButton>
    </Row>
  );
  const atTheShop = inUse.filter((piece) => piece.vehicleId === null);
  return (
    <>
      <PageHead above={<Link href="/crew">Crew</Link>} title="Trucks and gear" sentence={gearSentence(trucks, inUse)} actions={adders} />
      {trucks.length + inUse.length === 0 && <EmptyState sentence="No truck and no gear is on file yet. Begin with a truck, then add what rides on it." />}
      {trucks.map((truck) => (
        <TruckSection key={truck.vehicleId} truck={truck} gear={inUse.filter((piece) => piece.vehicleId === truck.vehicleId)} role={member.role} />
      ))}
      {atTheShop.length > 0 && (
        <Section id="shop" name="At the shop">
          <GearBlocks gear={atTheShop} />
        </Section>
      )}
      <ToolSection tools={measuringTools} role={member.role} />
      {stoodDown.length > 0 && (
        <Section id="stood-down" name="Stood down">
          <Stack as="ul" gap={3}>
            {stoodDown.map((piece) => (
              <li key={piece.equipmentId}>
                <Link href={`/crew/gear/${piece.equipmentId}`} prefetch={false}>
                  {piece.name}
                </Link>
              </li>
            ))}
          </Stack>
        </Section>
      )}
    </>
  );
}

interface TruckSectionProps {
  readonly truck: VehicleOnFile;
  readonly gear: readonly Piece[];
  readonly role: Role;
}

function TruckSection({ truck, gear, role }: TruckSectionProps) {
  const load = truck.payload === null ? "Nobody has entered how much it may carry." : `May carry ${formatQuantity(truck.payload, "us")}, ${truck.staysAboard === null ? "of it nobody has entered what people and fixed gear weigh" : `of it ${formatQuantity(truck.staysAboard, "us")} of people and fixed gear`}.`;
  const change = may(role, "equipment/change-vehicle") && (
    <Link href={`/crew/gear/trucks/${truck.vehicleId}`} prefetch={false}>
      Change truck {truck.number}
    </Link>
  );
  return (
    <Section id={`truck-${String(truck.number)}`} name={truckWords(truck)} aside={change}>
      <Stack gap={5}>
        <p>{load}</p>
        {gear.length === 0 ? <EmptyState sentence="No gear rides on this truck. Add some, or move it here under its own Change." /> : <GearBlocks gear={gear} />}
      </Stack>
    </Section>
  );
}

function GearBlocks({ gear }: { readonly gear: readonly Piece[] }) {
  return (
    <Stack gap={6}>
      {gear.map((piece) => (
        <GearBlock key={piece.equipmentId} piece={piece} />
      ))}
    </Stack>
  );
}

function GearBlock({ piece }: { readonly piece: Piece }) {
  const base = `/crew/gear/${piece.equipmentId}`;
  return (
    <Stack gap={2}>
      <Row align="baseline" spread>
        <h3>
          <Link href={base} prefetch={false}>
            {piece.name}
          </Link>
        </h3>
        <Link href={`${base}/calibrate`} prefetch={false} aria-label={`Calibrate ${piece.name}`}>
          Calibrate
        </Link>
      </Row>
      <Text size="small" tone="second">
        {factsOf(piece)}
      </Text>
      <OperatorsTable
        name={piece.name}
        base={base}
        latest={piece.latest}
        empty={<MarkedWords level="take-care">Nobody has calibrated it yet. Until someone does, nominal figures stand in.</MarkedWords>}
      />
    </Stack>
  );
}

function ToolSection({ tools, role }: { readonly tools: readonly MeasuringToolOnFile[]; readonly role: Role }) {
  const mayStandDown = may(role, "equipment/stand-down-measuring-tool");
  const add = may(role, "equipment/add-measuring-tool") && <LinkButton href="/crew/gear/add-measuring-tool">Add a measuring tool</LinkButton>;
  return (
    <Section id="tools" name="Measuring tools">
      <Stack gap={4}>
        <p>Amounts on a mix ticket are whole marks of one of these.</p>
        <Table
          caption="Measuring tools"
          captionSpoken
          columns={[
            { id: "name", head: "Tool" },
            { id: "mark", head: "One mark" },
            { id: "measures", head: "Measures" },
            ...(mayStandDown ? [{ id: "end", head: "No longer used" }] : []),
          ]}
          rows={tools.map((tool) => ({
            id: tool.measuringToolId,
            cells: {
              name: tool.name,
              mark: tool.mark,
              measures: tool.dimension === "mass" ? "by weight" : "by volume",
              ...(mayStandDown ? { end: <StandDownTool tool={tool} /> } : {}),
            },
          }))}
          empty={<EmptyState sentence="No measuring tool is on file. Add the cups and scales that the crew measures out with." />}
        />
        {add !== false && <div>{add}</div>}
      </Stack>
    </Section>
  );
}

function StandDownTool({ tool }: { readonly tool: MeasuringToolOnFile }) {
  return (
    <Dialog open="Stand down" title={`Stand down ${tool.name}?`} close="Keep it">
      <p>No amount is rounded to its marks any more. What was measured with it stays as it was written.</p>
      <PressForm action={standDownMeasuringToolAction} fixed={{ measuringToolId: tool.measuringToolId }} whilePending="Standing down">
        Stand it down
      </PressForm>
    </Dialog>
  );
}
