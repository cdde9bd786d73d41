// @ts-check
import { createServer } from "node:net";
import process from "node:process";
import { Refusal } from "./say.mjs";

const LOOPBACK = "127.0.0.1";

/**
 * Whether nothing listens on a port of an address of this machine.
 *
 * @param {number} port
 * @param {string} host
 * @returns {Promise<boolean>}
 */
export function isPortFree(port, host) {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", (error) => {
      const code = "code" in error ? error.code : "";
      if (code === "EADDRINUSE" || code === "EACCES") resolve(false);
      // A machine without IPv6 has nothing listening there either.
      else if (code === "EADDRNOTAVAIL" || code === "EAFNOSUPPORT") resolve(true);
      else reject(error);
    });
    server.listen({ port, host, exclusive: true }, () => server.close(() => resolve(true)));
  });
}

/**
 * A port of 127.0.0.1 that nothing listens on at this moment.
 *
 * @returns {Promise<number>}
 */
export function findFreePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen({ port: 0, host: "127.0.0.1" }, () => {
      const address = server.address();
      const port = address !== null && typeof address === "object" ? address.port : 0;
      server.close(() => resolve(port));
    });
  });
}

/**
 * Refuses a port that something else listens on.
 *
 * @param {number} port
 * @param {string} [host]
 */
export async function refuseTakenPort(port, host = LOOPBACK) {
  // "localhost" is tried as ::1 first, so someone else's server there would be taken for ours.
  const hosts = host === LOOPBACK ? [LOOPBACK, "::1"] : [host];
  const free = await Promise.all(hosts.map((one) => isPortFree(port, one)));
  if (!free.includes(false)) return;
  throw new Refusal(
    port < 1024 && process.getuid?.() !== 0
      ? `Port ${port} is taken or not open to this user: choose one above 1023, such as PORT=3211 npm start.`
      : `Port ${port} is already taken by another program: end that, or choose another port, such as PORT=${port + 1} npm start.`,
  );
}
