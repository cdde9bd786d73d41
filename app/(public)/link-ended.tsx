import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";

/** What stands behind a link that no longer works, and what to do about it. */
export function LinkEnded({ sentence }: { readonly sentence: string }) {
  return (
    <>
      <PageHead title="This link does not work" />
      <EmptyState sentence={sentence} actions={<LinkButton href="/sign-in">Sign in</LinkButton>} />
    </>
  );
}
