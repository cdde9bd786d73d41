import { type NutrientMark, type NutrientPart, nutrientMarks } from "./nutrient-bar-layout";

/** An application in its month, 1 for January. */
export interface MonthPart extends NutrientPart {
  readonly month: number;
}

/** The names of the months, short. */
export const monthNames = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** How the grass could grow in a month, from 0 to 1 at its best, with the mean temperature it follows from; or why nobody knows. */
export type MonthGrowth = { readonly share: number; readonly mean: string } | { readonly none: string };

/** Growth at its best reaches as high as the largest month. */
export const GROWTH_SHARE = 1 / 1.1;

/** One month as drawn: its stretches from the bottom up, and how the grass grows, both as shares of the column. */
export interface MonthColumn {
  readonly name: string;
  readonly parts: readonly MonthPart[];
  readonly marks: readonly (NutrientMark & { readonly fromShare: number; readonly share: number })[];
  /** None where nobody knows. */
  readonly growthShare: number | undefined;
}

/** Twelve columns of one scale. The axis reaches 1.1 times the largest month; growth is drawn on the same height. */
export interface MonthsLayout {
  readonly columns: readonly MonthColumn[];
  readonly axisEnd: number;
}

/** Lays out the year by month. `growth` holds twelve months, January first, or none where no curve is drawn. */
export function layOutMonths(parts: readonly MonthPart[], growth: readonly MonthGrowth[] = []): MonthsLayout {
  const months = monthNames.map((name, index) => {
    const own = parts.filter((part) => part.month === index + 1);
    const grown = growth[index];
    return { name, parts: own, marks: nutrientMarks(own), growthShare: grown !== undefined && "share" in grown ? grown.share * GROWTH_SHARE : undefined };
  });
  const largest = Math.max(0, ...months.map(({ marks }) => marks.reduce((sum, mark) => sum + mark.amount, 0)));
  const axisEnd = largest === 0 ? 1 : largest * 1.1;
  const columns = months.map(({ marks, ...month }) => ({
    ...month,
    marks: marks.map((mark) => ({ ...mark, fromShare: mark.from / axisEnd, share: mark.amount / axisEnd })),
  }));
  return { columns, axisEnd };
}
