import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";

export default function NotFound() {
  return (
    <main id="main">
      <PageHead title="Nothing is here" />
      <EmptyState
        sentence="There is no such page, or it belongs to a company that is not open now."
        actions={<LinkButton href="/">To the office</LinkButton>}
      />
    </main>
  );
}
