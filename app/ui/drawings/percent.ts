/** A share from 0 to 1 as the place or length that a drawing takes: "33.333%". */
export function percent(share: number): string {
  return `${(share * 100).toFixed(3)}%`;
}
