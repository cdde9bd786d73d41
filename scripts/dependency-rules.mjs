// Who may import whom, as rules for dependency-cruiser. tests/architecture/boundaries.test.ts runs them over
// the project and over planted violations, one for each rule.
//
//   app -> application -> domain      application -> adapters -> domain      app -> domain      nothing -> app

/**
 * The order inside lib/domain: a folder may import itself and the folders before it, never one after it.
 * Subjects come before what is computed of several subjects, and papers come last, since they say what all
 * the others found.
 */
export const domainOrder = [
  "foundation", // outcomes, invariants, identifiers, dates
  "quantities", // exact amounts and rates
  "money",
  "company", // where the business is licensed
  "crew", // people, roles, licenses
  "turf", // species, nutrients, growth, water
  "properties", // customers' ground: lists of customers, measured lawns, seed and sod
  "weather", // hours and windows for spraying
  "label", // what a label allows
  "equipment", // calibrations, catch-can tests
  "rules", // packs of law, and what they say to a product on a lawn
  "stock", // the ledger of lots
  "mixing", // from zones, labels and equipment to a ticket
  "register", // application records: what they say, as the bytes that are hashed
  "routing", // one day's stops in order
  "scheduling", // a season's visits on days
  "worksheets", // one calculation each from typed fields, with its working
  "papers", // what a paper says, as data
];

/** What lib/domain may import besides itself: libraries without a clock of their own, dice or input and output. */
export const pureLibraries = ["date-fns", "@date-fns/[^/]+", "suncalc"];

/** @param {string[]} names */
const anyOf = (names) => `(${names.join("|")})`;
const librariesNamed = (/** @type {string[]} */ names) => `(^|/)node_modules/${anyOf(names)}/`;
const SCHEMA_FILE = "[.-]schema[.]ts$";
const CLIENT_FILE = "[.]client[.]tsx$";

const domainOrderRules = domainOrder.slice(0, -1).map((folder, index) => ({
  name: "domain-order",
  comment: `lib/domain/${folder} comes before what it imports here: see domainOrder.`,
  severity: "error",
  from: { path: `^lib/domain/${folder}/` },
  to: { path: `^lib/domain/${anyOf(domainOrder.slice(index + 1))}/` },
}));

/** @type {import("dependency-cruiser").IRegularForbiddenRuleType[]} */
export const forbidden = [
  {
    name: "nothing-imports-app",
    comment: "Screens ask; nobody asks the screens.",
    severity: "error",
    from: { pathNot: "^(app|tests)/" },
    to: { path: "^app/" },
  },
  {
    name: "app-asks-application",
    comment: "A screen reaches the database, mail and files through a use case only.",
    severity: "error",
    from: { path: "^app/" },
    to: { path: "^lib/adapters/" },
  },
  {
    name: "adapters-know-only-domain",
    comment: "An adapter serves use cases and knows none of them.",
    severity: "error",
    from: { path: "^lib/adapters/" },
    to: { path: "^lib/application/" },
  },
  {
    name: "domain-knows-only-domain",
    comment: "The domain is pure: nothing outside it, not even a type.",
    severity: "error",
    from: { path: "^lib/domain/" },
    to: { path: "^(lib|app|scripts|prisma|tests)/", pathNot: "^lib/domain/" },
  },
  {
    name: "domain-uses-pure-libraries",
    comment: "A library in the domain is named in pureLibraries, and Node's own modules are not for it.",
    severity: "error",
    from: { path: "^lib/domain/" },
    to: { pathNot: ["^(lib|app|scripts|prisma|tests)/", librariesNamed(pureLibraries)] },
  },
  ...domainOrderRules,
  {
    name: "ui-knows-no-feature",
    comment: "The design system is made of itself, the domain's formatting and libraries.",
    severity: "error",
    from: { path: "^app/ui/" },
    to: { path: "^(app|lib|scripts|prisma|tests)/", pathNot: ["^app/ui/", "^lib/domain/"] },
  },
  {
    name: "schema-is-zod-and-domain",
    comment: "Both sides of a form import its schema; what it imports lands in the browser.",
    severity: "error",
    from: { path: SCHEMA_FILE },
    to: { pathNot: ["^lib/domain/", librariesNamed(["zod"]), SCHEMA_FILE] },
  },
  {
    name: "client-component-stays-in-the-browser",
    comment: "A client component knows the schema of a use case, never the use case or an adapter.",
    severity: "error",
    from: { path: CLIENT_FILE },
    to: { path: "^lib/(application|adapters)/", pathNot: SCHEMA_FILE },
  },
  {
    name: "production-code-imports-no-tests",
    comment: "What ships doesn't lean on what checks it.",
    severity: "error",
    from: { path: "^(app|lib)/" },
    to: { path: "^(tests|scripts)/" },
  },
  {
    name: "no-development-package",
    comment: "A start installs without development packages.",
    severity: "error",
    from: { path: "^(app|lib)/" },
    to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
  },
  {
    name: "no-cycle",
    comment: "Two files that need each other are one file or three.",
    severity: "error",
    from: {},
    to: { circular: true },
  },
  {
    name: "everything-resolves",
    comment: "An import of a package that package.json does not name.",
    severity: "error",
    from: {},
    to: { dependencyTypes: ["npm-no-pkg", "npm-unknown"] },
  },
  {
    name: "everything-resolves",
    comment: "An import that leads nowhere.",
    severity: "error",
    from: {},
    to: { couldNotResolve: true },
  },
];

/**
 * Reads the imports of a project's files and holds them against the rules.
 * @param {string} baseFolder the project's folder
 * @param {string[]} folders what to read there
 * @returns {Promise<import("dependency-cruiser").ICruiseResult>}
 */
export async function cruiseProject(baseFolder, folders) {
  const { cruise } = await import("dependency-cruiser");
  const { output } = await cruise(
    folders,
    {
      baseDir: baseFolder,
      validate: true,
      ruleSet: { forbidden },
      doNotFollow: { path: ["node_modules", "^lib/adapters/postgres/generated/"] },
      exclude: { path: ["^tests/architecture/planted/", "[.]next/"] },
      tsPreCompilationDeps: true,
      combinedDependencies: false,
    },
    { conditionNames: ["import", "require", "node", "default"], exportsFields: ["exports"] },
  );
  if (typeof output === "string") throw new Error("dependency-cruiser answered with text where data was expected");
  return output;
}
