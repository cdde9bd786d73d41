// @ts-check
// Loaded before the web server (node --import). Anyone can write X-Forwarded-For and its kin into a request, and
// Next believes them: it fills X-Forwarded-For from the connection only where there is none, and sign-ins are
// counted by it. So they are taken off every request before anyone reads them, unless HALFPASS_TRUSTED_PROXY=1
// says that a proxy of one's own stands before the server and sets them.
import { Server as HttpServer } from "node:http";
import { Server as HttpsServer } from "node:https";
import process from "node:process";

const CLAIMS = /^(forwarded|x-forwarded-.+|x-real-ip|x-client-ip|x-cluster-client-ip|true-client-ip)$/i;

/** The events with which a server hands a request over; the request is their first argument. */
const REQUEST_EVENTS = new Set(["request", "upgrade", "connect", "checkContinue", "checkExpectation"]);

/**
 * Takes what a client claims about where it comes from off a request.
 *
 * @param {import("node:http").IncomingMessage} request
 */
function stripClaims(request) {
  // Node makes these two of the raw headers when they are first read, and counts on all of the raw ones being
  // there: so they are read before the raw ones change.
  for (const headers of [request.headers, request.headersDistinct]) {
    for (const name of Object.keys(headers)) if (CLAIMS.test(name)) Reflect.deleteProperty(headers, name);
  }
  const raw = request.rawHeaders;
  // Names and values take turns.
  request.rawHeaders = raw.filter((_entry, index) => !CLAIMS.test(raw[index - (index % 2)] ?? ""));
}

if (process.env.HALFPASS_TRUSTED_PROXY !== "1") {
  for (const { prototype } of [HttpServer, HttpsServer]) {
    const emit = prototype.emit;
    /**
     * @param {string | symbol} event
     * @param {any[]} args
     */
    prototype.emit = function emitStripped(event, ...args) {
      if (typeof event === "string" && REQUEST_EVENTS.has(event)) stripClaims(args[0]);
      return Reflect.apply(emit, this, [event, ...args]);
    };
  }
}
