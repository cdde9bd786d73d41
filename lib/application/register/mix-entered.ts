import { type MeasuredBy } from "#domain/register/record-content";

/** What a form said of one mix. */
export interface MixEntered {
  readonly measuredBy: MeasuredBy;
  readonly amount: string;
  readonly fillId: string | null;
  /** The other fills that it came out of, each with its own amount, by the row of the form. */
  readonly alsoFrom: readonly { readonly row: string; readonly amount: string; readonly fillId: string }[];
}

/** A fill that a form names for a mix, with its gallons as they were typed. */
export interface FillEntered {
  readonly fillId: string;
  readonly amount: string;
  /** Where the form has both. */
  readonly field: string;
}

/** The fills that a form names for a mix, in their order. */
export function fillsEntered(key: string, said: MixEntered | undefined): readonly FillEntered[] {
  if (said === undefined || said.fillId === null) return [];
  const further = said.alsoFrom.map(({ row, fillId, amount }) => ({ fillId, amount, field: `mixes.${key}.alsoFrom.${row}` }));
  return [{ fillId: said.fillId, amount: said.amount, field: `mixes.${key}` }, ...further];
}
