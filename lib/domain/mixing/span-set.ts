import { type Span } from "#domain/weather/local-hours";

/** The spans in order, joined where they overlap or touch; empty ones are left out. A span holds its start, not its end. */
export function joinSpans(spans: readonly Span[]): readonly Span[] {
  const joined: Span[] = [];
  const inOrder = spans
    .filter((span) => span.fromEpochMilliseconds < span.untilEpochMilliseconds)
    .toSorted((one, other) => one.fromEpochMilliseconds - other.fromEpochMilliseconds);
  for (const span of inOrder) {
    const last = joined.at(-1);
    if (last === undefined || span.fromEpochMilliseconds > last.untilEpochMilliseconds) {
      joined.push(span);
      continue;
    }
    const untilEpochMilliseconds = Math.max(last.untilEpochMilliseconds, span.untilEpochMilliseconds);
    joined[joined.length - 1] = { fromEpochMilliseconds: last.fromEpochMilliseconds, untilEpochMilliseconds };
  }
  return joined;
}

/** What lies in both. */
export function intersectSpans(left: readonly Span[], right: readonly Span[]): readonly Span[] {
  return joinSpans(
    left.flatMap((one) =>
      right.map((other) => ({
        fromEpochMilliseconds: Math.max(one.fromEpochMilliseconds, other.fromEpochMilliseconds),
        untilEpochMilliseconds: Math.min(one.untilEpochMilliseconds, other.untilEpochMilliseconds),
      })),
    ),
  );
}

/** Whether two spans share more than an edge. */
export function overlap(one: Span, other: Span): boolean {
  return (
    one.fromEpochMilliseconds < other.untilEpochMilliseconds && other.fromEpochMilliseconds < one.untilEpochMilliseconds
  );
}
