/** A number of days: "3 days", "1 day". */
export function daysWords(count: number): string {
  return count === 1 ? "1 day" : `${String(count)} days`;
}
