"use client";

import { measureZoneSchema } from "#application/properties/measure-zone.schema";
import { type PieceShape, type PieceUse } from "#domain/properties/lawn-pieces";
import { ActionForm } from "../../../../../../action-form.client";
import { PieceFields } from "../../../piece-fields.client";
import { measurePieceAction } from "./action";

interface Props {
  readonly zoneId: string;
  readonly version: string;
  /** Which piece is measured again, by its place; "new" for another one. */
  readonly at: string;
  readonly use: PieceUse;
  readonly shape: PieceShape;
  readonly values: Readonly<Record<string, string>>;
}

const SUBMIT = { lawn: "Add the piece", "cut-out": "Cut it out", water: "Draw it" } as const;

export function MeasurePieceForm({ zoneId, version, at, use, shape, values }: Props) {
  const { use: _use, shape: _shape, ...typed } = values;
  return (
    <ActionForm
      action={measurePieceAction}
      schema={measureZoneSchema}
      fixed={{ zoneId, version, "change.kind": "put-piece", "change.at": at, "change.piece.use": use, "change.piece.shape": shape }}
      values={Object.fromEntries(Object.entries(typed).map(([name, value]) => [`change.piece.${name}`, value]))}
      submit={at === "new" ? SUBMIT[use] : "Save"}
      whilePending="Measuring"
    >
      <PieceFields prefix="change.piece" shape={shape} asksName />
    </ActionForm>
  );
}
