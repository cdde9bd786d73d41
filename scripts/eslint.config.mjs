// The lint rules, all at error level: `npx eslint -c scripts/eslint.config.mjs .`
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

const typeScript = ["**/*.ts", "**/*.tsx"];
const everything = [...typeScript, "**/*.mjs"];

export default tseslint.config(
  { ignores: ["node_modules/", ".next/", ".data/", ".artifacts/", "next-env.d.ts", "lib/adapters/postgres/generated/", "tests/architecture/planted/"] },
  { linterOptions: { reportUnusedDisableDirectives: "error", reportUnusedInlineConfigs: "error" } },
  nextRules.filter((config) => config.rules !== undefined).map((config) => strictly(config, ["app/**/*.{ts,tsx}"])),
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
      "no-restricted-syntax": "off",
      "house/no-relation-disconnect": "error",
      "house/no-relation-null-filter": ["error", relations],
      "house/bounded-include": ["error", relations],
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: false, requireDefaultForNonUnion: true }],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", ignoreRestSiblings: true }],
    },
  },
  {
    files: ["lib/**", "app/**"],
    rules: {
      "no-console": "error",
      "max-lines-per-function": ["error", { max: 70, skipBlankLines: true, skipComments: true }],
    },
  },
  { files: ["scripts/**"], rules: { "max-lines-per-function": ["error", { max: 70, skipBlankLines: true, skipComments: true }] } },
  { files: ["lib/domain/**/*.ts"], rules: domainRules },
  {
    // Plain scripts run before anything is installed and are not type-checked; what needs types beyond
    // promises has nothing to go by there.
    files: ["**/*.mjs"],
    rules: {
      ...tseslint.configs.disableTypeChecked.rules,
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/await-thenable": "error",
    },
  },
);
