import { type Metadata } from "next";
import { SEED_EXAMPLE, seedWorksheet } from "#domain/worksheets/seed";
import { AREA, sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Seed" };

const seed = sheetKind({
  key: "seed",
  name: "Seed",
  fields: {
    rate: { look: "line", label: "Rate of pure live seed on bare ground", hint: "4 lb per 1,000 sq ft" },
    use: { look: "rows", label: "Seeded into", choices: [{ value: "bare ground", word: "bare ground" }, { value: "overseeding", word: "standing turf, at half the rate" }] },
    area: AREA,
    purity: { look: "line", label: "Purity", hint: "percent, from the seed tag: 96", width: "short" },
    germination: { look: "line", label: "Germination", hint: "percent, from the seed tag: 85", width: "short" },
    price: { look: "line", label: "Price of a pound", hint: "from the bag, in dollars: 2.50", optional: true, width: "short" },
  },
  example: SEED_EXAMPLE,
  work: seedWorksheet,
});

export default async function SeedPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="seed" kinds={[seed]} asked={await searchParams} />;
}
