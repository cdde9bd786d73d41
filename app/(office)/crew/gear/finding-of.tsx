import { type Finding as DomainFinding } from "#domain/foundation/finding";
import { Finding } from "#ui/finding";

/** A finding of the domain in its block, with its source as a word. */
export function FindingOf({ finding }: { readonly finding: DomainFinding }) {
  const { level, what, figure, toDo, source } = finding;
  return <Finding level={level} what={what} figure={figure} toDo={toDo} source={source.replace("-", " ")} />;
}
