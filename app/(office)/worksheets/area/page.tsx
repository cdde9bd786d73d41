import { type Metadata } from "next";
import {
  AVERAGE_RADIUS_EXAMPLE,
  averageRadiusWorksheet,
  CIRCLE_EXAMPLE,
  circleWorksheet,
  OFFSETS_EXAMPLE,
  offsetsWorksheet,
  RECTANGLE_EXAMPLE,
  rectangleWorksheet,
  TRAPEZOID_EXAMPLE,
  trapezoidWorksheet,
  TRIANGLE_EXAMPLE,
  triangleWorksheet,
} from "#domain/worksheets/area";
import { AreaDrawing } from "./area-drawing";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Area" };

const SIDE_HINT = "40 ft, 12 ft 6 in";

function sideLook(label: string) {
  return { look: "line", label, hint: SIDE_HINT, width: "short" } as const;
}

const rectangle = sheetKind({ key: "rectangle", name: "Rectangle", fields: { length: sideLook("Length"), width: sideLook("Width") }, example: RECTANGLE_EXAMPLE, work: rectangleWorksheet, draw: AreaDrawing });
const triangle = sheetKind({
  key: "triangle",
  name: "Triangle",
  fields: { base: sideLook("Base"), height: { ...sideLook("Height"), hint: "square on the base: 30 ft" } },
  example: TRIANGLE_EXAMPLE,
  work: triangleWorksheet,
  draw: AreaDrawing,
});
const trapezoid = sheetKind({
  key: "trapezoid",
  name: "Trapezoid",
  fields: { side: sideLook("One parallel side"), otherSide: sideLook("The other parallel side"), height: { ...sideLook("Distance between them"), hint: "square on both: 30 ft" } },
  example: TRAPEZOID_EXAMPLE,
  work: trapezoidWorksheet,
  draw: AreaDrawing,
});
const circle = sheetKind({ key: "circle", name: "Circle", fields: { radius: { ...sideLook("Radius"), hint: "from the middle to the edge: 30 ft" } }, example: CIRCLE_EXAMPLE, work: circleWorksheet, draw: AreaDrawing });
const offsets = sheetKind({
  key: "offsets",
  name: "Widths along a line",
  fields: {
    step: { ...sideLook("From width to width"), hint: "even steps along the line: 10 ft" },
    widths: { look: "lines", label: "Widths", hint: "in their order, in feet: 32, 50, 45, 17", rows: 2 },
    ends: { look: "rows", label: "The shape ends", choices: [{ value: "widths", word: "at the first and the last width" }, { value: "points", word: "in a point one step past each end" }] },
    line: { look: "rows", label: "The line runs", choices: [{ value: "edge", word: "along a straight edge" }, { value: "middle", word: "through the middle" }] },
  },
  example: OFFSETS_EXAMPLE,
  work: offsetsWorksheet,
  draw: AreaDrawing,
});
const averageRadius = sheetKind({
  key: "average-radius",
  name: "Average radius",
  fields: { radii: { look: "lines", label: "Distances to the edge", hint: "from one middle point, at even angles, in feet, four or more: 32, 36, 41, 38", rows: 2 } },
  example: AVERAGE_RADIUS_EXAMPLE,
  work: averageRadiusWorksheet,
  draw: AreaDrawing,
});

export default async function AreaPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="area" kinds={[rectangle, triangle, trapezoid, circle, offsets, averageRadius]} asked={await searchParams} />;
}
