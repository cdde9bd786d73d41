import { type Metadata } from "next";
import { BAG_SEED_EXAMPLE, bagSeedWorksheet } from "#domain/worksheets/bag-seed";
import { SEED_EXAMPLE, seedWorksheet } from "#domain/worksheets/seed";
import { AREA, sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Seed" };

const USE = { look: "rows", label: "Seeded into", choices: [{ value: "bare ground", word: "bare ground" }, { value: "overseeding", word: "standing turf, at half the rate" }] } as const;

const seed = sheetKind({
  key: "seed",
  name: "By a rate of pure live seed",
  fields: {
    rate: { look: "line", label: "Rate of pure live seed on bare ground", hint: "4 lb per 1,000 sq ft" },
    use: USE,
    area: AREA,
    purity: { look: "line", label: "Purity", hint: "percent, from the seed tag: 96", width: "short" },
    germination: { look: "line", label: "Germination", hint: "percent, from the seed tag: 85", width: "short" },
    price: { look: "line", label: "Price of a pound", hint: "from the bag, in dollars: 2.50", optional: true, width: "short" },
  },
  example: SEED_EXAMPLE,
  work: seedWorksheet,
});

const bagSeed = sheetKind({
  key: "bag-seed",
  name: "By a rate from the bag",
  fields: {
    rate: { look: "line", label: "Rate of seed from the bag on bare ground", hint: "7 lb per 1,000 sq ft" },
    use: USE,
    area: AREA,
  },
  example: BAG_SEED_EXAMPLE,
  work: bagSeedWorksheet,
});

export default async function SeedPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="seed" kinds={[seed, bagSeed]} asked={await searchParams} />;
}
