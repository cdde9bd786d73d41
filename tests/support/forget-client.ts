// The process keeps one database client for all its modules. Test files that share a process each want their own.

/** Forgets the process's client, so that the next one asked for is on the database that the environment names now. */
export function forgetClient(): void {
  Reflect.deleteProperty(globalThis, "halfpassClient");
}
