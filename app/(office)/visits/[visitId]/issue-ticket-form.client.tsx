"use client";

import { useActionState } from "react";
import { BlockedButton } from "#ui/blocked-button.client";
import { Button } from "#ui/button";
import { Finding } from "#ui/finding";
import { Stack } from "#ui/stack";
import { UNSENT } from "../../../form-state";
import { issueMixTicketAction } from "./action";

interface Props {
  readonly visitId: string;
  readonly words: string;
  /** True for the one thing to do now. */
  readonly isNext: boolean;
  /** What keeps it from being issued, and the id of that thing on the page. */
  readonly blockedBy?: { readonly words: string; readonly id: string } | undefined;
}

/** Issues the mix ticket; while a hold stands the button says so and leads to it. */
export function IssueTicketForm({ visitId, words, isNext, blockedBy }: Props) {
  const [state, send, isPending] = useActionState(issueMixTicketAction, UNSENT);
  return (
    <form action={send}>
      <Stack gap={3}>
        <input type="hidden" name="visitId" value={visitId} />
        <div>
          {blockedBy === undefined ? (
            <Button kind={isNext ? "act" : "plain"} type="submit" pendingWords={isPending ? "Issuing" : undefined}>
              {words}
            </Button>
          ) : (
            <BlockedButton missing={blockedBy.words} missingId={blockedBy.id}>
              {words}
            </BlockedButton>
          )}
        </div>
        {state.kind === "refused" && (
          <div role="alert">
            <Finding level="hold" what={state.sentence} source="house" />
          </div>
        )}
      </Stack>
    </form>
  );
}
