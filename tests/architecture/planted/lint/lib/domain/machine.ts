// caught by: no-restricted-globals x6, no-restricted-properties x2, no-restricted-syntax x6, no-console
// caught by: @typescript-eslint/no-restricted-imports x2
import { addDays, isFuture } from "date-fns";
import { startOfToday as midnight } from "date-fns/startOfToday";

export const readings = [Date.now(), new Date(), Math.random(), process.pid, performance.now(), globalThis.name];
export const words = ["b", "a"].sort((one, other) => one.localeCompare(other)).join((12.5).toLocaleString());
export const stamp = Date();
export const later = setTimeout(() => addDays(midnight(), isFuture(0) ? 1 : 2), crypto.getRandomValues(new Uint8Array(1)).length);
console.log(new Date().toLocaleDateString());
