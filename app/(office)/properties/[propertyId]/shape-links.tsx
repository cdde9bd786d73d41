import Link from "next/link";
import { PIECE_SHAPES, type PieceShape } from "#domain/properties/lawn-pieces";
import { Text } from "#ui/text";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { SHAPE_SENTENCES, SHAPE_WORDS } from "./piece-words";

interface Props {
  readonly shape: PieceShape | "area";
  /** The address of the page but for its shape. */
  readonly hrefOf: (shape: PieceShape | "area") => string;
  /** Whether a bare area may be given instead of a shape. */
  readonly offersArea: boolean;
}

/** The shapes to choose from, each a link to this page with its fields, and how the chosen one is measured. */
export function ShapeLinks({ shape, hrefOf, offersArea }: Props) {
  const shapes = offersArea ? ([...PIECE_SHAPES, "area"] as const) : PIECE_SHAPES;
  return (
    <Stack gap={3}>
      <Text tone="label">Shape</Text>
      <Row gap="wide" align="baseline">
        {shapes.map((each) =>
          each === shape ? (
            <strong key={each} aria-current="true">
              {wordOf(each)}
            </strong>
          ) : (
            <Link key={each} href={hrefOf(each)} prefetch={false}>
              {wordOf(each)}
            </Link>
          ),
        )}
      </Row>
      <p>{shape === "area" ? "Somebody gave the size. It is kept as entered, and there is no shape to draw." : SHAPE_SENTENCES[shape]}</p>
    </Stack>
  );
}

function wordOf(shape: PieceShape | "area"): string {
  return shape === "area" ? "Size only" : SHAPE_WORDS[shape];
}
