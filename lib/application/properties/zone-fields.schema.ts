import { z } from "zod";
import { requiredLine } from "#application/field.schema";
import { requiredArea } from "#application/properties/measure-fields.schema";
import { GRASS_NAMES, type Grass } from "#domain/turf/grass";
import { WATER_BESIDE } from "#domain/rules/kept-clear";
import { PIECE_MEASURES, PIECE_SHAPES, PIECE_USES, type PieceMeasure, readLawnPiece, SHAPE_MEASURES, type TypedPiece } from "#domain/properties/lawn-pieces";

const grassField = z.enum(GRASS_NAMES, "Choose the grass that most of it is.");
const moreGrassField = z.union([z.literal("").transform(() => null), z.enum(GRASS_NAMES)], "Choose a grass, or none.");

/** What a lawn is called and what grows on it. */
export const zoneFields = {
  name: requiredLine("a name for the lawn, such as Front", 80),
  grass: grassField,
  secondGrass: moreGrassField,
  thirdGrass: moreGrassField,
  /** Whether somebody looked: a label for one grass is not read off an assumption without saying so. */
  grassesKnown: z.enum(["looked", "assumed"], "Say whether somebody looked at the grass."),
};

/** Whether there is water beside a lawn. Nobody's answer is one too: it is never taken for "none". */
export const waterField = { waterBeside: z.enum(WATER_BESIDE, "Say whether there is water beside the lawn.") };

/** The grasses of a lawn in their order, each once. */
export function grassesOf(form: { readonly grass: Grass; readonly secondGrass: Grass | null; readonly thirdGrass: Grass | null }): Grass[] {
  return [...new Set([form.grass, form.secondGrass, form.thirdGrass].filter((grass) => grass !== null))];
}

const LONGEST_MEASURES = 4000;
const typed = z.string("Write a measure.").trim().max(LONGEST_MEASURES, "This is too long to be measured on one lawn.").default("");
const measures = Object.fromEntries(PIECE_MEASURES.map((measure) => [measure, typed])) as Record<PieceMeasure, typeof typed>;

/**
 * One piece as it was typed. It is read here by the domain's own reader, so that a browser complains as the server
 * would; what is kept are the words of its own shape only.
 */
export const pieceField = z
  .object({
    use: z.enum(PIECE_USES, "Choose whether this is lawn or cut out."),
    shape: z.enum(PIECE_SHAPES, "Choose a shape."),
    name: z.string("Give a name, or leave it empty.").trim().max(60, "At most 60 characters.").default(""),
    x: z.string("Give a distance.").trim().max(30, "At most 30 characters.").default("0"),
    y: z.string("Give a distance.").trim().max(30, "At most 30 characters.").default("0"),
    turn: z.string("Give an angle.").trim().max(10, "At most 10 characters.").default("0"),
    ...measures,
  })
  .transform((form, context): TypedPiece => {
    const { use, shape, name } = form;
    const words = Object.fromEntries(SHAPE_MEASURES[shape].map((measure) => [measure, form[measure]]));
    const place = { x: form.x === "" ? "0" : form.x, y: form.y === "" ? "0" : form.y, turn: form.turn === "" ? "0" : form.turn };
    const piece = { use, shape, name, ...place, ...words };
    const read = readLawnPiece(piece);
    if (read.ok) return piece;
    context.addIssue({ code: "custom", path: [read.refusal.field], message: read.refusal.sentence });
    return z.NEVER;
  });

/** How a lawn is measured at first: by a piece of it, or by an area that somebody gave. */
export const firstMeasureField = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("piece"), piece: pieceField }),
  z.object({ kind: z.literal("area"), area: requiredArea("the size of the lawn") }),
]);
