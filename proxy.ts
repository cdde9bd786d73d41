import { type NextRequest, NextResponse } from "next/server";

const SAFE_METHODS = new Set(["GET", "HEAD", "OPTIONS"]);

/** True when a request that changes something comes from a page of our own. Browsers always send Origin then. */
function isFromOurOwnPage(request: NextRequest): boolean {
  const site = request.headers.get("sec-fetch-site");
  if (site !== null) return site === "same-origin";
  const origin = request.headers.get("origin");
  if (origin === null) return false;
  return URL.canParse(origin) && new URL(origin).host === request.headers.get("host");
}

function contentSecurityPolicy(nonce: string, isBehindTls: boolean): string {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'`,
    `style-src 'self' 'nonce-${nonce}'`,
    // The framework hides what streams in with a style attribute; scripts stay strict.
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
    ...(isBehindTls ? ["upgrade-insecure-requests"] : []),
  ].join("; ");
}

/**
 * Stands before every page: refuses changes asked for by other sites, and gives each answer its security
 * headers and a script nonce of its own. Who may see what is decided in the use cases, never here.
 */
export function proxy(request: NextRequest): NextResponse {
  if (!SAFE_METHODS.has(request.method) && !isFromOurOwnPage(request)) {
    return new NextResponse("This request did not come from a page of this office, so nothing was done.\n", {
      status: 403,
      headers: { "content-type": "text/plain; charset=utf-8" },
    });
  }
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString("base64");
  const isBehindTls = (process.env["NEXTAUTH_URL"] ?? "").startsWith("https://");
  const policy = contentSecurityPolicy(nonce, isBehindTls);
  const headers = new Headers(request.headers);
  headers.set("x-nonce", nonce);
  headers.set("content-security-policy", policy);
  headers.set("x-halfpass-path", request.nextUrl.pathname + request.nextUrl.search);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("content-security-policy", policy);
  response.headers.set("x-content-type-options", "nosniff");
  response.headers.set("referrer-policy", "same-origin");
  response.headers.set("permissions-policy", "camera=(self), geolocation=(self), microphone=()");
  response.headers.set("cross-origin-opener-policy", "same-origin");
  response.headers.set("cross-origin-resource-policy", "same-origin");
  response.headers.set("x-frame-options", "DENY");
  if (isBehindTls) response.headers.set("strict-transport-security", "max-age=31536000; includeSubDomains");
  return response;
}

export const config = {
  // Built files carry no decisions. Routes that take uploads check size and origin themselves, because a body
  // over 10 MB would be cut here without a word.
  matcher: ["/((?!_next/static|_next/image|uploads/).*)"],
};
