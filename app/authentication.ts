import { type NextAuthOptions } from "next-auth";
import CredentialsProvider from "next-auth/providers/credentials";
import { signIn } from "#application/accounts/sign-in";
import { house } from "#application/house";
import { marksCookiesSecure, sealingSecret } from "#application/office";

declare module "next-auth" {
  interface User {
    accountId: string;
    companyId: string;
    sessionVersion: number;
  }
  interface Session {
    accountId: string;
    companyId: string;
    sessionVersion: number;
  }
}

declare module "next-auth/jwt" {
  interface JWT {
    accountId: string;
    companyId: string;
    sessionVersion: number;
  }
}

export const SESSION_DAYS = 14;

/** The network address to count sign-ins by: what our own server saw, or what the trusted proxy before it saw. */
function networkAddress(headers: Record<string, unknown> | undefined): string {
  const forwarded = headers?.["x-forwarded-for"];
  const hops = typeof forwarded === "string" ? forwarded.split(",").map((hop) => hop.trim()) : [];
  return hops.at(-1) ?? "unknown";
}

/** How browsers sign in: an email address and a password, and a sealed cookie that the database can end. */
export function authentication(): NextAuthOptions {
  return {
    secret: sealingSecret(),
    session: { strategy: "jwt", maxAge: SESSION_DAYS * 86_400 },
    useSecureCookies: marksCookiesSecure(),
    pages: { signIn: "/sign-in", error: "/sign-in" },
    providers: [
      CredentialsProvider({
        credentials: { email: {}, password: {} },
        authorize: async (credentials, request) => {
          const answer = await signIn(
            house(),
            { email: credentials?.email, password: credentials?.password },
            networkAddress(request.headers),
          );
          // What is thrown here reaches the form as the text of its error.
          if (!answer.ok) throw new Error(answer.refusal.sentence);
          return { id: answer.value.accountId, ...answer.value };
        },
      }),
    ],
    callbacks: {
      jwt: ({ token, user }) => {
        // The type says user is always there; it is only at the moment of signing in.
        const signedIn = user as typeof user | undefined;
        if (signedIn === undefined) return token;
        const { accountId, companyId, sessionVersion } = signedIn;
        return { accountId, companyId, sessionVersion };
      },
      session: ({ session, token }) => ({
        expires: session.expires,
        accountId: token.accountId,
        companyId: token.companyId,
        sessionVersion: token.sessionVersion,
      }),
    },
  };
}
