// A process reads its environment once and keeps one database client. Test files that share a process and name an
// environment of their own have both forgotten first, and import what reads them afterwards.
import { vi } from "vitest";

/** Forgets the modules that have read the environment, and the process's database client. */
export function forgetEnvironment(): void {
  vi.resetModules();
  Reflect.deleteProperty(globalThis, "halfpassClient");
}
