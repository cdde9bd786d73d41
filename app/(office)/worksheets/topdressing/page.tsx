import { type Metadata } from "next";
import { TOPDRESSING_DEPTH_EXAMPLE, TOPDRESSING_FOR_DEPTH_EXAMPLE, topdressingDepthWorksheet, topdressingForDepthWorksheet } from "#domain/worksheets/topdressing";
import { AREA, sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Topdressing" };

const forDepth = sheetKind({
  key: "for-depth",
  name: "Material for a depth",
  fields: {
    area: AREA,
    depth: { look: "line", label: "Depth", hint: "loose, as it is spread: 1/4 in", width: "short" },
    density: { look: "line", label: "Weight of the material", hint: "by its seller: 2,700 lb per cu yd", optional: true },
  },
  example: TOPDRESSING_FOR_DEPTH_EXAMPLE,
  work: topdressingForDepthWorksheet,
});

const depth = sheetKind({
  key: "depth",
  name: "Depth of a load",
  fields: { volume: { look: "line", label: "Volume", hint: "loose, as it is spread: 2 cu yd" }, area: AREA },
  example: TOPDRESSING_DEPTH_EXAMPLE,
  work: topdressingDepthWorksheet,
});

export default async function TopdressingPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="topdressing" kinds={[forDepth, depth]} asked={await searchParams} />;
}
