import Link from "next/link";
import { type LawnOnFile, type PropertyOnFile } from "#application/properties/read-property";
import { squareFeetWords } from "#domain/properties/area-words";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { readLawnPiece, type TypedPiece } from "#domain/properties/lawn-pieces";
import { PHOSPHORUS_WORDS } from "#domain/properties/soil-test";
import { LinkButton } from "#ui/button";
import { Dialog } from "#ui/dialog.client";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { PressForm } from "../../../action-form.client";
import { removePieceAction, removeWaterEdgeAction, removeZoneAction } from "./action";
import { grassWords, originWords, waterWords } from "./ground-words";
import { SHAPE_WORDS, USE_WORDS } from "./piece-words";

interface Props {
  readonly property: PropertyOnFile;
  readonly lawn: LawnOnFile;
  readonly mayChange: boolean;
}

/** Everything of one lawn: its facts, the pieces it was measured in, its water, its soil. */
export function OneLawn({ property, lawn, mayChange }: Props) {
  const base = `/properties/${property.propertyId}/lawns/${lawn.zoneId}`;
  return (
    <Stack gap={5}>
      <KeyValueList
        pairs={[
          { key: "Size", value: `${squareFeetWords(lawn.area)}, ${originWords(lawn)}` },
          { key: "Grass", value: grassWords(lawn) },
        ]}
      />
      {mayChange && (
        <Row>
          <LinkButton href={`${base}/change-lawn`}>Change name, grass or water</LinkButton>
          <LinkButton href={`${base}/measure-piece?use=lawn&shape=rectangle`}>Add a piece of lawn</LinkButton>
          <LinkButton href={`${base}/measure-piece?use=cut-out&shape=rectangle`}>Cut out a bed or drive</LinkButton>
          <LinkButton href={`${base}/measure-piece?use=water&shape=circle`}>Draw water beside it</LinkButton>
          <LinkButton href={`${base}/enter-area`}>Give its size instead</LinkButton>
        </Row>
      )}
      <Pieces lawn={lawn} base={base} mayChange={mayChange} />
      <Waters lawn={lawn} base={base} mayChange={mayChange} />
      <SoilTests lawn={lawn} base={base} mayChange={mayChange} />
      {mayChange && (
        <div>
          <Dialog open="Take this lawn off the plan" title={`Take ${lawn.letter} ${lawn.name} off the plan?`} close="Leave it">
            <Stack gap={4}>
              <p>What was put down on it stays on record. Nothing more can be planned for it.</p>
              <PressForm action={removeZoneAction} fixed={{ zoneId: lawn.zoneId, propertyId: property.propertyId }} whilePending="Taking it off">
                Take it off the plan
              </PressForm>
            </Stack>
          </Dialog>
        </div>
      )}
    </Stack>
  );
}

interface PartProps {
  readonly lawn: LawnOnFile;
  readonly base: string;
  readonly mayChange: boolean;
}

function pieceSize(piece: TypedPiece): string {
  const read = readLawnPiece(piece);
  return read.ok ? squareFeetWords(read.value.measurement.area) : "can't be read";
}

function Pieces({ lawn, base, mayChange }: PartProps) {
  if (lawn.pieces.length === 0) return null;
  return (
    <Table
      caption="Pieces"
      dense
      columns={[
        { id: "piece", head: "Piece" },
        { id: "size", head: "Size", align: "figure" },
        { id: "shape", head: "Shape" },
        ...(mayChange ? [{ id: "acts", head: "Change" }] : []),
      ]}
      rows={lawn.pieces.map((piece, place) => ({
        id: String(place),
        cells: {
          piece: `${String(place + 1)} ${piece.name === "" ? USE_WORDS[piece.use] : piece.name}`,
          size: piece.use === "cut-out" ? `less ${pieceSize(piece)}` : piece.use === "water" ? "" : pieceSize(piece),
          shape: SHAPE_WORDS[piece.shape],
          acts: (
            <Row gap="wide">
              <Link href={`${base}/measure-piece?piece=${String(place)}`} prefetch={false}>
                Measure again
              </Link>
              <PressForm
                action={removePieceAction}
                fixed={{ zoneId: lawn.zoneId, version: String(lawn.version), "change.kind": "remove-piece", "change.at": String(place) }}
                whilePending="Taking out"
              >
                {`Take out piece ${String(place + 1)}`}
              </PressForm>
            </Row>
          ),
        },
      }))}
    />
  );
}

/** What stands in the place of a table that has no row. */
function Nothing({ head, sentence }: { readonly head: string; readonly sentence: string }) {
  return (
    <div>
      <Text tone="label">{head}</Text>
      <p>{sentence}</p>
    </div>
  );
}

/** What is said of a lawn without a water's edge on file. */
const NO_WATER_WORDS: Readonly<Record<LawnOnFile["waterBeside"], string>> = {
  none: "There is none: somebody looked.",
  yes: "There is water, and how long the lawn runs along it is not on file. Mix tickets hold until it is.",
  "not-known": "Nobody has said whether there is any. Where a label or the law asks for a distance to water, mix tickets hold until somebody has.",
};

function Waters({ lawn, base, mayChange }: PartProps) {
  return (
    <Stack gap={3}>
      {lawn.waterEdges.length === 0 ? (
        <Nothing head="Water at this lawn" sentence={NO_WATER_WORDS[lawn.waterBeside]} />
      ) : (
      <Table
        caption="Water at this lawn"
        columns={[{ id: "water", head: "Kept clear" }, ...(mayChange ? [{ id: "acts", head: "Change" }] : [])]}
        rows={lawn.waterEdges.map((edge) => ({
          id: edge.waterEdgeId,
          cells: {
            water: waterWords(edge),
            acts: (
              <PressForm action={removeWaterEdgeAction} fixed={{ waterEdgeId: edge.waterEdgeId }} whilePending="Taking off">
                {`Take ${edge.name} off`}
              </PressForm>
            ),
          },
        }))}
      />
      )}
      {mayChange && (
        <Row>
          <LinkButton href={`${base}/add-water-edge`}>Add water</LinkButton>
          {lawn.waterEdges.length === 0 && lawn.waterBeside !== "none" && <LinkButton href={`${base}/change-lawn`}>Say that there is none</LinkButton>}
        </Row>
      )}
    </Stack>
  );
}

function SoilTests({ lawn, base, mayChange }: PartProps) {
  return (
    <Stack gap={3}>
      {lawn.soilTests.length === 0 ? (
        <Nothing head="Soil tests" sentence="No soil test is on file. Where the law asks for one, phosphorus waits for it." />
      ) : (
      <Table
        caption="Soil tests"
        columns={[
          { id: "sampled", head: "Sampled" },
          { id: "laboratory", head: "Laboratory" },
          { id: "word", head: "Phosphorus, in its words" },
          { id: "finding", head: "That is" },
        ]}
        rows={lawn.soilTests.map((test) => ({
          id: test.soilTestId,
          cells: { sampled: formatShortDate(test.sampledOn), laboratory: test.laboratory, word: `“${test.phosphorusWord}”`, finding: PHOSPHORUS_WORDS[test.phosphorus] },
        }))}
      />
      )}
      {mayChange && (
        <Row>
          <LinkButton href={`${base}/add-soil-test`}>Add a soil test</LinkButton>
        </Row>
      )}
    </Stack>
  );
}
