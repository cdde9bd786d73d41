import { type Metadata } from "next";
import {
  NUTRIENTS_IN_BAG_EXAMPLE,
  NUTRIENTS_OF_PRODUCT_EXAMPLE,
  nutrientsInBagWorksheet,
  nutrientsOfProductWorksheet,
  PRODUCT_FOR_NUTRIENT_EXAMPLE,
  productForNutrientWorksheet,
} from "#domain/worksheets/nutrients";
import { AREA, sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Nutrients and rate" };

const GRADE = { look: "line", label: "Grade", hint: "N-P2O5-K2O as on the bag: 28-3-6, or 12-0-0-6Fe with iron", width: "short" } as const;
const SLOW = { look: "line", label: "Slow-release nitrogen", hint: "percent of the product, as the label has it: 7", optional: true, width: "short" } as const;
const DENSITY = { look: "line", label: "Density of a liquid", hint: "10.65 lb per gal", optional: true } as const;

const forTarget = sheetKind({
  key: "for-target",
  name: "Product for a nutrient",
  fields: {
    grade: GRADE,
    nutrient: { look: "rows", label: "Nutrient", choices: [{ value: "N", word: "N, nitrogen" }, { value: "P2O5", word: "P2O5, phosphate" }, { value: "K2O", word: "K2O, potash" }, { value: "Fe", word: "Fe, iron" }] },
    target: { look: "line", label: "Wanted rate of the nutrient", hint: "1 lb per 1,000 sq ft" },
    area: AREA,
    bag: { look: "line", label: "A bag weighs", hint: "50 lb", optional: true, width: "short" },
    density: DENSITY,
    slow: SLOW,
  },
  example: PRODUCT_FOR_NUTRIENT_EXAMPLE,
  work: productForNutrientWorksheet,
});

const ofProduct = sheetKind({
  key: "of-product",
  name: "Nutrients of a product",
  fields: { grade: GRADE, rate: { look: "line", label: "Rate of the product", hint: "3.5 lb per 1,000 sq ft, 6 fl oz per 1,000 sq ft" }, area: AREA, density: { ...DENSITY, hint: "needed where the rate is by volume: 10.65 lb per gal" }, slow: SLOW },
  example: NUTRIENTS_OF_PRODUCT_EXAMPLE,
  work: nutrientsOfProductWorksheet,
});

const inBag = sheetKind({
  key: "in-bag",
  name: "What is in a bag",
  fields: { grade: GRADE, bag: { look: "line", label: "A bag weighs", hint: "40 lb", width: "short" }, target: { look: "line", label: "Rate of nitrogen", hint: "1 lb per 1,000 sq ft, to see how far a bag goes", optional: true } },
  example: NUTRIENTS_IN_BAG_EXAMPLE,
  work: nutrientsInBagWorksheet,
});

export default async function NutrientsPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="nutrients" kinds={[forTarget, ofProduct, inBag]} asked={await searchParams} />;
}
