import NextAuth from "next-auth";
import { authentication } from "../../../authentication";

interface Context {
  readonly params: Promise<{ readonly nextauth: string[] }>;
}

async function handler(request: Request, context: Context): Promise<Response> {
  return (await NextAuth(authentication())(request, context)) as Response;
}

export { handler as GET, handler as POST };
