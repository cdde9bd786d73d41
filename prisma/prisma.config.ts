import { fileURLToPath } from "node:url";
import { defineConfig } from "prisma/config";

// The stock engine is a download from a host that an installation may be unable to reach; see that script.
process.env["PRISMA_SCHEMA_ENGINE_BINARY"] ??= fileURLToPath(new URL("../scripts/schema-engine.mjs", import.meta.url));

const ownerUrl = process.env["DATABASE_OWNER_URL"];
const shadowServerUrl = process.env["SHADOW_DATABASE_URL"];

// `generate` and `validate` need no database, so a missing address is not an error here.
export default defineConfig({
  schema: "schema.prisma",
  migrations: { path: "migrations" },
  ...(ownerUrl === undefined
    ? {}
    : {
        datasource: {
          url: ownerUrl,
          // Shadow databases are made new on this server and dropped again; without it, beside the database itself.
          ...(shadowServerUrl === undefined ? {} : { shadowDatabaseUrl: shadowServerUrl }),
        },
      }),
});
