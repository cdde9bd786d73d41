// caught by: @typescript-eslint/no-explicit-any, @typescript-eslint/no-floating-promises, no-console
// caught by: @typescript-eslint/no-non-null-assertion, @typescript-eslint/switch-exhaustiveness-check
// caught by: @typescript-eslint/no-unsafe-return, @typescript-eslint/ban-ts-comment, no-control-regex, eqeqeq
// caught by: @typescript-eslint/consistent-type-imports, max-lines-per-function
import { Finding } from "./finding";

export function loosen(value: any) {
  return value;
}
export function forget(work: () => Promise<void>): void {
  work();
  console.warn("forgotten");
}
export const first = (list: readonly string[]): string => list[0]!;
export function say(finding: Finding): string {
  switch (finding.kind) {
    case "hold":
      return "hold";
  }
  return "";
}
// @ts-ignore
export const ignored: number = "12";
export const control = /\x1f/;
export const same = (one: unknown) => one == 1;
export function long(): number {
  let sum = 0;
  sum += 1;
  sum += 2;
  sum += 3;
  sum += 4;
  sum += 5;
  sum += 6;
  sum += 7;
  sum += 8;
  sum += 9;
  sum += 10;
  sum += 11;
  sum += 12;
  sum += 13;
  sum += 14;
  sum += 15;
  sum += 16;
  sum += 17;
  sum += 18;
  sum += 19;
  sum += 20;
  sum += 21;
  sum += 22;
  sum += 23;
  sum += 24;
  sum += 25;
  sum += 26;
  sum += 27;
  sum += 28;
  sum += 29;
  sum += 30;
  sum += 31;
  sum += 32;
  sum += 33;
  sum += 34;
  sum += 35;
  sum += 36;
  sum += 37;
  sum += 38;
  sum += 39;
  sum += 40;
  sum += 41;
  sum += 42;
  sum += 43;
  sum += 44;
  sum += 45;
  sum += 46;
  sum += 47;
  sum += 48;
  sum += 49;
  sum += 50;
  sum += 51;
  sum += 52;
  sum += 53;
  sum += 54;
  sum += 55;
  sum += 56;
  sum += 57;
  sum += 58;
  sum += 59;
  sum += 60;
  sum += 61;
  sum += 62;
  sum += 63;
  sum += 64;
  sum += 65;
  sum += 66;
  sum += 67;
  sum += 68;
  sum += 69;
  sum += 70;
  return sum;
}
