import { type Metadata } from "next";
import { POTASH_EXAMPLE, potashWorksheet } from "#domain/worksheets/potash";
import { AREA, sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Potash" };

const potash = sheetKind({
  key: "potash",
  name: "Potash",
  fields: {
    recommended: { look: "line", label: "The lab recommends", hint: "as K2O: 2 lb per 1,000 sq ft" },
    table: { look: "line", label: "By which table", hint: "the laboratory, its method and its table, as the report names them", width: "full" },
    grade: { look: "line", label: "Grade of the product", hint: "as on the bag: 0-0-50", width: "short" },
    area: AREA,
    cap: { look: "line", label: "Most K2O in one application", hint: "1 lb per 1,000 sq ft", optional: true },
    capBy: { look: "line", label: "Who states that most", hint: "the label, the laboratory's handbook", optional: true, width: "full" },
  },
  example: POTASH_EXAMPLE,
  work: potashWorksheet,
});

export default async function PotashPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="potash" kinds={[potash]} asked={await searchParams} />;
}
