// The habits of the house as rules: each takes files and answers with complaints. Function length, promises,
// switches and the domain's purity are kept by lint (scripts/eslint.config.mjs), imports by dependency rules.
import { type ProjectFile } from "./project-files";
import { directivesOf, exportsRuntimeValue, parseSource, testsNotRun } from "./source-syntax";

/** A rule: the files of a project in, one sentence for each offense out. */
export type TidyRule = (files: readonly ProjectFile[]) => string[];

const isCode = ({ path }: ProjectFile) => /\.(ts|tsx|mjs)$/.test(path);
const isTest = ({ path }: ProjectFile) => /\.(test|spec)\.tsx?$/.test(path);

/** A rule that looks at one file at a time. */
function perFile(complain: (file: ProjectFile) => readonly string[]): TidyRule {
  return (files) => files.flatMap((file) => complain(file).map((complaint) => `${file.path}: ${complaint}`));
}

/** What may lie in the project's folder besides files whose name begins with a dot. */
const TOP_LEVEL = new Set([
  ...["README.md", "DEVELOPERS.md", "LICENSE", "NOTICE", "package.json", "package-lock.json", "tsconfig.json"],
  ...["docker-compose.yml", "next.config.ts", "next-env.d.ts", "proxy.ts", "instrumentation.ts"],
  ...["app", "lib", "prisma", "public", "scripts", "tests"],
]);

/** The root shows what the project is; everything else has a place below. */
export const onlyKnownTopLevelEntries: TidyRule = (files) => {
  const entries = new Set(files.map(({ path }) => path.split("/")[0] ?? path));
  return [...entries].filter((entry) => !entry.startsWith(".") && !TOP_LEVEL.has(entry)).sort();
};

/** Every file of the domain and every use case has a test of the same name; types alone need none. */
export const mirroredTests: TidyRule = (files) => {
  const paths = new Set(files.map(({ path }) => path));
  return files.flatMap((file) => {
    const [, layer, rest] = /^lib\/(domain|application)\/(.+)\.ts$/.exec(file.path) ?? [];
    if (layer === undefined || rest === undefined || /[.-]schema$/.test(rest)) return [];
    if (!exportsRuntimeValue(parseSource(file.path, file.text))) return [];
    const test = `tests/${layer}/${rest}.test.ts`;
    return paths.has(test) ? [] : [`${file.path} has no ${test}`];
  });
};

/** A test of the domain stands where the file it tests stands. */
export const testsOfSomething: TidyRule = (files) => {
  const paths = new Set(files.map(({ path }) => path));
  return files.flatMap(({ path }) => {
    const [, folder, name] = /^tests\/domain\/(.+\/)?([^/.]+)(\.[^/]+)?\.test\.ts$/.exec(path) ?? [];
    if (name === undefined || paths.has(`lib/domain/${folder ?? ""}${name}.ts`)) return [];
    return [`${path} tests no file of that name in lib/domain`];
  });
};

/** Every test runs, and every test may fail. */
export const everyTestRuns: TidyRule = perFile((file) =>
  file.path.startsWith("tests/") && isCode(file)
    ? testsNotRun(parseSource(file.path, file.text)).map((call) => `${call} keeps a test from counting`)
    : [],
);

const EMPTY_NAMES = /^(utils?|helpers?|common|shared|misc|index)$/;

/** A name says what is inside. */
export const namesThatSaySomething: TidyRule = perFile(({ path }) =>
  path
    .split("/")
    .filter((part) => EMPTY_NAMES.test(part.replace(/\..*$/, "")))
    .map((part) => `"${part}" says nothing about what is inside`),
);

const KEBAB_CASE = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;
const ROUTE_SEGMENT = /^(\([a-z0-9.-]+\)|\[{1,2}(\.\.\.)?[a-zA-Z]+\]{1,2}|@[a-z0-9-]+|_[a-z0-9-]+)$/;
const MIGRATION = /^\d{14}_[a-z0-9]+(_[a-z0-9]+)*$/;
const GIVEN_NAMES = new Set(["README.md", "DEVELOPERS.md", "LICENSE", "NOTICE", "Dockerfile", "migration_lock.toml"]);

/** Files and folders are named in kebab-case, but for names that tools prescribe. */
export const kebabCaseNames: TidyRule = (files) => {
  const offenses = files.flatMap(({ path }) => {
    const isAllowed = (part: string) =>
      part.startsWith(".") || GIVEN_NAMES.has(part) || KEBAB_CASE.test(part) ||
      (path.startsWith("app/") && ROUTE_SEGMENT.test(part)) ||
      (path.startsWith("prisma/migrations/") && MIGRATION.test(part));
    return path.split("/").filter((part) => !isAllowed(part)).map((part) => `"${part}" in ${path} is not kebab-case`);
  });
  return [...new Set(offenses)];
};

const ERROR_FILES = /(^|\/)(error|global-error)\.tsx$/;

/** "use client" stands exactly in *.client.tsx and in the framework's error files. */
export const clientFilesSaySo: TidyRule = perFile((file) => {
  if (!isCode(file)) return [];
  const says = directivesOf(parseSource(file.path, file.text)).includes("use client");
  const should = file.path.endsWith(".client.tsx") || ERROR_FILES.test(file.path);
  if (says === should) return [];
  return [says ? 'says "use client": name it *.client.tsx' : 'lacks "use client" at its top'];
});

