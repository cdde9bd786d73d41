"use client";

import { Button } from "#ui/button";
import { ErrorState } from "#ui/error-state";

/** What a page shows when the house itself failed. The log has the rest under the same number. */
export default function OfficeError({ error, reset }: { readonly error: Error & { digest?: string }; readonly reset: () => void }) {
  return (
    <ErrorState
      failed="This page could not be drawn."
      safe="What was saved before is safe. What you were just saving was saved whole or not at all: look before you press again."
      {...(error.digest === undefined ? {} : { incident: error.digest })}
      actions={
        <Button kind="act" onClick={reset}>
          Read again
        </Button>
      }
    />
  );
}
