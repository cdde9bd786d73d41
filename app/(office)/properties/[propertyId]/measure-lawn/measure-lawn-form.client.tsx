"use client";

import { addZoneSchema } from "#application/properties/add-zone.schema";
import { type PieceShape } from "#domain/properties/lawn-pieces";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { PieceFields } from "../piece-fields.client";
import { ZoneFields } from "../zone-fields.client";
import { measureLawnAction } from "./action";

interface Props {
  readonly propertyId: string;
  readonly shape: PieceShape | "area";
  readonly place: { readonly x: string; readonly y: string };
}

export function MeasureLawnForm({ propertyId, shape, place }: Props) {
  const fixed = shape === "area" ? { "measure.kind": "area" } : { "measure.kind": "piece", "measure.piece.use": "lawn", "measure.piece.shape": shape };
  return (
    <ActionForm
      action={measureLawnAction}
      schema={addZoneSchema}
      fixed={{ propertyId, ...fixed }}
      values={{
        "measure.piece.x": place.x, "measure.piece.y": place.y, "measure.piece.turn": "0", "measure.piece.ends": "widths", "measure.piece.line": "edge",
        grassesKnown: "looked", waterBeside: "not-known", secondGrass: "", thirdGrass: "",
      }}
      submit="Add the lawn"
      whilePending="Adding"
    >
      <ZoneFields />
      {shape === "area" ? <AreaField /> : <PieceFields prefix="measure.piece" shape={shape} asksName={false} />}
    </ActionForm>
  );
}

function AreaField() {
  return <TextField label="Size" hint="Of the grass alone, not the lot. A number alone is square feet." autoComplete="off" width="medium" {...useField("measure.area")} />;
}