/** Lines that a file of code may have. */
export const MOST_LINES = 300;

/** Files that may be longer, each with the reason why it can't be two. */
export const longFiles: Readonly<Record<string, string>> = {
  "tests/adapters/schema-engine.test.ts": "one server and one set of planted migrations serve all its cases",
};

/** Code files stay short enough to be read in one go. */
export const shortFiles: TidyRule = perFile((file) => {
  const lines = file.text.trimEnd().split("\n").length;
  const isLong = isCode(file) && lines > MOST_LINES && longFiles[file.path] === undefined;
  return isLong ? [`has ${lines} lines, more than ${MOST_LINES}`] : [];
});

/** What no committed text may say, each with what it is. The brackets keep a pattern from finding itself. */
const BANNED_TEXT: readonly (readonly [RegExp, string])[] = [
  [/\b(TO[D]O|FIX[M]E|XX[X])\b/, "a note about unfinished work"],
  [/not (yet )?implemente[d]|lorem ipsu[m]/i, "a placeholder"],
  [/(?<![\w.)\]}-])\/(work|srv|root|tmp|home\/[a-z]+|Users\/[A-Za-z]+)\/[\w.-]/, "a path of one machine"],
  [/[A-Z]:\\Users\\/, "a path of one machine"],
];
const REGISTRY_HOST = /registry\.(npmj[s]|yarnpk[g])|npm\.pkg\.githu[b]|:\/\/[\w.-]*(artifactor[y]|verdacci[o]|nexu[s])/i;

/** Committed text is finished and belongs to no machine. The lock file is made of hashes, which may spell anything. */
export const finishedText: TidyRule = perFile(({ path, text }) => {
  const banned = path === "package-lock.json" ? [] : BANNED_TEXT;
  return text.split("\n").flatMap((line, index) => {
    const found = banned.filter(([pattern]) => pattern.test(line)).map(([, what]) => what);
    if (REGISTRY_HOST.test(line)) found.push("the host of a package registry");
    return found.map((what) => `line ${index + 1} has ${what}`);
  });
});

const SWITCHED_OFF = /(eslint-disable(?:-next-line|-line)?|@ts-(?:ignore|nocheck))\b(.*)/;
const SHORTEST_REASON = 15;

/** A check that is switched off has its reason beside it, after two dashes. */
export const reasonsForSwitchingOff: TidyRule = perFile((file) =>
  !isCode(file)
    ? []
    : file.text.split("\n").flatMap((line, index) => {
        const comment = /(?:\/\/|\/\*)(.*)$/.exec(line)?.[1] ?? "";
        const [, what, rest] = SWITCHED_OFF.exec(comment.trimStart()) ?? [];
        if (what === undefined || !comment.trimStart().startsWith(what)) return [];
        const reason = rest?.split(" -- ")[1]?.replace("*/", "").trim() ?? "";
        return reason.length >= SHORTEST_REASON ? [] : [`line ${index + 1}: ${what} without a reason after " -- "`];
      }),
);

/** A foreign key has the company in it, so setting it to null would take the row from its company. */
export const noSetNull: TidyRule = perFile(({ path, text }) =>
  /\.(prisma|sql)$/.test(path) && /onDelete:\s*SetNull|onUpdate:\s*SetNull|ON (DELETE|UPDATE) SET NULL/i.test(text)
    ? ["sets a foreign key to null"]
    : [],
);

/** Names of files that the framework or a runner opens by itself. */
const ENTRY_FILES = [
  /^app\/(.*\/)?(page|layout|route|loading|error|global-error|not-found|template|default|icon|apple-icon|opengraph-image|manifest|robots|sitemap)\.tsx?$/,
  /^(next\.config|proxy|instrumentation|next-env\.d)\.ts$/,
  /^tests\/types\//,
  // Renders tokens.css; its test writes the file.
  /^app\/ui\/render-tokens\.ts$/,
  /\.d\.ts$/,
];

/** Whether a file names another in a string or, where it is not code, anywhere. */
function mentions({ path, text }: ProjectFile, fileName: string): boolean {
  if (/\.(ts|tsx|mjs)$/.test(path)) {
    return (text.match(/(["'`])(?:(?!\1)[^\n])*\1/g) ?? []).some((literal) => `/${literal.slice(1, -1)}`.endsWith(`/${fileName}`));
  }
  return !path.endsWith(".md") && text.includes(`/${fileName}`);
}

/**
 * Every file of code is used: imported, opened by the framework, or named in another file (a script in
 * package.json, a worker's address). What ships is used by something that ships: a test is no use.
 */
export function usedFiles(importersOf: ReadonlyMap<string, readonly string[]>): TidyRule {
  return (files) =>
    files
      .filter((file) => isCode(file) && !isTest(file) && !ENTRY_FILES.some((entry) => entry.test(file.path)))
      .filter(({ path }) => {
        // The domain is a library of its own: what its tests check may wait there for the use case that asks for it.
        const isUse = (other: string) => other !== path && !(/^(app|lib\/(?!domain\/))/.test(path) && other.startsWith("tests/"));
        const fileName = path.split("/").pop() ?? path;
        if ((importersOf.get(path) ?? []).some(isUse)) return false;
        return !files.some((other) => isUse(other.path) && mentions(other, fileName));
      })
      .map(({ path }) => `${path} is used by nothing${/^(app|lib)\//.test(path) ? " but tests, if at all" : ""}`);
}
