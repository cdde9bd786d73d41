// The preload in a real server of its own: what a client claims about where it comes from reaches nobody.
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { type IncomingHttpHeaders, request } from "node:http";
import { createInterface } from "node:readline";
import { afterEach, describe, expect, test } from "vitest";

const PRELOAD = new URL("../../scripts/server/strip-forwarded-headers.mjs", import.meta.url).href;

/** A server that answers with what it was sent, in all the forms in which Node gives headers. */
const ECHO = `
  const echo = (request) => JSON.stringify({ headers: request.headers, raw: request.rawHeaders, distinct: request.headersDistinct });
  const server = require("node:http").createServer((request, response) => response.end(echo(request)));
  server.on("upgrade", (request, socket) => socket.end("HTTP/1.1 101 Switching Protocols\\r\\nconnection: upgrade\\r\\nupgrade: echo\\r\\nx-echo: " + echo(request) + "\\r\\n\\r\\n"));
  server.listen(0, "127.0.0.1", () => console.log(server.address().port));
`;

interface Echo {
  readonly headers: Readonly<Record<string, string>>;
  readonly raw: readonly string[];
  readonly distinct: Readonly<Record<string, readonly string[]>>;
}

const CLAIMS = {
  "X-Forwarded-For": "203.0.113.9",
  "x-forwarded-host": "elsewhere.example",
  "X-FORWARDED-PROTO": "https",
  "x-forwarded-port": "claimed-port",
  Forwarded: "for=203.0.113.9",
  "X-Real-IP": "203.0.113.9",
};
const HONEST = { "user-agent": "forwarded", cookie: "x-forwarded-for=1" };

let server: ChildProcess | undefined;
afterEach(() => server?.kill("SIGKILL"));

async function startEcho(variables: Record<string, string>): Promise<number> {
  const { HALFPASS_TRUSTED_PROXY: _outer, ...environment } = process.env;
  server = spawn(process.execPath, ["--import", PRELOAD, "-e", ECHO], { env: { ...environment, ...variables }, stdio: ["ignore", "pipe", "inherit"] });
  if (server.stdout === null) throw new Error("the server has no output");
  const [line] = (await once(createInterface(server.stdout), "line")) as [string];
  return Number(line);
}

async function ask(port: number, headers: Record<string, string>): Promise<Echo> {
  const asked = request({ port, host: "127.0.0.1", headers }).end();
  const [answer] = (await once(asked, "response")) as [AsyncIterable<Buffer>];
  let text = "";
  for await (const chunk of answer) text += chunk.toString();
  return JSON.parse(text) as Echo;
}

async function askToUpgrade(port: number): Promise<Echo> {
  const asked = request({ port, host: "127.0.0.1", headers: { ...CLAIMS, connection: "upgrade", upgrade: "echo" } }).end();
  const [answer] = (await once(asked, "upgrade")) as [{ headers: IncomingHttpHeaders }];
  return JSON.parse(String(answer.headers["x-echo"])) as Echo;
}

describe("without a trusted proxy", () => {
  test.each([
    ["by default", {}],
    ["when it says 0", { HALFPASS_TRUSTED_PROXY: "0" }],
    ["when it says anything but 1", { HALFPASS_TRUSTED_PROXY: "yes" }],
  ])("what a client claims is taken off, %s", async (_when, variables) => {
    const echo = await ask(await startEcho(variables), { ...CLAIMS, ...HONEST });
    expect(JSON.stringify(echo)).not.toMatch(/203\.0\.113\.9|elsewhere|claimed-port/);
    expect(Object.keys(echo.headers).sort()).toEqual(["connection", "cookie", "host", "user-agent"]);
    expect(echo.headers).toMatchObject(HONEST);
    expect(echo.distinct.cookie).toEqual([HONEST.cookie]);
    expect(echo.raw).toEqual(expect.arrayContaining(["user-agent", "forwarded"]));
  });

  test("from a request to change the protocol too", async () => {
    const echo = await askToUpgrade(await startEcho({}));
    expect(Object.keys(echo.headers).sort()).toEqual(["connection", "host", "upgrade"]);
  });
});

test("with a trusted proxy its headers are kept as they are", async () => {
  const echo = await ask(await startEcho({ HALFPASS_TRUSTED_PROXY: "1" }), { ...CLAIMS, ...HONEST });
  expect(echo.headers).toMatchObject({ "x-forwarded-for": "203.0.113.9", "x-forwarded-proto": "https", forwarded: "for=203.0.113.9" });
});
