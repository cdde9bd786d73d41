"use client";

/** The last resort, when even the page around the page failed. It stands alone, without the design system. */
export default function GlobalError({ error }: { readonly error: Error & { digest?: string } }) {
  return (
    <html lang="en-US">
      <body>
        <h1>Halfpass could not draw this page</h1>
        <p>What was saved before is safe. Load the page again.</p>
        {error.digest !== undefined && <p>If you report it, give this number: {error.digest}</p>}
      </body>
    </html>
  );
}
