import { z } from "zod";

const secret = (variable: string) => z.string(`${variable} is not set`).min(32, `${variable} must have at least 32 characters`);

const environmentSchema = z.object({
  /** The web role's address: may go through a pooler in transaction mode. */
  DATABASE_APP_URL: z.string("DATABASE_APP_URL is not set").regex(/^postgres(ql)?:\/\//, "DATABASE_APP_URL must begin with postgresql://"),
  NEXTAUTH_SECRET: secret("NEXTAUTH_SECRET"),
  /** Where browsers reach the office, for example https://office.example. */
  NEXTAUTH_URL: z.url("NEXTAUTH_URL must be a whole address such as https://office.example"),
  DATABASE_POOL_SIZE: z.coerce.number("DATABASE_POOL_SIZE must be a number").int().min(1).max(100).optional(),
  /** "1" where a proxy of one's own sets X-Forwarded-For; otherwise that header is not believed. */
  HALFPASS_TRUSTED_PROXY: z.enum(["0", "1"], "HALFPASS_TRUSTED_PROXY is 0 or 1").optional(),
  /** "1" only in tests: lets HALFPASS_TEST_NOW set the clock. */
  HALFPASS_TEST_MODE: z.enum(["0", "1"], "HALFPASS_TEST_MODE is 0 or 1").optional(),
  HALFPASS_TEST_NOW: z.iso.datetime("HALFPASS_TEST_NOW must be an ISO 8601 instant").optional(),
});

export type Environment = z.infer<typeof environmentSchema>;

/** What is wrong with the environment, a sentence for each variable; empty when nothing is. */
export function environmentFaults(variables: NodeJS.ProcessEnv): readonly string[] {
  const parsed = environmentSchema.safeParse(variables);
  const faults = parsed.success ? [] : parsed.error.issues.map((issue) => `${issue.message}.`);
  if (variables.HALFPASS_TEST_NOW !== undefined && variables.HALFPASS_TEST_MODE !== "1") {
    faults.push("HALFPASS_TEST_NOW sets the clock and is refused unless HALFPASS_TEST_MODE is 1.");
  }
  return faults;
}

let environment: Environment | undefined;

/** The checked environment. Throws with every fault named when it is not as it must be. */
export function readEnvironment(): Environment {
  if (environment === undefined) {
    const faults = environmentFaults(process.env);
    if (faults.length > 0) throw new Error(`The environment is not complete. ${faults.join(" ")}`);
    environment = environmentSchema.parse(process.env);
  }
  return environment;
}

/** True where browsers come over TLS, so that cookies may be marked secure. */
export function isBehindTls(): boolean {
  return readEnvironment().NEXTAUTH_URL.startsWith("https://");
}
