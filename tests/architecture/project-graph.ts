import { fileURLToPath } from "node:url";
import { type ICruiseResult, type IModule } from "dependency-cruiser";
import { cruiseProject, domainOrder } from "../../scripts/dependency-rules.mjs";

/** The project's folder. */
export const projectFolder = fileURLToPath(new URL("../..", import.meta.url));

/** Folders and files with code in them; what does not exist yet is left out by the caller. */
export const codeRoots = ["app", "lib", "prisma", "scripts", "tests", "next.config.ts", "proxy.ts", "instrumentation.ts"];

/** The modules of a cruise that are the project's own source files, not packages and not Node's own. */
export function ownModules(result: ICruiseResult): IModule[] {
  return result.modules.filter(
    ({ source, coreModule, couldNotResolve }) =>
      coreModule !== true && couldNotResolve !== true && !source.includes("node_modules/"),
  );
}

/** Files of lib/domain that stand in a folder without a place in {@link domainOrder}, or in none. */
export function filesWithoutPlace(modules: readonly IModule[]): string[] {
  const place = new RegExp(`^lib/domain/(${domainOrder.join("|")})/`);
  return modules.map(({ source }) => source).filter((source) => source.startsWith("lib/domain/") && !place.test(source));
}

/**
 * Chains of imports by which a client component would bring an adapter, and with it the database's driver, into
 * the browser. A chain ends at an action: the browser gets a reference to it and not its code. Type imports count,
 * since the import of a file whose every name is a type is still an import when it runs.
 */
export function reachesIntoServer(modules: readonly IModule[]): string[] {
  const importsOf = new Map(modules.map(({ source, dependencies }) => [source, dependencies.map((each) => each.resolved)]));
  const isAction = (path: string) => /(^|\/)action\.ts$/.test(path);
  const chainsFrom = (path: string, chain: readonly string[], seen: Set<string>): string[] => {
    if (path.startsWith("lib/adapters/")) return [[...chain, path].join(" -> ")];
    if (isAction(path) || seen.has(path)) return [];
    seen.add(path);
    return (importsOf.get(path) ?? []).flatMap((next) => chainsFrom(next, [...chain, path], seen));
  };
  const clients = [...importsOf.keys()].filter((path) => path.endsWith(".client.tsx"));
  return clients.flatMap((client) => chainsFrom(client, [], new Set())).sort();
}

/** Reads the imports of the project, or of a planted one. */
export async function readGraph(folder: string, roots: readonly string[]): Promise<ICruiseResult> {
  return await cruiseProject(folder, [...roots]);
}
