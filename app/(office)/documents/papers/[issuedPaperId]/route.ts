import { readIssuedPaper } from "#application/documents/read-issued-paper";
import { asMember } from "../../../../session";

const PLAIN = { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" };

/** The status that says why there is no paper. */
const STATUS_OF = { "signed-out": 401, "not-allowed": 403, "not-found": 404, "bad-input": 404, conflict: 409 } as const;

interface PaperAddress {
  readonly params: Promise<{ readonly issuedPaperId: string }>;
}

/** Streams an issued paper, or the packet that it is the first of, drawn anew from what was kept of it. Writes nothing. */
export async function GET(request: Request, { params }: PaperAddress): Promise<Response> {
  const extent = new URL(request.url).searchParams.get("extent") === "packet" ? "packet" : "paper";
  const answer = await asMember(readIssuedPaper, { issuedPaperId: (await params).issuedPaperId, extent });
  if (!answer.ok) return new Response(`${answer.refusal.sentence}\n`, { status: STATUS_OF[answer.refusal.kind], headers: PLAIN });
  const { pdf, fileName } = answer.value;
  return new Response(new Uint8Array(pdf), {
    headers: {
      "content-type": "application/pdf",
      "content-disposition": `inline; filename="${fileName}"`,
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
    },
  });
}
