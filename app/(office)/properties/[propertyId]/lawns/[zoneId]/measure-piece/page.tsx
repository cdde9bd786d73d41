import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PIECE_USES, type TypedPiece } from "#domain/properties/lawn-pieces";
import { Columns } from "#ui/columns";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { pageFor } from "../../../../../page-for";
import { GroundPlan } from "../../../ground-plan";
import { offerPlace, shapeOf } from "../../../place-on-ground";
import { type LawnPageProps, lawnOfPage, wordOfSearch } from "../../../property-of-page";
import { ShapeLinks } from "../../../shape-links";
import { MeasurePieceForm } from "./measure-piece-form.client";

export const metadata: Metadata = { title: "Measure a piece" };

const TITLES = { lawn: "Add a piece of lawn", "cut-out": "Cut out a bed or drive", water: "Draw water beside the lawn" } as const;

export default async function MeasurePiecePage(props: LawnPageProps) {
  await pageFor("properties/measure-zone");
  const { property, lawn } = await lawnOfPage(props);
  const at = await wordOfSearch(props, "piece");
  const standing: TypedPiece | undefined = at === undefined ? undefined : lawn.pieces[Number(at)];
  if (at !== undefined && standing === undefined) notFound();
  const word = await wordOfSearch(props, "use");
  const use = standing?.use ?? PIECE_USES.find((each) => each === word) ?? "lawn";
  const shape = shapeOf((await wordOfSearch(props, "shape")) ?? standing?.shape);
  const base = `/properties/${property.propertyId}/lawns/${lawn.zoneId}/measure-piece`;
  const rest = at === undefined ? `use=${use}` : `piece=${at}`;
  const values = { ends: "widths", line: "edge", turn: "0", name: "", ...offerPlace(property.lawns, use, lawn), ...standing };
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${property.propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title={standing === undefined ? TITLES[use] : `Measure piece ${String(Number(at) + 1)} again`}
        sentence={use === "water" ? "It is drawn and takes nothing off. How much is kept clear is a figure of its own, under Water." : undefined}
      />
      <Columns split="two">
      <Sheet>
        <Stack gap={5}>
          <ShapeLinks shape={shape} hrefOf={(each) => `${base}?${rest}&shape=${each}`} offersArea={false} />
          <MeasurePieceForm key={shape} zoneId={lawn.zoneId} version={String(lawn.version)} at={at ?? "new"} use={use} shape={shape} values={values} />
        </Stack>
      </Sheet>
      <GroundPlan property={property} lawns={property.lawns} mayMeasure={false} />
      </Columns>
    </>
  );
}
