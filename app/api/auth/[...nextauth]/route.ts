import NextAuth from "next-auth";
import { authentication } from "../../../authentication";

interface Context {
  readonly params: Promise<{ readonly nextauth: string[] }>;
}

function handler(request: Request, context: Context): Promise<Response> {
  // The library's types do not know what its handler takes and gives.
  const handle = NextAuth(authentication()) as (request: Request, context: Context) => Promise<Response>;
  return handle(request, context);
}

export { handler as GET, handler as POST };
