// The lint rules, all at error level: `npx eslint -c scripts/eslint.config.mjs .`
import { builtinRules } from "eslint/use-at-your-own-risk";
import nextRules from "eslint-config-next/core-web-vitals";
import tseslint from "typescript-eslint";
import { domainRules } from "./eslint-rules/domain.mjs";
import { boundedInclude } from "./eslint-rules/bounded-include.mjs";
import { noRelationDisconnect } from "./eslint-rules/no-relation-disconnect.mjs";
import { noRelationNullFilter } from "./eslint-rules/no-relation-null-filter.mjs";
import { readRelations } from "./eslint-rules/prisma-schema.mjs";

const relations = readRelations(new URL("../prisma/schema.prisma", import.meta.url));

/**
 * A rule set of others in which every warning is an error and which applies to some files only.
 * @param {any} config
 * @param {string[]} files
 */
function strictly(config, files) {
  const rules = Object.entries(config.rules ?? {}).map(([name, setting]) => {
    const [level, ...options] = [setting].flat();
    return [name, level === "warn" || level === 1 ? ["error", ...options] : setting];
  });
  return { ...config, files, rules: Object.fromEntries(rules) };
}

/** ESLint's own recommendations, all at error level; typescript-eslint switches off those that TypeScript sees to. */
const recommended = Object.fromEntries(
  [...builtinRules].filter(([, rule]) => rule.meta?.docs?.recommended === true && !rule.meta.deprecated).map(([name]) => [name, "error"]),
);

/** Hooks belong to components that run in the browser; on the server "use" is an ordinary verb. */
const hooks = ["**/*.client.tsx", "app/**/error.tsx", "app/global-error.tsx"];

/** Markup is airy: a component may have a few more lines than a function. @param {number} max */
const functionsUpTo = (max) => ({ "max-lines-per-function": ["error", { max, skipBlankLines: true, skipComments: true }] });

/** Every rule of a plugin that the framework's set turns on, off. @param {string} plugin */
const allOff = (plugin) =>
  Object.fromEntries(nextRules.flatMap(({ rules = {} }) => Object.keys(rules).filter((name) => name.startsWith(`${plugin}/`)).map((name) => [name, "off"])));

/** @param {string[]} uses */
const withoutTypes = (...uses) => Object.fromEntries(uses.map((use) => [`@typescript-eslint/no-unsafe-${use}`, "off"]));

const typeScript = ["**/*.ts", "**/*.tsx"];
const everything = [...typeScript, "**/*.mjs"];

export default tseslint.config(
  { ignores: ["node_modules/", ".next/", ".data/", ".artifacts/", "next-env.d.ts", "lib/adapters/postgres/generated/", "tests/architecture/planted/"] },
  { linterOptions: { reportUnusedDisableDirectives: "error", reportUnusedInlineConfigs: "error" } },
  { files: everything, rules: recommended },
  nextRules.filter((config) => config.rules !== undefined).map((config) => strictly(config, ["app/**/*.{ts,tsx}"])),
  { files: ["app/**/*.{ts,tsx}"], ignores: hooks, rules: allOff("react-hooks") },
  // Tells only of what the React compiler would leave out, and it is not used here.
  { files: hooks, rules: { "react-hooks/incompatible-library": "off" } },
  tseslint.configs.strictTypeChecked.map((config) => strictly(config, everything)),
  tseslint.configs.stylisticTypeChecked.map((config) => strictly(config, everything)),
  {
    files: everything,
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: new URL("..", import.meta.url).pathname } },
    plugins: {
      house: {
        rules: {
          "bounded-include": boundedInclude,
          "no-relation-disconnect": noRelationDisconnect,
          "no-relation-null-filter": noRelationNullFilter,
        },
      },
    },
    rules: {
      eqeqeq: "error",
      "house/no-relation-disconnect": "error",
      "house/no-relation-null-filter": ["error", relations],
      "house/bounded-include": ["error", relations],
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: false, requireDefaultForNonUnion: true }],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      // Taken apart are strings of our own words and figures, whose characters are one code point each.
      "@typescript-eslint/no-misused-spread": ["error", { allow: ["string"] }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      // Which variables of the environment are declared is up to the packages that are installed.
      "@typescript-eslint/dot-notation": "off",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", ignoreRestSiblings: true }],
    },
  },
  { files: ["app/**", "lib/**", "prisma/**", "scripts/**"], rules: functionsUpTo(70) },
  { files: ["app/**/*.tsx"], rules: functionsUpTo(90) },
  // The gallery is a list of samples, one below the other.
  { files: ["app/ui/gallery/**"], rules: functionsUpTo(140) },
  { files: ["app/**", "lib/**"], rules: { "no-console": "error" } },
  { files: ["lib/domain/**/*.ts"], rules: domainRules },
  // What must not compile has no type.
  { files: ["tests/types/**/*.ts"], rules: withoutTypes("assignment", "call", "member-access", "argument", "return") },
  {
    // Plain scripts are written without types; rules that need them, but for promises, have nothing to go by there.
    files: ["**/*.mjs"],
    languageOptions: { globals: Object.fromEntries(Object.getOwnPropertyNames(globalThis).map((name) => [name, "readonly"])) },
    rules: {
      ...tseslint.configs.disableTypeChecked.rules,
      "no-undef": "error",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/await-thenable": "error",
    },
  },
);
