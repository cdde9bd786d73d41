"use client";

import { type PieceMeasure, type PieceShape, SHAPE_MEASURES } from "#domain/properties/lawn-pieces";
import { RadioRows } from "#ui/choice-rows";
import { FieldGroup } from "#ui/field";
import { Row } from "#ui/row";
import { TextAreaField } from "#ui/text-area-field";
import { TextField } from "#ui/text-field";
import { useField } from "../../../action-form.client";
import { MEASURE_WORDS } from "./piece-words";

interface Props {
  /** The dotted name that the piece's fields begin with: "measure.piece". */
  readonly prefix: string;
  readonly shape: PieceShape;
  /** False for a first piece, which lies at the plan's corner unless somebody says otherwise. */
  readonly asksName: boolean;
}

/** What is measured of one shape, and where the piece lies on the plan. */
export function PieceFields({ prefix, shape, asksName }: Props) {
  return (
    <>
      {asksName && <NameField prefix={prefix} />}
      {SHAPE_MEASURES[shape].map((measure) => (
        <MeasureField key={measure} prefix={prefix} measure={measure} />
      ))}
      <PlaceFields prefix={prefix} shape={shape} />
    </>
  );
}

function NameField({ prefix }: { readonly prefix: string }) {
  return <TextField label="Name" optional hint="What it is: rose bed, drive, pond." autoComplete="off" width="medium" {...useField(`${prefix}.name`)} />;
}

function MeasureField({ prefix, measure }: { readonly prefix: string; readonly measure: PieceMeasure }) {
  const field = useField(`${prefix}.${measure}`);
  switch (measure) {
    case "ends":
      return (
        <Keys
          field={field}
          label="At both ends"
          choices={[
            { value: "widths", word: "It ends at the first and last width" },
            { value: "points", word: "It runs out to a point, one step past them" },
          ]}
        />
      );
    case "line":
      return (
        <Keys
          field={field}
          label="The line that was walked"
          choices={[
            { value: "edge", word: "Is a straight edge of the lawn" },
            { value: "middle", word: "Goes through its middle" },
          ]}
        />
      );
    case "corners":
      return <TextAreaField rows={6} {...MEASURE_WORDS.corners} {...field} />;
    case "widths":
    case "radii":
      return <TextField autoComplete="off" {...MEASURE_WORDS[measure]} {...field} />;
    case "length":
    case "width":
    case "base":
    case "height":
    case "side":
    case "otherSide":
    case "radius":
    case "step":
      return <TextField autoComplete="off" inputMode="text" width="short" {...MEASURE_WORDS[measure]} {...field} />;
  }
}

interface KeysProps {
  readonly field: ReturnType<typeof useField>;
  readonly label: string;
  readonly choices: readonly { readonly value: string; readonly word: string }[];
}

function Keys({ field, label, choices }: KeysProps) {
  const { error, defaultValue, name, ...registered } = field;
  return (
    <RadioRows label={label} name={name} choices={choices} registered={registered} error={error} {...(defaultValue === undefined ? {} : { defaultValue })} />
  );
}

function PlaceFields({ prefix, shape }: { readonly prefix: string; readonly shape: PieceShape }) {
  const point = shape === "circle" || shape === "average-radius" ? "its middle" : shape === "offsets" ? "the beginning of its line" : "its first corner";
  return (
    <FieldGroup
      id={`${prefix}.place`}
      label="Where it lies on the plan"
      hint={`How far ${point} lies from the plan's corner, and how far it is turned to the left. It moves the drawing, never the size.`}
    >
      <Row gap="wide">
        <TextField label="Feet east" autoComplete="off" width="short" {...useField(`${prefix}.x`)} />
        <TextField label="Feet north" autoComplete="off" width="short" {...useField(`${prefix}.y`)} />
        <TextField label="Degrees turned" autoComplete="off" width="short" {...useField(`${prefix}.turn`)} />
      </Row>
    </FieldGroup>
  );
}
